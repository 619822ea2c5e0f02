package benchtwin.club;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a build should measure.
 * @param reading in which reading the angles are wanted
 * @param wanted  quantities with value, tolerance and weight; those missing are free
 */
public record Target(AngleReading reading, Map<Quantity, Wanted> wanted) {

    public Target {
        EnumMap<Quantity, Wanted> copy = new EnumMap<>(Quantity.class);
        copy.putAll(wanted);
        if (copy.values().stream().noneMatch(w -> w.weight() > 0)) {
            throw new IllegalArgumentException("a target needs at least one quantity with a weight above 0");
        }
        wanted = Collections.unmodifiableMap(copy);
    }

    /**
     * What is wanted of a quantity.
     * @param quantity any
     * @return empty when it is free
     */
    public Optional<Wanted> of(Quantity quantity) {
        return Optional.ofNullable(wanted.get(quantity));
    }

    /**
     * Sum of all weights.
     * @return above 0
     */
    public double totalWeight() {
        return wanted.values().stream().mapToDouble(Wanted::weight).sum();
    }
}
