package benchtwin.cli;

import benchtwin.bench.StockBook;
import benchtwin.bench.StockBookJson;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Parts of the book, printed. */
final class StockPage {

    private static final Set<String> IN_THE_HEADING = Set.of("model", "category", "number", "hand", "place", "reserved_for");

    private final OutputOptions output;
    private final PrintWriter out;

    StockPage(OutputOptions output, PrintWriter out) {
        this.output = output;
        this.out = out;
    }

    void list(List<StockBook.Part> parts) {
        if (output.isJson()) {
            out.println(StockBookJson.list(parts));
            return;
        }
        Page page = output.page(out);
        for (StockBook.Part part : parts) {
            page.line("%-6s %-12s %-32s %-22s %s", part.kind(), cut(part.tag(), 12), cut(what(part), 32),
                cut(part.place().orElse(""), 22), where(part));
        }
        page.line(parts.isEmpty() ? "No part of the book is like that." : "%d part%s.".formatted(parts.size(),
            parts.size() == 1 ? "" : "s"));
    }

    private static String where(StockBook.Part part) {
        String promises = String.join("; ", part.promises());
        return switch (part.standing()) {
            case "in stock" -> part.count() == 1 ? "" : part.count() + " there";
            case "promised" -> "promised to " + promises;
            case "built in" -> "built in";
            default -> part.standing() + part.fact("retired_why").map(why -> ": " + why).orElse("");
        };
    }

    private static String what(StockBook.Part part) {
        return List.of("category", "number", "hand", "model", "port").stream().map(part::fact)
            .flatMap(java.util.Optional::stream).collect(Collectors.joining(" "));
    }

    void show(StockBook.PartHistory shown) {
        if (output.isJson()) {
            out.println(StockBookJson.text(shown));
            return;
        }
        Page page = output.page(out);
        StockBook.Part part = shown.part();
        page.line("%s %s   %s", part.kind(), part.tag(), what(part));
        page.wrapped("", "%s%s%s".formatted(part.standing(), part.place().map(place -> ", " + place).orElse(""),
            part.promises().isEmpty() ? "" : ", promised to " + String.join("; ", part.promises())));
        page.blank();
        for (StockBook.PartReading reading : part.readings()) {
            page.line("  %-26s %10s %-9s %s", named(reading.quantity()), number(reading.value()),
                Double.isNaN(reading.uncertainty()) ? "" : "±" + number(reading.uncertainty()), how(reading));
        }
        part.facts().entrySet().stream().filter(fact -> !IN_THE_HEADING.contains(fact.getKey()))
            .forEach(fact -> page.wrapped("  %-26s ".formatted(named(fact.getKey())), fact.getValue()));
        page.blank();
        shown.history().forEach(line -> page.wrapped("  ", line));
        shown.notes().forEach(note -> page.wrapped("Note: ", note));
    }

    private static String how(StockBook.PartReading reading) {
        String condition = reading.condition().entrySet().stream().map(one -> named(one.getKey()) + " " + one.getValue())
            .collect(Collectors.joining(", "));
        return reading.day() + reading.gauge().map(gauge -> " on " + gauge).orElse("")
            + (condition.isEmpty() ? "" : " (" + condition + ")");
    }

    void tally(List<StockBook.Tally> tallies) {
        if (output.isJson()) {
            out.println(StockBookJson.tallies(tallies));
            return;
        }
        Page page = output.page(out);
        page.line("%-7s %-48s %6s %9s %9s %8s", "", "", "free", "promised", "built in", "retired");
        for (Map.Entry<String, List<StockBook.Tally>> kind : tallies.stream().collect(Collectors.groupingBy(
            StockBook.Tally::kind, java.util.LinkedHashMap::new, Collectors.toList())).entrySet()) {
            kind.getValue().forEach(one -> row(page, one.kind(), one.what(), one.free(), one.promised(), one.builtIn(),
                one.retired()));
            row(page, "", "all " + kind.getKey() + "s", kind.getValue().stream().mapToInt(StockBook.Tally::free).sum(),
                kind.getValue().stream().mapToInt(StockBook.Tally::promised).sum(),
                kind.getValue().stream().mapToInt(StockBook.Tally::builtIn).sum(),
                kind.getValue().stream().mapToInt(StockBook.Tally::retired).sum());
        }
    }

    private static void row(Page page, String kind, String what, int free, int promised, int builtIn, int retired) {
        page.line("%-7s %-48s %6s %9s %9s %8s", kind, cut(what, 48), free, some(promised), some(builtIn), some(retired));
    }

    private static String some(int count) {
        return count == 0 ? "·" : Integer.toString(count);
    }

    private static String named(String name) {
        return name.replace('_', ' ');
    }

    private static String number(double value) {
        return Figures.fixed(value, 2).replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    private static String cut(String text, int width) {
        return text.length() <= width ? text : text.substring(0, width - 1) + "…";
    }
}
