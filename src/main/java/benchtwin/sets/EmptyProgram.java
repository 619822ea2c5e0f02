package benchtwin.sets;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;

/**
 * What the slots that must stay empty weigh at least, heads and shafts seen together, where a slot that is left empty leads to:
 * the slots that share parts with it, directly or by others between. Which models go together is not seen, so the truth may
 * be more, never less. A head of a slot that goes with at least as many shafts as there are slots here always finds one; only
 * where it goes with fewer are the shafts told apart.
 */
final class EmptyProgram {

    private static final int MOST_VARIABLES = 2_500;
    private static final int MOST_STEPS = 400;
    /** What the solver's arithmetic may be off, in units of weight. */
    private static final double ARITHMETIC = 1e-4;

    private final SetModel model;

    EmptyProgram(SetModel model) {
        this.model = model;
    }

    /**
     * Solves.
     * @param empty slots some plan leaves empty
     * @return no plan's empty slots weigh less; nothing when the problem is too large to be put, or not solved to the end
     */
    OptionalLong weight(int[] empty) {
        BitSet slots = connected(empty);
        long unit = model.emptyUnit();
        Map<Integer, Map<Integer, Set<Integer>>> choices = choices(slots);
        if (variables(choices, slots.cardinality()) > MOST_VARIABLES) {
            return OptionalLong.empty();
        }
        ExpressionsBasedModel problem = new ExpressionsBasedModel();
        problem.options.iterations_abort = MOST_STEPS;
        problem.options.iterations_suffice = MOST_STEPS;
        problem.options.integer(IntegerStrategy.newConfigurable().withParallelism(() -> 1));
        Map<Integer, Expression> heads = new HashMap<>();
        Map<Integer, Expression> shafts = new HashMap<>();
        choices.forEach((slot, byHead) -> {
            Expression once = problem.newExpression("slot " + slot).level(1);
            once.set(problem.newVariable("empty " + slot).binary().weight((double) model.emptyCost(slot) / unit), 1);
            byHead.forEach((head, ofHead) -> {
                Expression ofThis = heads.computeIfAbsent(head, h -> problem.newExpression("head " + h).upper(1));
                if (ofHead.size() >= slots.cardinality()) {
                    Variable variable = problem.newVariable(slot + " " + head).binary();
                    once.set(variable, 1);
                    ofThis.set(variable, 1);
                } else {
                    for (int shaft : ofHead) {
                        Variable variable = problem.newVariable(slot + " " + head + " " + shaft).binary();
                        once.set(variable, 1);
                        ofThis.set(variable, 1);
                        shafts.computeIfAbsent(shaft, s -> problem.newExpression("shaft " + s).upper(1)).set(variable, 1);
                    }
                }
            });
        });
        Optimisation.Result result = problem.minimise();
        return result.getState().isOptimal()
            ? OptionalLong.of((long) Math.ceil(result.getValue() - ARITHMETIC) * unit) : OptionalLong.empty();
    }

    private Map<Integer, Map<Integer, Set<Integer>>> choices(BitSet slots) {
        Map<Integer, Map<Integer, Set<Integer>>> choices = new LinkedHashMap<>();
        slots.stream().forEach(slot -> {
            Map<Integer, Set<Integer>> byHead = new TreeMap<>();
            model.options(slot).forEach(
                option -> byHead.computeIfAbsent(option.head(), head -> new TreeSet<>()).add(option.shaft()));
            choices.put(slot, byHead);
        });
        return choices;
    }

    private static long variables(Map<Integer, Map<Integer, Set<Integer>>> choices, int slots) {
        return choices.values().stream().flatMap(byHead -> byHead.values().stream())
            .mapToLong(ofHead -> ofHead.size() >= slots ? 1 : ofHead.size()).sum();
    }

    private BitSet connected(int[] empty) {
        BitSet slots = new BitSet();
        BitSet parts = new BitSet();
        Arrays.stream(empty).forEach(slots::set);
        int before = -1;
        while (slots.cardinality() != before) {
            before = slots.cardinality();
            for (int slot = 0; slot < model.slots(); slot++) {
                boolean isReached = slots.get(slot) || model.options(slot).stream()
                    .anyMatch(option -> parts.get(option.head()) || parts.get(model.heads() + option.shaft()));
                if (isReached) {
                    slots.set(slot);
                    model.options(slot).forEach(option -> {
                        parts.set(option.head());
                        parts.set(model.heads() + option.shaft());
                    });
                }
            }
        }
        return slots;
    }
}
