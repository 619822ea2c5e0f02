package benchtwin.sets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * Plans all groups over one stock, round by round, better and better, with a proof of how far from the best the plan may be.
 * The first round plans the groups in sequence; most rounds move prices; now and then a round makes a whole plan from the
 * groups' wishes, chooses among all group plans met so far, or proves. What a round does depends on the rounds before it and
 * on nothing else, least of all a clock: the same model, seed and number of rounds give the same plan on any machine.
 */
final class SetEngine {

    private static final int THREADS = 2;
    /** Rounds repeat with this period; most move prices, these do something else when there is a reason to. */
    private static final int PERIOD = 15;
    private static final int PROOF = 3;
    private static final int REPAIR = 4;
    private static final int CLOSE = 5;
    private static final int CHOICE = 9;
    private static final int EMPTY = 12;
    private static final int KEPT_COLUMNS = 1_500;
    private static final int FEW_BOXES = 500;
    private static final int MANY_BOXES = 4_000;
    /** So much other work has to be done between proofs, as a multiple of the last one's. */
    private static final double WORK_A_PROOF = 1;
    /** Below this gap, all plans that could be better may be few enough to list. */
    private static final double NEAR = 0.01;
    /** A problem with this few options is listed at any gap. */
    private static final int SMALL = 1_000;
    private static final double CLEARLY = 0.5;
    /** How much longer plans are listed once prices no longer move. */
    private static final int LONG = 8;
    private static final int MOST_RESTARTS = 3;

    private final long seed;
    private final Workers workers;
    private final double share;
    private SetModel model;
    private Columns columns;
    private Choices choices;
    private Solvers solvers;
    private EmptyBound heads;
    private EmptyBound shafts;
    private EventProof proof;
    private PriceSearch search;
    private PriceSearch emptySearch;
    private EventPlan best;
    private int rounds;
    private int sinceStart;
    private int restarts;
    private EventPlan atRestart;
    private Prices provenPrices;
    private EventBound.Proof lastProof;
    private long solvesAtProof;
    private long solvesOfProof;
    private double triedMissing;
    private long programFor;
    private boolean isExhausted;
    private boolean isSmall;

    /**
     * @param model the problem
     * @param seed  shakes the order of groups in repairs
     */
    SetEngine(SetModel model, long seed) {
        this(model, seed, THREADS);
    }

    SetEngine(SetModel model, long seed, int threads) {
        this.seed = seed;
        this.workers = new Workers(threads);
        this.best = EventPlan.empty(model);
        this.share = EventProof.share(model, workers);
        this.columns = new Columns(model, KEPT_COLUMNS);
        begin(model, null);
    }

    private void begin(SetModel current, Prices prices) {
        model = current;
        solvers = new Solvers(model, workers);
        choices = new Choices(model, columns, PERIOD);
        heads = EmptyBound.ofHeads(model);
        shafts = EmptyBound.ofShafts(model);
        proof = new EventProof(solvers, workers, share, Math.max(heads.weight(), shafts.weight()));
        search = new PriceSearch(solvers, workers, columns,
            prices != null ? prices : EmptyBound.prices(model, heads, shafts, share));
        emptySearch = new PriceSearch(new Solvers(solvers), workers, columns, EmptyBound.prices(model, heads, shafts, 1));
        sinceStart = 0;
        restarts = 0;
        atRestart = best;
        provenPrices = null;
        lastProof = null;
        triedMissing = Double.POSITIVE_INFINITY;
        solvesOfProof = 0;
        solvesAtProof = 0;
        isExhausted = false;
        programFor = Long.MAX_VALUE;
        isSmall = model.optionCount() <= SMALL;
    }

    /**
     * Does the next round. A round that is stopped does not count and leaves the plan as it was, but for the first, which
     * leaves what it has.
     * @param stop whether to stop now, asked often
     * @return whether there is anything left to do
     */
    boolean next(BooleanSupplier stop) {
        if (isDone()) {
            return false;
        }
        long before = solvers.solves();
        if (!round(stop)) {
            solvesAtProof += solvers.solves() - before;
            return true;
        }
        rounds++;
        sinceStart++;
        return !isDone();
    }

    /** Does one; false when it was stopped. */
    private boolean round(BooleanSupplier stop) {
        int phase = sinceStart % PERIOD;
        boolean mayBeFuller = best.emptyCost() > proof.bound().emptyCost();
        if (rounds == 0) {
            return first(stop);
        } else if (phase == REPAIR) {
            return repair(search.plans(), search.current(), stop);
        } else if (phase == CHOICE && choices.isDue(sinceStart)) {
            return choice(stop);
        } else if (phase == EMPTY && mayBeFuller) {
            return proveEmpty(stop) && repair(emptySearch.plans(), emptySearch.best(), stop);
        } else if (phase == PROOF && search.best() != provenPrices
            && solvers.solves() - solvesAtProof >= solvesOfProof * WORK_A_PROOF) {
            return prove(stop);
        } else if (phase == CLOSE && lastProof != null && isWorthClosing()) {
            return close(stop);
        } else if (mayBeFuller && phase % 2 == 1) {
            emptySearch.round(best.soft() + best.emptyCost());
            columns.add(emptySearch.plans());
            return true;
        }
        return price();
    }

