package benchtwin.measure;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Temperatures as people write them. */
public final class TemperatureText {

    private static final Pattern FORM = Pattern.compile("([+\\-−]?\\d{1,4}(?:[.,]\\d{1,3})?)\\s*°?\\s*([CcFf]?)");
    /** Exact, by the definition of the Fahrenheit scale. Published: NIST SP 811, appendix B.8. */
    private static final double FAHRENHEIT_ZERO = 32;
    private static final double FAHRENHEIT_A_DEGREE = 1.8;

    private TemperatureText() {
    }

    /**
     * Reads a temperature.
     * @param text {@code 18}, {@code 18C}, {@code 18.5 °C} or {@code 64F}
     * @return °C, to a thousandth; empty when it is no temperature
     */
    public static OptionalDouble celsius(String text) {
        Matcher read = FORM.matcher(text.strip());
        if (!read.matches()) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(read.group(1).replace(',', '.').replace('−', '-'));
        double celsius = read.group(2).equalsIgnoreCase("F") ? (value - FAHRENHEIT_ZERO) / FAHRENHEIT_A_DEGREE : value;
        return OptionalDouble.of(Math.rint(celsius * 1000) / 1000);
    }
}
