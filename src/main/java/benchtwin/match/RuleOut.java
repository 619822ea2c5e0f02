package benchtwin.match;

import benchtwin.club.Word;

/** Why a part cannot be used at all. */
public enum RuleOut implements Word {
    /** Another kind of head. */
    OTHER_CATEGORY("other category"),
    /** Made for the other hand. */
    WRONG_HAND("wrong hand"),
    /** Another number of a set. */
    OTHER_NUMBER("other number"),
    /** Another model, and other models were not asked for. */
    OTHER_MODEL("other model"),
    /** Of another material than the one asked for. */
    OTHER_MATERIAL("other material"),
    /** Cracked: never stock again. */
    CRACKED("cracked"),
    /** Part of a recorded club. */
    IN_A_CLUB("built into a club"),
    /** A reading that the target needs is missing. */
    NOT_MEASURED("a reading missing"),
    /** No sleeve on the shaft or in the drawer goes with it. */
    NO_SLEEVE("no sleeve that fits"),
    /** The tip and the bore cannot be joined, even with a shim or a reamer. */
    TIP("tip and bore do not fit"),
    /** The shaft is too short for the length wanted. */
    TOO_SHORT("too short"),
    /** A shaft not meant for this kind of club. */
    NOT_MEANT_FOR("not meant for this category");

    private final String word;

    RuleOut(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
