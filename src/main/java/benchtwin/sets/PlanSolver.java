package benchtwin.sets;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;

/** Plans sets: rounds of an exact search, then a local search, each better plan reported as it is found. */
final class PlanSolver {

    /** Far beyond what anybody waits for; the solver keeps a list this long. */
    static final int MOST_ROUNDS = 100_000;

    private final SetModel model;
    private final Pins pins;
    private final Rounds rounds;
    private final long seed;
    private final int maxRounds;
    private final int localSearchSteps;

    /**
     * @param model            the problem
     * @param pins             choices fixed by hand; the rounds must keep to them as well, see {@link Pins#within}
     * @param rounds           finds plans
     * @param seed             of everything random: same seed, same plan
     * @param maxRounds        how many rounds at most, 0 to {@link #MOST_ROUNDS}
     * @param localSearchSteps the local search ends after this many steps without a better plan, 0 or more; 0 for none
     */
    PlanSolver(SetModel model, Pins pins, Rounds rounds, long seed, int maxRounds, int localSearchSteps) {
        if (maxRounds < 0 || maxRounds > MOST_ROUNDS || localSearchSteps < 0) {
            throw new IllegalArgumentException("%d rounds and %d steps of local search; expected 0 to %d, and 0 or more"
                .formatted(maxRounds, localSearchSteps, MOST_ROUNDS));
        }
        this.model = model;
        this.pins = pins;
        this.rounds = rounds;
        this.seed = seed;
        this.maxRounds = maxRounds;
        this.localSearchSteps = localSearchSteps;
    }

    /**
     * Plans, on the caller's thread, from the best plan the rounds already have, or from nothing.
     * @param better hears of every better plan as it is found, scored; each is its own copy
     * @param stop   asked before every round and after every move of the local search on the caller's thread, and by the
     *               rounds as they see fit; once it says true, the search ends
     * @return the best plan found, scored; the one it began with, if none is better
     */
    SetProblem solve(Consumer<SetProblem> better, BooleanSupplier stop) {
        SetProblem problem = SetProblem.of(model, pins);
        problem.stopWhen(stop);
        if (rounds.best() != null) {
            problem.take(rounds.best());
        }
        SolverFactory<SetProblem> factory = SolverFactory.create(
            SolverSetup.planning(new RoundCommand(rounds), maxRounds, localSearchSteps, seed));
        if (maxRounds == 0 && localSearchSteps == 0) {
            new ScoreOf(factory).score(problem);
            return problem;
        }
        Solver<SetProblem> solver = factory.buildSolver();
        solver.addEventListener(event -> report(event.getNewBestSolution(), better));
        return solver.solve(problem);
    }

    private void report(SetProblem found, Consumer<SetProblem> better) {
        Option[] plan = found.plan();
        if (found.score().isFeasible() && !Arrays.equals(plan, rounds.best())) {
            rounds.accept(plan);
        }
        better.accept(found);
    }
}
