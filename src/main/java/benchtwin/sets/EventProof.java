package benchtwin.sets;

import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * What has been proven about all plans so far, on both levels. The least weight of empty slots comes from parts matched to
 * slots, then from prices at which an empty slot counts in full. The soft level is proven among the plans that leave that
 * little empty: there every plan's empty slots weigh the same, so they may count at any share of their weight, taken off
 * again after.
 */
final class EventProof {

    private static final int FEW_BOXES = 200;
    /** How often the dearest slot an empty slot counts, see {@link #share}. */
    private static final double DEAREST = 2;

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

    /**
     * Such that a slot left empty counts a few times the dearest slot, each group planned as if it were alone. Among plans that
     * leave equally much empty any share proves something; too small a one proves little, because plans that leave more empty
     * look cheap, and a large one makes prices of scarce parts so high that they take hundreds of rounds to find.
     */
    static double share(SetModel model, Workers workers) {
        Solvers alone = new Solvers(model, workers);
        Prices none = Prices.none(model);
        double dearest = 1;
        for (int g = 0; g < alone.count(); g++) {
            GroupPlan plan = alone.quick(g, none);
            long used = plan.used().size();
            double spread = used == 0 ? 0 : (plan.softCost() - plan.used().stream().mapToLong(Option::cost).sum()) / (double) used;
            dearest = Math.max(dearest, spread + plan.used().stream().mapToLong(Option::cost).max().orElse(0));
        }
        double least = Double.POSITIVE_INFINITY;
        for (int slot = 0; slot < model.slots(); slot++) {
            least = Math.min(least, model.emptyCost(slot));
        }
        return Math.min(1, DEAREST * dearest / least);
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
    boolean proveEmpty(EventPlan plan, BooleanSupplier stop) {
        int[] empty = plan.emptySlots();
        for (EmptyByModel look : List.of(byHeads, byShafts)) {
            if (emptyCost < plan.emptyCost()) {
                look.weight(empty).ifPresent(weight -> emptyCost = Math.max(emptyCost, weight));
            }
        }
        return emptyCost >= plan.emptyCost() || program.prices(plan.emptySlots()).map(prices -> prove(prices, 1, stop).isDone()).orElse(true);
    }

    /**
     * Tries to prove a plan the best there is, by listing all that could be better.
     * @param incumbent the best plan so far
     * @param prices    of the last proof at the share; while the incumbent may leave too much empty, empty slots count in full
     * @param proof     the last proof at the share
     * @param effort    how long to look, 1 or more
     * @param stop      whether to give up
     */
    Closing.Closed close(EventPlan incumbent, Prices prices, EventBound.Proof proof, int effort, BooleanSupplier stop) {
        boolean isFull = incumbent.emptyCost() > emptyCost;
        Prices at = isFull ? prices.withEmpty(1) : prices;
        EventBound.Proof here = isFull ? prove(at, FEW_BOXES, stop) : proof;
        if (!here.isDone()) {
            return new Closing.Closed(incumbent, false, List.of());
        }
        Closing.Closed closed = closing.close(incumbent, at, here, effort, stop);
        if (closed.isProven() && (isFull || closed.best().emptyCost() == emptyCost)) {
            provenBest = closed.best();
        }
        return closed;
    }
}
