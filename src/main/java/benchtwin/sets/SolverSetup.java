package benchtwin.sets;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.phase.PhaseConfig;
import org.optaplanner.core.config.phase.custom.CustomPhaseConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/** How the solver is set up, in code: it starts quicker than from a file. */
final class SolverSetup {

    /** A step may make the plan worse, if it is no worse than it was this many steps ago. */
    private static final int LATE_ACCEPTANCE = 40;
    /**
     * A step looks at this many moves before it takes the least bad, so that it ends where none is accepted. Tried on 100 small
     * problems with scarce parts, 250 steps without a better plan: 40 above and 10 here found the best of 99; 10 or 100 above,
     * or 5, 20 or 40 here, the best of 92 to 95.
     */
    private static final long MOVES_PER_STEP = 10;

    private SolverSetup() {
    }

    /** Only for scoring plans. */
    static SolverConfig scoring() {
        return new SolverConfig()
            .withSolutionClass(SetProblem.class)
            .withEntityClasses(BuildSlot.class)
            .withConstraintProviderClass(SetConstraints.class);
    }

    /**
     * Rounds first, then a local search.
     * @param round            does a round
     * @param rounds           how many at most, 0 or more
     * @param localSearchSteps the local search ends after this many steps without a better plan; 0 for none
     * @param seed             of everything random
     */
    @SuppressWarnings("removal")   // the only way to have our own end; the version of the library is fixed
    static SolverConfig planning(RoundCommand round, int rounds, int localSearchSteps, long seed) {
        return scoring().withEnvironmentMode(EnvironmentMode.REPRODUCIBLE).withRandomSeed(seed)
            .withMoveThreadCount(SolverConfig.MOVE_THREAD_COUNT_NONE)
            .withTerminationConfig(new TerminationConfig().withTerminationClass(SearchEnd.class))
            .withPhaseList(phases(round, rounds, localSearchSteps));
    }

    @SuppressWarnings({"rawtypes", "removal"})   // raw as the library declares them
    private static List<PhaseConfig> phases(RoundCommand round, int rounds, int localSearchSteps) {
        List<PhaseConfig> phases = new ArrayList<>();
        if (rounds > 0) {
            phases.add(new CustomPhaseConfig().withCustomPhaseCommandList(Collections.nCopies(rounds, round))
                .withTerminationConfig(new TerminationConfig().withTerminationClass(SearchEnd.class)));
        }
        if (localSearchSteps > 0) {
            phases.add(new LocalSearchPhaseConfig()
                .withMoveSelectorConfig(new MoveIteratorFactoryConfig()
                    .withMoveIteratorFactoryClass(SetMoves.class).withSelectedCountLimit(MOVES_PER_STEP))
                .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE_ACCEPTANCE))
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
                .withTerminationConfig(new TerminationConfig().withUnimprovedStepCountLimit(localSearchSteps)));
        }
        return phases;
    }
}
