package benchtwin.sets;

import java.util.Arrays;

/**
 * Fills a group that prefers to share models, each model beyond the first costing something. A model not yet decided on costs
 * each option that uses it an nth of that, n the number of places, which is never too much; then the models that are used
 * but not fully paid are decided one by one, paid in full or left out.
 */
final class ModelBranches {

    /** Beyond, the plan may not be the best, but the bound still holds. */
    private static final int MOST_NODES = 400;
    private static final byte OPEN = 0;
    private static final byte PAID = 1;
    private static final byte OUT = 2;

    private final GroupTable table;
    private final PairSolver relaxed;
    private final PairSolver target;
    private final double modelCost;
    private final byte[] headState;
    private final byte[] shaftState;
    private final int[] headUses;
    private final int[] shaftUses;
    private final double[] charged;
    private double[] value;
    private double[] empty;
    private int nodes;

    /**
     * @param table     the options
     * @param target    where the best plan goes
     * @param modelCost what a model beyond the first costs
     */
    ModelBranches(GroupTable table, PairSolver target, double modelCost) {
        this.table = table;
        this.target = target;
        this.modelCost = modelCost;
        relaxed = new PairSolver(table);
        headState = new byte[table.headModelsHere];
        shaftState = new byte[table.shaftModelsHere];
        headUses = new int[table.headModelsHere];
        shaftUses = new int[table.shaftModelsHere];
        charged = new double[table.option.length];
    }

    void solve(double[] values, double[] empties) {
        value = values;
        empty = empties;
        Arrays.fill(headState, OPEN);
        Arrays.fill(shaftState, OPEN);
        nodes = 0;
        if (table.pairs > 0) {
            branch(-2 * modelCost);
        }
        target.bound = Math.min(target.bound, target.bestValue);
    }

    private void branch(double paid) {
        if (++nodes > MOST_NODES) {
            target.bound = Math.min(target.bound, paid + cheapest());
            return;
        }
        charge();
        relaxed.begin(target.bestValue - paid);
        relaxed.solve(charged, empty, 0);
        if (relaxed.bound < relaxed.bestValue) {
            target.bound = Math.min(target.bound, relaxed.bound + paid);
        }
        if (relaxed.bestValue + paid >= target.bestValue) {
            return;
        }
        int[] plan = relaxed.best.clone();
        double lower = relaxed.bestValue + paid;
        double value = valueOf(plan);
        if (value < target.bestValue) {
            target.bestValue = value;
            System.arraycopy(plan, 0, target.best, 0, plan.length);
        }
        if (lower >= target.bestValue) {
            return;
        }
        countUses(plan);
        byte[] state = null;
        int which = -1;
        int most = 0;
        for (int m = 0; m < headState.length; m++) {
            if (headState[m] == OPEN && headUses[m] > most) {
                most = headUses[m];
                state = headState;
                which = m;
            }
        }
        for (int m = 0; m < shaftState.length; m++) {
            if (shaftState[m] == OPEN && shaftUses[m] > most) {
                most = shaftUses[m];
                state = shaftState;
                which = m;
            }
        }
        if (state == null) {
            return;
        }
        state[which] = PAID;
        branch(paid + modelCost);
        state[which] = OUT;
        branch(paid);
        state[which] = OPEN;
    }

    private void charge() {
        double share = modelCost / table.places;
        for (int o = 0; o < charged.length; o++) {
            byte ofHead = headState[table.headModelHere[o]];
            byte ofShaft = shaftState[table.shaftModelHere[o]];
            charged[o] = ofHead == OUT || ofShaft == OUT ? Double.POSITIVE_INFINITY
                : value[o] + (ofHead == OPEN ? share : 0) + (ofShaft == OPEN ? share : 0);
        }
    }

    private double cheapest() {
        charge();
        double sum = 0;
        for (int i = 0; i < table.places; i++) {
            double least = empty[i];
            for (int o = table.start[i]; o < table.start[i + 1]; o++) {
                least = Math.min(least, charged[o]);
            }
            sum += least;
        }
        return sum;
    }

    private void countUses(int[] plan) {
        Arrays.fill(headUses, 0);
        Arrays.fill(shaftUses, 0);
        for (int o : plan) {
            if (o >= 0) {
                headUses[table.headModelHere[o]]++;
                shaftUses[table.shaftModelHere[o]]++;
            }
        }
    }

    private double valueOf(int[] plan) {
        countUses(plan);
        double sum = 0;
        for (int i = 0; i < plan.length; i++) {
            sum += plan[i] < 0 ? empty[i] : value[plan[i]];
        }
        long heads = Arrays.stream(headUses).filter(uses -> uses > 0).count();
        long shafts = Arrays.stream(shaftUses).filter(uses -> uses > 0).count();
        return sum + modelCost * (Math.max(0, heads - 1) + Math.max(0, shafts - 1));
    }
}
