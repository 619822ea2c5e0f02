package benchtwin.bench;

import benchtwin.gauge.Finding;
import benchtwin.gauge.Offset;
import benchtwin.gauge.Repeatability;
import java.util.Locale;
import java.util.Optional;

/** What is said of a gauge, alike on the command line and on the pages. */
public final class GaugeWords {

    private GaugeWords() {
    }

    /**
     * How well it repeats.
     * @param column  what was read, by its name in the book
     * @param finding what its readings show
     * @return a phrase, or why nothing can be said
     */
    public static String repeats(String column, Finding<Repeatability> finding) {
        if (finding.found().isEmpty()) {
            return finding.whyNot().replace(column, ColumnText.name(column)) + ".";
        }
        Repeatability found = finding.found().get();
        return "to ±%s (95 times in 100 between %s and %s), from %d readings of %d part%s".formatted(number(found.standardUncertainty()),
            number(found.lowest()), number(found.highest()), found.readings(), found.parts(), found.parts() == 1 ? "" : "s");
    }

    /**
     * The reading that looks like a slip.
     * @param finding what its readings show
     * @return a phrase; empty where none does
     */
    public static Optional<String> slip(Finding<Repeatability> finding) {
        return finding.found().flatMap(Repeatability::largest).filter(largest -> largest.looksLikeASlip()).map(slip ->
            "%s read %s on %s: %s from its fellows, which looks like a slip%s".formatted(slip.reading().part(),
                fixed(slip.reading().value(), 2), slip.reading().day(), fixed(slip.deviation(), 2), slip.oneOfTwo() ? " of one of the two" : ""));
    }

    /**
     * What it reads apart from another.
     * @param column  what was read, by its name in the book
     * @param finding what its readings show
     * @return a phrase, or why nothing can be said
     */
    public static String offset(String column, Finding<Offset> finding) {
        if (finding.found().isEmpty()) {
            return finding.whyNot().replace(column, ColumnText.name(column)) + ".";
        }
        Offset found = finding.found().get();
        return "%s, from %d part%s read on both%s".formatted(reads(found.value(), found.standardUncertainty(), found.reference()),
            found.parts(), found.parts() == 1 ? "" : "s",
            found.agreement().consistent() ? "" : "; the parts do not agree, which the uncertainty allows for");
    }

    /**
     * An offset that is used.
     * @param figures of a gauge
     * @return a phrase; empty where none is
     */
    public static String offset(GaugeBook.Figures figures) {
        return figures.offsetFrom().map(other -> reads(figures.offset().orElse(0), figures.offsetU().orElse(0), other)).orElse("");
    }

    private static String reads(double offset, double uncertainty, String other) {
        return "reads %s%s ±%s more than %s".formatted(offset < 0 ? "−" : "+", number(Math.abs(offset)), number(uncertainty), other);
    }

    /**
     * A figure of a gauge.
     * @param value in the quantity's unit
     * @return with two or three decimals
     */
    public static String number(double value) {
        return fixed(value, 3).replaceAll("0$", "");
    }

    private static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.startsWith("-") && Double.parseDouble(text) == 0 ? text.substring(1) : text;
    }
}
