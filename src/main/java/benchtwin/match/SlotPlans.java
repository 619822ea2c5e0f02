package benchtwin.match;

import benchtwin.club.AddedMasses;
import benchtwin.club.Category;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.Target;
import benchtwin.rules.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Plans one wanted club of a set from any head and shaft of the stock: which parts fit it, what each pair comes to, and the
 * plan itself. Not thread-safe: every thread works on clubs of its own.
 *
 * <p>Many pairs are compared with their angles set apart from cuts and masses ({@link #plan}); the pairs that are chosen are
 * then planned exactly ({@link #exact}).
 */
public final class SlotPlans {

    private final Favourite wanted;
    private final ShopSettings shop;
    private final Inventory inventory;
    private final Screening screening;
    private final TwinModel twin;
    private final PlanSearch search;
    private final List<Head> heads;
    private final List<Shaft> shafts;
    private final Map<String, Integer> ruledOut = new TreeMap<>();

    /**
     * Looks through the stock.
     * @param wanted    the club, with the grip it gets
     * @param inventory the stock
     * @param shop      what a person can set and what it costs
     */
    public SlotPlans(Favourite wanted, Inventory inventory, ShopSettings shop) {
        this.wanted = wanted;
        this.shop = shop;
        this.inventory = inventory;
        this.screening = new Screening(wanted, inventory, true);
        this.twin = new TwinModel(Optional.empty(), Keep.NONE, wanted.condition(), wanted.reading());
        this.search = search(wanted.target());
        List<Head> usableHeads = new ArrayList<>();
        List<Shaft> usableShafts = new ArrayList<>();
        for (Head head : inventory.heads()) {
            Optional<String> why = screening.whyNot(head).or(() -> promised(head.keeping().reservedFor()));
            why.ifPresentOrElse(reason -> ruledOut.merge("head: " + reason, 1, Integer::sum), () -> usableHeads.add(head));
        }
        for (Shaft shaft : inventory.shafts()) {
            Optional<String> why = screening.whyNot(shaft).or(() -> promised(shaft.keeping().reservedFor()));
            why.ifPresentOrElse(reason -> ruledOut.merge("shaft: " + reason, 1, Integer::sum), () -> usableShafts.add(shaft));
        }
        this.heads = List.copyOf(usableHeads);
        this.shafts = List.copyOf(usableShafts);
    }

    private PlanSearch search(Target target) {
        return new PlanSearch(target, twin, shop, inventory.weights(), start(), Double.POSITIVE_INFINITY, Levers.ALL);
    }

    private AddedMasses start() {
        return new AddedMasses(wanted.tapeLayers(), 0, 0, 0);
    }

    private Optional<String> promised(Optional<String> reservedFor) {
        return screening.isPromised(reservedFor) ? Optional.of("promised to somebody else") : Optional.empty();
    }

    /**
     * The club that is wanted.
     * @return as given
     */
    public Favourite wanted() {
        return wanted;
    }

    /**
     * Heads that can be used at all.
     * @return in stock order
     */
    public List<Head> heads() {
        return heads;
    }

    /**
     * Shafts that can be used at all, whether or not they fit every head.
     * @return in stock order
     */
    public List<Shaft> shafts() {
        return shafts;
    }

    /**
     * What was ruled out.
     * @return how many parts, by part and reason
     */
    public Map<String, Integer> ruledOut() {
        return Map.copyOf(ruledOut);
    }

    private List<Candidate> candidates(Head head, Shaft shaft) {
        List<Candidate> candidates = new ArrayList<>();
        for (Screening.Way way : screening.waysWithTipFree(head, shaft)) {
            Candidate candidate = screening.withGrip(head, shaft, way, way.steps());
            if (screening.isLongEnough(candidate)) {
                candidates.add(candidate);
            }
        }
        return candidates;
    }

    /**
     * The plan of least cost of two parts, their angles set apart from cuts and masses.
     * @param head  one of {@link #heads}
     * @param shaft one of {@link #shafts}
     * @param below plans that cost this much or more are of no interest; may be infinite
     * @return empty when they do not go together, or no plan costs less
     */
    public Optional<SlotPlan> plan(Head head, Shaft shaft, double below) {
        return worked(least(head, shaft, below, search::bestWithAnglesApart));
    }

    /** Plans one way to join two parts, below a cost; null when nothing costs less. */
    private interface Planner {
        FoundPlan best(Candidate candidate, double below);
    }

    /** The cheapest plan over every way to join two parts; null when none costs less than the bound. */
    private FoundPlan least(Head head, Shaft shaft, double below, Planner planner) {
        FoundPlan best = null;
        for (Candidate candidate : candidates(head, shaft)) {
            FoundPlan plan = planner.best(candidate, best == null ? below : best.cost());
            best = plan == null ? best : plan;
        }
        return best;
    }

    private Optional<SlotPlan> worked(FoundPlan plan) {
        if (plan == null) {
            return Optional.empty();
        }
        double[] predicted = twin.predict(plan.candidate().assembly(), plan.setup());
        boolean tooLong = wanted.category() != Category.PUTTER
            && Limit.LENGTH_MOST.margin(predicted[Quantity.RULES_LENGTH.ordinal()]) < 0;
        return tooLong ? Optional.empty() : Optional.of(new SlotPlan(plan, predicted));
    }

    /**
     * The plan of least cost of the same two parts over everything a person can set.
     * @param plan a plan of theirs
     * @return it, or one that costs less
     */
    public SlotPlan exact(SlotPlan plan) {
        return worked(least(plan.head(), plan.shaft(), plan.cost(), search::best)).orElse(plan);
    }

    /**
     * What draws a club toward the others of its group.
     * @param quantity  in which quantity
     * @param toward    the value it is drawn to, in the quantity's unit
     * @param tolerance one tolerance, in the quantity's unit, above 0
     * @param weight    what a squared tolerance away from there costs, squared tolerances, 0 or more
     */
    public record Pull(Quantity quantity, double toward, double tolerance, double weight) {
    }

    /**
     * The plan of the same two parts that costs least with the pulls counted.
     * @param plan  a plan of theirs
     * @param pulls toward the group
     * @return it, or another; its cost is without the pulls
     */
    public SlotPlan pulled(SlotPlan plan, List<Pull> pulls) {
        PlanSearch drawn = search.pulled(pulls);
        FoundPlan best = least(plan.head(), plan.shaft(), Double.POSITIVE_INFINITY, drawn::best);
        return best == null ? plan : worked(withoutPulls(best, drawn)).orElse(plan);
    }

    /** What a plan costs without the pulls: other terms stay, those of the quantities pulled are put back. */
    private FoundPlan withoutPulls(FoundPlan found, PlanSearch drawn) {
        double[] predicted = twin.predict(found.candidate().assembly(), found.setup());
        double cost = found.cost();
        for (Quantity quantity : Quantity.values()) {
            if (drawn.terms.counts(quantity) && drawn.terms.differsFrom(search.terms, quantity)) {
                double value = predicted[quantity.ordinal()];
                cost += search.terms.of(quantity, value) - drawn.terms.of(quantity, value);
            }
        }
        return found.withCost(cost);
    }

    /**
     * Rough costs of every pair, to choose which are worked out.
     * @return costs
     */
    public SlotEstimates estimates() {
        return new SlotEstimates(heads, shafts, this::candidates, search);
    }

    /**
     * The plan in words, with what the club will measure and how sure that is.
     * @param plan one of these
     * @return as a match would show it
     */
    public Ranked explained(SlotPlan plan) {
        return new Explanation(wanted.target(), twin, shop, Keep.NONE).alone(plan.plan());
    }
}
