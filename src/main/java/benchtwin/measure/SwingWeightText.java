package benchtwin.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Swing weight on the 14-inch letter scale as text. Points count from A0; ten points make a letter, so D2.4 is 32.4
 * points. The arithmetic of the scale itself is in the mechanics. Source of the scale: common practice, no source.
 */
public final class SwingWeightText {

    /** Points in one letter. */
    public static final double POINTS_PER_LETTER = 10;
    /** The last letter the scale is read to. */
    private static final char LAST_LETTER = 'G';
    private static final Pattern LETTERED = Pattern.compile("([a-g])\\s*-?\\s*(\\d(?:\\.\\d+)?)");

    private SwingWeightText() {
    }

    /**
     * Reads a swing weight such as {@code D2.4}, {@code d 2} or {@code C9.75}.
     * @param text a letter A to G and a number from 0 to below 10
     * @return points above A0, or empty when the text is not a swing weight
     */
    public static OptionalDouble parsePoints(String text) {
        Matcher matcher = LETTERED.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            return OptionalDouble.empty();
        }
        int letter = matcher.group(1).charAt(0) - 'a';
        return OptionalDouble.of(letter * POINTS_PER_LETTER + Double.parseDouble(matcher.group(2)));
    }

    /**
     * Writes points as letter and one decimal, rounded before the letter is chosen: 29.96 is {@code D0.0}.
     * @param points points above A0, finite
     * @return the text; empty when the value is below A0 or past the last letter, where the moment is printed instead
     */
    public static Optional<String> format(double points) {
        long tenths = Math.round(points * 10);
        long letter = Math.floorDiv(tenths, 100L);
        if (tenths < 0 || letter > LAST_LETTER - 'A') {
            return Optional.empty();
        }
        return Optional.of(
            String.format(Locale.ROOT, "%c%.1f", (char) ('A' + letter), (tenths - letter * 100) / 10.0));
    }
}
