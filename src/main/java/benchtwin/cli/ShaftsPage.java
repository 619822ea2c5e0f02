package benchtwin.cli;

import benchtwin.bench.BuildIdentity;
import benchtwin.bench.Cautions;
import benchtwin.bench.OptionWords;
import benchtwin.bench.ShaftsWords;
import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import benchtwin.match.ShaftAnswer;
import benchtwin.match.ShaftPick;
import java.util.List;
import java.util.OptionalInt;
import java.util.Locale;
import java.util.stream.Collectors;

/** A choice of shafts as a bench sheet. */
final class ShaftsPage {

    private static final String INDENT = "   ";
    private static final int NAME_WIDTH = 9;
    private static final List<Quantity> SURE = List.of(Quantity.LENGTH, Quantity.SWING_WEIGHT, Quantity.FREQUENCY,
        Quantity.TORQUE, Quantity.SHAFT_MASS, Quantity.SHAFT_BALANCE);

    private final Page page;
    private final ShaftAnswer answer;
    private final boolean why;

    ShaftsPage(Page page, ShaftAnswer answer, boolean why) {
        this.page = page;
        this.answer = answer;
        this.why = why;
    }

    void print(List<String> remarks) {
        header();
        if (answer.picks().isEmpty()) {
            page.blank();
            page.line("No shaft in stock fits.");
        } else {
            table();
            details();
        }
        answer.emptyRungs().forEach(rung -> page.line("No shaft is left for the rung at %s cpm.", ShaftsWords.rung(rung)));
        if (why && !answer.picks().isEmpty()) {
            WhyTable.print(page, answer.target(), answer.picks().stream().map(ShaftPick::option).toList(),
                option -> option.shaft().tag(), NAME_WIDTH);
        }
        below();
        footer(remarks);
    }

    private void header() {
        page.line("%s", ShaftsWords.title(answer));
        page.wrapped("", ShaftsWords.wanted(answer));
        ShaftsWords.carried(answer).ifPresent(line -> page.wrapped("", line));
        page.wrapped("", ShaftsWords.headWork(answer));
        answer.notes().forEach(note -> page.wrapped("Note: ", note + "."));
        if (!answer.picks().isEmpty() && !answer.hasSuitable()) {
            page.blank();
            page.wrapped("", "No shaft is inside every tolerance; each says what it misses.");
        }
    }

    private boolean isLadder() {
        return ShaftsWords.isLadder(answer);
    }

    private void table() {
        page.blank();
        page.line("%-5s %-9s %-7s %-6s %-12s %-23s %-6s %-5s %-6s %-5s %s", isLadder() ? "rung" : "", "shaft", "tip",
            "butt", "cpm", "", "mass", "twist", "bal.", "swing", "first");
        for (ShaftPick pick : answer.picks()) {
            Ranked option = pick.option();
            Wanted wanted = answer.target().of(Quantity.FREQUENCY).orElseThrow();
            double cpm = option.predicted().get(Quantity.FREQUENCY);
            double u = option.uncertainty().get(Quantity.FREQUENCY);
            page.line("%-5s %-9s %-7s %-6s %-12s %s %-6s %-5s %-6s %-5s %s",
                isLadder() ? ShaftsWords.rung(pick.rungCpm()) : Integer.toString(option.rank()), option.shaft().tag(),
                Figures.trim(pick.tipTrimMm()), pick.buttCutMm() == 0 ? "·" : Figures.millimetres(pick.buttCutMm()),
                Figures.fixed(cpm, 1) + " ±" + Figures.fixed(u, 1),
                ToleranceStrip.of((cpm - wanted.value() - pick.rungCpm()) / wanted.tolerance(), u / wanted.tolerance()),
                cell(option, Quantity.SHAFT_MASS, 1), cell(option, Quantity.TORQUE, 1),
                cell(option, Quantity.SHAFT_BALANCE, 2), cell(option, Quantity.SWING_WEIGHT, 1),
                Figures.chance(option.firstTimeRight().all()));
        }
        page.wrapped(INDENT, "tip (inches, or mm where so marked) and butt are what is to be cut off; mass (g) and "
            + "balance point (in from its butt) of the trimmed shaft, its twist under 1 ft·lbf; swing weight of the club; first: the chance that length and "
            + "frequency read inside tolerance the first time. The strip is the frequency against "
            + (isLadder() ? "its rung." : "the target."));
        ties();
    }

