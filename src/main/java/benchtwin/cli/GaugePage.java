package benchtwin.cli;

import benchtwin.bench.ColumnText;
import benchtwin.bench.GaugeBook;
import benchtwin.bench.GaugeCheck;
import benchtwin.bench.GaugeWords;
import benchtwin.gauge.Finding;
import benchtwin.gauge.Repeatability;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Gauges of the book, printed. */
final class GaugePage {

    private final Page page;

    GaugePage(Page page) {
        this.page = page;
    }

    void list(List<GaugeBook.Standing> gauges) {
        if (gauges.isEmpty()) {
            page.line("No gauges yet. Put one in with: benchtwin gauge add NAME --kind …");
        }
        for (GaugeBook.Standing gauge : gauges) {
            page.wrapped("", "%s%s%s%s".formatted(gauge.name(), gauge.kind().map(kind -> ", " + kind).orElse(""),
                gauge.checkedOn().map(day -> ", checked " + day).orElse(""), gauge.isDue() ? ", a check is due" : ""));
            gauge.figures().forEach((column, figures) -> page.line("   %-18s %-14s %-10s %s", ColumnText.name(column),
                figures.uncertainty().isPresent() ? "±" + number(figures.uncertainty()) : "",
                figures.uncertainty().isEmpty() ? "" : figures.isAccepted() ? "found" : "stated",
                GaugeWords.offset(figures)));
        }
    }

    void checked(GaugeCheck.Checked checked, Optional<Integer> accepted) {
        page.line("Gauge %s", checked.gauge());
        if (checked.repeatability().isEmpty()) {
            page.line("Nothing in the book was read on it.");
        }
        for (Map.Entry<String, Finding<Repeatability>> one : checked.repeatability().entrySet()) {
            page.blank();
            page.line("%s", ColumnText.name(one.getKey()));
            page.wrapped("   repeats   ", GaugeWords.repeats(one.getKey(), one.getValue()));
            GaugeWords.slip(one.getValue()).ifPresent(slip -> page.wrapped("   look at   ", slip));
            checked.offsets().getOrDefault(one.getKey(), List.of()).forEach(offset -> page.wrapped("   offset    ",
                GaugeWords.offset(one.getKey(), offset)));
        }
        page.blank();
        if (accepted.isPresent()) {
            page.line("%d figure%s used from now on.", accepted.get(), accepted.get() == 1 ? " is" : "s are");
        } else if (!checked.isEmpty()) {
            page.wrapped("", "Proposed only: nothing of it is used until it is accepted, with --accept, offsets with --against NAME.");
        }
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? GaugeWords.number(value.getAsDouble()) : "";
    }
}
