package benchtwin.stock;

import benchtwin.measure.SwingWeightText;
import benchtwin.measure.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;

/** Numbers as cells that read back to the very same value. */
final class ExactText {

    /** A sixteenth of an inch takes four. */
    private static final int INCH_DECIMALS = 4;
    private static final int LETTERS = 7;

    private ExactText() {
    }

    /** Without an exponent, or trailing zeros. */
    static String number(double value) {
        BigDecimal exact = new BigDecimal(Double.toString(value));
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }

    /** A length in inches; empty where four decimals do not give it exactly. */
    static Optional<String> inches(double mm) {
        BigDecimal rounded = BigDecimal.valueOf(Units.inches(mm)).setScale(INCH_DECIMALS, RoundingMode.HALF_EVEN);
        return Optional.of(number(rounded.doubleValue())).filter(text -> Units.mm(Double.parseDouble(text)) == mm);
    }

    /** A swing weight by letter and points; empty off the scale, or where that does not give it exactly. */
    static Optional<String> swingWeight(double points) {
        int letter = (int) Math.floor(points / SwingWeightText.POINTS_PER_LETTER);
        if (letter < 0 || letter >= LETTERS) {
            return Optional.empty();
        }
        BigDecimal rest = new BigDecimal(Double.toString(points))
            .subtract(BigDecimal.valueOf(letter * SwingWeightText.POINTS_PER_LETTER));
        String text = (char) ('A' + letter) + number(rest.doubleValue());
        return Optional.of(text).filter(written -> SwingWeightText.parsePoints(written).equals(OptionalDouble.of(points)));
    }
}
