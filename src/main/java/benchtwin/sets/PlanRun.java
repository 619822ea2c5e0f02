package benchtwin.sets;

import java.util.Arrays;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * One search for the best choice of parts, from the first tables to the end: rounds of the engine inside the solver's run, then
 * wider tables where the prices say that something was missed, then rounds again; at the end the solver's own local search.
 * When and how the tables are widened hangs on rounds alone, so the same number of rounds gives the same plan.
 */
final class PlanRun {

    /** Rounds before the tables are looked over again. */
    private static final int ROUNDS_BEFORE_WIDENING = 60;
    private static final int MOST_WIDENINGS = 4;
    /** Steps of local search without a better plan before it ends. */
    private static final int LOCAL_STEPS = 400;
    private static final double NANOS = 1e9;
    private static final double PER_CENT = 100;

    private final SetTables tables;
    private final PlanLimits limits;
    private final Consumer<PlanProgress> progress;
    private final BooleanSupplier asked;
    private final long start;
    private final SetEngine engine;
    private SetModel model;
    private Option[] best;
    private int widenings;
    private int stageStart;
    private PlanProgress told;

    /**
     * Works the first tables out.
     * @param request  what is asked
     * @param limits   when to end
     * @param progress told of every better plan and every better proof
     * @param stop     once true, the search ends
     */
    PlanRun(SetRequest request, PlanLimits limits, Consumer<PlanProgress> progress, BooleanSupplier stop) {
        this.start = System.nanoTime();
        this.tables = new SetTables(request);
        this.limits = limits;
        this.progress = progress;
        this.asked = stop;
        this.model = tables.model();
        this.engine = new SetEngine(model, limits.seed());
        this.best = new Option[model.slots()];
    }

    /** Searches until a limit is reached or nothing is left to do. */
    void run() {
        boolean more = true;
        while (more) {
            stageStart = engine.rounds();
            stage(0);
            SetModel wider = mayWiden() ? new Widening(tables, model, engine.prices(), best).run() : model;
            more = wider != model;
            if (more) {
                widenings++;
                model = wider;
                engine.widen(wider);
            }
        }
        if (!isToStop()) {
            stage(LOCAL_STEPS);
        }
    }

    private void stage(int localSteps) {
        PlanSolver solver = new PlanSolver(model, Pins.none(), new StageRounds(), limits.seed(), roundsLeft(), localSteps);
        SetProblem found = solver.solve(problem -> take(problem.plan()), this::isToStop);
        if (found.score().isFeasible()) {
            take(found.plan());
        }
    }

    private int roundsLeft() {
        return Math.min(PlanSolver.MOST_ROUNDS, limits.rounds().orElse(PlanSolver.MOST_ROUNDS) - engine.rounds());
    }

    private void take(Option[] plan) {
        best = plan.clone();
        tell();
    }

    /** Not in the second half of the time: a wider table wants a new proof, and that takes its time. */
    private boolean mayWiden() {
        return widenings < MOST_WIDENINGS && roundsLeft() > 0 && !isOver()
            && (limits.time().isZero() || System.nanoTime() - start < limits.time().toNanos() / 2);
    }

    /**
     * Asked to stop, or out of time, but never before there is a first plan. Not what the gap says: a wider table may have a
     * better plan.
     */
    private boolean isOver() {
        return engine.rounds() > 0 && (asked.getAsBoolean()
            || !limits.time().isZero() && System.nanoTime() - start >= limits.time().toNanos());
    }

    private boolean isToStop() {
        OptionalDouble gap = gapPercent();
        return isOver() || gap.isPresent() && gap.getAsDouble() <= limits.gapPercent() && !mayWiden();
    }

    private OptionalDouble gapPercent() {
        OptionalDouble gap = engine.gap();
        return gap.isPresent() ? OptionalDouble.of(PER_CENT * gap.getAsDouble()) : gap;
    }

    private void tell() {
        int unbuilt = (int) Arrays.stream(best).filter(Objects::isNull).count();
        int out = (int) Arrays.stream(best).filter(Objects::nonNull).filter(tables::isOut).count();
        PlanProgress now = new PlanProgress(engine.rounds(), unbuilt, soft() / SetTables.MILLION, gapPercent(), out,
            (System.nanoTime() - start) / NANOS);
        if (told == null || now.cost() != told.cost() || now.unbuilt() != told.unbuilt()
            || !now.gapPercent().equals(told.gapPercent())) {
            told = now;
            progress.accept(now);
        }
    }

    private long soft() {
        return EventPlan.of(model, best).soft();
    }

    /** The engine's rounds until the tables are due, or its work is done. */
    private final class StageRounds implements Rounds {

        @Override
        public boolean next(BooleanSupplier stop) {
            boolean more = engine.next(stop);
            best = EventPlan.of(model, best).isBetterThan(engine.plan()) ? best : engine.best();
            tell();
            boolean due = mayWiden() && engine.rounds() - stageStart >= ROUNDS_BEFORE_WIDENING;
            OptionalDouble gap = gapPercent();
            return more && !due && !(gap.isPresent() && gap.getAsDouble() <= limits.gapPercent());
        }

        @Override
        public Option[] best() {
            return engine.best();
        }

        @Override
        public int done() {
            return engine.rounds();
        }

        @Override
        public void accept(Option[] better) {
            engine.accept(better);
        }
    }

    SetTables tables() {
        return tables;
    }

    SetModel model() {
        return model;
    }

    /** The best choice, by slot; null for a club left out. */
    Option[] best() {
        return best.clone();
    }

    Prices prices() {
        return engine.prices();
    }

    int rounds() {
        return engine.rounds();
    }

    /** Squared tolerances. */
    double cost() {
        return soft() / SetTables.MILLION;
    }

    /** What no choice among the pairs worked out undercuts, squared tolerances; empty where it is not known to build as much. */
    OptionalDouble bound() {
        return engine.gap().isEmpty() ? OptionalDouble.empty()
            : OptionalDouble.of(Math.min(soft(), Math.max(0, engine.bound().soft())) / SetTables.MILLION);
    }

    int unbuilt() {
        return (int) Arrays.stream(best).filter(Objects::isNull).count();
    }
}
