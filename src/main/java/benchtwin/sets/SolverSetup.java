package benchtwin.sets;

import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.config.solver.SolverConfig;

/** How the solver is set up, in code: it starts quicker than from a file. */
final class SolverSetup {

    private SolverSetup() {
    }

    /** Only for scoring plans. */
    static SolverConfig scoring() {
        return new SolverConfig()
            .withSolutionClass(SetProblem.class)
            .withEntityClasses(BuildSlot.class)
            .withConstraintProviderClass(SetConstraints.class)
            .withConstraintStreamImplType(ConstraintStreamImplType.BAVET);
    }
}
