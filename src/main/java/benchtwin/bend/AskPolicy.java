package benchtwin.bend;

import java.util.Optional;

/**
 * Chooses the ask that most likely ends within tolerance, of those that hardly ever pass its far end, since bending back costs
 * metal. Asks are on a grid a person can set.
 * @param stepDeg step of the asks, degrees of tilt, above 0
 * @param risk    the most chance there may be of passing the far end, 0 to 0.5; default 0.05
 */
public record AskPolicy(double stepDeg, double risk) {

    /** Used unless the workshop says otherwise. Memory. */
    public static final double DEFAULT_RISK = 0.05;
    /** Step of the angle a fixture shows. Memory. */
    public static final double STEP_DEG = 0.05;
    /** No bend asks for more in one go. Memory. */
    private static final double MOST_DEG = 8;

    public AskPolicy {
        if (!(stepDeg > 0) || !(risk > 0 && risk <= 0.5)) {
            throw new IllegalArgumentException("a step of %s degrees and a risk of %s: expected a step above 0 and a risk to 0.5"
                .formatted(stepDeg, risk));
        }
    }

    /**
     * The next ask.
     * @param known        what is known of the metal in this direction
     * @param working      how the ask is held
     * @param needDeg      what is wanted from where the head was read, degrees of tilt, above 0
     * @param toleranceDeg how far off still counts as right, degrees of tilt, above 0
     * @param readingDeg   standard uncertainty of the reading it starts from, carried to tilt
     * @param leftDeg      what the hosel may still be tilted this way, degrees
     * @return empty when every ask of any use may pass the far end, or what is left, more often than the risk allows
     */
    public Optional<NextBend> next(Springback known, Working working, double needDeg, double toleranceDeg, double readingDeg,
                                   double leftDeg) {
        double safety = Normal.above(risk);
        int most = 0;
        for (int k = 1; k * stepDeg <= MOST_DEG; k++) {
            double mean = known.meanDeg(k * stepDeg);
            double spread = known.spreadDeg(k * stepDeg, working);
            if (mean > 0 && mean + safety * Math.hypot(spread, readingDeg) <= needDeg + toleranceDeg
                && mean + safety * spread <= leftDeg) {
                most = k;
            }
        }
        NextBend best = null;
        for (int k = most; k >= 1; k--) {
            NextBend ask = of(known, working, k * stepDeg, needDeg, toleranceDeg, readingDeg);
            if (best != null && ask.withinChance() <= best.withinChance()) {
                break;   // the chance rises to its best ask and falls beyond it
            }
            best = ask;
        }
        return Optional.ofNullable(best);
    }

    /**
     * What an ask would do.
     * @param known        what is known of the metal in this direction
     * @param working      how the ask is held
     * @param askedDeg     the ask, degrees of tilt, above 0
     * @param needDeg      what is wanted from where the head was read, degrees of tilt
     * @param toleranceDeg how far off still counts as right, degrees of tilt
     * @param readingDeg   standard uncertainty of the reading it starts from, carried to tilt
     * @return the ask with its chances
     */
    public static NextBend of(Springback known, Working working, double askedDeg, double needDeg, double toleranceDeg,
                              double readingDeg) {
        double mean = known.meanDeg(askedDeg);
        double spread = known.spreadDeg(askedDeg, working);
        double total = Math.hypot(spread, readingDeg);
        double beyond = Normal.below((mean - needDeg - toleranceDeg) / total);
        double notFar = Normal.below((needDeg - toleranceDeg - mean) / total);
        return new NextBend(askedDeg, mean, spread, 1 - beyond - notFar, beyond);
    }
}
