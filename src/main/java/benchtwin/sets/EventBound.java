package benchtwin.sets;

import java.util.function.BooleanSupplier;

/**
 * The proof for the whole event: groups, each choosing for itself under prices, cost together at least as little as any plan
 * that shares, once the prices are taken off again. Bounds at different prices may be maxed.
 */
final class EventBound {

    /** What doubles may lose when some hundred numbers of this size are added. */
    static final double ARITHMETIC = 0.05;

    private final Solvers solvers;
    private final Workers workers;
    /** Spreads are rounded down, one unit a residual and group. */
    private final int rounding;

    EventBound(Solvers solvers, Workers workers) {
        this.solvers = solvers;
        this.workers = workers;
        rounding = solvers.model().groups().stream().mapToInt(group -> group.spreadKinds().length).sum();
    }

    /**
     * Proves.
     * @param prices    0 or more
     * @param mostBoxes a group
     * @param stop      whether to give up
     * @return no plan costs less, empty slots counted at the share the prices give them; minus infinity when given up
     */
    Proof prove(Prices prices, int mostBoxes, BooleanSupplier stop) {
        GroupBound.Proven[] proven = new GroupBound.Proven[solvers.count()];
        workers.each(proven.length, g -> {
            if (!stop.getAsBoolean()) {
                proven[g] = solvers.group(g).prove(prices, mostBoxes);
            }
        });
        double sum = -prices.sum() - rounding - ARITHMETIC;
        for (GroupBound.Proven each : proven) {
            if (each == null) {
                return new Proof(proven, Double.NEGATIVE_INFINITY, false);
            }
            sum += each.bound();
        }
        return new Proof(proven, sum, true);
    }

    /**
     * A proof.
     * @param groups by group; some missing when given up
     * @param value  no plan costs less
     * @param isDone whether it was not given up
     */
    record Proof(GroupBound.Proven[] groups, double value, boolean isDone) {
    }
}
