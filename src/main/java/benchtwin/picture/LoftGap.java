package benchtwin.picture;

import java.util.OptionalDouble;

/**
 * The step in loft from one club to the next.
 * @param fromDeg      loft of the club before, degrees
 * @param toDeg        loft of the club after, degrees
 * @param wantedDeg    the same step between their targets, degrees, where both have one
 * @param toleranceDeg how far from it is still even, degrees
 */
record LoftGap(double fromDeg, double toDeg, OptionalDouble wantedDeg, double toleranceDeg) {

    private static final double ROUNDING_DEG = 1e-9;

    double deg() {
        return toDeg - fromDeg;
    }

    /** 1 when the gap is much larger than wanted, −1 when it is much smaller, else 0. */
    int side() {
        double off = wantedDeg.isPresent() ? deg() - wantedDeg.getAsDouble() : 0;
        return Math.abs(off) <= toleranceDeg + ROUNDING_DEG ? 0 : (int) Math.signum(off);
    }

    /** As it is written between two rows: {@code 4.0°}, or {@code 2.1°, 4.0° wanted}. */
    String label() {
        return side() == 0 ? size() : size() + ", " + Words.fixed(wantedDeg.orElseThrow(), 1) + "° wanted";
    }

    /** The same as part of a sentence: {@code 2.1°, too small, 4.0° wanted}. */
    String inWords() {
        return side() == 0 ? size() : label().replace(", ", side() > 0 ? ", too large, " : ", too small, ");
    }

    private String size() {
        return Words.fixed(deg(), 1) + "°";
    }
}
