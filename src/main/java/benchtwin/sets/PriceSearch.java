package benchtwin.sets;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Finds prices under which groups, each choosing for itself, want no part twice: Lagrange multipliers of the parts more than
 * one group could use. Each round every group is planned under the prices; a part wanted twice gets dearer, one nobody wants
 * cheaper, by Polyak's step along a direction that remembers the ones before; when that stops helping, it starts again from
 * the best prices with smaller steps.
 * <p>Source: published, Held, Wolfe and Crowder, Mathematical Programming 6 (1974) 62; the memory is that of Camerini,
 * Fratta and Maffioli, Mathematical Programming Study 3 (1975) 26 (memory). Figures chosen by measurement.
 */
final class PriceSearch {

    private static final double MEMORY = 0.7;
    private static final double FIRST_STEP = 1.0;
    private static final double SMALLER = 0.6;
    private static final double LEAST_STEP = 1e-3;
    private static final int PATIENCE = 10;

    private final Solvers solvers;
    private final Workers workers;
    private final Columns columns;
    private final int[] heads;
    private final int[] shafts;
    private final double[] headWay;
    private final double[] shaftWay;
    private Prices current;
    private Prices best;
    private double bestValue = Double.NEGATIVE_INFINITY;
    private double step = FIRST_STEP;
    private int stale;
    private List<GroupPlan> plans = List.of();

    /**
     * @param solvers of the groups
     * @param workers to plan groups side by side
     * @param columns plans met so far, to begin from where one is cheap
     * @param start   prices to start from; parts that one group alone could use keep them
     */
    PriceSearch(Solvers solvers, Workers workers, Columns columns, Prices start) {
        this.columns = columns;
        this.solvers = solvers;
        this.workers = workers;
        SetModel model = solvers.model();
        int[] headGroup = new int[model.heads()];
        int[] shaftGroup = new int[model.shafts()];
        BitSet headShared = new BitSet();
        BitSet shaftShared = new BitSet();
        for (int slot = 0; slot < model.slots(); slot++) {
            int mark = model.groupOf(slot) + 1;
            for (Option option : model.options(slot)) {
                share(headGroup, headShared, option.head(), mark);
                share(shaftGroup, shaftShared, option.shaft(), mark);
            }
        }
        heads = headShared.stream().toArray();
        shafts = shaftShared.stream().toArray();
        headWay = new double[model.heads()];
        shaftWay = new double[model.shafts()];
        current = start.copy();
        best = current;
    }

    private static void share(int[] groupOf, BitSet shared, int part, int mark) {
        if (groupOf[part] != 0 && groupOf[part] != mark) {
            shared.set(part);
        }
        groupOf[part] = mark;
    }

    Prices best() {
        return best;
    }

    Prices current() {
        return current;
    }

    /** The plans of the last round, one a group; parts may be in several. */
    List<GroupPlan> plans() {
        return plans;
    }

    /** What the plans under the best prices come to less the prices: near the bound, but not proven. */
    double bestValue() {
        return bestValue;
    }

    /** Whether steps have become too small to matter. */
    boolean isExhausted() {
        return step < LEAST_STEP;
    }

    /** Starts again from the best prices, with steps large enough to leave them. */
    void restart() {
        step = FIRST_STEP / 2;
        stale = 0;
        current = best;
        Arrays.fill(headWay, 0);
        Arrays.fill(shaftWay, 0);
    }

    /** Sets the value of the best prices right, when it has been proven. */
    void correct(double proven) {
        bestValue = Math.min(bestValue, proven);
    }

    /**
     * One round.
     * @param score of the best whole plan, empty slots at the share the prices give them
     */
    void round(double score) {
        SetModel model = solvers.model();
        GroupPlan[] found = new GroupPlan[solvers.count()];
        double[] values = new double[found.length];
        workers.each(found.length, g -> {
            found[g] = solvers.quick(g, current, columns.cheapest(g, current));
            values[g] = found[g].value(model, current);
            solvers.startFrom(g, found[g]);
        });
        plans = List.of(found);
        double value = Arrays.stream(values).sum() - current.sum();
        if (value > bestValue) {
            bestValue = value;
            best = current;
            stale = 0;
        } else if (++stale >= PATIENCE) {
            stale = 0;
            step *= SMALLER;
            current = best;
            Arrays.fill(headWay, 0);
            Arrays.fill(shaftWay, 0);
            return;
        }
        move(Math.max(score - value, 1));
    }

    private void move(double missing) {
        int[] headUses = new int[headWay.length];
        int[] shaftUses = new int[shaftWay.length];
        for (GroupPlan plan : plans) {
            for (Option option : plan.used()) {
                headUses[option.head()]++;
                shaftUses[option.shaft()]++;
            }
        }
        double length = turn(heads, headUses, current.head(), headWay) + turn(shafts, shaftUses, current.shaft(), shaftWay);
        if (length == 0) {
            return;
        }
        double by = step * missing / length;
        Prices next = current.copy();
        walk(heads, next.head(), headWay, by);
        walk(shafts, next.shaft(), shaftWay, by);
        current = next;
    }

    /** Turns the way towards the wishes; returns its squared length. */
    private static double turn(int[] parts, int[] uses, double[] price, double[] way) {
        double length = 0;
        for (int part : parts) {
            double excess = uses[part] - 1;
            way[part] = excess < 0 && price[part] == 0 ? 0 : excess + MEMORY * way[part];
            length += way[part] * way[part];
        }
        return length;
    }

    private static void walk(int[] parts, double[] price, double[] way, double by) {
        for (int part : parts) {
            if (price[part] < Prices.BANNED) {
                price[part] = Math.max(0, price[part] + by * way[part]);
            }
        }
    }
}
