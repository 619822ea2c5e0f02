package benchtwin.sets;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * The best plan of a group under prices, with the proof. For fixed prices, the least cost about a centre less n·w·(centre)²
 * is a least of linear functions of the centre and so concave. Inside a box of centres it is therefore nowhere below its
 * corners: no plan with its means in the box costs less than the least corner less Σ n·w·h², h half the box's side. Boxes are
 * split, the least bound first, until the bound meets the best plan found.
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
        kinds = group.slots().size() < 2 ? List.of()
            : IntStream.range(0, Residual.COUNT).filter(k -> group.weights()[k] > 0).boxed().toList();
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
        double[] centre = start.clone();
        GroupPlan best = null;
        double value = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS_OF_CENTRES; round++) {
            GroupPlan plan = solver.solve(centre, prices).plan();
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

    /** Middle of where the centres can be. */
    double[] middle() {
        double[] middle = new double[Residual.COUNT];
        for (int k : kinds) {
            middle[k] = (low[k] + high[k]) / 2;
        }
        return middle;
    }

    private record Box(double[] from, double[] to, double bound) {
    }

    /**
     * Proves.
     * @param prices    of the parts
     * @param mostBoxes how many boxes may be looked at
     * @return plan and bound; they meet unless the boxes ran out
     */
    Proven prove(Prices prices, int mostBoxes) {
        Search search = new Search(prices);
        PriorityQueue<Box> open = new PriorityQueue<>(Comparator.comparingDouble(Box::bound));
        open.add(search.box(low.clone(), high.clone()));
        int boxes = 1;
        double bound = open.peek().bound();
        while (!open.isEmpty()) {
            bound = Math.min(open.peek().bound(), search.value);
            if (search.hasMet(open.peek().bound()) || boxes >= mostBoxes) {
                break;
            }
            Box box = open.poll();
            int widest = -1;
            double cost = 0;
            for (int k : kinds) {
                double side = box.to()[k] - box.from()[k];
                double wasted = solver.group().weights()[k] * side * side;
                if (wasted > cost) {
                    cost = wasted;
                    widest = k;
                }
            }
            if (widest < 0) {
                break;
            }
            double middle = (box.from()[widest] + box.to()[widest]) / 2;
            double[] lowerTo = box.to().clone();
            lowerTo[widest] = middle;
            double[] upperFrom = box.from().clone();
            upperFrom[widest] = middle;
            open.add(search.box(box.from(), lowerTo));
            open.add(search.box(upperFrom, box.to()));
            boxes += 2;
        }
        if (open.isEmpty() || search.hasMet(bound)) {
            bound = Math.min(search.value, Math.max(bound, open.isEmpty() ? search.value : open.peek().bound()));
        }
        return new Proven(search.plan, search.value, bound, boxes);
    }

    /** Corners looked at, and the best plan seen at any. */
    private final class Search {
        private final Prices prices;
        private final Map<List<Double>, Double> corners = new HashMap<>();
        private GroupPlan plan;
        private double value = Double.POSITIVE_INFINITY;

        Search(Prices prices) {
            this.prices = prices;
            offer(quick(prices, middle()));
        }

        void offer(GroupPlan other) {
            double its = other.value(model, prices);
            if (its < value) {
                value = its;
                plan = other;
            }
        }

        boolean hasMet(double bound) {
            return bound >= value - MET;
        }

        Box box(double[] from, double[] to) {
            double least = Double.POSITIVE_INFINITY;
            for (int corner = 0; corner < 1 << kinds.size(); corner++) {
                double[] centre = new double[Residual.COUNT];
                for (int b = 0; b < kinds.size(); b++) {
                    int k = kinds.get(b);
                    centre[k] = (corner >> b & 1) == 0 ? from[k] : to[k];
                }
                least = Math.min(least, at(centre));
            }
            double wasted = 0;
            for (int k : kinds) {
                double half = (to[k] - from[k]) / 2;
                wasted += solver.group().slots().size() * (double) solver.group().weights()[k] * half * half;
            }
            return new Box(from, to, least - wasted);
        }

        private double at(double[] centre) {
            List<Double> key = kinds.stream().map(k -> centre[k]).toList();
            Double known = corners.get(key);
            if (known != null) {
                return known;
            }
            GroupSolver.Solved solved = solver.solve(centre, prices);
            offer(solved.plan());
            corners.put(key, solved.value());
            return solved.value();
        }
    }
}