    private void ties() {
        List<String> ties = answer.picks().get(0).option().tiedWith();
        if (!ties.isEmpty()) {
            page.wrapped(INDENT, "A tie with %s: %s. What was measured cannot tell them apart.".formatted(
                answer.picks().get(0).option().shaft().tag(), String.join(", ", ties)));
        }
    }

    private static String cell(Ranked option, Quantity quantity, int decimals) {
        Double value = option.predicted().get(quantity);
        if (value == null) {
            return "?";
        }
        String text = Figures.value(quantity, value);
        return quantity == Quantity.SWING_WEIGHT ? text : text.split(" ")[0].replace("°", "");
    }

    private void details() {
        page.blank();
        for (ShaftPick pick : answer.picks()) {
            Ranked option = pick.option();
            String lead = String.format(Locale.ROOT, "%-9s ", option.shaft().tag());
            page.wrapped(lead, "%s, %s. Miss %s tol, ready in %s.%s".formatted(option.shaft().model(),
                option.shaft().keeping().place().orElse("place not recorded"), Figures.fixed(option.miss(), 2),
                Figures.time(option.plan().readyMinutes()), pick.rawCpm().isEmpty() ? ""
                    : " As it lies %s cpm raw.".formatted(Figures.fixed(pick.rawCpm().getAsDouble(), 1))));
            String indent = " ".repeat(lead.length());
            OptionWords.outOfTolerance(option).ifPresent(out -> page.wrapped(indent, "Out of tolerance: " + out + "."));
            pick.marks().forEach(mark -> page.wrapped(indent, capital(mark) + "."));
            RulesLines.print(page, indent, option.rulesWarnings());
            if (why) {
                page.wrapped(indent, "Sure to: " + SURE.stream().filter(option.uncertainty()::containsKey)
                    .map(q -> Figures.name(q) + " ±" + sure(q, option.uncertainty().get(q)))
                    .collect(Collectors.joining(", ")) + " (one standard uncertainty).");
                StepLines.print(page, indent, option.plan());
            }
        }
        page.wrapped(INDENT, "Raw: the bare shaft, 5 in in the clamp, 205 g on the tip; readings taken otherwise are carried "
            + "there.");
        if (!why) {
            page.line("%s--why shows the steps of each.", INDENT);
        }
    }

    private static String sure(Quantity quantity, double u) {
        return quantity == Quantity.TORQUE ? Figures.fixed(u, 2) + "°" : Figures.fixed(u, 1) + " " + quantity.unit();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private void below() {
        if (answer.belowTheLine().isEmpty()) {
            return;
        }
        page.blank();
        page.line("Below the line");
        for (MatchAnswer.Below below : answer.belowTheLine()) {
            Ranked option = below.option();
            OptionalInt rank = below.nearerThan(answer.nearest());
            page.wrapped(INDENT, "%s   %s   %s   miss %s tol: %s%s".formatted(option.shaft().tag(),
                option.shaft().keeping().place().orElse("place not recorded"),
                Figures.value(Quantity.FREQUENCY, option.predicted().get(Quantity.FREQUENCY)),
                Figures.fixed(option.miss(), 2), below.reason(),
                rank.isPresent() ? "; nearer than number " + rank.getAsInt() : ""));
        }
    }

    private void footer(List<String> remarks) {
        page.blank();
        page.wrapped("", ShaftsWords.considered(answer));
        if (answer.ruledOut().keySet().stream().anyMatch(reason -> reason.contains("its clamp"))) {
            page.wrapped("", "--assume-clamp 5 takes readings whose clamp was never recorded as read in 5 in, and marks them.");
        }
        RulesLines.whoDecides(page, answer.picks().stream().map(ShaftPick::option));
        Cautions.of(answer).forEach(caution -> page.wrapped("Caution: ", caution));
        remarks.forEach(remark -> page.wrapped("Files: ", remark));
        page.line("benchtwin %s", BuildIdentity.text());
    }
}
