package benchtwin.gauge;

/**
 * The reading that stands farthest from its own group, and whether it looks like a slip: a misread scale, a part not
 * seated, a wrong tag. It is pointed at, never thrown out.
 *
 * <p>A deviation e from the mean of a group of n is weighed as |e| / (s √(1 − 1/n)), s being the pooled standard
 * deviation. The test is that of the maximum normed residual, at 1 % for the whole study: with N readings and ν degrees
 * of freedom the limit is √ν · t / √(ν − 1 + t²), where t is the upper 0.01/(2N) point of Student's distribution with
 * ν − 1 degrees of freedom. For a single group it is Grubbs's two-sided test. The 1 % is this program's choice.
 * <p>Source: published, Grubbs, Technometrics 11 (1969) 1, for one group; Stefansky, Technometrics 14 (1972) 469, for
 * several; limits and a worked case in docs/accuracy.md.
 * @param reading   the reading
 * @param deviation reading less the mean of its group, in the quantity's unit
 * @param weighed   the deviation as weighed for the test, 0 or more
 * @param limit     what a study without a slip passes one time in a hundred at most
 * @param oneOfTwo  whether the group has only two readings, so that either may be the slip
 */
public record LargestDeviation(GaugeReading reading, double deviation, double weighed, double limit, boolean oneOfTwo) {

    public LargestDeviation {
        if (!(weighed >= 0) || !(limit > 0) || !Double.isFinite(deviation)) {
            throw new IllegalArgumentException("a deviation of %s, weighed %s against %s".formatted(deviation, weighed, limit));
        }
    }

    /**
     * Whether the reading looks like a slip.
     * @return true when its deviation is past the limit
     */
    public boolean looksLikeASlip() {
        return weighed > limit;
    }
}
