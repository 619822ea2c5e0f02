package benchtwin.sets;

/** What the clubs of a group are to be alike in, each as a distance from where the target would have it. */
enum Residual {
    /** Frequency about the set's line. */
    FREQUENCY,
    /** Swing weight, or moment of inertia about the butt, about its line. */
    SWING,
    /** Mass of the raw shaft. */
    SHAFT_MASS;

    static final int COUNT = values().length;
}
