package benchtwin.club;

/** Which way a player stands. A left-handed head is described by the same numbers, mirrored: open is still open. */
public enum Hand implements Word {
    /** Right-handed. */
    RIGHT("right"),
    /** Left-handed. */
    LEFT("left");

    private final String word;

    Hand(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
