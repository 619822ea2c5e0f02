package benchtwin.sets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;

/**
 * The first whole plans, quickly: groups in sequence by importance, then exchanges. Where more stays empty than must, once more
 * with what slots depend on kept for them, and with exchanges in which scarce parts cost what leaving a slot empty weighs.
 */
final class FirstPlan {

    private final Solvers solvers;
    private final Sequence sequence;
    private final Exchange exchange;

    FirstPlan(Solvers solvers, BiConsumer<Integer, GroupPlan> seen) {
        this.solvers = solvers;
        this.sequence = new Sequence(solvers, seen);
        this.exchange = new Exchange(solvers, seen);
    }

    /**
     * Plans.
     * @param heads  slots matched to heads
     * @param shafts slots matched to shafts
     * @param least  what must stay empty weighs at least
     * @param stop   whether to stop with what there is
     * @return plans of which one or another is best
     */
    List<EventPlan> plan(EmptyBound heads, EmptyBound shafts, long least, BooleanSupplier stop) {
        SetModel model = solvers.model();
        Prices none = Prices.none(model);
        EventPlan simple = exchange.better(sequence.plan(sequence.byImportance(), none, stop), none, stop);
        List<EventPlan> plans = new ArrayList<>(List.of(simple));
        if (simple.emptyCost() > least) {
            EventPlan reserved = sequence.plan(sequence.byImportance(), g -> {
                Prices prices = Prices.none(model);
                heads.reserve(prices.head(), model, g);
                shafts.reserve(prices.shaft(), model, g);
                return prices;
            }, stop);
            Prices scarce = EmptyBound.prices(model, heads, shafts, 1);
            plans.add(exchange.better(reserved, scarce, stop));
            plans.add(exchange.better(simple, scarce, stop));
        }
        return plans;
    }
}
