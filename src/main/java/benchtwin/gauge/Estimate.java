package benchtwin.gauge;

/**
 * A value with its standard uncertainty, in the unit of the quantity it belongs to.
 * @param value               finite
 * @param standardUncertainty one standard deviation, 0 or more
 */
public record Estimate(double value, double standardUncertainty) {

    public Estimate {
        if (!Double.isFinite(value) || !(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException("%s ± %s is no estimate".formatted(value, standardUncertainty));
        }
    }
}
