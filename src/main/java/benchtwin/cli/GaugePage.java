package benchtwin.cli;

import benchtwin.bench.ColumnText;
import benchtwin.bench.GaugeBook;
import benchtwin.bench.GaugeCheck;
import benchtwin.gauge.Finding;
import benchtwin.gauge.Offset;
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
                figures.offsetFrom().map(other -> "reads %s ±%s more than %s".formatted(signed(figures.offset()),
                    number(figures.offsetU()), other)).orElse("")));
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
            repeatability(one.getKey(), one.getValue());
            checked.offsets().getOrDefault(one.getKey(), List.of()).forEach(offset -> offset(one.getKey(), offset));
        }
        page.blank();
        if (accepted.isPresent()) {
            page.line("%d figure%s used from now on.", accepted.get(), accepted.get() == 1 ? " is" : "s are");
        } else if (!checked.isEmpty()) {
            page.wrapped("", "Proposed only: nothing of it is used until it is accepted, with --accept, offsets with --against NAME.");
        }
    }

    private void repeatability(String column, Finding<Repeatability> finding) {
        if (finding.found().isEmpty()) {
            page.wrapped("   repeats   ", finding.whyNot().replace(column, ColumnText.name(column)) + ".");
            return;
        }
        Repeatability found = finding.found().get();
        page.wrapped("   repeats   ", "to ±%s (95 times in 100 between %s and %s), from %d readings of %d part%s".formatted(
            number(found.standardUncertainty()), number(found.lowest()), number(found.highest()), found.readings(), found.parts(),
            found.parts() == 1 ? "" : "s"));
        found.largest().filter(largest -> largest.looksLikeASlip()).ifPresent(slip -> page.wrapped("   look at   ",
            "%s read %s on %s: %s from its fellows, which looks like a slip%s".formatted(slip.reading().part(),
                Figures.fixed(slip.reading().value(), 2), slip.reading().day(), Figures.fixed(slip.deviation(), 2),
                slip.oneOfTwo() ? " of one of the two" : "")));
    }

    private void offset(String column, Finding<Offset> finding) {
        if (finding.found().isEmpty()) {
            page.wrapped("   offset    ", finding.whyNot().replace(column, ColumnText.name(column)) + ".");
            return;
        }
        Offset found = finding.found().get();
        page.wrapped("   offset    ", "reads %s ±%s more than %s, from %d part%s read on both%s".formatted(
            signed(OptionalDouble.of(found.value())), number(found.standardUncertainty()), found.reference(), found.parts(),
            found.parts() == 1 ? "" : "s", found.agreement().consistent() ? "" : "; the parts do not agree, which the uncertainty "
                + "allows for"));
    }

    private static String number(double value) {
        return Figures.fixed(value, 3).replaceAll("0$", "");
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : "";
    }

    private static String signed(OptionalDouble value) {
        String text = number(Math.abs(value.orElse(0)));
        return (value.orElse(0) < 0 ? "−" : "+") + text;
    }
}
