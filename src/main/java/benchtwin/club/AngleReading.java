package benchtwin.club;

/** How a head's angles were read. {@code soled} or {@code square} makes a head a wood in everything that follows, {@code edge} an iron. */
public enum AngleReading implements Word {
    /** Sole flat, the face where it falls. */
    SOLED("soled"),
    /** Loft read with the head turned about the shaft axis until the face points at the target; the face angle is still the soled one. */
    SQUARE("square"),
    /** Leading edge square to the target: irons, wedges, putters. */
    EDGE("edge");

    private final String word;

    AngleReading(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * Whether the angles follow the rules of a wood.
     * @return true for {@code soled} and {@code square}
     */
    public boolean isWood() {
        return this != EDGE;
    }
}
