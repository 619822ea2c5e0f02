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
}
