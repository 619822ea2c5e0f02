package benchtwin.sets;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * Prices that prove how much must stay empty, heads and shafts seen together, where a slot that is left empty leads to: the
 * slots that share parts with it, directly or by others between. A linear program: what every slot is worth, summed, less what
 * every part costs, as large as can be, where no slot is worth more than leaving it empty weighs or than head and shaft of any
 * of its options cost. A head of a slot that goes with at least as many shafts as there are slots here always finds one, so
 * only where it goes with fewer do shafts have prices. The prices are a suggestion: whatever they are, the proof at them holds.
 */
final class EmptyProgram {

    private static final int MOST_ROWS = 4_000;

    private final SetModel model;

    EmptyProgram(SetModel model) {
        this.model = model;
    }

    /**
     * Solves.
     * @param empty slots some plan leaves empty
     * @return prices with empty slots in full; nothing when the problem is too large to be put
     */
    Optional<Prices> prices(int[] empty) {
        BitSet slots = connected(empty);
        Map<Integer, Map<Integer, Set<Integer>>> choices = choices(slots);
        int count = slots.cardinality();
        if (rows(choices, count) > MOST_ROWS) {
            return Optional.empty();
        }
        double unit = model.emptyUnit();
        ExpressionsBasedModel problem = new ExpressionsBasedModel();
        Map<Integer, Variable> heads = new HashMap<>();
        Map<Integer, Variable> shafts = new HashMap<>();
        choices.forEach((slot, byHead) -> {
            Variable worth = problem.newVariable("slot " + slot).lower(0).upper(model.emptyCost(slot) / unit).weight(1);
            byHead.forEach((head, ofHead) -> {
                Variable ofThis = heads.computeIfAbsent(head, h -> problem.newVariable("head " + h).lower(0).weight(-1));
                if (ofHead.size() >= count) {
                    problem.newExpression(slot + " " + head).set(worth, 1).set(ofThis, -1).upper(0);
                } else {
                    for (int shaft : ofHead) {
                        Variable also = shafts.computeIfAbsent(shaft,
                            s -> problem.newVariable("shaft " + s).lower(0).weight(-1));
                        problem.newExpression(slot + " " + head + " " + shaft).set(worth, 1).set(ofThis, -1).set(also, -1)
                            .upper(0);
                    }
                }
            });
        });
        Optimisation.Result result = problem.maximise();
        if (!result.getState().isFeasible()) {
            return Optional.empty();
        }
        Prices prices = Prices.none(model);
        heads.forEach((head, variable) -> prices.head()[head] = price(variable, unit));
        shafts.forEach((shaft, variable) -> prices.shaft()[shaft] = price(variable, unit));
        return Optional.of(prices);
    }

    private static double price(Variable variable, double unit) {
        return Math.max(0, variable.getValue().doubleValue()) * unit;
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

    private static long rows(Map<Integer, Map<Integer, Set<Integer>>> choices, int slots) {
        return choices.values().stream().flatMap(byHead -> byHead.values().stream())
            .mapToLong(ofHead -> ofHead.size() >= slots ? 1 : ofHead.size()).sum();
    }

    private BitSet connected(int[] empty) {
        BitSet slots = new BitSet();
        BitSet parts = new BitSet();
        Arrays.stream(empty).forEach(slot -> reach(slot, slots, parts));
        for (int before = -1; slots.cardinality() != before; ) {
            before = slots.cardinality();
            for (int slot = 0; slot < model.slots(); slot++) {
                if (!slots.get(slot) && model.options(slot).stream()
                    .anyMatch(option -> parts.get(option.head()) || parts.get(model.heads() + option.shaft()))) {
                    reach(slot, slots, parts);
                }
            }
        }
        return slots;
    }

    private void reach(int slot, BitSet slots, BitSet parts) {
        slots.set(slot);
        for (Option option : model.options(slot)) {
            parts.set(option.head());
            parts.set(model.heads() + option.shaft());
        }
    }
}
