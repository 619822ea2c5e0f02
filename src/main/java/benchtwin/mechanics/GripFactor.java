package benchtwin.mechanics;

/**
 * How a machine reads over a grip: the ratio of such a reading to one on the bare butt.
 * @param key                 identity among the uncertain things behind a prediction
 * @param label               what it is, for people
 * @param value               the ratio, above 0
 * @param standardUncertainty its standard uncertainty, 0 or more
 * @param pairs               shafts read both ways that taught it; 0 for the default
 * @param origin              measured once pairs taught it, otherwise default
 */
public record GripFactor(String key, String label, double value, double standardUncertainty, int pairs, Origin origin) {

    /** What stands in until the shop's own pairs teach it. Memory. */
    public static final GripFactor DEFAULT = new GripFactor("shop:grip-factor", "ratio of readings over a grip",
        MechanicsDefaults.GRIP_FACTOR, MechanicsDefaults.GRIP_FACTOR_U, 0, Origin.DEFAULT);

    public GripFactor {
        if (!(value > 0 && standardUncertainty >= 0 && pairs >= 0)) {
            throw new IllegalArgumentException(
                "a grip factor of %s ± %s from %d pairs cannot be".formatted(value, standardUncertainty, pairs));
        }
    }

    /**
     * What is left of the value's uncertainty as a share of it, which is how it passes into a frequency.
     * @return standard uncertainty of the factor's logarithm
     */
    double relativeUncertainty() {
        return standardUncertainty / value;
    }
}
