package benchtwin.book;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers among the facts: plain decimals to a millionth, without noise digits. */
final class PlainNumber {

    private static final int DECIMALS = 6;

    private PlainNumber() {
    }

    static String text(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
