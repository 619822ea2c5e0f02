package benchtwin.match;

import benchtwin.club.Target;
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

    private Ties() {
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
        Random random = new Random(SEED);
        int nearer = 0;
        for (int n = 0; n < SAMPLES; n++) {
            Map<String, Double> draws = new HashMap<>();
            double[] a = draw(leader, leaders, draws, random);
            double[] b = draw(option, options, draws, random);
            if (CostTerms.missSquared(target, b) < CostTerms.missSquared(target, a)) {
                nearer++;
            }
        }
        return nearer >= SAMPLES * ONE_IN_THREE;
    }

    private static double[] draw(double[] predicted, List<Contribution> contributions, Map<String, Double> draws,
                                 Random random) {
        double[] out = predicted.clone();
        for (Contribution c : contributions) {
            if (c.judging()) {
                continue;
            }
            double z = draws.computeIfAbsent(c.key(), key -> random.nextGaussian());
            for (int q = 0; q < out.length; q++) {
                out[q] += z * c.perSigma()[q];
            }
        }
        return out;
    }
}
