package benchtwin.cli;

import benchtwin.club.MeasuredDifference;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.SideBySide;
import benchtwin.club.ValueComparison;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Two clubs, or one on two dates, side by side in tolerances, and which gauges that rests on. */
final class SideBySidePage {

    private static final String INDENT = "   ";
    private static final String ROW = INDENT + "%-14s %-12s %-12s %-12s %-23s  %-8s %s";
    private static final String NOT_READ = "not read";

    private final Page page;
    private final SideBySide compared;

    SideBySidePage(Page page, SideBySide compared) {
        this.page = page;
        this.compared = compared;
    }

    void print() {
        page.wrapped("A: ", compared.a());
        page.wrapped("B: ", compared.b());
        page.blank();
        row("", "A", "B", "B less A", "", "±", "");
        compared.values().forEach(this::value);
        page.blank();
        page.wrapped("", finding());
        restsOn().forEach(line -> page.wrapped("Rests on ", line + "."));
        page.wrapped("", "The strip shows B about A, in tolerances. ± is one standard uncertainty of the difference. Beyond: the "
            + "difference is more than twice that, which is more than measuring explains.");
    }

    private void value(Quantity quantity, ValueComparison comparison) {
        double tolerance = comparison.tolerance();
        row(QuantityText.name(quantity), text(quantity, comparison.a()), text(quantity, comparison.b()),
            comparison.difference().map(d -> QuantityText.difference(quantity, d.value())).orElse(""),
            comparison.difference().map(d -> ToleranceStrip.of(d.value() / tolerance, d.standardUncertainty() / tolerance)).orElse(""),
            comparison.difference().map(d -> "±" + QuantityText.number(quantity, d.standardUncertainty())).orElse(""),
            comparison.difference().filter(MeasuredDifference::isBeyondUncertainty).map(d -> "beyond").orElse(""));
    }

    private static String text(Quantity quantity, OptionalDouble value) {
        return value.isPresent() ? QuantityText.value(quantity, value.getAsDouble()) : NOT_READ;
    }

    private void row(String name, String a, String b, String difference, String strip, String uncertainty, String word) {
        page.line(ROW, name, a, b, difference, strip, uncertainty, word);
    }

    private String finding() {
        List<String> beyond = names(compared.values().entrySet().stream().filter(e -> e.getValue().isBeyondUncertainty()).toList());
        List<String> unknown = names(compared.values().entrySet().stream().filter(e -> e.getValue().difference().isEmpty()).toList());
        String open = unknown.isEmpty() ? "" : " Not read on both: " + String.join(", ", unknown) + ".";
        if (unknown.size() == compared.values().size()) {
            return "Nothing was read on both.";
        }
        return (beyond.isEmpty() ? "Nothing differs by more than measuring explains."
            : "Differs by more than measuring explains: " + String.join(", ", beyond) + ".") + open;
    }

    private static List<String> names(List<Map.Entry<Quantity, ValueComparison>> values) {
        return values.stream().map(e -> QuantityText.name(e.getKey())).toList();
    }

    /** A line for each way of reading: the gauges, and what was read on just these. */
    private List<String> restsOn() {
        Map<List<String>, List<String>> read = new LinkedHashMap<>();
        compared.values().forEach((quantity, comparison) -> {
            if (!comparison.gauges().isEmpty()) {
                read.computeIfAbsent(comparison.gauges(), g -> new ArrayList<>()).add(QuantityText.name(quantity));
            }
        });
        List<String> lines = read.entrySet().stream()
            .map(e -> and(e.getKey()) + " for " + String.join(", ", e.getValue())).collect(Collectors.toCollection(ArrayList::new));
        List<String> unnamed = names(compared.values().entrySet().stream()
            .filter(e -> e.getValue().difference().isPresent() && e.getValue().gauges().isEmpty()).toList());
        if (!unnamed.isEmpty()) {
            lines.add("no named gauge for " + String.join(", ", unnamed));
        }
        return lines;
    }

    private static String and(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