    private boolean first(BooleanSupplier stop) {
        new FirstPlan(solvers, columns::add).plan(heads, shafts, proof.bound().emptyCost(), stop).forEach(this::offer);
        return !stop.getAsBoolean();
    }

    private boolean price() {
        if (search.isExhausted()) {
            restarts = best.isBetterThan(atRestart) ? 0 : restarts + 1;
            atRestart = best;
            solvesOfProof = 0;
            triedMissing = Double.POSITIVE_INFINITY;
            choices.hurry();
            isExhausted = restarts > MOST_RESTARTS;
            search.restart();
        }
        search.round(best.soft() + share * best.emptyCost());
        columns.add(search.plans());
        return true;
    }

    private boolean repair(List<GroupPlan> wishes, Prices prices, BooleanSupplier stop) {
        List<Runnable> seen = new ArrayList<>();
        Repair repair = new Repair(solvers, (g, plan) -> seen.add(() -> columns.add(g, plan)));
        EventPlan plan = repair.repair(wishes, prices, new Random(seed * 1_000_003 + rounds), stop);
        if (stop.getAsBoolean()) {
            return false;
        }
        seen.forEach(Runnable::run);
        offer(plan);
        return true;
    }

    private boolean choice(BooleanSupplier stop) {
        double budget = best.soft() + share * best.emptyCost() - search.bestValue();
        Optional<EventPlan> chosen = choices.choose(sinceStart, search.best(), budget, best, stop);
        chosen.ifPresent(this::offer);
        return chosen.isPresent();
    }

    private boolean proveEmpty(BooleanSupplier stop) {
        if (best.emptyCost() < programFor) {
            if (!proof.proveEmpty(best, stop)) {
                return false;
            }
            programFor = best.emptyCost();
        }
        return proof.prove(Prices.none(model), 1, stop).isDone() && proof.prove(emptySearch.best(), 1, stop).isDone();
    }

    private boolean prove(BooleanSupplier stop) {
        long before = solvers.solves();
        EventBound.Proof here = proof.prove(search.best(), restarts > 0 ? MANY_BOXES : FEW_BOXES, stop);
        if (!here.isDone()) {
            return false;
        }
        solvesAtProof = solvers.solves();
        solvesOfProof = solvesAtProof - before;
        provenPrices = search.best();
        lastProof = here;
        search.correct(here.value());
        for (int g = 0; g < solvers.count(); g++) {
            solvers.startFrom(g, here.groups()[g].plan());
            columns.add(g, here.groups()[g].plan());
        }
        return true;
    }

    /** Near enough, and clearly nearer than when it was last tried in vain. */
    private boolean isWorthClosing() {
        return (isSmall || gap().orElse(1) <= NEAR) && missing() < triedMissing * CLEARLY;
    }

    /** What is missing between the last proof and the score. */
    private double missing() {
        return best.soft() + share * best.emptyCost() - lastProof.value();
    }

    private boolean close(BooleanSupplier stop) {
        double missing = missing();
        long before = solvers.solves();
        Closing.Closed closed = proof.close(best, provenPrices, lastProof, restarts > 0 ? LONG : 1, stop);
        if (stop.getAsBoolean()) {
            return false;
        }
        for (int g = 0; g < closed.plans().size(); g++) {
            for (GroupPlan plan : closed.plans().get(g)) {
                columns.add(g, plan);
            }
        }
        // how far an attempt in vain gets depends on the threads: it must not count as work
        solvesAtProof += solvers.solves() - before;
        offer(closed.best());
        triedMissing = missing;
        return true;
    }

    private void offer(EventPlan plan) {
        if (plan.isBetterThan(best)) {
            best = plan;
            columns.add(plan.groups());
        }
    }

    private boolean isDone() {
        return rounds > 0 && (isExhausted || gap().orElse(1) == 0);
    }

    /** The best choice of options so far, by slot; null for an empty slot. */
    Option[] best() {
        return best.bySlot();
    }

    EventPlan plan() {
        return best;
    }

    /** What no plan undercuts, as far as proven. */
    Bound bound() {
        return proof.bound();
    }

    /** How far the plan may be from the best, as a share of its soft cost; empty while it may leave too much empty. */
    OptionalDouble gap() {
        return bound().gap(best);
    }

    /** How many rounds have been done. */
    int rounds() {
        return rounds;
    }

    /** The best prices: what a part more of each would be worth, about. */
    Prices prices() {
        return search.best().copy();
    }

    /**
     * Takes over a better plan found elsewhere.
     * @param better option by slot; null for an empty slot
     * @throws IllegalArgumentException when it breaks a rule
     */
    void accept(Option[] better) {
        offer(EventPlan.of(model, better));
    }

    /**
     * Goes on with more options for the same slots and parts. Plan, prices and group plans are kept, the proof is not.
     * @param wider the same but for its options, which hold all there were
     * @throws IllegalArgumentException when slots, groups or parts differ
     */
    void widen(SetModel wider) {
        if (!model.isLike(wider)) {
            throw new IllegalArgumentException("a wider model has the same slots, groups and parts");
        }
        begin(wider, search.best());
    }
}
