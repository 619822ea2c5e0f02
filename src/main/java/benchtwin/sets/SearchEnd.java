package benchtwin.sets;

import org.optaplanner.core.impl.phase.scope.AbstractPhaseScope;
import org.optaplanner.core.impl.solver.scope.SolverScope;
import org.optaplanner.core.impl.solver.termination.AbstractTermination;

/**
 * Ends the solver's run when somebody asks for it, looked at before every round and after every move; and ends the rounds when
 * nothing is left to do in them. Public only because the solver makes one by reflection.
 */
public final class SearchEnd extends AbstractTermination<SetProblem> {

    /** There is no telling how near the end is. */
    private static final double UNKNOWN = -1;

    @Override
    public boolean isSolverTerminated(SolverScope<SetProblem> solver) {
        return solver.getWorkingSolution().isToStop();
    }

    @Override
    public boolean isPhaseTerminated(AbstractPhaseScope<SetProblem> rounds) {
        return rounds.getWorkingSolution().areRoundsOver();
    }

    @Override
    public double calculateSolverTimeGradient(SolverScope<SetProblem> solver) {
        return UNKNOWN;
    }

    @Override
    public double calculatePhaseTimeGradient(AbstractPhaseScope<SetProblem> rounds) {
        return UNKNOWN;
    }
}
