package benchtwin.club;

import java.util.List;

/**
 * A straight line through a set: what one quantity should be at each club, counted from one of them.
 * @param name        its name; clubs refer to it
 * @param quantity    frequency, swing weight, butt inertia or loft
 * @param anchorClub  the club it is counted from, as its set names it
 * @param anchorValue the value at that club, in the quantity's unit; swing weight in points above A0
 * @param slope       change of the value a step, in the quantity's unit, up positive; 0 for a constant
 * @param per         what a step is
 */
public record Line(String name, Quantity quantity, String anchorClub, double anchorValue, double slope, LinePer per) {

    private static final List<Quantity> QUANTITIES =
        List.of(Quantity.FREQUENCY, Quantity.SWING_WEIGHT, Quantity.BUTT_INERTIA, Quantity.LOFT);

    public Line {
        if (name.isBlank() || anchorClub.isBlank()) {
            throw new IllegalArgumentException("a line needs a name and an anchor club");
        }
        if (!QUANTITIES.contains(quantity)) {
            throw new IllegalArgumentException("line %s: no line runs through %s".formatted(name, quantity.word()));
        }
        if (!Double.isFinite(anchorValue) || !Double.isFinite(slope)) {
            throw new IllegalArgumentException(
                "line %s: value %s and slope %s must be finite".formatted(name, anchorValue, slope));
        }
    }

    /**
     * What a line can run through.
     * @return frequency, swing weight, butt inertia, loft
     */
    public static List<Quantity> quantities() {
        return QUANTITIES;
    }

    /**
     * The same value at every club.
     * @return true when the slope is 0; then the anchor club need not be in the set
     */
    public boolean isConstant() {
        return slope == 0;
    }

    /**
     * The value some steps away from the anchor club.
     * @param steps inches shorter than it, or clubs after it; negative on the other side
     * @return anchor value + slope · steps, in the quantity's unit
     */
    public double valueAfter(double steps) {
        return anchorValue + slope * steps;
    }
}
