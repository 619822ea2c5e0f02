package benchtwin.cli;

import benchtwin.bench.BuildIdentity;
import benchtwin.bench.Cautions;
import benchtwin.bench.ChangeService;
import benchtwin.bench.ChangeWords;
import benchtwin.bench.OptionWords;
import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import benchtwin.match.ChangeAnswer;
import benchtwin.match.Ranked;
import benchtwin.match.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The ways to change a club as a bench sheet: what is asked, each way with its steps and its before and after. */
final class ChangePage {

    private static final String INDENT = "   ";

    private final Page page;
    private final ChangeService.Answer answer;
    private final ChangeAnswer change;

    ChangePage(Page page, ChangeService.Answer answer) {
        this.page = page;
        this.answer = answer;
        this.change = answer.change();
    }

    void print(List<String> remarks) {
        header();
        for (Way way : change.ways()) {
            page.blank();
            way(way);
        }
        if (change.more() > 0) {
            page.blank();
            page.line(change.more() == 1 ? "1 more that takes as many steps or more: --top shows it."
                : "%d more that take as many steps or more: --top shows them.", change.more());
        }
        shortfalls();
        page.blank();
        RulesLines.whoDecides(page, change.ways().stream().map(Way::option));
        Cautions.of(change).forEach(caution -> page.wrapped("Caution: ", caution));
        remarks.forEach(remark -> page.wrapped("Files: ", remark));
        page.line("benchtwin %s", BuildIdentity.text());
    }

    private void header() {
        page.wrapped("", ChangeWords.club(answer));
        page.wrapped("Asked: ", ChangeWords.asked(change));
        change.notes().forEach(note -> page.wrapped("Note: ", note + "."));
        if (change.alreadySo()) {
            page.line("The club measures that already: nothing to do.");
        } else if (change.ways().isEmpty()) {
            page.line("Nothing in the workshop reaches it; below is how near each thing comes.");
        } else {
            page.wrapped("", "Fewest steps first, then what drags least along (miss).");
        }
    }

    private void way(Way way) {
        Ranked option = way.option();
        page.line("%-2d %s   miss %s tol   ready in %s%s", option.rank(), ChangeWords.levers(way), Figures.fixed(option.miss(), 2),
            Figures.time(option.plan().readyMinutes()),
            option.plan().isUndoneFreely() ? "   undone freely" : "");
        OptionWords.outOfTolerance(option).ifPresent(out -> page.wrapped(INDENT + "Drags out of tolerance: ", out));
        StepLines.print(page, INDENT, option.plan());
        table(way);
        page.wrapped(INDENT, ChangeWords.chance(change, option));
        RulesLines.print(page, INDENT, option.rulesWarnings());
    }

    private void table(Way way) {
        Ranked option = way.option();
        page.line("%s%-14s %-12s %-12s %-23s  %s", INDENT, "", "now", "after", "", "moves");
        List<String> still = new ArrayList<>();
        boolean anyWorkedOut = false;
        for (Quantity quantity : Quantity.values()) {
            Double before = change.now().get(quantity);
            Double after = option.predicted().get(quantity);
            if (before == null || after == null) {
                continue;
            }
            String moves = Figures.difference(quantity, after - before);
            Wanted wanted = change.target().of(quantity).orElse(null);
            if (wanted == null && moves.equals("0")) {
                still.add(Figures.name(quantity));
                continue;
            }
            boolean read = change.measured().contains(quantity);
            anyWorkedOut |= !read;
            String strip = wanted == null ? "" : ToleranceStrip.of(wanted.deviation(after),
                option.uncertainty().get(quantity) / wanted.tolerance(), wanted.deviation(before));
            page.line("%s%-14s %-12s %-12s %-23s  %s%s", INDENT, Figures.name(quantity),
                Figures.value(quantity, before) + (read ? "" : "*"), Figures.value(quantity, after), strip, moves,
                change.request().wished().containsKey(quantity) ? "   asked" : "");
        }
        if (!way.grip().equals(change.request().club().grip())) {
            page.line("%s%-14s %-12s %s", INDENT, "grip",
                change.request().club().grip().map(Grip::tag).orElse("?"), way.grip().map(Grip::tag).orElse("?"));
        }
        String star = anyWorkedOut ? "* worked out from its parts, never read." : "";
        String same = still.isEmpty() ? "" : "Does not move: " + String.join(", ", still) + ".";
        if (!star.isEmpty() || !same.isEmpty()) {
            page.wrapped(INDENT, (star + " " + same).strip());
        }
    }

    private void shortfalls() {
        if (change.shortfalls().isEmpty()) {
            return;
        }
        page.blank();
        page.line(change.ways().isEmpty() ? "How near each comes" : "What does not reach it by itself");
        for (ChangeAnswer.Shortfall shortfall : change.shortfalls()) {
            String lead = String.format(Locale.ROOT, "%s%-24s ", INDENT, shortfall.lever().word());
            page.wrapped(lead, ChangeWords.shortfall(change, shortfall));
        }
    }
}
