package benchtwin.measure;

import java.math.BigDecimal;

/** Numbers in plain decimals, without a pattern: how the record writes them, and nearly every cell. */
public final class PlainNumber {

    /** A sixty-fourth of an inch has six decimals in mm, and no gauge gives more. */
    public static final int DECIMALS = 6;
    private static final long PARTS = 1_000_000;
    /** Below it a double has room for every millionth. */
    private static final double LARGEST = 1e9;
    /** So many digits always fit a double exactly, and so do the powers of ten up to them. */
    private static final int MOST_DIGITS = 15;
    /** Nine digits, a point, six decimals and a sign. */
    private static final int LENGTH = 17;
    private static final double[] POWERS = new double[MOST_DIGITS + 1];

    static {
        long power = 1;
        for (int i = 0; i <= MOST_DIGITS; i++) {
            POWERS[i] = power;
            power *= 10;
        }
    }

    private PlainNumber() {
    }

    /**
     * The value of digits with at most one point among them and perhaps a minus before them; NaN for any other text, and
     * for more digits than are sure to come out exact. A whole number divided by a power of ten, both exact, is rounded
     * once, so the value is the double nearest to the text, as {@code Double.parseDouble} has it.
     * @param text any text
     * @return the number, or NaN
     */
    public static double parse(String text) {
        int length = text.length();
        int at = length > 0 && text.charAt(0) == '-' ? 1 : 0;
        int digits = 0;
        int decimals = -1;
        long whole = 0;
        for (int i = at; i < length; i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                whole = 10 * whole + (c - '0');
                digits++;
                decimals += decimals >= 0 ? 1 : 0;
            } else if (c == '.' && decimals < 0) {
                decimals = 0;
            } else {
                return Double.NaN;
            }
            if (digits > MOST_DIGITS) {
                return Double.NaN;
            }
        }
        if (digits == 0 || decimals == 0) {
            return Double.NaN;
        }
        double value = decimals > 0 ? whole / POWERS[decimals] : whole;
        return at == 1 ? -value : value;
    }

    /**
     * The nearest number of so many decimals.
     * @param value any
     * @return never a negative zero; anything too large for that as it is
     */
    public static double rounded(double value) {
        return Math.abs(value) < LARGEST ? Math.rint(value * PARTS) / PARTS + 0.0 : value;
    }

    /**
     * A number so rounded, in the fewest digits, without an exponent.
     * @param value finite
     * @return for instance {@code 1149.35}, {@code -0.5}, {@code 0}
     */
    public static String text(double value) {
        if (!(Math.abs(value) < LARGEST)) {
            return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        }
        long parts = (long) Math.rint(Math.abs(value) * PARTS);
        if (parts == 0) {
            return "0";
        }
        StringBuilder text = new StringBuilder(LENGTH);
        if (value < 0) {
            text.append('-');
        }
        text.append(parts / PARTS);
        long rest = parts % PARTS;
        if (rest > 0) {
            text.append('.');
            for (long unit = PARTS / 10; rest > 0; unit /= 10) {
                text.append((char) ('0' + rest / unit));
                rest %= unit;
            }
        }
        return text.toString();
    }
}
