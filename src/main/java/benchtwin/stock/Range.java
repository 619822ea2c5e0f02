package benchtwin.stock;

/**
 * What a quantity can be at all, and what it usually is, ends included. In the column's canonical unit; lengths in mm.
 * @param least      below it is a fault
 * @param most       above it is a fault
 * @param usualLeast below it is a warning
 * @param usualMost  above it is a warning
 */
record Range(double least, double most, double usualLeast, double usualMost) {

    Range {
        if (!(least <= usualLeast && usualLeast <= usualMost && usualMost <= most)) {
            throw new IllegalArgumentException("the usual must lie inside the possible: %s %s %s %s"
                .formatted(least, usualLeast, usualMost, most));
        }
    }

    boolean isPossible(double value) {
        return value >= least && value <= most;
    }

    boolean isUsual(double value) {
        return value >= usualLeast && value <= usualMost;
    }
}
