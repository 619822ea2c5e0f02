package benchtwin.club;

/** What state a recorded club is in. */
public enum ClubState implements Word {
    /** The player uses it. */
    IN_PLAY("in play"),
    /** A second of a club in play. */
    BACKUP("backup"),
    /** Built to be tried. */
    TEST("test"),
    /** Broken, cracked or bent out of use. */
    DAMAGED("damaged"),
    /** Read as a shaft with grip and sleeve, the head off. */
    STRIPPED("stripped"),
    /** No longer used, and sound. */
    RETIRED("retired");

    private final String word;

    ClubState(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * Whether the club measures what it should.
     * @return false when it is damaged or stripped
     */
    public boolean isSound() {
        return this != DAMAGED && this != STRIPPED;
    }
}
