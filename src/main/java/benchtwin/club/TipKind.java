package benchtwin.club;

/** The shape of a shaft's tip, or of the bore that takes it. */
public enum TipKind implements Word {
    /** One diameter over the length that goes into the bore. */
    PARALLEL("parallel"),
    /** Narrowing to the end. */
    TAPER("taper"),
    /** The shaft goes over a stub on the head. */
    OVER_HOSEL("over-hosel");

    private final String word;

    TipKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
