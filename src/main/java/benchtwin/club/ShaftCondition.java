package benchtwin.club;

/** What state a shaft is in. */
public enum ShaftCondition implements Word {
    /** As made. */
    NEW("new"),
    /** Already cut and pulled from a head, its trims recorded. */
    PULLED("pulled");

    private final String word;

    ShaftCondition(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
