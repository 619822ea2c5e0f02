package benchtwin.sets;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * What the slots that must stay empty weigh at least, seen from one kind of part alone: every part once, and groups that must
 * share keep to one model. Which part of the other kind goes with it is not seen, so the truth may be more, never less. Only
 * the models are chosen as whole numbers; once they are, giving parts to slots is an assignment, and its linear program is
 * whole by itself.
 */
final class EmptyByModel {

    private static final int MOST_VARIABLES = 3_000;
    /** Far more than it takes: a step limit that bites inside a node would make the node look empty. */
    private static final int MOST_STEPS = 1_000_000;
    /** What the solver's arithmetic may be off, in units of weight. */
    private static final double ARITHMETIC = 1e-4;

    private final SetModel model;
    private final ToIntFunction<Option> part;
    private final ToIntFunction<Option> partModel;

    private EmptyByModel(SetModel model, ToIntFunction<Option> part, ToIntFunction<Option> partModel) {
        this.model = model;
        this.part = part;
        this.partModel = partModel;
    }

    static EmptyByModel ofHeads(SetModel model) {
        return new EmptyByModel(model, Option::head, option -> model.headModel(option.head()));
    }

    static EmptyByModel ofShafts(SetModel model) {
        return new EmptyByModel(model, Option::shaft, option -> model.shaftModel(option.shaft()));
    }

    /**
     * Solves for what some plan's empty slots lead to: the slots they share parts or a sharing group with, and on from there.
     * @param empty slots some plan leaves empty
     * @return no plan's empty slots weigh less; nothing when the problem is too large, or not solved to the end
     */
    OptionalLong weight(int[] empty) {
        BitSet slots = connected(empty);
        ExpressionsBasedModel problem = new ExpressionsBasedModel();
        problem.options.iterations_abort = MOST_STEPS;
        problem.options.iterations_suffice = MOST_STEPS;
        problem.options.integer(OneThread.withoutCuts());
        long unit = model.emptyUnit();
        Map<Integer, Expression> once = new HashMap<>();
        Map<Integer, Map<Integer, Variable>> chosen = new HashMap<>();
        int variables = 0;
        for (int slot = slots.nextSetBit(0); slot >= 0; slot = slots.nextSetBit(slot + 1)) {
            Expression filled = problem.newExpression("slot " + slot).level(1);
            filled.set(problem.newVariable("empty " + slot).lower(0).upper(1).weight((double) model.emptyCost(slot) / unit), 1);
            int group = model.groupOf(slot);
            Map<Integer, Expression> ofModel = new HashMap<>();
            Map<Integer, Integer> parts = new HashMap<>();
            model.options(slot).forEach(option -> parts.put(part.applyAsInt(option), partModel.applyAsInt(option)));
            variables += parts.size();
            if (variables > MOST_VARIABLES) {
                return OptionalLong.empty();
            }
            for (int one : new TreeSet<>(parts.keySet())) {
                Variable variable = problem.newVariable(slot + " " + one).lower(0).upper(1);
                filled.set(variable, 1);
                once.computeIfAbsent(one, p -> problem.newExpression("part " + p).upper(1)).set(variable, 1);
                if (model.groups().get(group).sameModels()) {
                    int of = parts.get(one);
                    String name = slot + " of model " + of;
                    ofModel.computeIfAbsent(of, m -> {
                        Expression within = problem.newExpression(name).upper(0);
                        within.set(chosen.computeIfAbsent(group, g -> new HashMap<>()).computeIfAbsent(m,
                            k -> problem.newVariable("group " + group + " model " + k).binary()), -1);
                        return within;
                    }).set(variable, 1);
                }
            }
        }
        chosen.forEach((group, ofGroup) -> {
            Expression one = problem.newExpression("group " + group).upper(1);
            ofGroup.values().forEach(variable -> one.set(variable, 1));
        });
        Optimisation.Result result = problem.minimise();
        return result.getState().isOptimal()
            ? OptionalLong.of((long) Math.ceil(result.getValue() - ARITHMETIC) * unit) : OptionalLong.empty();
    }

    private BitSet connected(int[] empty) {
        BitSet slots = new BitSet();
        Set<Integer> parts = new TreeSet<>();
        Set<Integer> groups = new TreeSet<>();
        Arrays.stream(empty).forEach(slots::set);
        int before = -1;
        while (slots.cardinality() != before) {
            before = slots.cardinality();
            for (int slot = 0; slot < model.slots(); slot++) {
                boolean reached = slots.get(slot) || groups.contains(model.groupOf(slot))
                    || model.options(slot).stream().anyMatch(option -> parts.contains(part.applyAsInt(option)));
                if (reached) {
                    slots.set(slot);
                    if (model.groups().get(model.groupOf(slot)).sameModels()) {
                        groups.add(model.groupOf(slot));
                    }
                    model.options(slot).forEach(option -> parts.add(part.applyAsInt(option)));
                }
            }
        }
        return slots;
    }
}
