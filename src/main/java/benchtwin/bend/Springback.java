package benchtwin.bend;

/**
 * What is known of how one metal follows an ask: got = gain · asked − loss + scatter, never below 0, all in degrees of hosel
 * tilt. Gain and loss are jointly normal.
 *
 * <p>A bend adds one row to a Bayesian linear regression on (asked, 1) with variance σ² + 2u². A bend that got nothing says only
 * that gain · asked − loss was about 0 or below; then mean and covariance are matched to those of the exact answer. Far above
 * 0 the two are the same.
 * <p>Source: published, Bishop, <i>Pattern Recognition and Machine Learning</i>, 3.3 (the regression) and 10.7 (matching
 * moments); both from memory. Checked in the tests against NIST's Norris data and a Monte Carlo.
 */
public final class Springback {

    private final double gain;
    private final double minusLossDeg;
    private final double gainVariance;
    private final double covariance;
    private final double lossVariance;
    private final int trials;

    private Springback(double gain, double minusLossDeg, double gainVariance, double covariance, double lossVariance, int trials) {
        this.gain = gain;
        this.minusLossDeg = minusLossDeg;
        this.gainVariance = gainVariance;
        this.covariance = covariance;
        this.lossVariance = lossVariance;
        this.trials = trials;
    }

    /**
     * Before any bend.
     * @param prior what is believed of the metal
     * @return the knowledge
     */
    public static Springback of(SpringbackPrior prior) {
        return new Springback(prior.gain(), -prior.lossDeg(), prior.gainSpread() * prior.gainSpread(), 0,
            prior.lossSpreadDeg() * prior.lossSpreadDeg(), 0);
    }

    /**
     * After a bend.
     * @param trial what was asked and got
     * @return the knowledge with it
     */
    public Springback after(BendTrial trial) {
        double asked = trial.askedDeg();
        double scatter = trial.working().scatterDeg(asked);
        double mean = meanDeg(asked);
        double variance = knowledgeVariance(asked) + scatter * scatter;
        Left left = Left.of(mean, variance, trial.gotDeg(), trial.readingVariance());
        double toGain = (gainVariance * asked + covariance) / variance;
        double toLoss = (covariance * asked + lossVariance) / variance;
        double shift = left.mean() - mean;
        double shrink = variance - left.variance();
        return new Springback(gain + toGain * shift, minusLossDeg + toLoss * shift, gainVariance - toGain * toGain * shrink,
            covariance - toGain * toLoss * shrink, lossVariance - toLoss * toLoss * shrink, trials + 1);
    }

    /**
     * The gain as it is known.
     * @return degrees a degree
     */
    public double gain() {
        return gain;
    }

    /**
     * How well the gain is known.
     * @return standard deviation, degrees a degree
     */
    public double gainSpread() {
        return Math.sqrt(gainVariance);
    }

    /**
     * The loss as it is known.
     * @return degrees of tilt
     */
    public double lossDeg() {
        return -minusLossDeg;
    }

    /**
     * How well the loss is known.
     * @return standard deviation, degrees of tilt
     */
    public double lossSpreadDeg() {
        return Math.sqrt(lossVariance);
    }

    /**
     * How many bends it was learned from.
     * @return 0 or more
     */
    public int trials() {
        return trials;
    }

    /**
     * What an ask leaves, on average.
     * @param askedDeg degrees of tilt
     * @return degrees of tilt; below 0 where the metal springs back wholly
     */
    public double meanDeg(double askedDeg) {
        return gain * askedDeg + minusLossDeg;
    }

    /**
     * How sure that is.
     * @param askedDeg degrees of tilt
     * @param working  how the ask is held
     * @return standard deviation of what it leaves, degrees of tilt
     */
    public double spreadDeg(double askedDeg, Working working) {
        double scatter = working.scatterDeg(askedDeg);
        return Math.sqrt(knowledgeVariance(askedDeg) + scatter * scatter);
    }

    private double knowledgeVariance(double asked) {
        return gainVariance * asked * asked + 2 * covariance * asked + lossVariance;
    }

    /** What is known of gain · asked − loss + scatter of one bend, once it was read. */
    private record Left(double mean, double variance) {

        /**
         * @param mean     of it before the reading
         * @param variance of it before the reading
         * @param got      the reading of it, or of 0 where it was below
         * @param noise    variance of the reading
         */
        static Left of(double mean, double variance, double got, double noise) {
            double both = variance + noise;
            double bentMean = (mean * noise + got * variance) / both;
            double bentVariance = variance * noise / both;
            double bentEdge = -bentMean / Math.sqrt(bentVariance);
            double bent = Normal.density(got, mean, both) * Normal.below(-bentEdge);
            double edge = mean / Math.sqrt(variance);
            double none = Normal.density(got, 0, noise) * Normal.below(-edge);
            if (!(bent + none > 0)) {
                return new Left(bentMean, bentVariance);   // a reading so far off that neither says anything
            }
            double share = bent / (bent + none);
            Left above = cut(bentMean, bentVariance, Normal.hazard(bentEdge), bentEdge, 1);
            Left below = cut(mean, variance, Normal.hazard(edge), edge, -1);
            double middle = share * above.mean + (1 - share) * below.mean;
            double apart = above.mean - below.mean;
            return new Left(middle, share * above.variance + (1 - share) * below.variance + share * (1 - share) * apart * apart);
        }

        /** A normal value of which it is known that it lies beyond an edge. */
        private static Left cut(double mean, double variance, double hazard, double edge, int sign) {
            return new Left(mean + sign * Math.sqrt(variance) * hazard,
                variance * Math.max(0, 1 + edge * hazard - hazard * hazard));
        }
    }
}
