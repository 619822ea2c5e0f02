package benchtwin.club;

/** What a line through a set counts its steps in. */
public enum LinePer implements Word {
    /** Each inch a club is wanted shorter than the anchor club. */
    INCH("inch"),
    /** Each club after the anchor club, in the order of the set. */
    CLUB("club");

    private final String word;

    LinePer(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
