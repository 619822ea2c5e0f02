package benchtwin.measure;

/**
 * One measured value. The unit is in the name of whatever holds the reading ({@code massG}, {@code loftDeg}); a value
 * that was not measured has no reading at all, never a zero.
 * @param value               what was read, in the holder's unit, finite
 * @param standardUncertainty one standard deviation of it, same unit, 0 or more
 * @param taken               when, with what and by whom
 */
public record Reading(double value, double standardUncertainty, Taken taken) {

    public Reading {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a reading must be a finite number, not " + value);
        }
        if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException(
                "a standard uncertainty must be 0 or more and finite, not " + standardUncertainty);
        }
    }

    /**
     * A value with its uncertainty, of which nothing else is recorded.
     * @param value               what was read
     * @param standardUncertainty one standard deviation, same unit
     * @return the reading
     */
    public static Reading of(double value, double standardUncertainty) {
        return new Reading(value, standardUncertainty, Taken.UNRECORDED);
    }
}
