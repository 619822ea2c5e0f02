package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Values, predicted or read, held against a target.
 * @param difference     value less target, of every targeted quantity that has a value
 * @param terms          each one's share of miss²
 * @param outOfTolerance those that rank and lie beyond their tolerance, worst first
 */
record Comparison(Map<Quantity, Double> difference, Map<Quantity, Double> terms, List<Quantity> outOfTolerance) {

    static Comparison of(Target target, Map<Quantity, Double> values) {
        Map<Quantity, Double> difference = new EnumMap<>(Quantity.class);
        Map<Quantity, Double> terms = new EnumMap<>(Quantity.class);
        List<Quantity> out = new ArrayList<>();
        for (Map.Entry<Quantity, Wanted> entry : target.wanted().entrySet()) {
            Double value = values.get(entry.getKey());
            if (value == null) {
                continue;
            }
            Wanted wanted = entry.getValue();
            double d = wanted.deviation(value);
            difference.put(entry.getKey(), value - wanted.value());
            terms.put(entry.getKey(), wanted.weight() * d * d / target.totalWeight());
            if (wanted.weight() > 0 && Math.abs(d) > 1) {
                out.add(entry.getKey());
            }
        }
        out.sort(Comparator.comparingDouble(
            q -> -Math.abs(target.of(q).orElseThrow().deviation(values.get(q)))));
        return new Comparison(difference, terms, List.copyOf(out));
    }

    /** Distance from the target, squared tolerances. */
    double missSquared() {
        return terms.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
