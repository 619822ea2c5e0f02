package benchtwin.club;

import benchtwin.measure.LengthText;
import benchtwin.measure.SwingWeightText;
import benchtwin.measure.Units;
import java.util.Locale;

/** How a bench writes the value of a quantity, so that pages and pictures write it alike. */
public final class QuantityText {

    private QuantityText() {
    }

    /**
     * A value with its unit: {@code 9.30°}, {@code 45 1/4 in}, {@code D2.4}, {@code 252.1 cpm}.
     * @param quantity what it is a value of
     * @param value    in the quantity's unit, finite
     * @return the text, with a minus sign that is one
     */
    public static String value(Quantity quantity, double value) {
        String text = switch (quantity) {
            case LENGTH, RULES_LENGTH -> LengthText.inchesAndSixteenths(value) + " in";
            case SWING_WEIGHT -> SwingWeightText.format(value).orElse(fixed(value, 1) + " pt");
            case LOFT, LIE, FACE, BOUNCE -> fixed(value, 2) + "°";
            case SHAFT_BALANCE -> fixed(Units.inches(value), 2) + " in";
            case TORQUE -> fixed(value, 1) + "°";
            case BUTT_INERTIA -> fixed(value, 0) + " kg·cm²";
            default -> fixed(value, 1) + " " + quantity.unit();
        };
        return text.replace('-', '−');
    }

    /**
     * A difference with sign and unit; one that rounds to nothing is a plain 0. Lengths differ by millimetres.
     * @param quantity   what it is a difference of
     * @param difference in the quantity's unit, finite
     * @return for instance {@code −0.25°}, {@code +1.6 mm}, {@code 0}
     */
    public static String difference(Quantity quantity, double difference) {
        if (isNothing(quantity, difference)) {
            return "0";
        }
        return (difference < 0 ? "−" : "+") + size(quantity, Math.abs(difference));
    }

    /**
     * A tolerance or an uncertainty, written like a difference but without a sign.
     * @param quantity what it belongs to
     * @param size     in the quantity's unit, finite, 0 or more
     * @return for instance {@code 0.25°}, {@code 1.6 mm}
     */
    public static String size(Quantity quantity, double size) {
        String unit = quantity.unit().equals("°") ? "°" : " " + quantity.unit();
        return number(quantity, size) + unit;
    }

    /**
     * The same without its unit, where that is known.
     * @param quantity what it belongs to
     * @param size     in the quantity's unit, finite
     * @return for instance {@code 0.25}
     */
    public static String number(Quantity quantity, double size) {
        return fixed(size, quantity.isAngle() ? 2 : 1);
    }

    /**
     * What the quantity is called in running text.
     * @param quantity any
     * @return its word without hyphens: {@code swing weight}
     */
    public static String name(Quantity quantity) {
        return quantity.word().replace('-', ' ');
    }

    private static boolean isNothing(Quantity quantity, double difference) {
        return Double.parseDouble(number(quantity, Math.abs(difference))) == 0;
    }

    private static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.startsWith("-") && Double.parseDouble(text) == 0 ? text.substring(1) : text;
    }
}
