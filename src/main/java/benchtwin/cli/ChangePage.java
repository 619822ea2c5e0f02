package benchtwin.cli;

import benchtwin.bench.BuildIdentity;
import benchtwin.bench.Cautions;
import benchtwin.bench.ChangeService;
import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import benchtwin.match.ChangeAnswer;
import benchtwin.match.Lever;
import benchtwin.match.Ranked;
import benchtwin.match.Way;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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
        page.wrapped("", "%s%s, %s-handed %s%s, as last read on %s".formatted(change.request().club().name(),
            change.request().club().player().map(p -> " (" + p + ")").orElse(""),
            change.request().club().hand().word(), change.request().club().category().word(),
            change.request().club().number().map(n -> " " + n).orElse(""), answer.measuredOn()));
        List<String> asked = new ArrayList<>();
        change.request().wished().forEach((quantity, value) -> asked.add("%s %s (now %s, %s)".formatted(
            Figures.name(quantity), Figures.value(quantity, value), Figures.value(quantity, change.now().get(quantity)),
            Figures.difference(quantity, value - change.now().get(quantity)))));
        Optional<Grip> on = change.request().club().grip();
        change.request().grip().ifPresent(grip -> asked.add("grip %s, %s (now %s)".formatted(grip.tag(), grams(grip),
            on.map(g -> g.tag() + ", " + grams(g)).orElse("not on record"))));
        change.request().gripMassG().ifPresent(mass -> asked.add("a grip of %s g (now %s)".formatted(
            Figures.fixed(mass, 1), on.map(ChangePage::grams).orElse("not on record"))));
        page.wrapped("Asked: ", String.join("; ", asked) + ". Everything else is to stay as it is.");
        change.notes().forEach(note -> page.wrapped("Note: ", note + "."));
        if (change.alreadySo()) {
            page.line("The club measures that already: nothing to do.");
        } else if (change.ways().isEmpty()) {
            page.line("Nothing in the workshop reaches it; below is how near each thing comes.");
        } else {
            page.wrapped("", "Fewest steps first, then what drags least along (miss).");
        }
    }

    private static String grams(Grip grip) {
        return grip.massG().map(m -> Figures.fixed(m.value(), 1) + " g").orElse("never weighed");
    }

    private static String levers(Way way) {
        return way.changed().stream().sorted(Comparator.comparing((Lever lever) -> !lever.isAPart())).map(Lever::word).collect(Collectors.joining(" + "));
    }

    private void way(Way way) {
        Ranked option = way.option();
        page.line("%-2d %s   miss %s tol   ready in %s%s", option.rank(), levers(way), Figures.fixed(option.miss(), 2),
            Figures.time(option.plan().readyMinutes()),
            option.plan().isUndoneFreely() ? "   undone freely" : "");
        if (!option.outOfTolerance().isEmpty()) {
            page.wrapped(INDENT + "Drags out of tolerance: ", option.outOfTolerance().stream()
                .map(q -> Figures.name(q) + " " + Figures.difference(q, option.difference().get(q)))
                .collect(Collectors.joining(", ")));
        }
        StepLines.print(page, INDENT, option.plan());
        table(way);
        page.wrapped(INDENT, "The chance that %s inside tolerance the first time: %s.".formatted(
            change.request().wished().isEmpty() ? "everything reads" : "what was asked reads", Figures.chance(chance(option)))
            + (option.defaultsUsed().isEmpty() ? "" : " Rests on a default: " + String.join("; ", option.defaultsUsed())
                + "."));
        RulesLines.print(page, INDENT, option.rulesWarnings());
    }

    /** Swing weight stands aside in the chance of everything, since tape sets it; asked for alone, it is all there is. */
    private double chance(Ranked option) {
        boolean onlySwingWeight = change.request().wished().keySet().equals(Set.of(Quantity.SWING_WEIGHT));
        Map<String, Double> groups = option.firstTimeRight().byGroup();
        return onlySwingWeight ? groups.values().iterator().next() : option.firstTimeRight().all();
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
            String near = shortfall.nearest().map(way -> nearest(way, shortfall.missing())).orElse("");
            page.wrapped(lead, near + capital(shortfall.why()) + ".");
        }
    }

    /** What it comes to, and how far that is from what was asked. */
    private String nearest(Way way, Map<Quantity, Double> missing) {
        String comes = change.request().wished().keySet().stream()
            .filter(q -> way.option().predicted().containsKey(q))
            .map(q -> "%s %s%s".formatted(Figures.name(q), Figures.value(q, way.option().predicted().get(q)),
                missing.containsKey(q) ? " (" + Figures.difference(q, missing.get(q)) + " off)" : ""))
            .collect(Collectors.joining(", "));
        if (!comes.isEmpty()) {
            return "Comes to " + comes + ". ";
        }
        String moves = change.target().wanted().keySet().stream()
            .filter(q -> change.now().containsKey(q) && way.option().predicted().containsKey(q))
            .map(q -> Map.entry(q, Figures.difference(q, way.option().predicted().get(q) - change.now().get(q))))
            .filter(e -> !e.getValue().equals("0")).map(e -> Figures.name(e.getKey()) + " " + e.getValue())
            .collect(Collectors.joining(", "));
        return moves.isEmpty() ? "" : "The nearest moves " + moves + ". ";
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
