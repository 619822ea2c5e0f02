package benchtwin.sets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;

/**
 * One plan a group out of lists so that no part is used twice, at least cost: a set packing problem, put to a library's
 * mixed-integer solver with a limit on its steps, which is the same on every machine, and on one thread.
 */
final class ColumnChoice {

    private static final int MOST_STEPS = 150;
    private static final double TOLERANCE_SQUARED = 1e6;

    private final SetModel model;

    ColumnChoice(SetModel model) {
        this.model = model;
    }

    /**
     * Chooses.
     * @param lists     by group; the incumbent's plan first
     * @param incumbent a choice that is known
     * @return the incumbent, or better
     */
    EventPlan choose(List<List<GroupPlan>> lists, EventPlan incumbent) {
        ExpressionsBasedModel problem = new ExpressionsBasedModel();
        problem.options.iterations_abort = MOST_STEPS;
        problem.options.iterations_suffice = MOST_STEPS;
        problem.options.integer(IntegerStrategy.newConfigurable().withParallelism(() -> 1));
        List<List<Variable>> variables = new ArrayList<>();
        Map<Integer, List<Variable>> ofHead = new LinkedHashMap<>();
        Map<Integer, List<Variable>> ofShaft = new LinkedHashMap<>();
        double weight = Math.max(1, incumbent.emptyCost());
        Expression empty = problem.newExpression("empty").upper(incumbent.emptyCost() / weight);
        for (int g = 0; g < lists.size(); g++) {
            Expression one = problem.newExpression("group " + g).level(1);
            List<Variable> ofGroup = new ArrayList<>();
            for (GroupPlan plan : lists.get(g)) {
                Variable variable = problem.newVariable(g + " " + ofGroup.size()).binary()
                    .weight((plan.softCost() + plan.modelCost(model)) / TOLERANCE_SQUARED);
                one.set(variable, 1);
                ofGroup.add(variable);
                if (plan.emptyCost(model) > 0) {
                    empty.set(variable, plan.emptyCost(model) / weight);
                }
                for (Option option : plan.used()) {
                    ofHead.computeIfAbsent(option.head(), key -> new ArrayList<>()).add(variable);
                    ofShaft.computeIfAbsent(option.shaft(), key -> new ArrayList<>()).add(variable);
                }
            }
            variables.add(ofGroup);
        }
        atMostOnce(problem, "head", ofHead);
        atMostOnce(problem, "shaft", ofShaft);
        Optimisation.Result result = problem.minimise();
        if (!result.getState().isFeasible()) {
            return incumbent;
        }
        List<GroupPlan> chosen = new ArrayList<>();
        for (int g = 0; g < lists.size(); g++) {
            for (int c = 0; c < variables.get(g).size(); c++) {
                if (variables.get(g).get(c).getValue().doubleValue() > 0.5) {
                    chosen.add(lists.get(g).get(c));
                }
            }
        }
        if (chosen.size() != lists.size()) {
            return incumbent;
        }
        EventPlan plan = EventPlan.of(model, chosen);
        return plan.isBetterThan(incumbent) ? plan : incumbent;
    }

    private static void atMostOnce(ExpressionsBasedModel problem, String kind, Map<Integer, List<Variable>> users) {
        users.forEach((part, variables) -> {
            if (variables.size() > 1) {
                Expression once = problem.newExpression(kind + " " + part).upper(1);
                variables.forEach(variable -> once.set(variable, 1));
            }
        });
    }
}
