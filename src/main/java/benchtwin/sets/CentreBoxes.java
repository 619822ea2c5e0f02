package benchtwin.sets;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Boxes of centres of one group, under the prices its solver was last given, and what no plan with its means inside a box
 * undercuts. The least cost about a centre less n·w·(centre)² is a least of linear functions of the centre and so concave;
 * inside a box it is nowhere below its corners. No plan with its means in the box costs less than the least corner less
 * Σ n·w·h², h half the box's side.
 */
final class CentreBoxes {

    private final GroupSolver solver;
    private final int[] kinds;
    private final Consumer<GroupPlan> found;
    private final Map<List<Double>, Double> corners = new HashMap<>();

    /**
     * @param solver of the group, prices set
     * @param found  gets every plan met on the way
     */
    CentreBoxes(GroupSolver solver, Consumer<GroupPlan> found) {
        this.solver = solver;
        this.kinds = solver.group().spreadKinds();
        this.found = found;
    }

    /**
     * A box.
     * @param from  its low corner, by residual
     * @param to    its high corner
     * @param bound no plan with its means inside costs less
     * @param waste what a plan may cost more about the middle of the box than about its means, at most
     */
    record Box(double[] from, double[] to, double bound, double waste) {

        double[] middle() {
            double[] middle = new double[from.length];
            Arrays.setAll(middle, k -> (from[k] + to[k]) / 2);
            return middle;
        }
    }

    Box box(double[] from, double[] to) {
        double least = Double.POSITIVE_INFINITY;
        for (int corner = 0; corner < 1 << kinds.length; corner++) {
            double[] centre = new double[Residual.COUNT];
            for (int b = 0; b < kinds.length; b++) {
                centre[kinds[b]] = (corner >> b & 1) == 0 ? from[kinds[b]] : to[kinds[b]];
            }
            least = Math.min(least, at(centre));
        }
        double waste = 0;
        for (int k : kinds) {
            double half = (to[k] - from[k]) / 2;
            waste += solver.group().slots().size() * (double) solver.group().weights()[k] * half * half;
        }
        return new Box(from, to, least - waste, waste);
    }

    /** The halves of a box across the side that weighs most; none when it is a point. */
    List<Box> halves(Box box) {
        int widest = -1;
        double most = 0;
        for (int k : kinds) {
            double side = box.to()[k] - box.from()[k];
            double weighed = solver.group().weights()[k] * side * side;
            if (weighed > most) {
                most = weighed;
                widest = k;
            }
        }
        if (widest < 0) {
            return List.of();
        }
        double[] lowerTo = box.to().clone();
        double[] upperFrom = box.from().clone();
        lowerTo[widest] = box.middle()[widest];
        upperFrom[widest] = lowerTo[widest];
        return List.of(box(box.from(), lowerTo), box(upperFrom, box.to()));
    }

    private double at(double[] centre) {
        List<Double> key = Arrays.stream(kinds).mapToObj(k -> centre[k]).toList();
        Double known = corners.get(key);
        if (known != null) {
            return known;
        }
        GroupSolver.Solved solved = solver.solve(centre);
        found.accept(solved.plan());
        corners.put(key, solved.bound());
        return solved.bound();
    }
}
