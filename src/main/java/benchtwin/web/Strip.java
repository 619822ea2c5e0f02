package benchtwin.web;

import java.util.Locale;

/**
 * A tolerance strip as a page draws it: centre tick the target, band the tolerance, a dot the value with a whisker of twice its
 * uncertainty, an open dot what was measured before. Every strip has the same scale; what lies off it is an arrow. All in tolerances.
 * @param off    value less target
 * @param u      standard uncertainty of the value
 * @param before what was measured before, less the target; NaN for none
 */
public record Strip(double off, double u, double before) {

    private static final double REACH = 11.0 / 6;
    private static final double HALF_PX = 110;
    private static final double MIDDLE_PX = 120;

    /**
     * Where a value stands.
     * @param tolerances from the target
     * @return x of the drawing, kept on the strip
     */
    public String x(double tolerances) {
        double kept = Math.max(-REACH, Math.min(REACH, tolerances));
        return String.format(Locale.ROOT, "%.1f", MIDDLE_PX + kept / REACH * HALF_PX);
    }

    /**
     * Whether the value lies off the strip.
     * @return true beyond its ends
     */
    public boolean isOff() {
        return Math.abs(off) > REACH;
    }

    /**
     * Whether there is a value from before on the strip.
     * @return false when it is not known
     */
    public boolean hasBefore() {
        return !Double.isNaN(before) && Math.abs(before) <= REACH;
    }

    /**
     * The strip in words.
     * @return for who cannot see it
     */
    public String words() {
        return String.format(Locale.ROOT, "%.2f tolerances %s the target, plus or minus %.2f", Math.abs(off), off < 0 ? "below" : "above", 2 * u);
    }
}
