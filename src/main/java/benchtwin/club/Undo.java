package benchtwin.club;

/** Whether a step can be taken back. */
public enum Undo implements Word {
    /** In a minute, without a trace. */
    FREELY("undone freely"),
    /** With some work. */
    WITH_WORK("can be undone"),
    /** Bending back uses metal again. */
    COSTS_METAL("costs metal"),
    /** Some of it. */
    PARTLY("partly undone"),
    /** Only by pulling the shaft. */
    COSTS_A_PULL("costs a pull"),
    /** The grip is often lost. */
    GRIP_OFTEN_LOST("grip often lost"),
    /** Never. */
    NEVER("cannot be undone");

    private final String word;

    Undo(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
