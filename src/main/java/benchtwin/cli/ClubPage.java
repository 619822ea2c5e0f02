package benchtwin.cli;

import benchtwin.bench.ClubBook;
import benchtwin.bench.ClubViews;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
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

    void show(ClubViews.Club club) {
        page.line("%s   %s%s, %s-handed, %s", club.tag(), club.fact("category").orElse("club"),
            club.fact("number").map(number -> " " + number).orElse(""), club.fact("hand").orElse("?"),
            club.fact("player").orElse("nobody's"));
        page.line("%s", club.fact("state").orElse("no state recorded"));
        facts("", club, ClubBook.PARTS);
        facts("", club, ClubBook.DETAILS);
        page.blank();
        if (club.values().isEmpty()) {
            page.line("Nothing was read of it yet. Enter readings with: benchtwin club record %s loft=…", club.tag());
        } else {
            page.line("  %-13s %-12s %-8s %-11s %-12s %-8s %s", "", "measures", "±", "read on", "should", "off by", "reading");
        }
        for (Map.Entry<Quantity, ClubViews.ReadValue> one : club.values().entrySet()) {
            value(one.getKey(), one.getValue(), Optional.ofNullable(club.accepted().get(one.getKey())));
        }
        club.notes().forEach(note -> page.wrapped("Note: ", note));
    }

    private void value(Quantity quantity, ClubViews.ReadValue value, Optional<ClubViews.ReadValue> should) {
        Optional<Double> off = should.map(accepted -> value.value() - accepted.value());
        page.line("  %-13s %-12s %-8s %-11s %-12s %-8s %s", QuantityText.name(quantity), QuantityText.value(quantity, value.value()),
            QuantityText.number(quantity, value.uncertainty()), value.day().toString(),
            should.map(accepted -> QuantityText.value(quantity, accepted.value())).orElse(""),
            off.map(apart -> QuantityText.difference(quantity, apart)).orElse(""),
            value.readings().stream().map(String::valueOf).collect(Collectors.joining(", "))
                + value.gauge().map(gauge -> " on " + gauge).orElse(""));
    }

    private void facts(String lead, ClubViews.Club club, List<String> names) {
        String line = names.stream().filter(name -> club.fact(name).isPresent())
            .map(name -> name.replace('_', ' ') + " " + club.fact(name).orElseThrow()).collect(Collectors.joining(", "));
        if (!line.isEmpty()) {
            page.wrapped(lead, line);
        }
    }

    void compared(ClubViews.Compared compared) {
        new SideBySidePage(page, compared.values()).print();
        if (!compared.facts().isEmpty()) {
            page.blank();
            compared.facts().forEach((name, pair) -> page.line("%-18s %-34s %s", name.replace('_', ' '), or(pair.get(0)),
                or(pair.get(1))));
        }
        compared.remarks().forEach(remark -> page.wrapped("", remark + "."));
    }

    private static String or(String text) {
        return text.isEmpty() ? "not recorded" : text;
    }
}
