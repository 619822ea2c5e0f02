package benchtwin.sets;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/**
 * The best plan of a whole problem, proven by somebody else's solver: CP-SAT of OR-Tools. It knows the problem only as
 * written down here, in yes-or-no questions and whole numbers: one question for each option and each empty slot, one for
 * each model a group may use. A group's spread w·(n·Σr² − (Σr)²)/n, rounded down, is w·Σr² less w·(Σr)²/n rounded up; the
 * first is a sum over the options, the second takes one product and one division, so that the rounding is the same to the
 * last digit.
 *
 * <p>Quick up to some ten slots and a few hundred options; not meant for more.
 */
final class CpSatOracle {

    /** Work after which it gives up, in the solver's own count, which does not depend on the machine's speed. */
    private static final double MOST_WORK = 60;

    static {
        Loader.loadNativeLibraries();
    }

    private final SetModel model;
    private final CpModel questions = new CpModel();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();
    private final Map<Option, BoolVar> taken = new LinkedHashMap<>();
    private final List<BoolVar> empty = new ArrayList<>();

    private CpSatOracle(SetModel model) {
        this.model = model;
    }

    /**
     * What nothing is better than.
     * @param plans one for each group, in the model's order
     * @param value everything together, as the plans' values add up
     */
    record Best(List<GroupPlan> plans, long value) {
    }

    /**
     * Solves a problem.
     * @param model the problem
     * @return a best plan, proven
     * @throws IllegalStateException when it is too large to be proven, or the solver's cost is not that of the plans
     */
    static Best of(SetModel model) {
        return new CpSatOracle(model).solve();
    }

    private Best solve() {
        for (int slot = 0; slot < model.slots(); slot++) {
            fillOrLeave(slot);
        }
        noPartTwice(Option::head);
        noPartTwice(Option::shaft);
        for (SlotGroup group : model.groups()) {
            models(group, option -> model.headModel(option.head()), "head");
            models(group, option -> model.shaftModel(option.shaft()), "shaft");
            for (int kind = 0; kind < Residual.COUNT; kind++) {
                if (group.weights()[kind] > 0 && group.slots().size() > 1) {
                    spread(group, kind);
                }
            }
        }
        questions.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setMaxDeterministicTime(MOST_WORK).setRelativeGapLimit(0);
        CpSolverStatus status = solver.solve(questions);
        if (status != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("not proven: " + status + " " + questions.validate());
        }
        List<GroupPlan> plans = model.groups().stream().map(group -> new GroupPlan(group, group.slots().stream()
            .map(slot -> model.options(slot).stream().filter(option -> solver.booleanValue(taken.get(option))).findFirst()
                .orElse(null)).toArray(Option[]::new))).toList();
        long value = plans.stream().mapToLong(plan -> plan.value(model)).sum();
        if (value != Math.round(solver.objectiveValue())) {
            throw new IllegalStateException(
                "the solver counts %.0f, the plans %d".formatted(solver.objectiveValue(), value));
        }
        return new Best(plans, value);
    }

    /** One option or none; either has its cost. */
    private void fillOrLeave(int slot) {
        List<Literal> ways = new ArrayList<>();
        for (Option option : model.options(slot)) {
            BoolVar take = questions.newBoolVar("slot %d head %d shaft %d".formatted(slot, option.head(), option.shaft()));
            taken.put(option, take);
            ways.add(take);
            cost.addTerm(take, option.cost());
        }
        BoolVar none = questions.newBoolVar("slot %d empty".formatted(slot));
        empty.add(none);
        ways.add(none);
        cost.addTerm(none, model.emptyCost(slot));
        questions.addExactlyOne(ways);
    }

    private void noPartTwice(ToIntFunction<Option> part) {
        Map<Integer, List<Literal>> wanting = new TreeMap<>();
        taken.forEach((option, take) ->
            wanting.computeIfAbsent(part.applyAsInt(option), key -> new ArrayList<>()).add(take));
        wanting.values().forEach(questions::addAtMostOne);
    }

    /** At most one model where the group must share; a cost for each beyond the first where it only prefers to. */
    private void models(SlotGroup group, ToIntFunction<Option> modelOf, String what) {
        if (!group.sameModels() && group.modelCost() == 0) {
            return;
        }
        Map<Integer, BoolVar> used = new TreeMap<>();
        for (int slot : group.slots()) {
            for (Option option : model.options(slot)) {
                BoolVar use = used.computeIfAbsent(modelOf.applyAsInt(option),
                    key -> questions.newBoolVar("%s model %d".formatted(what, key)));
                questions.addImplication(taken.get(option), use);
            }
        }
        BoolVar[] all = used.values().toArray(BoolVar[]::new);
        if (group.sameModels()) {
            questions.addAtMostOne(all);
        } else {
            IntVar further = questions.newIntVar(0, all.length, "further %s models".formatted(what));
            questions.addGreaterOrEqual(LinearExpr.newBuilder().add(further).add(1), LinearExpr.sum(all));
            cost.addTerm(further, group.modelCost());
        }
    }

    private void spread(SlotGroup group, int kind) {
        long weight = group.weights()[kind];
        int size = group.slots().size();
        LinearExprBuilder sum = LinearExpr.newBuilder();
        LinearExprBuilder filled = LinearExpr.newBuilder().add(size);
        long least = 0;
        long most = 0;
        for (int slot : group.slots()) {
            long lowest = 0;
            long highest = 0;
            for (Option option : model.options(slot)) {
                long residual = option.residual(kind);
                sum.addTerm(taken.get(option), residual);
                cost.addTerm(taken.get(option), weight * residual * residual);
                lowest = Math.min(lowest, residual);
                highest = Math.max(highest, residual);
            }
            filled.addTerm(empty.get(slot), -1);
            least += lowest;
            most += highest;
        }
        long furthest = Math.max(-least, most);
        IntVar total = questions.newIntVar(least, most, "sum of residuals");
        questions.addEquality(total, sum);
        IntVar square = questions.newIntVar(0, furthest * furthest, "square of the sum");
        questions.addMultiplicationEquality(square, total, total);
        IntVar count = questions.newIntVar(1, size, "filled slots, 1 for none");
        questions.addMaxEquality(count, new LinearExpr[] {filled.build(), LinearExpr.constant(1)});
        IntVar off = questions.newIntVar(0, weight * furthest * furthest, "weight times square, by the count, rounded up");
        IntVar above = questions.newIntVar(0, weight * furthest * furthest + size - 1, "what is divided");
        questions.addEquality(above, LinearExpr.newBuilder().addTerm(square, weight).add(count).add(-1));
        questions.addDivisionEquality(off, above, count);
        cost.addTerm(off, -1);
    }
}
