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
 * Ranks options again by what they measured on the shaft. What was read takes the place of what was predicted; what was not
 * read keeps its prediction. Options without a reading stand after those with one.
 */
public final class Reranking {

    private Reranking() {
    }

    /**
     * The same answer in its new order.
     * @param answer   as predicted
     * @param readings what was read, by head tag
     * @return re-ranked
     */
    public static MatchAnswer byReadings(MatchAnswer answer, Map<String, Map<Quantity, Double>> readings) {
        Target target = answer.favourite().target();
        List<Ranked> order = new ArrayList<>();
        for (Ranked option : answer.results()) {
            Map<Quantity, Double> read = readings.get(option.head().tag());
            order.add(read == null ? option : measured(option, read, target));
        }
        order.sort(Comparator.comparing((Ranked r) -> !readings.containsKey(r.head().tag()))
            .thenComparingDouble(Ranked::cost).thenComparing(r -> r.head().tag()));
        List<Ranked> ranked = new ArrayList<>();
        for (int k = 0; k < order.size(); k++) {
            ranked.add(order.get(k).withRank(k + 1));
        }
        return answer.withResults(List.copyOf(ranked));
    }

    private static Ranked measured(Ranked option, Map<Quantity, Double> read, Target target) {
        EnumMap<Quantity, Double> values = new EnumMap<>(option.predicted());
        values.putAll(read);
        double missSquared = 0;
        EnumMap<Quantity, Double> difference = new EnumMap<>(Quantity.class);
        EnumMap<Quantity, Double> terms = new EnumMap<>(Quantity.class);
        List<Quantity> out = new ArrayList<>();
        for (Map.Entry<Quantity, Wanted> entry : target.wanted().entrySet()) {
            Double value = values.get(entry.getKey());
            if (value == null) {
                continue;
            }
            double d = entry.getValue().deviation(value);
            double term = entry.getValue().weight() * d * d / target.totalWeight();
            missSquared += term;
            difference.put(entry.getKey(), value - entry.getValue().value());
            terms.put(entry.getKey(), term);
            if (entry.getValue().weight() > 0 && Math.abs(d) > 1) {
                out.add(entry.getKey());
            }
        }
        out.sort(Comparator.comparingDouble(
            q -> -Math.abs(target.of(q).orElseThrow().deviation(values.get(q)))));
        return option.measured(values, difference, terms, Math.sqrt(missSquared), List.copyOf(out));
    }
}
