package benchtwin.sets;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Plans of a group under prices: a good one quickly, or the best with the proof, from boxes of centres that are split, the
 * least bound first, until the bound meets the best plan found.
 */
final class GroupBound {

    private static final int ROUNDS_OF_CENTRES = 6;
    /** Bound and plan this near have met: costs are whole millionths. */
    private static final double MET = 0.5;

    private final SetModel model;
    private final GroupSolver solver;
    private final List<Integer> kinds;
    private final double[] low = new double[Residual.COUNT];
    private final double[] high = new double[Residual.COUNT];

    /**
     * @param model  the problem
     * @param solver of the group
     */
    GroupBound(SetModel model, GroupSolver solver) {
        this.model = model;
        this.solver = solver;
        SlotGroup group = solver.group();
        kinds = Arrays.stream(group.spreadKinds()).boxed().toList();
        for (int k = 0; k < Residual.COUNT; k++) {
            low[k] = Double.POSITIVE_INFINITY;
            high[k] = Double.NEGATIVE_INFINITY;
            for (int slot : group.slots()) {
                for (Option option : model.options(slot)) {
                    low[k] = Math.min(low[k], option.residual(k));
                    high[k] = Math.max(high[k], option.residual(k));
                }
            }
            if (low[k] > high[k]) {
                low[k] = 0;
                high[k] = 0;
            }
        }
    }

    /**
     * The best plan found and what none costs less than.
     * @param plan  the plan
     * @param value its cost, prices included
     * @param bound no plan costs less
     * @param boxes how many boxes it took
     */
    record Proven(GroupPlan plan, double value, double bound, int boxes) {
    }

    /**
     * A good plan quickly: centres are moved to the means of the best plan about them until they rest.
     * @param prices of the parts
     * @param start  centres to start from
     * @return the best plan on the way
     */
    GroupPlan quick(Prices prices, double[] start) {
        solver.price(prices);
        double[] centre = start.clone();
        GroupPlan best = null;
        double value = Double.POSITIVE_INFINITY;
        for (int round = 0; round < (kinds.isEmpty() ? 1 : ROUNDS_OF_CENTRES); round++) {
            GroupPlan plan = solver.solve(centre).plan();
            double here = plan.value(model, prices);
            if (best != null && !(here < value - MET)) {
                break;
            }
            best = plan;
            value = here;
            centre = plan.centres(centre);
        }
        return best;
    }

    GroupSolver solver() {
        return solver;
    }

    /** Whether nothing has to be alike, so that one solve is exact. */
    boolean isSingle() {
        return kinds.isEmpty();
    }

    /** Middle of where the centres can be. */
    double[] middle() {
        double[] middle = new double[Residual.COUNT];
        for (int k : kinds) {
            middle[k] = (low[k] + high[k]) / 2;
        }
        return middle;
    }

    /** The box that holds the means of every plan. */
    CentreBoxes.Box widest(CentreBoxes boxes) {
        return boxes.box(low.clone(), high.clone());
    }

    /**
     * Proves.
     * @param prices    of the parts
     * @param mostBoxes how many boxes may be looked at
     * @return plan and bound; they meet unless the boxes ran out
     */
    Proven prove(Prices prices, int mostBoxes) {
        Best best = new Best(prices);
        best.offer(quick(prices, middle()));
        CentreBoxes boxes = new CentreBoxes(solver, best::offer);
        PriorityQueue<CentreBoxes.Box> open = new PriorityQueue<>(Comparator.comparingDouble(CentreBoxes.Box::bound));
        open.add(widest(boxes));
        int looked = 1;
        double bound = open.peek().bound();
        while (bound < best.value - MET && looked < mostBoxes) {
            List<CentreBoxes.Box> halves = boxes.halves(open.peek());
            if (halves.isEmpty()) {
                break;
            }
            open.poll();
            open.addAll(halves);
            looked += halves.size();
            bound = open.peek().bound();
        }
        return new Proven(best.plan, best.value, Math.min(bound, best.value), looked);
    }

    /** The best plan seen. */
    private final class Best {
        private final Prices prices;
        private GroupPlan plan;
        private double value = Double.POSITIVE_INFINITY;

        Best(Prices prices) {
            this.prices = prices;
        }

        void offer(GroupPlan other) {
            double its = other.value(model, prices);
            if (its < value) {
                value = its;
                plan = other;
            }
        }
    }
}
