package benchtwin.sets;

import java.util.Random;

/** One kind of change to a plan that the local search tries. */
interface MoveKind {

    /**
     * Thinks of a change.
     * @param problem with the plan as it is
     * @param board   the same plan, by part
     * @param random  the solver's
     * @return the change; null when none came to mind
     */
    PlanMove next(SetProblem problem, Board board, Random random);
}
