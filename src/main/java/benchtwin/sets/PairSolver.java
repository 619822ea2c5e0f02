package benchtwin.sets;

import java.util.Arrays;

/**
 * The places of a group filled from the options of one pair of models, when what a place costs does not depend on the others:
 * an assignment of places to shafts, each place with its cheapest head of each shaft, or to an empty place of its own. No
 * place needs more than its n cheapest shafts, n the number of places. Where two places want one head, either is tried
 * without it.
 */
final class PairSolver {

    /** What a place costs in a column it cannot take. */
    private static final double IMPOSSIBLE = 1e17;
    /** How many times heads may be fought over; beyond, the plan may not be the best, but the bound still holds. */
    private static final int MOST_NODES = 2_000;

    private final GroupTable table;
    private final Assignment assignment;
    private final double[][] cost;
    private final int[][] chosen;
    private final int[] columnOf;
    private final int[] columnOfShaft;
    private final double[] nearest;
    private final int[] nearestOption;

    private double[] value;
    private double[] empty;
    private int pair;
    private int[] withoutPlace = new int[16];
    private int[] withoutHead = new int[16];
    private int nodes;

    /** The best so far: option by place, -1 for empty; what it costs; and what nothing that was not looked at undercuts. */
    final int[] best;
    double bestValue;
    double bound;

    PairSolver(GroupTable table) {
        this.table = table;
        int n = table.places;
        int columns = n + Math.min(n * n, table.shaftsHere);
        assignment = new Assignment(n, columns);
        cost = new double[n][columns];
        chosen = new int[n][columns];
        columnOf = new int[n];
        columnOfShaft = new int[table.shaftsHere];
        Arrays.fill(columnOfShaft, -1);
        nearest = new double[n];
        nearestOption = new int[n];
        best = new int[n];
    }

    /** Nothing found yet that beats this. */
    void begin(double valueToBeat) {
        bestValue = valueToBeat;
        bound = valueToBeat;
        Arrays.fill(best, -1);
    }

    /**
     * Looks for something better than the best so far.
     * @param values   by option of the table; infinite where it may not be used
     * @param empties  by place
     * @param thisPair which pair
     */
    void solve(double[] values, double[] empties, int thisPair) {
        value = values;
        empty = empties;
        pair = thisPair;
        nodes = 0;
        branch(0);
        bound = Math.min(bound, bestValue);
    }

    private void branch(int without) {
        int n = table.places;
        int shafts = fill(without);
        double here = assignment.solve(cost, n, shafts + n, columnOf);
        if (here >= bestValue) {
            return;
        }
        if (++nodes > MOST_NODES) {
            bound = Math.min(bound, here);
            return;
        }
        int first = -1;
        int second = -1;
        for (int i = 0; i < n && first < 0; i++) {
            for (int j = i + 1; j < n && first < 0; j++) {
                int a = chosen[i][columnOf[i]];
                int b = chosen[j][columnOf[j]];
                if (a >= 0 && b >= 0 && table.head[a] == table.head[b]) {
                    first = i;
                    second = j;
                }
            }
        }
        if (first < 0) {
            bestValue = here;
            for (int i = 0; i < n; i++) {
                best[i] = chosen[i][columnOf[i]];
            }
            return;
        }
        int head = table.head[chosen[first][columnOf[first]]];
        if (without == withoutPlace.length) {
            withoutPlace = Arrays.copyOf(withoutPlace, 2 * without);
            withoutHead = Arrays.copyOf(withoutHead, 2 * without);
        }
        withoutHead[without] = head;
        withoutPlace[without] = first;
        branch(without + 1);
        withoutHead[without] = head;
        withoutPlace[without] = second;
        branch(without + 1);
    }

    /** Writes the costs; returns how many columns are shafts, the empty places coming after. */
    private int fill(int without) {
        int n = table.places;
        for (int i = 0; i < n; i++) {
            Arrays.fill(cost[i], IMPOSSIBLE);
            Arrays.fill(chosen[i], -1);
        }
        int columns = 0;
        for (int i = 0; i < n; i++) {
            int found = nearest(i, without);
            for (int f = 0; f < found; f++) {
                int option = nearestOption[f];
                int column = columnOfShaft[table.shaftHere[option]];
                if (column < 0) {
                    column = columns++;
                    columnOfShaft[table.shaftHere[option]] = column;
                }
                cost[i][column] = nearest[f];
                chosen[i][column] = option;
            }
        }
        for (int i = 0; i < n; i++) {
            for (int c = 0; c < columns; c++) {
                if (chosen[i][c] >= 0) {
                    columnOfShaft[table.shaftHere[chosen[i][c]]] = -1;
                }
            }
            cost[i][columns + i] = empty[i];
        }
        return columns;
    }

    /** The n cheapest shafts of a place, each with its cheapest head, cheapest first. */
    private int nearest(int place, int without) {
        int found = 0;
        int n = table.places;
        double enough = empty[place];
        int from = table.start[pair * n + place];
        int to = table.start[pair * n + place + 1];
        for (int o = from; o < to; ) {
            int shaft = table.shaftHere[o];
            double least = Double.POSITIVE_INFINITY;
            int at = -1;
            for (; o < to && table.shaftHere[o] == shaft; o++) {
                if (value[o] < least && !isWithout(place, table.head[o], without)) {
                    least = value[o];
                    at = o;
                }
            }
            if (least < enough) {
                int f = found < n ? found++ : n - 1;
                for (; f > 0 && nearest[f - 1] > least; f--) {
                    nearest[f] = nearest[f - 1];
                    nearestOption[f] = nearestOption[f - 1];
                }
                nearest[f] = least;
                nearestOption[f] = at;
                if (found == n) {
                    enough = Math.min(enough, nearest[n - 1]);
                }
            }
        }
        return found;
    }

    private boolean isWithout(int place, int head, int without) {
        for (int w = 0; w < without; w++) {
            if (withoutPlace[w] == place && withoutHead[w] == head) {
                return true;
            }
        }
        return false;
    }
}
