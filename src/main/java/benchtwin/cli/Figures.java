package benchtwin.cli;

import benchtwin.bench.OptionWords;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.measure.LengthText;
import benchtwin.measure.Units;
import java.util.Locale;

/** Numbers as a bench reads them. */
final class Figures {

    private static final double SIXTEENTHS = 16;
    /** In sixteenths: less than what rounding leaves, far less than a step. */
    private static final double HARDLY_OFF = 0.01;

    private Figures() {
    }

    /** A value with its unit: {@code 9.30°}, {@code 45 1/4 in}, {@code D2.4}, {@code 252.1 cpm}. */
    static String value(Quantity quantity, double value) {
        return QuantityText.value(quantity, value);
    }

    /** A difference with sign and unit; a difference that rounds to nothing is a plain 0. */
    static String difference(Quantity quantity, double difference) {
        return QuantityText.difference(quantity, difference);
    }

    static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.startsWith("-") && Double.parseDouble(text) == 0 ? text.substring(1) : text;
    }

    /** A tip trim for a narrow column: inches where it is a whole number of sixteenths, else mm; a dot for none. */
    static String trim(double mm) {
        double sixteenths = Units.inches(mm) * SIXTEENTHS;
        if (mm == 0) {
            return "·";
        }
        return Math.abs(sixteenths - Math.rint(sixteenths)) < HARDLY_OFF ? LengthText.inchesAndSixteenths(mm) : millimetres(mm);
    }

    /** Millimetres for a narrow column, a decimal only where there is one. */
    static String millimetres(double mm) {
        String text = fixed(mm, 1);
        return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + "mm";
    }

    /** Minutes, in hours where that reads better: {@code 23 min}, {@code 24 h 18 min}. */
    static String time(double minutes) {
        return OptionWords.time(minutes);
    }

    static String chance(double chance) {
        return OptionWords.chance(chance);
    }

    /** A name for a narrow column: at most seven letters. */
    static String shortName(Quantity quantity) {
        return switch (quantity) {
            case SWING_WEIGHT -> "swing";
            case FREQUENCY -> "cpm";
            case TOTAL_MASS, SHAFT_MASS -> "mass";
            case SHAFT_BALANCE -> "balance";
            case BUTT_INERTIA -> "inertia";
            default -> quantity.word();
        };
    }

    static String name(Quantity quantity) {
        return QuantityText.name(quantity);
    }
}
