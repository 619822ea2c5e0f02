package benchtwin.sets;

import java.util.Objects;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;

/**
 * One round of a search as one step of the solver, which scores the plan after each and reports it when it is better. The
 * same command stands in the solver's list once for every round; {@link SearchEnd} leaves the rest out when nothing is left
 * to do.
 */
final class RoundCommand implements CustomPhaseCommand<SetProblem> {

    private final Rounds rounds;

    RoundCommand(Rounds rounds) {
        this.rounds = rounds;
    }

    @Override
    public void changeWorkingSolution(ScoreDirector<SetProblem> director) {
        SetProblem problem = director.getWorkingSolution();
        if (!rounds.next(problem::isToStop)) {
            problem.endRounds();
        }
        Option[] best = rounds.best();
        if (best != null) {
            show(director, best);
        }
    }

    private static void show(ScoreDirector<SetProblem> director, Option[] plan) {
        for (BuildSlot slot : director.getWorkingSolution().slots()) {
            if (!Objects.equals(slot.option(), plan[slot.index()])) {
                director.beforeVariableChanged(slot, BuildSlot.OPTION);
                slot.fill(plan[slot.index()]);
                director.afterVariableChanged(slot, BuildSlot.OPTION);
            }
        }
        director.triggerVariableListeners();
    }
}
