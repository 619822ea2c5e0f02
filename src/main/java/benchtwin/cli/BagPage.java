package benchtwin.cli;

import benchtwin.bench.BagGrid;
import benchtwin.bench.Cautions;
import benchtwin.bench.Regrip;
import benchtwin.club.Grip;
import benchtwin.club.Hazard;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.ValueComparison;
import benchtwin.match.Way;
import benchtwin.measure.Reading;
import benchtwin.measure.SwingWeightText;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A player's bag as one grid. */
final class BagPage {

    private static final List<Quantity> COLUMNS = List.of(Quantity.LOFT, Quantity.LIE, Quantity.FACE, Quantity.BOUNCE,
        Quantity.LENGTH, Quantity.SWING_WEIGHT, Quantity.FREQUENCY, Quantity.TOTAL_MASS);
    private static final String NOT_READ = "·";

    private final Page page;

    BagPage(Page page) {
        this.page = page;
    }

    void print(BagGrid.Bag bag) {
        page.line("The bag of %s", bag.player());
        page.blank();
        StringBuilder heading = new StringBuilder("%-13s ".formatted("club"));
        COLUMNS.forEach(quantity -> heading.append("%8s ".formatted(column(quantity))));
        page.line("%s", heading + "read on");
        bag.clubs().forEach(this::club);
        page.blank();
        page.wrapped("", "A club's first line is what it measures now, the second what it is off its last accepted record by, "
            + "as far as it was read since. An asterisk: by more than measuring explains, twice the standard uncertainty of the "
            + "difference. A dot: not read.");
        bag.remarks().forEach(remark -> page.wrapped("", remark + "."));
        plans(bag);
    }

    private static String column(Quantity quantity) {
        return switch (quantity) {
            case SWING_WEIGHT -> "swing";
            case FREQUENCY -> "cpm";
            case TOTAL_MASS -> "mass g";
            default -> quantity.word();
        };
    }

    private void club(BagGrid.Club club) {
        StringBuilder now = new StringBuilder("%-13s ".formatted(cut(club.tag())));
        StringBuilder off = new StringBuilder("%-13s ".formatted("  " + cut(club.what())));
        boolean any = false;
        for (Quantity quantity : COLUMNS) {
            Optional<ValueComparison> value = Optional.ofNullable(club.values().get(quantity));
            now.append("%8s ".formatted(value.map(one -> now(quantity, one)).orElse(NOT_READ)));
            String difference = value.flatMap(ValueComparison::difference).filter(one -> one.standardUncertainty() > 0)
                .map(one -> plain(quantity, one.value()) + (one.isBeyondUncertainty() ? "*" : "")).orElse("");
            any |= !difference.isEmpty();
            off.append("%8s ".formatted(difference));
        }
        page.line("%s", now + club.readOn().map(LocalDate::toString).orElse("never"));
        page.line("%s", any ? off.toString().stripTrailing() : "  " + cut(club.what()));
    }

    private static String now(Quantity quantity, ValueComparison value) {
        OptionalDouble read = value.b().isPresent() ? value.b() : value.a();
        if (read.isEmpty()) {
            return NOT_READ;
        }
        return QuantityText.value(quantity, read.getAsDouble()).replaceAll(" (in|cpm|g)$", "");
    }

    private static String plain(Quantity quantity, double difference) {
        return QuantityText.difference(quantity, difference).replaceAll(" (cpm|g|pt)$", "").replace(" mm", "mm");
    }

    private void plans(BagGrid.Bag bag) {
        List<BagGrid.Club> drifted = bag.clubs().stream().filter(club -> !club.drifted().isEmpty()).toList();
        page.blank();
        if (drifted.isEmpty()) {
            page.line("Nothing has drifted by more than measuring explains.");
            return;
        }
        page.line("To put right");
        Set<Hazard> hazards = new LinkedHashSet<>();
        double minutes = 0;
        for (BagGrid.Club club : drifted) {
            String what = String.join(", ", club.drifted().stream().map(quantity -> QuantityText.name(quantity) + " "
                + QuantityText.difference(quantity, club.values().get(quantity).difference().orElseThrow().value())).toList());
            if (club.plan().isEmpty()) {
                page.wrapped("   %-13s ".formatted(cut(club.tag())), "%s: %s.".formatted(what, club.cannot().orElse("no way found")));
                continue;
            }
            Way way = club.plan().get();
            page.wrapped("   %-13s ".formatted(cut(club.tag())), "%s, %s.".formatted(what,
                Figures.time(way.option().plan().readyMinutes())));
            way.option().plan().steps().forEach(step -> page.wrapped("      ", step.words()));
            RulesLines.print(page, "      ", way.option().rulesWarnings());
            hazards.addAll(way.option().plan().hazards());
            minutes += way.option().plan().minutes();
        }
        page.wrapped("", "%s of bench work. Then read again and enter it with --accept.".formatted(Figures.time(minutes)));
        Cautions.ofHazards(hazards).forEach(caution -> page.wrapped("Caution: ", caution));
    }

    void print(Regrip.Plan plan, Optional<String> job) {
        page.line("New grips for %s: %s", plan.player(), plan.model());
        page.blank();
        page.line("%-16s %-22s %-14s %9s %9s  %s", "club", "grip now", "grip then", "mass", "swing", "then");
        for (Regrip.Club club : plan.clubs()) {
            page.line("%-16s %-22s %-14s %9s %9s  %s", club.club(), club.old().map(BagPage::grip).orElse("not on record"),
                club.fresh().map(grip -> grip.tag() + grams(grip)).orElse("none left"),
                club.massChangeG().isPresent() ? QuantityText.difference(Quantity.TOTAL_MASS, club.massChangeG().getAsDouble()) : NOT_READ,
                club.swingChange().isPresent() ? QuantityText.difference(Quantity.SWING_WEIGHT, club.swingChange().getAsDouble())
                    : NOT_READ, club.swingAfter().isPresent() ? SwingWeightText.format(club.swingAfter().getAsDouble()).orElse("") : "");
        }
        page.blank();
        page.wrapped("", "%s of bench work; the last grip is dry %s after it is on.".formatted(Figures.time(plan.minutes()),
            Figures.time(plan.dryMinutes())));
        plan.notes().forEach(note -> page.wrapped("", note + "."));
        Cautions.ofHazards(Set.of(Hazard.SOLVENT)).forEach(caution -> page.wrapped("Caution: ", caution));
        job.ifPresent(number -> page.line("Promised to job %s. See it with: benchtwin job show %s", number, number));
    }

    private static String grip(Grip grip) {
        return cut(grip.model()) + grams(grip);
    }

    private static String grams(Grip grip) {
        return grip.massG().map(Reading::value).map(massG -> " %s g".formatted(Figures.fixed(massG, 1))).orElse("");
    }

    private static String cut(String text) {
        return text.length() <= 13 ? text : text.substring(0, 12) + "…";
    }
}
