package benchtwin.cli;

import benchtwin.bench.ColumnText;
import benchtwin.bench.PartWords;
import benchtwin.bench.StockBookJson;
import benchtwin.bench.StockViews;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Parts of the book, printed. */
final class StockPage {

    private static final Set<String> SAID_ELSEWHERE = Set.of("model", "category", "number", "hand", "place", "count", "retired_why");
    private static final int MOST_TAG = 24;
    private static final int MOST_WHAT = 34;
    private static final int MOST_PLACE = 22;

    private final OutputOptions output;
    private final PrintWriter out;

    StockPage(OutputOptions output, PrintWriter out) {
        this.output = output;
        this.out = out;
    }

    void list(List<StockViews.Part> parts, boolean anyInTheBook) {
        if (output.isJson()) {
            out.println(StockBookJson.list(parts));
            return;
        }
        Page page = output.page(out);
        int tag = widest(parts, part -> part.tag().length(), MOST_TAG);
        int what = widest(parts, part -> part.what().length(), MOST_WHAT);
        int place = widest(parts, part -> PartWords.lies(part).length(), MOST_PLACE);
        String row = "%-6s  %-" + tag + "s  %-" + what + "s  %-" + place + "s  %s";
        int rest = Page.WIDTH - "weight".length() - tag - what - place - 4 * 2;
        for (StockViews.Part part : parts) {
            page.line(row, part.kind(), page.cut(part.tag(), tag), page.cut(part.what(), what),
                page.cut(PartWords.lies(part), place), page.cut(PartWords.stands(part), rest));
        }
        if (parts.isEmpty()) {
            page.line(anyInTheBook ? "No part of the book is like that."
                : "The book has no parts yet. Read them in with: benchtwin stock import DIR");
        } else {
            page.line("%d part%s.", parts.size(), parts.size() == 1 ? "" : "s");
        }
    }

    private static int widest(List<StockViews.Part> parts, ToIntFunction<StockViews.Part> width, int most) {
        return Math.max(1, Math.min(most, parts.stream().mapToInt(width).max().orElse(1)));
    }

    void show(StockViews.PartHistory shown) {
        if (output.isJson()) {
            out.println(StockBookJson.text(shown));
            return;
        }
        Page page = output.page(out);
        StockViews.Part part = shown.part();
        page.wrapped("", "%s %s   %s".formatted(part.kind(), part.tag(), part.what()));
        page.wrapped("", Stream.of(part.standing().equals("in stock") ? "in stock" : "", PartWords.lies(part), PartWords.stands(part))
            .filter(words -> !words.isEmpty()).collect(Collectors.joining(", ")));
        page.blank();
        if (!part.readings().isEmpty()) {
            page.line("  %-22s %-14s %-11s %s", "measures", "", "±", "reading");
        }
        for (StockViews.PartReading reading : part.readings()) {
            page.wrapped(String.format(Locale.ROOT, "  %-22s %-14s %-11s ", ColumnText.name(reading.quantity()),
                ColumnText.value(reading.quantity(), reading.value()), reading.uncertainty().isPresent()
                    ? ColumnText.size(reading.quantity(), reading.uncertainty().getAsDouble()) : ""), PartWords.how(reading));
        }
        part.facts().entrySet().stream().filter(fact -> !SAID_ELSEWHERE.contains(fact.getKey())).forEach(fact ->
            page.wrapped(String.format(Locale.ROOT, "  %-22s ", ColumnText.name(fact.getKey())),
                ColumnText.value(fact.getKey(), fact.getValue())));
        page.blank();
        shown.history().forEach(line -> page.wrapped("  ", line));
        shown.notes().forEach(note -> page.wrapped("Note: ", note));
    }

    void tally(List<StockViews.Tally> tallies) {
        if (output.isJson()) {
            out.println(StockBookJson.tallies(tallies));
            return;
        }
        Page page = output.page(out);
        if (tallies.isEmpty()) {
            page.line("The book has no such parts. Read them in with: benchtwin stock import DIR");
            return;
        }
        page.line("%-7s %-48s %6s %9s %9s %8s", "", "", "free", "promised", "built in", "retired");
        for (Map.Entry<String, List<StockViews.Tally>> kind : tallies.stream().collect(Collectors.groupingBy(
            StockViews.Tally::kind, LinkedHashMap::new, Collectors.toList())).entrySet()) {
            kind.getValue().forEach(one -> row(page, one.kind(), one.what(), one.free(), one.promised(), one.builtIn(),
                one.retired()));
            row(page, "", "all " + kind.getKey() + "s", sum(kind.getValue(), StockViews.Tally::free),
                sum(kind.getValue(), StockViews.Tally::promised), sum(kind.getValue(), StockViews.Tally::builtIn),
                sum(kind.getValue(), StockViews.Tally::retired));
        }
    }

    private static int sum(List<StockViews.Tally> tallies, ToIntFunction<StockViews.Tally> count) {
        return tallies.stream().mapToInt(count).sum();
    }

    private static void row(Page page, String kind, String what, int free, int promised, int builtIn, int retired) {
        page.line("%-7s %-48s %6s %9s %9s %8s", kind, page.cut(what, 48), some(free), some(promised), some(builtIn), some(retired));
    }

    private static String some(int count) {
        return count == 0 ? "·" : Integer.toString(count);
    }
}
