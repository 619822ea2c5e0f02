package benchtwin.club;

/**
 * What one quantity should measure.
 * @param value     wanted value, in the quantity's unit
 * @param tolerance how far off is still right, same unit, above 0
 * @param weight    its weight in the miss, 0 or more; at 0 it is shown and checked but does not rank
 */
public record Wanted(double value, double tolerance, double weight) {

    public Wanted {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a wanted value must be a finite number, not " + value);
        }
        if (!(tolerance > 0) || !(weight >= 0) || Double.isInfinite(tolerance) || Double.isInfinite(weight)) {
            throw new IllegalArgumentException(
                "a tolerance must be above 0 and a weight 0 or more, not %s and %s".formatted(tolerance, weight));
        }
    }

    /**
     * Distance of a value in tolerances.
     * @param predicted a value of the same quantity
     * @return (predicted − wanted) / tolerance
     */
    public double deviation(double predicted) {
        return (predicted - value) / tolerance;
    }
}
