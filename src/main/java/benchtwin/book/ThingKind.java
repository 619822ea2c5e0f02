package benchtwin.book;

import benchtwin.club.Word;

/** What the book keeps a record of. */
public enum ThingKind implements Word {
    /** A head, with its own tag. */
    HEAD("head"),
    /** A shaft, with its own tag. */
    SHAFT("shaft"),
    /** A grip, with its own tag. */
    GRIP("grip"),
    /** A kind of sleeve, counted. */
    SLEEVE("sleeve"),
    /** A kind of weight, counted. */
    WEIGHT("weight"),
    /** A player's club. */
    CLUB("club"),
    /** A player, by name. */
    PLAYER("player"),
    /** A gauge, by name. */
    GAUGE("gauge"),
    /** A job, by number. */
    JOB("job");

    private final String word;

    ThingKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * Whether it lies in the stock.
     * @return true for heads, shafts, grips, sleeves and weights
     */
    public boolean isPart() {
        return compareTo(WEIGHT) <= 0;
    }

    /**
     * Whether one record stands for many that are alike.
     * @return true for sleeves and weights
     */
    public boolean isCounted() {
        return this == SLEEVE || this == WEIGHT;
    }
}
