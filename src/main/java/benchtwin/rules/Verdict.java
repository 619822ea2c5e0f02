package benchtwin.rules;

import benchtwin.club.Word;

/** How a club stands to a limit. */
public enum Verdict implements Word {
    /** Within by more than measuring explains. */
    CLEARLY_WITHIN("clearly within"),
    /** On one side or the other by less than measuring explains. */
    TOO_CLOSE("too close to call"),
    /** Beyond by more than measuring explains. */
    CLEARLY_BEYOND("clearly beyond"),
    /** Nothing to judge. */
    NOT_MEASURED("not measured");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * Whether somebody has to look.
     * @return true where it is clearly beyond or too close to call
     */
    public boolean isDoubtful() {
        return this == TOO_CLOSE || this == CLEARLY_BEYOND;
    }
}
