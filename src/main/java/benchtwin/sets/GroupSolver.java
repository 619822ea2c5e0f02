package benchtwin.sets;

import java.util.Arrays;

/**
 * Fills the slots of one group at least cost, for given centres of its residuals and given prices of the parts.
 *
 * <p>A sum of squares about the mean is the least over all centres of the sum of squares about a centre. With the centres
 * fixed, what a slot costs does not depend on the others; so for each pair of a head model and a shaft model the group is one
 * small assignment of slots to shafts. Pairs are taken in the order of the sum of their slots' least costs, and the search
 * ends where that passes the best. A banned part is not seen at all. One solver is used by one thread at a time.
 */
final class GroupSolver {

    private final SetModel model;
    private final SlotGroup group;
    private final GroupTable table;
    private final PairSolver pairSolver;
    private final ModelBranches branches;
    private final double[] priced;
    private final double[] value;
    private final double[] empty;
    private final double[] bounds;
    private final int[] cheapest;
    private long solves;

    /**
     * Sorts the options of a group.
     * @param model the problem
     * @param group one of its groups
     */
    GroupSolver(SetModel model, SlotGroup group) {
        this.model = model;
        this.group = group;
        table = new GroupTable(model, group);
        pairSolver = new PairSolver(table);
        branches = group.sameModels() || group.modelCost() == 0 ? null
            : new ModelBranches(table, pairSolver, group.modelCost());
        priced = new double[table.option.length];
        value = new double[table.option.length];
        empty = new double[table.places];
        bounds = new double[table.pairs];
        cheapest = new int[table.pairs * table.places];
    }

    SlotGroup group() {
        return group;
    }

    GroupTable table() {
        return table;
    }

    /**
     * A plan.
     * @param plan  the best with these centres, no part twice
     * @param value its cost about the centres, prices and models included
     * @param bound no plan costs less about the centres; the value, unless a search had to be cut short
     */
    record Solved(GroupPlan plan, double value, double bound) {
    }

    /**
     * Solves for fixed centres.
     * @param centre by residual, thousandths of a tolerance
     * @param prices of the parts
     * @return the best plan
     */
    Solved solve(double[] centre, Prices prices) {
        price(prices);
        return solve(centre);
    }

    /** Sets the prices for the solves that follow. */
    void price(Prices prices) {
        double[] headPrice = prices.head();
        double[] shaftPrice = prices.shaft();
        for (int o = 0; o < priced.length; o++) {
            double head = headPrice[table.head[o]];
            double shaft = shaftPrice[table.shaft[o]];
            priced[o] = head >= Prices.BANNED || shaft >= Prices.BANNED ? Double.POSITIVE_INFINITY
                : table.base[o] + head + shaft;
        }
        for (int i = 0; i < table.places; i++) {
            empty[i] = prices.empty() * model.emptyCost(group.slots().get(i));
        }
    }

    /** How many times it has solved: a measure of work that is the same on every machine. */
    long solves() {
        return solves;
    }

    /** Solves for fixed centres under the prices last set. */
    Solved solve(double[] centre) {
        solves++;
        about(centre);
        double leftOut = Arrays.stream(empty).sum();
        pairSolver.begin(leftOut);
        if (branches != null) {
            branches.solve(value, empty);
        } else {
            pairs();
        }
        Option[] options = new Option[table.places];
        for (int i = 0; i < options.length; i++) {
            options[i] = pairSolver.best[i] < 0 ? null : table.option[pairSolver.best[i]];
        }
        return new Solved(new GroupPlan(group, options), pairSolver.bestValue, pairSolver.bound);
    }

    /** What an option of the table costs about the centres last used, prices included; infinite where it is banned. */
    double valueOf(int option) {
        return value[option];
    }

    /** What leaving a place empty costs under the prices last set. */
    double emptyValue(int place) {
        return empty[place];
    }

    /** What each option costs about the centres, the cheapest of each place, and their sum for each pair. */
    void about(double[] centre) {
        int kinds = table.kinds.length;
        double constant = 0;
        for (int b = 0; b < kinds; b++) {
            double c = centre[table.kinds[b]];
            constant += table.weight[b] * c * c;
        }
        for (int o = 0; o < value.length; o++) {
            value[o] = priced[o] + constant;
        }
        for (int b = 0; b < kinds; b++) {
            double slope = -2 * table.weight[b] * centre[table.kinds[b]];
            double[] residual = table.residual[b];
            for (int o = 0; o < value.length; o++) {
                value[o] += slope * residual[o];
            }
        }
        for (int p = 0; p < table.pairs; p++) {
            double bound = 0;
            for (int i = 0; i < table.places; i++) {
                double least = empty[i];
                int at = -1;
                int cell = p * table.places + i;
                for (int o = table.start[cell]; o < table.start[cell + 1]; o++) {
                    if (value[o] < least) {
                        least = value[o];
                        at = o;
                    }
                }
                cheapest[cell] = at;
                bound += least;
            }
            bounds[p] = bound;
        }
    }

    private void pairs() {
        while (true) {
            int next = -1;
            double least = pairSolver.bestValue;
            for (int p = 0; p < table.pairs; p++) {
                if (bounds[p] < least) {
                    least = bounds[p];
                    next = p;
                }
            }
            if (next < 0) {
                return;
            }
            if (isFreeOfConflict(next)) {
                pairSolver.bestValue = least;
                System.arraycopy(cheapest, next * table.places, pairSolver.best, 0, table.places);
                pairSolver.bound = Math.min(pairSolver.bound, least);
            } else {
                pairSolver.solve(value, empty, next);
            }
            bounds[next] = Double.POSITIVE_INFINITY;
        }
    }

    /** Whether the cheapest of each place can be had together. */
    private boolean isFreeOfConflict(int pair) {
        int from = pair * table.places;
        for (int i = 0; i < table.places; i++) {
            int a = cheapest[from + i];
            for (int j = i + 1; j < table.places && a >= 0; j++) {
                int b = cheapest[from + j];
                if (b >= 0 && (table.head[a] == table.head[b] || table.shaft[a] == table.shaft[b])) {
                    return false;
                }
            }
        }
        return true;
    }
}
