package benchtwin.club;

/** How a head's angles can be changed. */
public enum Adjust implements Word {
    /** Its hosel can be bent. */
    BEND("bend"),
    /** It takes an adjustable sleeve; its hosel is never bent. */
    SLEEVE("sleeve"),
    /** Neither. */
    FIXED("fixed");

    private final String word;

    Adjust(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
