package benchtwin.club;

/** What a head's hosel is made of: it decides how far it may be bent. */
public enum HeadMaterial implements Word {
    /** Forged or cast carbon steel. */
    CARBON_STEEL("carbon-steel"),
    /** 431 stainless steel. */
    STAINLESS_431("431"),
    /** 303, 304 and softer stainless steel. */
    STAINLESS_SOFT("soft-stainless"),
    /** 17-4 stainless casting. */
    STAINLESS_17_4("17-4"),
    /** Titanium alloy. */
    TITANIUM("titanium"),
    /** A hollow or filled iron, of any metal. */
    HOLLOW("hollow"),
    /** Aluminium: never bent. */
    ALUMINIUM("aluminium"),
    /** Zinc: never bent. */
    ZINC("zinc"),
    /** Not known: not bent until somebody says what it is. */
    UNKNOWN("unknown");

    private final String word;

    HeadMaterial(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
