package benchtwin.sets;

import java.util.OptionalDouble;

/**
 * What no plan undercuts.
 * @param emptyCost no plan's empty slots weigh less
 * @param soft      no plan whose empty slots weigh that little costs less; only of use where a plan has that weight
 */
record Bound(long emptyCost, long soft) {

    /**
     * How far a plan may be from the best, as a share of its cost.
     * @return 0 when it is proven best; empty while it might leave more empty than it must
     */
    OptionalDouble gap(EventPlan plan) {
        if (plan.emptyCost() > emptyCost) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(plan.soft() <= soft ? 0 : (plan.soft() - Math.max(0, soft)) / (double) plan.soft());
    }
}
