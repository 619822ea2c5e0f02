package benchtwin.club;

/** What was on a head when it was weighed. */
public enum WeighedWith implements Word {
    /** Nothing: its ports were empty. */
    BARE("bare"),
    /** The weights now in its ports. */
    WEIGHTS("weights"),
    /** The sleeve with its screw. */
    SLEEVE("sleeve"),
    /** The sleeve's screw without the sleeve. */
    SCREW("screw");

    private final String word;

    WeighedWith(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
