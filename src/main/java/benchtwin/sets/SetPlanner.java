package benchtwin.sets;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** Plans sets from one stock. */
public final class SetPlanner {

    /** Share of the time that goes into the plan without pins, when there are pins. */
    private static final int TIME_WITHOUT_PINS = 3;

    private SetPlanner() {
    }

    /**
     * Plans.
     * @param request  what is asked
     * @param limits   when the search ends; with pins, a third of its time goes into the plan they are held against
     * @param progress told of every better plan
     * @param stop     asked often; once true, the best plan so far is the answer
     * @return the answer
     */
    public static SetAnswer run(SetRequest request, PlanLimits limits, Consumer<PlanProgress> progress, BooleanSupplier stop) {
        PlanRun run = new PlanRun(request, limits, progress, stop);
        run.run();
        SetTables tables = run.tables();
        SetAnswers answers = new SetAnswers(request, tables, run.model(), run.best());
        int options = IntStream.range(0, run.model().slots()).map(slot -> run.model().options(slot).size()).sum();
        int left = request.targets().clubs().size() - run.model().slots();
        PlanScore score = new PlanScore(request.targets().clubs().size(), run.unbuilt() + left, run.cost(), run.bound(),
            answers.jointGain(), options, tables.pairs(), run.rounds(), limits.seed());
        List<OrderLine> order = new OrderAdvice(tables, run.model(), run.best(), run.prices()).lines();
        return new SetAnswer(answers.players(), score, answers.why(), order, pinCost(request, limits, run, stop),
            new ArrayList<>(answers.shortages()));
    }

    private static OptionalDouble pinCost(SetRequest request, PlanLimits limits, PlanRun pinned, BooleanSupplier stop) {
        if (request.pins().isEmpty()) {
            return OptionalDouble.empty();
        }
        SetRequest without = new SetRequest(request.targets(), request.inventory(), request.shop(), request.grip(), List.of(),
            request.banned(), request.alikeness());
        PlanLimits part = new PlanLimits(limits.time().dividedBy(TIME_WITHOUT_PINS), limits.gapPercent(), limits.rounds(),
            limits.seed());
        PlanRun free = new PlanRun(without, part, step -> { }, stop);
        free.run();
        if (free.unbuilt() != pinned.unbuilt()) {
            return OptionalDouble.of(free.unbuilt() < pinned.unbuilt() ? Double.POSITIVE_INFINITY : 0);
        }
        return OptionalDouble.of(Math.max(0, pinned.cost() - free.cost()));
    }
}
