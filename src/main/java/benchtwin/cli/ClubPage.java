package benchtwin.cli;

import benchtwin.bench.ClubBook;
import benchtwin.bench.ClubViews;
import benchtwin.bench.ColumnText;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A club of the book, printed. */
final class ClubPage {

    private final Page page;

    ClubPage(Page page) {
        this.page = page;
    }

    /**
     * Shows a club.
     * @param asOf     the day it is looked at; empty for today
     * @param knownNow whether that is as it is known now
     */
    void show(ClubViews.Club club, String asOf, boolean knownNow) {
        page.wrapped("", "%s   %s%s, %s-handed, %s%s".formatted(club.tag(), club.fact("category").orElse("club"),
            club.fact("number").map(number -> " " + number).orElse(""), club.fact("hand").orElse("?"),
            club.fact("player").orElse("nobody's"), club.fact("state").map(state -> ", " + state).orElse("")));
        if (!asOf.isEmpty()) {
            page.line(knownNow ? "As it was on %s, as it is known now" : "As it was known on %s", asOf);
        }
        facts(club, ClubBook.PARTS);
        facts(club, ClubBook.DETAILS);
        facts(club, club.facts().keySet().stream().filter(name -> name.startsWith("x:")).toList());
        page.blank();
        if (club.values().isEmpty()) {
            page.line(asOf.isEmpty() ? "Nothing is read of it. Enter readings with: benchtwin club record %s loft=…"
                : "Nothing was read of it by then.", club.tag());
        } else {
            page.line("  %-13s %-12s %-8s %-11s %-24s %s", "", "measures", "±", "read on", "reading", "should");
        }
        for (Map.Entry<Quantity, ClubViews.ReadValue> one : club.values().entrySet()) {
            value(one.getKey(), one.getValue(), Optional.ofNullable(club.accepted().get(one.getKey())));
        }
        club.unread().forEach(quantity -> page.line("  %-13s changed by the work on it and not read since",
            QuantityText.name(quantity)));
        if (!club.values().isEmpty()) {
            page.blank();
            page.wrapped("Read ", how(club));
        }
        club.notes().forEach(note -> page.wrapped("Note: ", note));
    }

    private void value(Quantity quantity, ClubViews.ReadValue value, Optional<ClubViews.ReadValue> should) {
        Optional<ClubViews.ReadValue> other = should.filter(accepted -> !accepted.readings().equals(value.readings()));
        page.line("  %-13s %-12s %-8s %-11s %-24s %s", QuantityText.name(quantity), QuantityText.value(quantity, value.value()),
            QuantityText.number(quantity, value.uncertainty()), value.day().toString(),
            page.cut(value.readings().stream().map(String::valueOf).collect(Collectors.joining(", "))
                + value.gauge().map(gauge -> " on " + gauge).orElse(""), 24),
            other.map(accepted -> "%s, off by %s".formatted(QuantityText.value(quantity, accepted.value()),
                QuantityText.difference(quantity, value.value() - accepted.value()))).orElse(""));
    }

    /** How the values were read, each way once. */
    private static String how(ClubViews.Club club) {
        Map<String, List<String>> ways = new LinkedHashMap<>();
        club.values().forEach((quantity, value) -> {
            String way = ColumnText.condition(value.condition());
            if (!way.isEmpty()) {
                ways.computeIfAbsent(way, key -> new ArrayList<>()).add(QuantityText.name(quantity));
            }
        });
        return ways.isEmpty() ? "without a note of how." : ways.entrySet().stream()
            .map(way -> String.join(", ", way.getValue()) + " " + way.getKey()).collect(Collectors.joining("; ")) + ".";
    }

    private void facts(ClubViews.Club club, List<String> names) {
        String line = names.stream().filter(name -> club.fact(name).filter(text -> !text.equals("0")).isPresent())
            .map(name -> ColumnText.fact(name, club.fact(name).orElseThrow())).collect(Collectors.joining(", "));
        if (!line.isEmpty()) {
            page.wrapped("", line);
        }
    }

    void compared(ClubViews.Compared compared) {
        new SideBySidePage(page, compared.values()).print();
        if (!compared.facts().isEmpty()) {
            page.blank();
            compared.facts().forEach((name, pair) -> page.line("   %-20s %-36s %s", ColumnText.name(name),
                page.cut(or(name, pair.get(0)), 36), page.cut(or(name, pair.get(1)), 36)));
        }
        compared.remarks().forEach(remark -> page.wrapped("", remark + "."));
    }

    private static String or(String name, String text) {
        return text.isEmpty() ? "not recorded" : ColumnText.value(name, text);
    }
}
