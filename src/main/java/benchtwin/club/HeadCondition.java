package benchtwin.club;

/** What state a head is in. */
public enum HeadCondition implements Word {
    /** Never built. */
    NEW("new"),
    /** Built before. */
    USED("used"),
    /** Cracked: out of play and never stock again. */
    CRACKED("cracked");

    private final String word;

    HeadCondition(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
