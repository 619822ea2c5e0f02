package benchtwin.match;

import benchtwin.club.StepKind;
import benchtwin.club.TipKind;
import java.util.Optional;

/**
 * How a shaft's tip goes into a bore. Play of 0.05 to 0.25 mm bonds; more takes a shim, less takes reaming: steps of a plan,
 * not reasons to rule out, up to what a shim can fill or a hosel wall can lose. Bounds: memory.
 */
final class TipFit {

    private static final double LEAST_PLAY_MM = 0.05;
    private static final double MOST_PLAY_MM = 0.25;
    /** The widest gap a shim fills: a 0.335 in tip in a 0.370 in bore and a little. Memory. */
    private static final double MOST_SHIM_MM = 1.0;
    /** The most that is reamed off a bore's diameter. Memory. */
    private static final double MOST_REAM_MM = 0.35;

    private TipFit() {
    }

    /**
     * Whether and how a tip fits.
     * @param fits  whether it can be bonded at all
     * @param step  the step it takes besides bonding, if any
     */
    record Fit(boolean fits, Optional<StepKind> step) {
        private static final Fit NONE = new Fit(false, Optional.empty());
    }

    /**
     * Judges a tip against a bore.
     * @param tipMm    tip diameter, mm
     * @param tip      tip kind
     * @param boreMm   bore diameter, mm
     * @param bore     bore kind
     * @return how it fits
     */
    static Fit of(double tipMm, TipKind tip, double boreMm, TipKind bore) {
        if ((tip == TipKind.OVER_HOSEL) != (bore == TipKind.OVER_HOSEL)) {
            return Fit.NONE;
        }
        double play = tip == TipKind.OVER_HOSEL ? tipMm - boreMm : boreMm - tipMm;
        boolean reshape = tip == TipKind.PARALLEL && bore == TipKind.TAPER;
        if (play > MOST_SHIM_MM || play < LEAST_PLAY_MM - MOST_REAM_MM) {
            return Fit.NONE;
        }
        if (play < LEAST_PLAY_MM || reshape) {
            return new Fit(true, Optional.of(StepKind.REAM));
        }
        return new Fit(true, play > MOST_PLAY_MM ? Optional.of(StepKind.SHIM) : Optional.empty());
    }
}
