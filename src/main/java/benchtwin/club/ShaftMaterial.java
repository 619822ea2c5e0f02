package benchtwin.club;

/** What a shaft is made of. */
public enum ShaftMaterial implements Word {
    /** Carbon fibre. */
    GRAPHITE("graphite"),
    /** Steel. */
    STEEL("steel");

    private final String word;

    ShaftMaterial(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
