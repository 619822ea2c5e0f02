package benchtwin.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Fills the slots of one group at least cost, for given centres of its residuals and given prices of the parts.
 *
 * <p>A sum of squares about the mean is the least over all centres of the sum of squares about a centre. With the centres
 * fixed, what a slot costs does not depend on the others; so for each pair of a head model and a shaft model the group is one
 * small assignment of slots to shafts, each slot with its cheapest head. Pairs are taken in the order of the sum of their
 * slots' least costs, and the search ends where that passes the best. Where two slots want one head, either is tried without.
 */
final class GroupSolver {

    /** What a slot costs in a column it cannot take. */
    private static final double IMPOSSIBLE = 1e17;

    private final SetModel model;
    private final SlotGroup group;
    private final List<Pair> pairs = new ArrayList<>();
    private final Assignment assignment;
    private final double[][] cost;
    private final Option[][] chosen;

    /** The options of one head model and one shaft model, by place in the group, and the shafts among them. */
    private record Pair(Option[][] options, Map<Integer, Integer> columnOf) {
    }

    /**
     * Sorts the options of a group.
     * @param model the problem
     * @param group one of its groups
     */
    GroupSolver(SetModel model, SlotGroup group) {
        this.model = model;
        this.group = group;
        sortOut();
        int n = group.slots().size();
        int columns = n + pairs.stream().mapToInt(pair -> pair.columnOf().size()).max().orElse(0);
        assignment = new Assignment(n, columns);
        cost = new double[n][columns];
        chosen = new Option[n][columns];
    }

    private void sortOut() {
        Map<Long, List<List<Option>>> byModels = new LinkedHashMap<>();
        Set<Long> keys = new TreeSet<>();
        int n = group.slots().size();
        for (int i = 0; i < n; i++) {
            for (Option option : model.options(group.slots().get(i))) {
                keys.add(key(option));
            }
        }
        keys.forEach(key -> {
            List<List<Option>> lists = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                lists.add(new ArrayList<>());
            }
            byModels.put(key, lists);
        });
        for (int i = 0; i < n; i++) {
            for (Option option : model.options(group.slots().get(i))) {
                byModels.get(key(option)).get(i).add(option);
            }
        }
        byModels.values().forEach(lists -> {
            Map<Integer, Integer> columnOf = new LinkedHashMap<>();
            Set<Integer> shafts = new TreeSet<>();
            lists.forEach(list -> list.forEach(option -> shafts.add(option.shaft())));
            shafts.forEach(shaft -> columnOf.put(shaft, columnOf.size()));
            pairs.add(new Pair(lists.stream().map(list -> list.toArray(Option[]::new)).toArray(Option[][]::new), columnOf));
        });
    }

    /** Groups that need not share have one pair of everything. */
    private long key(Option option) {
        return group.sameModels()
            ? (long) model.headModel(option.head()) * (model.shafts() + 1L) + model.shaftModel(option.shaft()) : 0;
    }

    SlotGroup group() {
        return group;
    }

    /**
     * A plan.
     * @param plan  the best with these centres, no part twice
     * @param value its cost about the centres, prices included; models are not counted where they need not be shared
     */
    record Solved(GroupPlan plan, double value) {
    }

    /**
     * Solves for fixed centres.
     * @param centre by residual, thousandths of a tolerance
     * @param prices of the parts
     * @return the best plan
     */
    Solved solve(double[] centre, Prices prices) {
        double[] bounds = new double[pairs.size()];
        Integer[] order = new Integer[pairs.size()];
        for (int p = 0; p < order.length; p++) {
            bounds[p] = rowMinima(pairs.get(p), centre, prices);
            order[p] = p;
        }
        Arrays.sort(order, Comparator.comparingDouble(p -> bounds[p]));
        Best best = new Best();
        best.value = emptyCost();
        best.options = new Option[group.slots().size()];
        for (int p : order) {
            if (bounds[p] >= best.value) {
                break;
            }
            branch(pairs.get(p), centre, prices, new HashSet<>(), best);
        }
        return new Solved(new GroupPlan(group, best.options), best.value);
    }

    private static final class Best {
        private Option[] options;
        private double value;
    }

    private double emptyCost() {
        double sum = 0;
        for (int slot : group.slots()) {
            sum += model.emptyCost(slot);
        }
        return sum;
    }

    private double about(Option option, double[] centre, Prices prices) {
        double sum = option.cost() + prices.of(option);
        for (int k = 0; k < Residual.COUNT; k++) {
            if (group.weights()[k] > 0 && group.slots().size() > 1) {
                double off = option.residual(k) - centre[k];
                sum += group.weights()[k] * off * off;
            }
        }
        return sum;
    }

    private double rowMinima(Pair pair, double[] centre, Prices prices) {
        double sum = 0;
        for (int i = 0; i < pair.options().length; i++) {
            double least = model.emptyCost(group.slots().get(i));
            for (Option option : pair.options()[i]) {
                least = Math.min(least, about(option, centre, prices));
            }
            sum += least;
        }
        return sum;
    }

    private void branch(Pair pair, double[] centre, Prices prices, Set<Long> without, Best best) {
        int n = group.slots().size();
        int shafts = pair.columnOf().size();
        for (int i = 0; i < n; i++) {
            Arrays.fill(cost[i], 0, shafts + n, IMPOSSIBLE);
            Arrays.fill(chosen[i], 0, shafts + n, null);
            cost[i][shafts + i] = model.emptyCost(group.slots().get(i));
            for (Option option : pair.options()[i]) {
                if (without.isEmpty() || !without.contains(taken(i, option))) {
                    double value = about(option, centre, prices);
                    int column = pair.columnOf().get(option.shaft());
                    if (value < cost[i][column]) {
                        cost[i][column] = value;
                        chosen[i][column] = option;
                    }
                }
            }
        }
        int[] columnOf = new int[n];
        double value = assignment.solve(cost, n, shafts + n, columnOf);
        if (value >= best.value) {
            return;
        }
        Option[] options = new Option[n];
        for (int i = 0; i < n; i++) {
            options[i] = chosen[i][columnOf[i]];
        }
        int[] twice = sharedHead(options);
        if (twice == null) {
            best.value = value;
            best.options = options;
            return;
        }
        for (int place : twice) {
            Set<Long> more = new HashSet<>(without);
            more.add(taken(place, options[place]));
            branch(pair, centre, prices, more, best);
        }
    }

    private long taken(int place, Option option) {
        return (long) place * model.heads() + option.head();
    }

    /** Two places that want one head; null when there are none. */
    private static int[] sharedHead(Option[] options) {
        for (int i = 0; i < options.length; i++) {
            for (int j = i + 1; j < options.length; j++) {
                if (options[i] != null && options[j] != null && options[i].head() == options[j].head()) {
                    return new int[] {i, j};
                }
            }
        }
        return null;
    }
}
