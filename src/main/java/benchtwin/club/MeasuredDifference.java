package benchtwin.club;

/**
 * How far apart two readings of one quantity are, and how sure that is.
 * @param value               the later or second reading less the other, in the quantity's unit, finite
 * @param standardUncertainty one standard deviation of that difference, same unit, 0 or more; what both readings share,
 *                            such as one gauge's offset, is no part of it
 */
public record MeasuredDifference(double value, double standardUncertainty) {

    /** Two standard uncertainties cover about 95 %. Published, from memory: JCGM 100:2008, 6.3.3. */
    public static final double COVERAGE_FACTOR = 2;

    /** What adding and subtracting leaves, as a part of the larger number. */
    private static final double ROUNDING = 1e-9;

    public MeasuredDifference {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a difference must be a finite number, not " + value);
        }
        if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException(
                "the uncertainty of a difference must be 0 or more and finite, not " + standardUncertainty);
        }
    }

    /**
     * Whether it is more than measuring alone explains.
     * @return true when it is more than twice its standard uncertainty; exactly twice is not
     */
    public boolean isBeyondUncertainty() {
        double limit = COVERAGE_FACTOR * standardUncertainty;
        return Math.abs(value) > limit + ROUNDING * Math.max(limit, 1e-3);
    }
}
