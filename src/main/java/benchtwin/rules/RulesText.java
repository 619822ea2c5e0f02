package benchtwin.rules;

import benchtwin.measure.Units;
import java.util.Locale;

/** How limits and what is held against them are written. */
public final class RulesText {

    private RulesText() {
    }

    /**
     * A value with twice its standard uncertainty.
     * @param quantity of what
     * @param value    the value
     * @return for instance {@code 1146.3 ±1.7 mm}
     */
    public static String value(RuledQuantity quantity, RuledValue value) {
        return "%s ±%s%s".formatted(number(quantity, value.value()),
            number(quantity, Finding.COVERAGE_FACTOR * value.standardUncertainty()), unit(quantity));
    }

    /**
     * A limit without its allowance.
     * @param limit which
     * @return for instance {@code at most 1219.2 mm (48 in)}
     */
    public static String limitAlone(Limit limit) {
        return "%s %s%s%s".formatted(limit.side().word(), plain(limit.value()), unit(limit.quantity()),
            limit.quantity() == RuledQuantity.LENGTH ? " (%s in)".formatted(plain(Units.inches(limit.value()))) : "");
    }

    /**
     * A limit with its allowance, where it has one.
     * @param limit which
     * @return for instance {@code at most 460 + 10 cm³}
     */
    public static String limit(Limit limit) {
        return limit.allowance() == 0 ? limitAlone(limit) : "%s %s + %s%s".formatted(limit.side().word(), plain(limit.value()),
            plain(limit.allowance()), unit(limit.quantity()));
    }

    /**
     * A margin: how far inside.
     * @param quantity of what
     * @param margin   in its unit
     * @return with its sign, without its unit: {@code +22.1}
     */
    public static String margin(RuledQuantity quantity, double margin) {
        String size = number(quantity, Math.abs(margin));
        return Double.parseDouble(size) == 0 ? size : (margin < 0 ? "−" : "+") + size;
    }

    /** What a plan is told of a limit it would cross or come close to. */
    static String warning(Finding finding) {
        String text = "%s %s is %s: the rules say %s%s".formatted(finding.limit().quantity().word(),
            value(finding.limit().quantity(), finding.value().orElseThrow()), finding.verdict().word(), limit(finding.limit()),
            finding.limit().isLocal() ? ", where that local rule is in force" : "");
        return finding.restsOnProcedure() ? text + " (measured on the 60° plane itself it may read up to 4 mm less)" : text;
    }

    private static String unit(RuledQuantity quantity) {
        return quantity.unit().equals("°") ? "°" : " " + quantity.unit();
    }

    private static String number(RuledQuantity quantity, double value) {
        String text = String.format(Locale.ROOT, "%." + quantity.decimals() + "f", value);
        return (text.startsWith("-") && Double.parseDouble(text) == 0 ? text.substring(1) : text).replace('-', '−');
    }

    /** A printed limit as it is printed. */
    private static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
        return text.replace('-', '−');
    }
}
