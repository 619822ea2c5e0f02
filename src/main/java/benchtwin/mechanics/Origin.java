package benchtwin.mechanics;

/** Where an input came from. */
public enum Origin {
    /** It was measured. */
    MEASURED("measured"),
    /** It follows from another record, such as the angles as made. */
    DERIVED("derived"),
    /** A default stands in for a measurement. */
    DEFAULT("default");

    private final String word;

    Origin(String word) {
        this.word = word;
    }

    /**
     * The word on screen.
     * @return lower case
     */
    public String word() {
        return word;
    }
}
