package benchtwin.match;

import benchtwin.club.Word;

/** What of the old club a new build keeps. */
public enum Keep implements Word {
    /** Its shaft, with sleeve and grip: the head cracked. */
    SHAFT("shaft"),
    /** Its head: the shaft broke. */
    HEAD("head"),
    /** Both: the club itself, with something done to it. Not a twin. */
    BOTH("both"),
    /** Nothing: a backup from stock. */
    NONE("none");

    private final String word;

    Keep(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    boolean keepsShaft() {
        return this == SHAFT || this == BOTH;
    }

    boolean keepsHead() {
        return this == HEAD || this == BOTH;
    }
}
