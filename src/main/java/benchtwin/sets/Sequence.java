package benchtwin.sets;

import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Plans groups one after the other, each from what those before it left. */
final class Sequence {

    private final Solvers solvers;
    private final BiConsumer<Integer, GroupPlan> seen;

    Sequence(Solvers solvers, BiConsumer<Integer, GroupPlan> seen) {
        this.solvers = solvers;
        this.seen = seen;
    }

    /** The groups, what is dearest to leave empty first, then the largest, then those with the least choice a slot. */
    List<Integer> byImportance() {
        SetModel model = solvers.model();
        List<SlotGroup> groups = model.groups();
        Comparator<Integer> dearest = Comparator.comparingLong(
            g -> -groups.get(g).slots().stream().mapToLong(model::emptyCost).max().orElseThrow());
        return IntStream.range(0, groups.size()).boxed().sorted(dearest
            .thenComparingInt(g -> -groups.get(g).slots().size())
            .thenComparingInt(g -> groups.get(g).slots().stream().mapToInt(slot -> model.options(slot).size()).min()
                .orElseThrow())).toList();
    }

    /**
     * Plans.
     * @param order  of the groups
     * @param prices of the parts
     * @param stop   whether to leave the rest empty
     */
    EventPlan plan(List<Integer> order, Prices prices, BooleanSupplier stop) {
        return plan(order, g -> prices, stop);
    }

    /** The same, where each group has prices of its own: parts kept for others, say. */
    EventPlan plan(List<Integer> order, IntFunction<Prices> pricesOf, BooleanSupplier stop) {
        Allotment allotment = new Allotment(solvers.model());
        for (int g : order) {
            if (stop.getAsBoolean()) {
                break;
            }
            GroupPlan plan = solvers.quick(g, allotment.withoutHeld(pricesOf.apply(g)));
            seen.accept(g, plan);
            allotment.give(g, plan);
        }
        return allotment.whole();
    }
}
