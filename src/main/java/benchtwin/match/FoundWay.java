package benchtwin.match;

import benchtwin.club.Quantity;
import java.util.Comparator;
import java.util.Map;
import java.util.Set;

/**
 * A plan that changes a club, with what it changes and how far off it leaves things.
 * @param changed what is changed
 * @param plan    the plan
 * @param base    the parts it starts from
 * @param steps   how many steps it takes
 * @param miss    distance from what is asked and held, in tolerances
 * @param missing how far each quantity asked for stays off; those inside tolerance are absent
 * @param reaches whether everything asked is reached
 */
record FoundWay(Set<Lever> changed, FoundPlan plan, ChangeParts.Base base, int steps, double miss,
                Map<Quantity, Double> missing, boolean reaches) {

    /** Each step changes one thing, so the fewest things changed are the fewest steps. */
    static final Comparator<FoundWay> ORDER = Comparator.comparingInt(FoundWay::steps)
        .thenComparingDouble(FoundWay::miss).thenComparingDouble(f -> f.plan().cost())
        .thenComparing(f -> f.plan().candidate().key());

    /** A way that changes more must lower the miss to this share to be worth showing, or bring it inside tolerance. Ours. */
    private static final double WORTH_ANOTHER = 0.75;
    /** And by more than this, tolerances. Ours. */
    private static final double HARDLY_NEARER = 0.02;

    /** Whether another changes no more things than this and drags nearly as little along. */
    boolean isNeedlessBeside(FoundWay other) {
        boolean nearEnough = other.miss() * WORTH_ANOTHER <= miss && (other.miss() <= 1 || miss > 1)
            || other.miss() <= miss + HARDLY_NEARER;
        return !other.changed().equals(changed) && changed.containsAll(other.changed()) && nearEnough;
    }
}
