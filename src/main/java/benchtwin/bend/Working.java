package benchtwin.bend;

import benchtwin.club.Word;

/** How the ask is held while the metal is under load. Spreads: memory. */
public enum Working implements Word {
    /** The fixture shows the angle under load. */
    LIVE("live"),
    /** The ask is only felt in the arm. */
    FEEL("feel");

    /** Standard deviation of what a bend leaves that was asked on a fixture, degrees of tilt. */
    private static final double LIVE_DEG = 0.15;
    /** The same of one only felt, as a part of the ask. */
    private static final double FEEL_SHARE = 0.3;

    private final String word;

    Working(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * How far bends scatter about what the metal does on average.
     * @param askedDeg what was asked, degrees of tilt, 0 or more
     * @return standard deviation, degrees of tilt
     */
    public double scatterDeg(double askedDeg) {
        return this == LIVE ? LIVE_DEG : FEEL_SHARE * askedDeg;
    }
}
