package benchtwin.match;

import benchtwin.club.Word;

/** How shafts are picked for a build. */
public enum Pick implements Word {
    /** Those nearest the target. */
    NEAREST("nearest"),
    /** One for each rung of a testing ladder around the target frequency. */
    LADDER("ladder");

    private final String word;

    Pick(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
