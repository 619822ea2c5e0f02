package benchtwin.cli;

import benchtwin.bench.BuildIdentity;
import benchtwin.bench.Cautions;
import benchtwin.bench.SetService;
import benchtwin.sets.OrderLine;
import benchtwin.sets.PlanScore;
import benchtwin.sets.PlayerSet;
import benchtwin.sets.SetAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A plan of sets as bench sheets, one player after the other, then how good it is and what would make it better. */
final class SetPage {

    private static final int LISTED = 10;
    private static final int LISTED_TO_BUILD = 6;
    private static final int DEFAULTS_NAMED = 3;

    private final Page page;
    private final SetService.Answer answer;
    private final SetAnswer plan;
    private final boolean why;
    private final boolean pagesWritten;

    /**
     * @param page         where
     * @param answer       what
     * @param why          whether costs are shown
     * @param pagesWritten whether the steps are written elsewhere anyway
     */
    SetPage(Page page, SetService.Answer answer, boolean why, boolean pagesWritten) {
        this.pagesWritten = pagesWritten;
        this.page = page;
        this.answer = answer;
        this.plan = answer.plan();
        this.why = why;
    }

    void print(List<String> remarks) {
        opening();
        for (PlayerSet set : plan.players()) {
            new SetTable(page, set, answer.request().pins(), false).print();
            page.blank();
        }
        legend();
        if (why) {
            new SetWhy(page, plan).print();
        }
        page.blank();
        score();
        order();
        pins();
        plan.notes().forEach(note -> page.wrapped("Note: ", sentence(note)));
        RulesLines.whoDecides(page, plan.players().stream().flatMap(set -> set.clubs().stream()).flatMap(club -> club.build().stream()));
        Cautions.of(plan).forEach(caution -> page.wrapped("Caution: ", caution));
        remarks.forEach(remark -> page.wrapped("Files: ", remark));
        page.line("benchtwin %s", BuildIdentity.text());
    }

    /** What a workshop lead asks first. */
    private void opening() {
        int built = plan.score().clubs() - plan.score().unbuilt();
        int out = plan.players().stream().mapToInt(PlayerSet::outOfTolerance).sum();
        page.wrapped("", "%s: %d of %d clubs built from stock, %s.".formatted(plan.players().size() == 1
            ? "A set for " + plan.players().get(0).player() : "Sets for %d players".formatted(plan.players().size()), built,
            plan.score().clubs(), out == 0 ? "all inside tolerance" : out + " of them out of tolerance"));
        String left = plan.players().stream().filter(set -> set.unbuilt() > 0).map(set -> set.player() + " "
            + set.clubs().stream().filter(club -> club.build().isEmpty()).map(club -> club.wanted().club())
                .collect(Collectors.joining(", "))).collect(Collectors.joining("; "));
        if (!left.isEmpty()) {
            page.wrapped("Not built: ", left + ".");
        }
        page.blank();
    }

    private void legend() {
        page.wrapped("", "Beside each value how far it is from its target; ! is beyond the tolerance. Lengths in inches, their "
            + "differences in mm; miss in tolerances. Parts are head + shaft; bonding and gripping go without saying. "
            + "Spreads are standard deviations." + (pagesWritten ? "" : " --out DIR writes every step."));
        Map<String, Long> defaults = plan.players().stream().flatMap(set -> set.clubs().stream())
            .flatMap(club -> club.build().stream()).flatMap(build -> build.defaultsUsed().stream())
            .collect(Collectors.groupingBy(each -> each, TreeMap::new, Collectors.counting()));
        long clubs = plan.players().stream().flatMap(set -> set.clubs().stream()).flatMap(club -> club.build().stream())
            .filter(build -> !build.defaultsUsed().isEmpty()).count();
        if (clubs > 0) {
            page.wrapped("", "%s on a default where nothing was measured, most often: %s.".formatted(clubs == 1
                ? "1 club rests" : clubs + " clubs rest", defaults.entrySet().stream()
                    .sorted(Map.Entry.<String, Long>comparingByValue().reversed()).limit(DEFAULTS_NAMED)
                    .map(entry -> "%s (%d)".formatted(entry.getKey(), entry.getValue())).collect(Collectors.joining(", "))));
        }
    }

    private void score() {
        PlanScore score = plan.score();
        int built = score.clubs() - score.unbuilt();
        page.wrapped("", "%d of %d clubs built; cost %s squared tolerances; %s; %s, seed %d%s.".formatted(built, score.clubs(),
            Figures.fixed(score.cost(), 2), proof(score), score.rounds() == 1 ? "1 round" : score.rounds() + " rounds",
            score.seed(), score.jointGain() > 0 ? "; planning groups jointly took off another "
                + Figures.fixed(score.jointGain(), 2) : ""));
    }

    private static String proof(PlanScore score) {
        OptionalDouble gap = score.gapPercent();
        String among = "of parts among the %,d pairs worked out".formatted(score.options());
        if (gap.isEmpty()) {
            return "how near that is to the best choice was not shown";
        }
        return gap.getAsDouble() == 0 ? "proven: no choice %s costs less".formatted(among)
            : "proven within %s %% of the best choice %s".formatted(percent(gap.getAsDouble()), among);
    }

    /** Rounded up: a proof may say less than it shows, never more. */
    private static String percent(double gap) {
        double scale = gap < 1 ? 100 : 10;
        return Figures.fixed(Math.ceil(gap * scale) / scale, gap < 1 ? 2 : 1);
    }

    private void order() {
        if (plan.order().isEmpty()) {
            return;
        }
        page.blank();
        page.line("Worth ordering, most useful first");
        for (OrderLine line : listed()) {
            page.wrapped("   ", "%s, for %s: %s.".formatted(line.part(), line.forWhom(), Double.isInfinite(line.gain())
                ? "builds a club that cannot be built now" : "takes off about %s".formatted(Figures.fixed(line.gain(), 2))));
        }
    }

    /** Parts that build a club first, but not only those: a contested part is worth a look too. */
    private List<OrderLine> listed() {
        List<OrderLine> lines = new ArrayList<>(plan.order().stream().filter(line -> Double.isInfinite(line.gain()))
            .limit(LISTED_TO_BUILD).toList());
        plan.order().stream().filter(line -> !Double.isInfinite(line.gain())).limit(LISTED - lines.size()).forEach(lines::add);
        plan.order().stream().filter(line -> !lines.contains(line)).limit(LISTED - lines.size()).forEach(lines::add);
        return lines;
    }

    private void pins() {
        if (plan.pinCost().isPresent()) {
            double cost = plan.pinCost().getAsDouble();
            page.wrapped("", Double.isInfinite(cost) ? "The pins leave a club out that could be built without them."
                : "The pins together cost %s squared tolerances.".formatted(Figures.fixed(cost, 2)));
        }
    }

    private static String sentence(String note) {
        return note.endsWith(".") ? note : note + ".";
    }
}
