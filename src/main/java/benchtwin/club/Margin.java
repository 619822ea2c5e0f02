package benchtwin.club;

/**
 * How near a value that stands elsewhere is to be met.
 * @param tolerance how far off is still right, in the quantity's unit, above 0
 * @param weight    its weight in the miss, 0 or more
 */
public record Margin(double tolerance, double weight) {

    public Margin {
        if (!(tolerance > 0) || !(weight >= 0) || Double.isInfinite(tolerance) || Double.isInfinite(weight)) {
            throw new IllegalArgumentException(
                "a tolerance must be above 0 and a weight 0 or more, not %s and %s".formatted(tolerance, weight));
        }
    }

    /**
     * What stands in where nothing is said.
     * @param quantity a quantity that has a default tolerance
     * @return its default tolerance and weight; weight 1 where the default is only to show it, since it was asked for
     */
    public static Margin ofDefaults(Quantity quantity) {
        return new Margin(quantity.defaultTolerance(), quantity.defaultWeight() > 0 ? quantity.defaultWeight() : 1);
    }

    /**
     * The value to be met with this margin.
     * @param value in the quantity's unit
     * @return what is wanted
     */
    public Wanted around(double value) {
        return new Wanted(value, tolerance, weight);
    }
}
