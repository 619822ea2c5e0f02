package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.measure.LengthText;
import benchtwin.measure.SwingWeightText;
import benchtwin.measure.Units;
import java.util.Locale;
import java.util.Optional;

/** What a club's or shaft's value can be asked to be. Ours: wide, to catch a slip of the keyboard. */
final class AskedRange {

    private AskedRange() {
    }

    /**
     * Refuses what no club measures.
     * @param quantity what is asked for
     * @param value    its value, in the quantity's unit
     * @throws BadInput with the value and what was expected, as a bench reads them
     */
    static void check(Quantity quantity, double value) throws BadInput {
        double[] range = range(quantity);
        if (!(value >= range[0] && value <= range[1])) {
            throw new BadInput("%s of %s: expected %s to %s".formatted(quantity.word().replace('-', ' '),
                words(quantity, value), words(quantity, range[0]), words(quantity, range[1])));
        }
    }

    private static double[] range(Quantity quantity) {
        return switch (quantity) {
            case LOFT -> new double[] {-10, 80};
            case LIE -> new double[] {40, 85};
            case FACE -> new double[] {-10, 10};
            case BOUNCE -> new double[] {-10, 25};
            // the rules' least length is 18 in, and no club in play comes near 60
            case LENGTH -> new double[] {18 * Units.MM_PER_INCH, 60 * Units.MM_PER_INCH};
            case SWING_WEIGHT -> new double[] {-30, 100};
            case FREQUENCY -> new double[] {100, 600};
            case TORQUE -> new double[] {0.5, 15};
            case SHAFT_MASS -> new double[] {20, 250};
            case SHAFT_BALANCE -> new double[] {5 * Units.MM_PER_INCH, 40 * Units.MM_PER_INCH};
            default -> new double[] {150, 900};
        };
    }

    private static String words(Quantity quantity, double value) {
        return switch (quantity) {
            case LENGTH, SHAFT_BALANCE -> LengthText.inchesAndSixteenths(value) + " in";
            case SWING_WEIGHT -> {
                Optional<String> lettered = SwingWeightText.format(value);
                yield String.format(Locale.ROOT, "%.1f points", value) + lettered.map(text -> " (" + text + ")").orElse("");
            }
            case LOFT, LIE, FACE, BOUNCE, TORQUE -> String.format(Locale.ROOT, "%.1f°", value);
            default -> String.format(Locale.ROOT, "%.1f %s", value, quantity.unit());
        };
    }
}
