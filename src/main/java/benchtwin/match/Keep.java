package benchtwin.match;

import benchtwin.club.Word;

/** What of the old club the twin keeps. */
public enum Keep implements Word {
    /** Its shaft, with sleeve and grip: the head cracked. */
    SHAFT("shaft"),
    /** Its head: the shaft broke. */
    HEAD("head"),
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
}
