package benchtwin.book;

import benchtwin.club.Word;

/** How a thing stands. The word stands in the file and stays. */
public enum Standing implements Word {
    /** A part in the stock; anything else that is simply there. */
    THERE("there"),
    /** A part that sits in a club. */
    BUILT_IN("built in"),
    /** Out of the stock for good. */
    RETIRED("retired"),
    /** A job that is waiting for its plan. */
    WAITING("waiting"),
    /** A job whose plan is chosen. */
    PLANNED("planned"),
    /** A job that is done. */
    HANDED_OVER("handed over"),
    /** A job that will not be done. */
    CALLED_OFF("called off");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
