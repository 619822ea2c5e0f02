package benchtwin.cli;

import benchtwin.club.Step;
import benchtwin.club.Undo;
import benchtwin.match.Plan;
import java.util.Locale;

/** The steps of a plan, numbered, each with its minutes and whether it can be undone. */
final class StepLines {

    private StepLines() {
    }

    static void print(Page page, String indent, Plan plan) {
        int number = 1;
        for (Step step : plan.steps()) {
            String undo = step.kind().undo() == Undo.FREELY ? "" : ", " + step.kind().undo().word();
            page.wrapped(String.format(Locale.ROOT, "%s%2d. ", indent, number++),
                "%s (%s%s)".formatted(step.words(), Figures.time(step.minutes()), undo.replace(' ', Page.NO_BREAK)));
        }
    }
}
