package benchtwin.club;

/** The kinds of head. */
public enum Category implements Word {
    /** A driver. */
    DRIVER("driver"),
    /** A fairway wood. */
    FAIRWAY("fairway"),
    /** A hybrid: a wood or an iron in its angles, as its reading says. */
    HYBRID("hybrid"),
    /** An iron. */
    IRON("iron"),
    /** A wedge. */
    WEDGE("wedge"),
    /** A putter. */
    PUTTER("putter");

    private final String word;

    Category(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * Whether its heads are read soled or square, as a wood.
     * @return true for a driver and a fairway wood; a hybrid can be either
     */
    public boolean isDriverOrFairway() {
        return this == DRIVER || this == FAIRWAY;
    }

    /**
     * Whether its heads are read by the leading edge alone.
     * @return true for an iron, a wedge and a putter; a hybrid can be either
     */
    public boolean isReadByTheEdge() {
        return this == IRON || this == WEDGE || this == PUTTER;
    }

    /**
     * How the angles of a whole club are read where nothing is said of it.
     * @return soled for a driver or a fairway wood, by the leading edge for any other
     */
    public AngleReading usualReading() {
        return isDriverOrFairway() ? AngleReading.SOLED : AngleReading.EDGE;
    }
}
