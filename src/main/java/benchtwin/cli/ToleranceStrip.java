package benchtwin.cli;

import java.util.Arrays;

/**
 * The tolerance strip in text: centre tick the target, brackets the tolerance, a filled dot the predicted value with a
 * whisker of twice its uncertainty. Every strip has the same scale: one character is a sixth of a tolerance. What lies off
 * the strip is an arrow at its end.
 */
final class ToleranceStrip {

    private static final int PER_TOLERANCE = 6;
    private static final int OUTSIDE = 5;
    private static final int HALF = PER_TOLERANCE + OUTSIDE;

    private ToleranceStrip() {
    }

    /**
     * Draws a strip.
     * @param deviation predicted less target, in tolerances
     * @param u         standard uncertainty, in tolerances
     * @return always the same length
     */
    static String of(double deviation, double u) {
        return of(deviation, u, Double.NaN);
    }

    /**
     * Draws a strip with what was measured before on it.
     * @param deviation predicted less target, in tolerances
     * @param u         standard uncertainty, in tolerances
     * @param before    measured before less target, in tolerances, an open dot; NaN for none
     * @return always the same length
     */
    static String of(double deviation, double u, double before) {
        char[] strip = new char[2 * HALF + 1];
        Arrays.fill(strip, '·');
        int place = (int) Math.round(deviation * PER_TOLERANCE);
        int from = (int) Math.round((deviation - 2 * u) * PER_TOLERANCE);
        int to = (int) Math.round((deviation + 2 * u) * PER_TOLERANCE);
        for (int k = Math.max(-HALF, from); k <= Math.min(HALF, to); k++) {
            strip[HALF + k] = '─';
        }
        strip[HALF] = '┼';
        strip[HALF - PER_TOLERANCE] = '[';
        strip[HALF + PER_TOLERANCE] = ']';
        if (Math.abs(before) * PER_TOLERANCE <= HALF) {
            strip[HALF + (int) Math.round(before * PER_TOLERANCE)] = '○';
        }
        if (place < -HALF) {
            strip[0] = '◂';
        } else if (place > HALF) {
            strip[2 * HALF] = '▸';
        } else {
            strip[HALF + place] = '●';
        }
        return new String(strip);
    }
}
