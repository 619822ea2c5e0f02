package benchtwin.sets;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Plans sets from one stock. */
public final class SetPlanner {

    private SetPlanner() {
    }

    /**
     * Plans.
     * @param request  what is asked
     * @param limits   when the search ends
     * @param progress told of every better plan
     * @param stop     asked often; once true, the best plan so far is the answer
     * @return the answer
     */
    public static SetAnswer run(SetRequest request, PlanLimits limits, Consumer<PlanProgress> progress, BooleanSupplier stop) {
        SetTables tables = new SetTables(request);
        SetModel model = tables.model();
        Option[] best = new Option[model.slots()];
        Prices prices = Prices.none(model);
        for (SlotGroup group : model.groups()) {
            GroupBound bound = new GroupBound(model, new GroupSolver(model, group));
            GroupPlan plan = bound.quick(prices, bound.middle());
            for (int i = 0; i < plan.options().length; i++) {
                best[group.slots().get(i)] = plan.options()[i];
            }
            plan.used().forEach(prices::ban);
        }
        SetAnswers answers = new SetAnswers(request, tables, model, best);
        double cost = model.groups().stream().mapToLong(group -> new GroupPlan(group,
            group.slots().stream().map(slot -> best[slot]).toArray(Option[]::new)).softCost()).sum() / SetTables.MILLION;
        return new SetAnswer(answers.players(), new PlanScore(model.slots(), model.slots() - answers.built(), cost,
            OptionalDouble.empty(), answers.jointGain(), 0, 0, 0, limits.seed()), answers.why(), List.of(),
            OptionalDouble.empty(), answers.shortages());
    }
}
