package benchtwin.sets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * One plan a group out of lists so that no part is used twice, at least cost: a set packing problem, put to a library's
 * mixed-integer solver on one thread, with a limit on its steps instead of a clock. What comes back is added up again in whole
 * numbers and counts only when it is better; it is never taken for a proof.
 */
final class ColumnChoice {

    /** Nodes, and simplex steps of a node: a node cut short would be taken for one without a solution. */
    private static final int MOST_STEPS = 3_000;
    private static final double TOLERANCE_SQUARED = 1e6;
    private static final long GLANCE_MS = 20;

    private final SetModel model;
    private final ExpressionsBasedModel problem = new ExpressionsBasedModel();
    private final List<List<Variable>> variables = new ArrayList<>();
    private final List<List<GroupPlan>> lists;
    private final EventPlan incumbent;

    /**
     * Puts the problem.
     * @param model     of the plans
     * @param lists     by group; the incumbent's plan first
     * @param incumbent a choice that is known
     */
    ColumnChoice(SetModel model, List<List<GroupPlan>> lists, EventPlan incumbent) {
        this.model = model;
        this.lists = lists;
        this.incumbent = incumbent;
        problem.options.iterations_abort = MOST_STEPS;
        problem.options.iterations_suffice = MOST_STEPS;
        problem.options.integer(OneThread.withoutCuts());
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
                variable.setValue(ofGroup.isEmpty() ? 1 : 0);
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
        atMostOnce("head", ofHead);
        atMostOnce("shaft", ofShaft);
    }

    private void atMostOnce(String kind, Map<Integer, List<Variable>> users) {
        users.forEach((part, ofPart) -> {
            if (ofPart.size() > 1) {
                Expression once = problem.newExpression(kind + " " + part).upper(1);
                ofPart.forEach(variable -> once.set(variable, 1));
            }
        });
    }

    /**
     * Chooses.
     * @param stop whether to give up
     * @return the incumbent, or better
     */
    EventPlan choose(BooleanSupplier stop) {
        Optimisation.Result result = solve(stop);
        if (stop.getAsBoolean() || !result.getState().isFeasible()) {
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
        if (chosen.size() != lists.size() || !areApart(chosen)) {
            return incumbent;
        }
        EventPlan plan = EventPlan.of(model, chosen);
        return plan.isBetterThan(incumbent) ? plan : incumbent;
    }

    /** The solver asks for its limit at every step; a limit of none ends it. */
    private Optimisation.Result solve(BooleanSupplier stop) {
        FutureTask<Optimisation.Result> task = new FutureTask<>(problem::minimise);
        Thread thread = new Thread(task, "sets choice");
        thread.setDaemon(true);
        thread.start();
        while (true) {
            try {
                return task.get(GLANCE_MS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                if (stop.getAsBoolean()) {
                    problem.options.iterations_abort = 0;
                }
            } catch (ExecutionException e) {
                throw new IllegalStateException(e.getCause());
            } catch (InterruptedException e) {
                problem.options.iterations_abort = 0;
                Thread.currentThread().interrupt();
                throw new IllegalStateException("interrupted while choosing", e);
            }
        }
    }

    private boolean areApart(List<GroupPlan> chosen) {
        List<Option> used = chosen.stream().flatMap(plan -> plan.used().stream()).toList();
        return used.stream().map(Option::head).distinct().count() == used.size()
            && used.stream().map(Option::shaft).distinct().count() == used.size();
    }
}
