package benchtwin.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The end of a proof: when score and bound are near, only so many plans of a group can be in anything better; when they can
 * all be listed, the best choice among them is the best there is, to the last unit.
 */
final class Closing {

    private static final int MOST_PLANS = 3_000;

    private final Solvers solvers;
    private final Workers workers;

    Closing(Solvers solvers, Workers workers) {
        this.solvers = solvers;
        this.workers = workers;
    }

    /**
     * What came of it.
     * @param best     the plan it began with or a better one
     * @param isProven whether nothing is better: among plans that leave as little empty as the one it began with, when the
     *                 prices give empty slots a share of their weight; among all plans, when they give it in full
     * @param plans    by group: what was listed
     */
    record Closed(EventPlan best, boolean isProven, List<List<GroupPlan>> plans) {
    }

    /**
     * Tries to close.
     * @param incumbent the best plan so far
     * @param prices    of the proof
     * @param proof     at those prices, done
     * @param effort    how long to look, 1 or more
     * @param stop      whether to give up
     */
    Closed close(EventPlan incumbent, Prices prices, EventBound.Proof proof, int effort, BooleanSupplier stop) {
        SetModel model = solvers.model();
        double budget = incumbent.soft() + prices.empty() * incumbent.emptyCost() - proof.value();
        List<List<GroupPlan>> lists = new ArrayList<>();
        List<double[]> excess = new ArrayList<>();
        GroupPlan[][] listed = new GroupPlan[solvers.count()][];
        AtomicBoolean tooMany = new AtomicBoolean();
        int[] largestFirst = IntStream.range(0, listed.length).boxed()
            .sorted(Comparator.comparingInt(g -> -model.groups().get(g).slots().size())).mapToInt(Integer::intValue).toArray();
        workers.each(listed.length, i -> {
            int g = largestFirst[i];
            if (!stop.getAsBoolean() && !tooMany.get()) {
                double bound = proof.groups()[g].bound();
                listed[g] = new NearPlans(model, solvers.group(g), MOST_PLANS, effort).between(prices, bound, bound + budget)
                    .map(plans -> plans.toArray(GroupPlan[]::new)).orElse(null);
                tooMany.compareAndSet(false, listed[g] == null);
            }
        });
        for (int g = 0; g < listed.length; g++) {
            if (listed[g] == null) {
                return new Closed(incumbent, false, List.of());
            }
            double bound = proof.groups()[g].bound();
            lists.add(List.of(listed[g]));
            excess.add(Arrays.stream(listed[g]).mapToDouble(plan -> plan.value(model, prices) - bound).toArray());
        }
        Packing packing = new Packing(model, lists, excess, budget + EventBound.ARITHMETIC, prices.empty(),
            incumbent, effort, stop);
        boolean isProven = packing.search();
        return new Closed(packing.best(), isProven, lists);
    }
}
