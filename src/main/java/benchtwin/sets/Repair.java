package benchtwin.sets;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * From the plans of a price round to a whole plan with no part twice: groups in sequence under the prices, those first whose
 * parts are most contested, then exchanges at the same prices.
 */
final class Repair {

    private final Solvers solvers;
    private final Sequence sequence;
    private final Exchange exchange;

    Repair(Solvers solvers, BiConsumer<Integer, GroupPlan> seen) {
        this.solvers = solvers;
        this.sequence = new Sequence(solvers, seen);
        this.exchange = new Exchange(solvers, seen);
    }

    /**
     * Repairs.
     * @param wishes one plan a group, parts possibly in several
     * @param prices they were made under
     * @param random shakes the order a little
     * @param stop   whether to stop early
     */
    EventPlan repair(List<GroupPlan> wishes, Prices prices, Random random, BooleanSupplier stop) {
        Prices full = prices.withEmpty(1);
        EventPlan plan = sequence.plan(order(wishes, prices, random), full, stop);
        return exchange.better(plan, full, stop);
    }

    private List<Integer> order(List<GroupPlan> wishes, Prices prices, Random random) {
        SetModel model = solvers.model();
        int[] heads = new int[model.heads()];
        int[] shafts = new int[model.shafts()];
        for (GroupPlan wish : wishes) {
            for (Option option : wish.used()) {
                heads[option.head()]++;
                shafts[option.shaft()]++;
            }
        }
        double[] contested = new double[wishes.size()];
        for (int g = 0; g < contested.length; g++) {
            for (Option option : wishes.get(g).used()) {
                contested[g] += heads[option.head()] + shafts[option.shaft()] - 2;
            }
            contested[g] += 2 * random.nextDouble();
        }
        return IntStream.range(0, contested.length).boxed()
            .sorted(Comparator.comparingDouble(g -> -contested[g])).toList();
    }
}
