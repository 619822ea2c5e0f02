package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Target;
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
        Comparison comparison = Comparison.of(target, values);
        return option.measured(values, comparison.difference(), comparison.terms(), Math.sqrt(comparison.missSquared()),
            comparison.outOfTolerance());
    }
}
