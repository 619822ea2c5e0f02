package benchtwin.sets;

import java.util.Arrays;

/**
 * The assignment of rows to columns at least cost, each column at most once: the Hungarian method with potentials, on plain
 * arrays because it runs hundreds of thousands of times inside the planner.
 * <p>Source: published, Kuhn, Naval Research Logistics Quarterly 2 (1955) 83; the shortest-augmenting-path form is textbook.
 * Checked against a graph library in AssignmentTest.
 */
final class Assignment {

    private final double[] rowPotential;
    private final double[] columnPotential;
    private final int[] rowOf;
    private final int[] from;
    private final double[] least;
    private final boolean[] used;

    /**
     * Room for problems up to this size.
     * @param mostRows    rows
     * @param mostColumns columns
     */
    Assignment(int mostRows, int mostColumns) {
        rowPotential = new double[mostRows + 1];
        columnPotential = new double[mostColumns + 1];
        rowOf = new int[mostColumns + 1];
        from = new int[mostColumns + 1];
        least = new double[mostColumns + 1];
        used = new boolean[mostColumns + 1];
    }

    /**
     * Solves one.
     * @param cost    by row and column; may be large, not infinite
     * @param rows    how many rows, at most as many as columns
     * @param columns how many columns
     * @param columnOf where to put each row's column
     * @return the cost of the assignment
     */
    double solve(double[][] cost, int rows, int columns, int[] columnOf) {
        Arrays.fill(rowPotential, 0, rows + 1, 0);
        Arrays.fill(columnPotential, 0, columns + 1, 0);
        Arrays.fill(rowOf, 0, columns + 1, 0);
        for (int row = 1; row <= rows; row++) {
            augment(cost, row, columns);
        }
        double sum = 0;
        for (int column = 1; column <= columns; column++) {
            if (rowOf[column] != 0) {
                columnOf[rowOf[column] - 1] = column - 1;
                sum += cost[rowOf[column] - 1][column - 1];
            }
        }
        return sum;
    }

    /** How much dearer the last assignment would be, at least, without this column; 0 for a column nobody took. */
    double price(int column) {
        return -columnPotential[column + 1];
    }

    private void augment(double[][] cost, int row, int columns) {
        rowOf[0] = row;
        int column = 0;
        Arrays.fill(least, 0, columns + 1, Double.POSITIVE_INFINITY);
        Arrays.fill(used, 0, columns + 1, false);
        do {
            used[column] = true;
            int current = rowOf[column];
            double[] ofRow = cost[current - 1];
            double delta = Double.POSITIVE_INFINITY;
            int next = -1;
            for (int j = 1; j <= columns; j++) {
                if (!used[j]) {
                    double reduced = ofRow[j - 1] - rowPotential[current] - columnPotential[j];
                    if (reduced < least[j]) {
                        least[j] = reduced;
                        from[j] = column;
                    }
                    if (least[j] < delta) {
                        delta = least[j];
                        next = j;
                    }
                }
            }
            for (int j = 0; j <= columns; j++) {
                if (used[j]) {
                    rowPotential[rowOf[j]] += delta;
                    columnPotential[j] -= delta;
                } else {
                    least[j] -= delta;
                }
            }
            column = next;
        } while (rowOf[column] != 0);
        do {
            int before = from[column];
            rowOf[column] = rowOf[before];
            column = before;
        } while (column != 0);
    }
}
