package benchtwin.cli;

import benchtwin.bench.BuildIdentity;
import benchtwin.bench.Cautions;
import benchtwin.bench.SetService;
import benchtwin.bench.SetWords;
import benchtwin.sets.PlayerSet;
import benchtwin.sets.SetAnswer;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A plan of sets as bench sheets, one player after the other, then how good it is and what would make it better. */
final class SetPage {

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
        page.wrapped("", SetWords.score(plan.score()));
        order();
        SetWords.pinCost(plan).ifPresent(cost -> page.wrapped("", cost));
        plan.notes().forEach(note -> page.wrapped("Note: ", sentence(note)));
        RulesLines.whoDecides(page, plan.players().stream().flatMap(set -> set.clubs().stream()).flatMap(club -> club.build().stream()));
        Cautions.of(plan).forEach(caution -> page.wrapped("Caution: ", caution));
        remarks.forEach(remark -> page.wrapped("Files: ", remark));
        page.line("benchtwin %s", BuildIdentity.text());
    }

    /** What a workshop lead asks first. */
    private void opening() {
        page.wrapped("", SetWords.opening(plan));
        SetWords.notBuilt(plan).ifPresent(left -> page.wrapped("Not built: ", left + "."));
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

    private void order() {
        if (!plan.order().isEmpty()) {
            page.blank();
            page.line("Worth ordering, most useful first");
            SetWords.order(plan).forEach(line -> page.wrapped("   ", line));
        }
    }

    private static String sentence(String note) {
        return note.endsWith(".") ? note : note + ".";
    }
}
