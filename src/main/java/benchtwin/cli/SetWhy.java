package benchtwin.cli;

import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import benchtwin.match.Ranked;
import benchtwin.sets.ClubOfSet;
import benchtwin.sets.CostLine;
import benchtwin.sets.PlayerSet;
import benchtwin.sets.SetAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What each rule costs each group, what each quantity costs each club, and what is out of tolerance. */
final class SetWhy {

    private static final String INDENT = "   ";
    private static final int NAME_WIDTH = 16;
    /** A quantity's column, and what the page leaves for them and the name. */
    private static final int COLUMN = 8;
    private static final int WIDTH_LEFT = Page.WIDTH - INDENT.length() - 2 * COLUMN;

    private final Page page;
    private final SetAnswer plan;

    SetWhy(Page page, SetAnswer plan) {
        this.page = page;
        this.plan = plan;
    }

    void print() {
        rules();
        plan.players().forEach(this::clubs);
        outOfTolerance();
    }

    private void rules() {
        page.blank();
        page.line("What each rule costs, in squared tolerances");
        Map<String, List<CostLine>> groups = plan.why().stream()
            .collect(Collectors.groupingBy(line -> line.player() + ", " + line.group(), LinkedHashMap::new, Collectors.toList()));
        groups.entrySet().stream().sorted(Comparator.comparingDouble(entry -> -total(entry.getValue())))
            .forEach(entry -> page.wrapped(INDENT, "%s %s: %s".formatted(entry.getKey(),
                Figures.fixed(total(entry.getValue()), 3), entry.getValue().stream()
                    .map(line -> line.rule() + Page.NO_BREAK + Figures.fixed(line.cost(), 3))
                    .collect(Collectors.joining(", ")))));
        page.line("%sIn all: %s", INDENT, Figures.fixed(total(plan.why()), 3));
    }

    private static double total(List<CostLine> lines) {
        return lines.stream().mapToDouble(CostLine::cost).sum();
    }

    private void clubs(PlayerSet set) {
        Map<Ranked, String> names = new LinkedHashMap<>();
        set.clubs().forEach(club -> club.build().ifPresent(build -> names.put(build, club.wanted().club())));
        if (names.isEmpty()) {
            return;
        }
        List<Quantity> columns = List.of(Quantity.values()).stream()
            .filter(q -> names.keySet().stream().anyMatch(build -> build.terms().getOrDefault(q, 0.0) > 0)).toList();
        page.blank();
        page.wrapped("", set.player() + ": what each quantity adds to miss², the work, and both together");
        WhyTable.rows(page, columns, List.copyOf(names.keySet()), names::get,
            Math.min(NAME_WIDTH, WIDTH_LEFT - COLUMN * columns.size()));
    }

    private void outOfTolerance() {
        List<String> lines = new ArrayList<>();
        for (PlayerSet set : plan.players()) {
            for (ClubOfSet club : set.clubs()) {
                club.build().filter(build -> !build.isWithinTolerance()).ifPresent(build -> lines.add("%s's %s: %s".formatted(
                    set.player(), club.wanted().club(), build.outOfTolerance().stream().map(q -> beyond(club, build, q))
                        .collect(Collectors.joining(", ")))));
            }
        }
        if (!lines.isEmpty()) {
            page.blank();
            page.line("Out of tolerance");
            lines.forEach(line -> page.wrapped(INDENT, line));
        }
    }

    private static String beyond(ClubOfSet club, Ranked build, Quantity quantity) {
        Wanted wanted = club.target().orElseThrow().of(quantity).orElseThrow();
        double off = build.difference().get(quantity);
        return "%s %s (%s past its tolerance)".formatted(Figures.name(quantity), Figures.difference(quantity, off),
            Figures.difference(quantity, Math.abs(off) - wanted.tolerance()).replace("+", ""));
    }
}
