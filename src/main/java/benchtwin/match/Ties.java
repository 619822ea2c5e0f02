package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Whether an option ties with the leader: over a seeded sample of the uncertain inputs, shared ones shared, it is the truly
 * nearer of the two at least one time in three. A label, never an order.
 */
final class Ties {

    private static final int SAMPLES = 1500;
    private static final long SEED = 20_260_503L;
    private static final double ONE_IN_THREE = 1.0 / 3;

    private final Target target;
    private final Map<String, Integer> places = new HashMap<>();

    private Ties(Target target) {
        this.target = target;
    }

    /**
     * Compares two plans.
     * @param target  what is wanted
     * @param leader  what the leader is predicted to measure
     * @param leaders its contributions
     * @param option  what the option is predicted to measure
     * @param options its contributions
     * @return true when they tie
     */
    static boolean tie(Target target, double[] leader, List<Contribution> leaders, double[] option,
                       List<Contribution> options) {
        Ties ties = new Ties(target);
        Side a = ties.side(leader, leaders);
        Side b = ties.side(option, options);
        Random random = new Random(SEED);
        double[] draws = new double[ties.places.size()];
        int nearer = 0;
        for (int n = 0; n < SAMPLES; n++) {
            for (int k = 0; k < draws.length; k++) {
                draws[k] = random.nextGaussian();
            }
            if (b.missSquared(draws) < a.missSquared(draws)) {
                nearer++;
            }
        }
        return nearer >= SAMPLES * ONE_IN_THREE;
    }

    /** One plan in tolerances: where each counted quantity stands, and what each draw does to it. */
    private record Side(double[] deviation, double[] weight, double[][] perDraw, int[] draw) {

        double missSquared(double[] draws) {
            double sum = 0;
            for (int q = 0; q < deviation.length; q++) {
                double d = deviation[q];
                for (int k = 0; k < draw.length; k++) {
                    d += perDraw[q][k] * draws[draw[k]];
                }
                sum += weight[q] * d * d;
            }
            return sum;
        }
    }

    private Side side(double[] predicted, List<Contribution> contributions) {
        List<Contribution> truth = contributions.stream().filter(c -> !c.judging()).toList();
        List<Map.Entry<Quantity, Wanted>> counted =
            target.wanted().entrySet().stream().filter(e -> e.getValue().weight() > 0).toList();
        double[] deviation = new double[counted.size()];
        double[] weight = new double[counted.size()];
        double[][] perDraw = new double[counted.size()][truth.size()];
        int[] draw = truth.stream().mapToInt(c -> places.computeIfAbsent(c.key(), key -> places.size())).toArray();
        for (int q = 0; q < deviation.length; q++) {
            int quantity = counted.get(q).getKey().ordinal();
            Wanted wanted = counted.get(q).getValue();
            weight[q] = wanted.weight();
            if (Double.isNaN(predicted[quantity])) {
                deviation[q] = 1;   // a quantity never read counts as one tolerance off, whatever is drawn
                continue;
            }
            deviation[q] = wanted.deviation(predicted[quantity]);
            for (int k = 0; k < truth.size(); k++) {
                perDraw[q][k] = truth.get(k).perSigma()[quantity] / wanted.tolerance();
            }
        }
        return new Side(deviation, weight, perDraw, draw);
    }
}
