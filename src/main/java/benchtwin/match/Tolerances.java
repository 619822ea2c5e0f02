package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import java.util.EnumMap;
import java.util.Map;

/**
 * Tolerances and weights a job sets; what it does not set keeps its default.
 * @param tolerance by quantity, in the quantity's unit, above 0
 * @param weight    by quantity, 0 or more
 */
public record Tolerances(Map<Quantity, Double> tolerance, Map<Quantity, Double> weight) {

    /** All defaults. */
    public static final Tolerances DEFAULT = new Tolerances(Map.of(), Map.of());

    public Tolerances {
        tolerance = Map.copyOf(tolerance);
        weight = Map.copyOf(weight);
    }

    /**
     * A wanted value with this job's tolerance and weight.
     * @param quantity which, one that can be a target
     * @param value    what it should measure
     * @return the three together
     */
    public Wanted wanted(Quantity quantity, double value) {
        return new Wanted(value, tolerance.getOrDefault(quantity, quantity.defaultTolerance()),
            weight.getOrDefault(quantity, quantity.defaultWeight()));
    }

    /**
     * The same with other default weights; what the job sets stays.
     * @param defaults by quantity
     * @return a copy
     */
    public Tolerances withDefaultWeights(Map<Quantity, Double> defaults) {
        Map<Quantity, Double> merged = new EnumMap<>(Quantity.class);
        merged.putAll(defaults);
        merged.putAll(weight);
        return new Tolerances(tolerance, merged);
    }
}
