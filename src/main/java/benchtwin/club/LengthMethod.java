package benchtwin.club;

/** How a playing length was taken. */
public enum LengthMethod implements Word {
    /** Along the shaft axis from the end of the grip cap to the ground. */
    AXIS("axis"),
    /** By the published procedure, with the sole against a plane inclined at 60 degrees. */
    RULES60("rules60"),
    /** By the shop's own ruler beside the soled club. */
    RULER("ruler");

    private final String word;

    LengthMethod(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
