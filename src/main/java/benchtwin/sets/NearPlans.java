package benchtwin.sets;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Every plan of a group that costs no more than a limit under prices: boxes of centres that may hold one are split until
 * little is wasted about their middles, where places are then filled one by one, each prefix dropped that the cheapest of
 * the rest cannot save.
 */
final class NearPlans {

    private static final int MOST_BOXES = 1_000;
    private static final int MOST_STEPS = 300_000;
    /** Boxes are not split further for less than this. */
    private static final double LEAST_WASTE = 1_000;
    /** Means this near to the edge of a box are in it; thousandths of a tolerance. */
    private static final double EDGE = 1e-6;
    /** Spreads are rounded down, one unit a residual; and what doubles may lose. */
    private static final double ROUNDING = Residual.COUNT + 0.1;

    private final SetModel model;
    private final GroupBound group;
    private final GroupTable table;
    private final int mostPlans;
    private final int effort;
    private final Map<List<Option>, GroupPlan> plans = new LinkedHashMap<>();
    private final int[] chosen;
    private Prices prices;
    private double limit;
    private double allowed;
    private CentreBoxes.Box box;
    private int steps;

    /**
     * @param model     the problem
     * @param group     whose plans
     * @param mostPlans more than this many are too many
     * @param effort    how long to look, 1 or more
     */
    NearPlans(SetModel model, GroupBound group, int mostPlans, int effort) {
        this.effort = effort;
        this.model = model;
        this.group = group;
        this.table = group.solver().table();
        this.mostPlans = mostPlans;
        chosen = new int[table.places];
    }

    /**
     * Lists.
     * @param under  the prices
     * @param bound  what no plan undercuts
     * @param atMost what a plan may cost
     * @return all plans up to that, in no special but always the same order; empty when there are too many to list
     */
    Optional<List<GroupPlan>> between(Prices under, double bound, double atMost) {
        prices = under;
        limit = atMost + ROUNDING;
        group.solver().price(prices);
        CentreBoxes boxes = new CentreBoxes(group.solver(), plan -> { });
        Deque<CentreBoxes.Box> open = new ArrayDeque<>(List.of(group.widest(boxes)));
        double fine = Math.max(LEAST_WASTE, (atMost - bound) / 2);
        for (int looked = 0; !open.isEmpty(); looked++) {
            CentreBoxes.Box box = open.pop();
            if (box.bound() > limit) {
                continue;
            }
            if (looked > MOST_BOXES * effort || steps > MOST_STEPS * effort || plans.size() > mostPlans) {
                return Optional.empty();
            }
            List<CentreBoxes.Box> halves = box.waste() > fine ? boxes.halves(box) : List.of();
            if (halves.isEmpty()) {
                search(box);
            } else {
                halves.forEach(open::push);
            }
        }
        return steps > MOST_STEPS * effort || plans.size() > mostPlans ? Optional.empty()
            : Optional.of(List.copyOf(plans.values()));
    }

    private void search(CentreBoxes.Box within) {
        box = within;
        GroupSolver solver = group.solver();
        solver.about(box.middle());
        allowed = limit + box.waste();
        double[] rest = new double[table.places + 1];
        for (int pair = 0; pair < table.pairs; pair++) {
            for (int i = table.places - 1; i >= 0; i--) {
                double least = solver.emptyValue(i);
                for (int o = table.start[pair * table.places + i]; o < table.start[pair * table.places + i + 1]; o++) {
                    least = Math.min(least, solver.valueOf(o));
                }
                rest[i] = rest[i + 1] + least;
            }
            if (rest[0] <= allowed) {
                int[][] candidates = new int[table.places][];
                for (int i = 0; i < table.places; i++) {
                    double most = allowed - rest[0] + rest[i] - rest[i + 1];
                    int cell = pair * table.places + i;
                    candidates[i] = IntStream.range(table.start[cell], table.start[cell + 1])
                        .filter(o -> solver.valueOf(o) <= most).boxed().sorted(Comparator.comparingDouble(solver::valueOf))
                        .mapToInt(Integer::intValue).toArray();
                }
                fill(candidates, 0, 0, rest);
            }
        }
        if (table.pairs == 0) {
            Arrays.fill(chosen, -1);
            keep();
        }
    }

    private void fill(int[][] candidates, int place, double cost, double[] rest) {
        if (cost + rest[place] > allowed || ++steps > MOST_STEPS * effort || plans.size() > mostPlans) {
            return;
        }
        if (place == table.places) {
            if (isInside()) {
                keep();
            }
            return;
        }
        GroupSolver solver = group.solver();
        double most = allowed - cost - rest[place + 1];
        if (solver.emptyValue(place) <= most) {
            chosen[place] = -1;
            fill(candidates, place + 1, cost + solver.emptyValue(place), rest);
        }
        for (int o : candidates[place]) {
            if (solver.valueOf(o) > most) {
                break;
            }
            if (isFree(place, o)) {
                chosen[place] = o;
                fill(candidates, place + 1, cost + solver.valueOf(o), rest);
            }
        }
    }

    /** Whether the means are in the box; where they are not, another box has them. */
    private boolean isInside() {
        for (int b = 0; b < table.kinds.length; b++) {
            double sum = 0;
            int count = 0;
            for (int option : chosen) {
                if (option >= 0) {
                    sum += table.residual[b][option];
                    count++;
                }
            }
            int kind = table.kinds[b];
            if (count > 0 && (sum < (box.from()[kind] - EDGE) * count || sum > (box.to()[kind] + EDGE) * count)) {
                return false;
            }
        }
        return true;
    }

    private boolean isFree(int place, int option) {
        for (int i = 0; i < place; i++) {
            if (chosen[i] >= 0 && (table.head[chosen[i]] == table.head[option]
                || table.shaft[chosen[i]] == table.shaft[option])) {
                return false;
            }
        }
        return true;
    }

    private void keep() {
        Option[] options = new Option[table.places];
        Arrays.setAll(options, i -> chosen[i] < 0 ? null : table.option[chosen[i]]);
        GroupPlan plan = new GroupPlan(group.solver().group(), options);
        if (plan.value(model, prices) <= limit) {
            plans.putIfAbsent(Arrays.asList(options), plan);
        }
    }
}
