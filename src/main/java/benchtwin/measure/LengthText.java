package benchtwin.measure;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths as a bench writes them: decimal or fractional inches ({@code 45.25}, {@code 45 1/4}, {@code 45-1/4}) or
 * millimetres ({@code 1149 mm}). Inside the program a length is always millimetres.
 */
public final class LengthText {

    private static final Pattern MM = Pattern.compile("([+-]?\\d+(?:\\.\\d+)?)\\s*mm");
    private static final Pattern DECIMAL = Pattern.compile("([+-]?\\d*\\.?\\d+|[+-]?\\d+\\.)\\s*(?:in|\")?");
    private static final Pattern FRACTION =
        Pattern.compile("([+-]?)(?:(\\d+)(?:\\s+|\\s*-\\s*))?(\\d+)\\s*/\\s*(\\d+)\\s*(?:in|\")?");
    private static final int SIXTEENTHS = 16;

    private LengthText() {
    }

    /**
     * Reads a length.
     * @param text inches, decimal or with a fraction whose denominator is 2, 4, 8 or 16 or any other above 0; or
     *             millimetres with their unit
     * @return the length in mm, or empty when the text is none of these
     */
    public static OptionalDouble parseMm(String text) {
        String trimmed = text.strip().toLowerCase(Locale.ROOT);
        Matcher mm = MM.matcher(trimmed);
        if (mm.matches()) {
            return OptionalDouble.of(Double.parseDouble(mm.group(1)));
        }
        OptionalDouble inches = parseInches(trimmed);
        return inches.isPresent() ? OptionalDouble.of(Units.mm(inches.getAsDouble())) : inches;
    }

    /**
     * Reads a number of inches, decimal or fractional.
     * @param text for instance {@code 45.25}, {@code 45 1/4}, {@code 45-1/4}, {@code 1/8}
     * @return inches, or empty when the text is neither
     */
    public static OptionalDouble parseInches(String text) {
        String trimmed = text.strip().toLowerCase(Locale.ROOT);
        Matcher decimal = DECIMAL.matcher(trimmed);
        if (decimal.matches()) {
            return OptionalDouble.of(Double.parseDouble(decimal.group(1)));
        }
        Matcher fraction = FRACTION.matcher(trimmed);
        if (!fraction.matches() || Double.parseDouble(fraction.group(4)) == 0) {
            return OptionalDouble.empty();
        }
        double whole = fraction.group(2) == null ? 0 : Double.parseDouble(fraction.group(2));
        double part = Double.parseDouble(fraction.group(3)) / Double.parseDouble(fraction.group(4));
        double size = whole + part;
        return OptionalDouble.of("-".equals(fraction.group(1)) ? -size : size);
    }

    /**
     * Writes a length in inches to the nearest sixteenth: {@code 45 1/4}, {@code 45}, {@code 3/16}, {@code -1/8}.
     * @param mm the length, mm, finite
     * @return inches and a reduced fraction
     */
    public static String inchesAndSixteenths(double mm) {
        long sixteenths = Math.round(Math.abs(Units.inches(mm)) * SIXTEENTHS);
        long whole = sixteenths / SIXTEENTHS;
        long rest = sixteenths % SIXTEENTHS;
        String sign = mm < 0 && sixteenths > 0 ? "-" : "";
        if (rest == 0) {
            return sign + whole;
        }
        long denominator = SIXTEENTHS;
        while (rest % 2 == 0) {
            rest /= 2;
            denominator /= 2;
        }
        return sign + (whole > 0 ? whole + " " : "") + rest + "/" + denominator;
    }
}
