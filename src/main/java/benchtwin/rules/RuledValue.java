package benchtwin.rules;

/**
 * What a club measures in one of the ruled quantities.
 * @param value               in the quantity's unit, finite
 * @param standardUncertainty one standard deviation, same unit, 0 or more
 * @param mayReadLess         by how much the published procedure may read less than this for a reason that is no chance, same
 *                            unit, 0 or more
 * @param from                where it comes from, in a few words
 */
public record RuledValue(double value, double standardUncertainty, double mayReadLess, String from) {

    public RuledValue {
        if (!Double.isFinite(value) || !(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)
            || !(mayReadLess >= 0) || Double.isInfinite(mayReadLess)) {
            throw new IllegalArgumentException("a ruled value of %s with standard uncertainty %s, which may read %s less"
                .formatted(value, standardUncertainty, mayReadLess));
        }
    }
}
