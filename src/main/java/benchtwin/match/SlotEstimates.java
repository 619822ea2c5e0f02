package benchtwin.match;

import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.measure.Reading;
import benchtwin.mechanics.SwingWeight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * Rough costs of head and shaft pairs for one wanted club: they only say which pairs are worth working out. Every shaft is
 * planned roughly with one head of each kind of hosel; another head of that kind differs by its angles and by its mass.
 */
public final class SlotEstimates {

    /** Where the head of an average club lies, mm from the butt: it only turns a lack of mass into swing weight. */
    private static final double HEAD_AT_MM = 950;
    private static final double POINTS_PER_GRAM = SwingWeight.points(1, HEAD_AT_MM) - SwingWeight.points(0, 0);
    private static final double KG_CM2_PER_GRAM = HEAD_AT_MM * HEAD_AT_MM / 1000 / 100;

    private final List<Head> heads;
    private final List<Shaft> shafts;
    private final PlanSearch search;
    private final BiFunction<Head, Shaft, List<Candidate>> candidates;
    private final float[][] cost;
    private final Map<List<HeadMass.Option>, Lacking> lacking = new IdentityHashMap<>();

    /**
     * Estimates all pairs.
     * @param heads      heads that can be used
     * @param shafts     shafts that can be used
     * @param candidates every way to join two of them
     * @param search     plans one way
     */
    SlotEstimates(List<Head> heads, List<Shaft> shafts, BiFunction<Head, Shaft, List<Candidate>> candidates,
                  PlanSearch search) {
        this.heads = heads;
        this.shafts = shafts;
        this.candidates = candidates;
        this.search = search;
        this.cost = new float[heads.size()][shafts.size()];
        for (float[] row : cost) {
            Arrays.fill(row, Float.POSITIVE_INFINITY);
        }
        Map<String, List<Integer>> hosels = new LinkedHashMap<>();
        for (int h = 0; h < heads.size(); h++) {
            hosels.computeIfAbsent(hosel(heads.get(h)), key -> new ArrayList<>()).add(h);
        }
        hosels.values().forEach(this::estimate);
    }

    /**
     * The rough cost of a pair.
     * @param head  place of the head in the list of heads
     * @param shaft place of the shaft in the list of shafts
     * @return squared tolerances; infinite when the two do not go together
     */
    public double cost(int head, int shaft) {
        return cost[head][shaft];
    }

    /** Heads of one hosel join to a shaft in the same way. */
    private static String hosel(Head head) {
        return head.bore().map(bore -> bore.kind() + " " + bore.diameterMm())
            .orElseGet(() -> "seat " + head.seat().orElseThrow().fit());
    }

    private void estimate(List<Integer> ofHosel) {
        double[] angles = new double[ofHosel.size()];
        int reference = -1;
        for (int k = 0; k < angles.length; k++) {
            angles[k] = leastAngleCost(heads.get(ofHosel.get(k)));
            if (angles[k] < Double.POSITIVE_INFINITY && (reference < 0 || angles[k] < angles[reference])) {
                reference = k;
            }
        }
        if (reference < 0) {
            return;
        }
        Head middle = heads.get(ofHosel.get(reference));
        for (int s = 0; s < shafts.size(); s++) {
            FoundPlan rough = null;
            for (Candidate candidate : candidates.apply(middle, shafts.get(s))) {
                FoundPlan plan = search.guessWithAnglesApart(candidate);
                rough = rough == null || plan != null && plan.cost() < rough.cost() ? plan : rough;
            }
            if (rough != null) {
                double need = mass(middle) + rough.mass().addedG();
                double rest = rough.cost() - rough.angle().cost() - massCost(middle, need);
                for (int k = 0; k < angles.length; k++) {
                    Head head = heads.get(ofHosel.get(k));
                    cost[ofHosel.get(k)][s] = (float) (rest + angles[k] + massCost(head, need));
                }
            }
        }
    }

    private double leastAngleCost(Head head) {
        for (Shaft shaft : shafts) {
            List<Candidate> ways = candidates.apply(head, shaft);
            if (!ways.isEmpty()) {
                return ways.stream().mapToDouble(way -> search.angles.cheapest(way).cost()).min().orElseThrow();
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static double mass(Head head) {
        return head.massG().map(Reading::value).orElse(0.0);
    }

    /** What it costs to bring a head to a mass. */
    private double massCost(Head head, double needG) {
        return lacking.computeIfAbsent(search.masses.of(head.ports(), head.hotMeltMaxG()), Lacking::new).cost(needG - mass(head));
    }

    /** What it costs that a head lacks some grams, on a grid: heads with the same ports share it. */
    private final class Lacking {

        private static final double STEP_G = 0.25;
        private static final double FROM_G = -60;
        private static final int POINTS = 641;

        private final float[] cost = new float[POINTS];

        Lacking(List<HeadMass.Option> options) {
            for (int k = 0; k < POINTS; k++) {
                cost[k] = (float) at(options, FROM_G + k * STEP_G);
            }
        }

        private double at(List<HeadMass.Option> options, double lackG) {
            double least = Double.POSITIVE_INFINITY;
            CostTerms terms = search.terms;
            for (HeadMass.Option option : options) {
                double off = option.addedG() - lackG;
                double sum = option.effort();
                if (terms.counts(Quantity.SWING_WEIGHT)) {
                    sum += terms.of(Quantity.SWING_WEIGHT, terms.want(Quantity.SWING_WEIGHT) + off * POINTS_PER_GRAM);
                }
                if (terms.counts(Quantity.BUTT_INERTIA)) {
                    sum += terms.of(Quantity.BUTT_INERTIA, terms.want(Quantity.BUTT_INERTIA) + off * KG_CM2_PER_GRAM);
                }
                least = Math.min(least, sum);
            }
            return least;
        }

        double cost(double lackG) {
            int k = (int) Math.round((lackG - FROM_G) / STEP_G);
            return cost[Math.max(0, Math.min(POINTS - 1, k))];
        }
    }
}
