package benchtwin.sets;

import java.util.List;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * What has been proven about all plans so far, on both levels. The least weight of empty slots comes from parts matched to
 * slots, then from prices at which an empty slot counts in full. The soft level is proven among the plans that leave that
 * little empty: there every plan's empty slots weigh the same, so they may count at any share of their weight, taken off
 * again after.
 */
final class EventProof {

    private static final int FEW_BOXES = 200;

    private final EventBound event;
    private final Closing closing;
    private final EmptyProgram program;
    private final EmptyByModel byHeads;
    private final EmptyByModel byShafts;
    private final double unit;
    private final double mostSoft;
    private final double share;
    private long emptyCost;
    private double soft = Double.NEGATIVE_INFINITY;
    private EventPlan provenBest;

    /**
     * @param solvers of the groups
     * @param workers to prove groups side by side
     * @param share   of the weight of empty slots in proofs of the soft level
     * @param matched what slots weigh, at least, that must stay empty
     */
    EventProof(Solvers solvers, Workers workers, double share, long matched) {
        SetModel model = solvers.model();
        this.event = new EventBound(solvers, workers);
        this.program = new EmptyProgram(model);
        this.byHeads = EmptyByModel.ofHeads(model);
        this.byShafts = EmptyByModel.ofShafts(model);
        this.closing = new Closing(solvers, workers);
        this.share = share;
        this.unit = model.emptyUnit();
        this.mostSoft = model.mostSoft();
        this.emptyCost = matched;
    }

    /** The bound, its soft level for plans whose empty slots weigh what they must. */
    Bound bound() {
        if (provenBest != null) {
            return new Bound(provenBest.emptyCost(), provenBest.soft());
        }
        double least = Math.ceil(soft - share * emptyCost);
        return new Bound(emptyCost, least < 0 ? 0 : (long) least);
    }

    /**
     * Proves at prices.
     * @param prices    with empty slots in full or at the share
     * @param mostBoxes a group
     * @param stop      whether to give up
     */
    EventBound.Proof prove(Prices prices, int mostBoxes, BooleanSupplier stop) {
        EventBound.Proof proof = event.prove(prices, mostBoxes, stop);
        if (proof.isDone()) {
            if (prices.empty() == 1) {
                double units = Math.ceil((proof.value() - mostSoft) / unit);
                emptyCost = Math.max(emptyCost, (long) (units * unit));
            }
            if (prices.empty() == share) {
                soft = Math.max(soft, proof.value());
            }
        }
        return proof;
    }

    /**
     * Looks at the slots a plan leaves empty and at those they lead to: heads with their models, shafts with theirs, then heads
     * and shafts together without; each where that is not too large a problem.
     */
    void proveEmpty(EventPlan plan) {
        int[] empty = plan.emptySlots();
        for (Function<int[], OptionalLong> look : List.<Function<int[], OptionalLong>>of(byHeads::weight, byShafts::weight,
                program::weight)) {
            if (emptyCost < plan.emptyCost()) {
                look.apply(empty).ifPresent(weight -> emptyCost = Math.max(emptyCost, weight));
            }
        }
    }

    /**
     * Tries to prove a plan the best there is, by listing all that could be better.
     * @param incumbent the best plan so far
     * @param prices    of the last proof at the share; while the incumbent may leave too much empty, empty slots count in full
     * @param proof     the last proof at the share
     * @param stop      whether to give up
     */
    Closing.Closed close(EventPlan incumbent, Prices prices, EventBound.Proof proof, BooleanSupplier stop) {
        boolean isFull = incumbent.emptyCost() > emptyCost;
        Prices at = isFull ? prices.withEmpty(1) : prices;
        EventBound.Proof here = isFull ? prove(at, FEW_BOXES, stop) : proof;
        if (!here.isDone()) {
            return new Closing.Closed(incumbent, false, List.of());
        }
        Closing.Closed closed = closing.close(incumbent, at, here, stop);
        if (closed.isProven() && (isFull || closed.best().emptyCost() == emptyCost)) {
            provenBest = closed.best();
        }
        return closed;
    }
}
