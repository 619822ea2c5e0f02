package benchtwin.sets;

import java.util.OptionalDouble;

/**
 * How good a plan of sets is, and how good it could be.
 * @param clubs        clubs wanted
 * @param unbuilt      clubs left out
 * @param cost         plans, spreads and models together, squared tolerances, before the clubs of a group are planned jointly
 * @param bound        no choice of parts among the options worked out, that builds as much, costs less; empty when that was
 *                     not shown, or when it was not shown that no more clubs can be built
 * @param jointGain    what planning groups jointly took off afterwards, squared tolerances, 0 or more; outside the proof
 * @param options      head and shaft pairs worked out
 * @param pairs        pairs that fit, by rough cost
 * @param rounds       rounds of the search
 * @param seed         of the search
 */
public record PlanScore(int clubs, int unbuilt, double cost, OptionalDouble bound, double jointGain, int options, long pairs,
                        int rounds, long seed) {

    /**
     * How far the plan may be from the best.
     * @return per cent of its cost, 0 when proven best; empty without a bound
     */
    public OptionalDouble gapPercent() {
        if (bound.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(cost <= bound.getAsDouble() || cost == 0 ? 0 : 100 * (cost - bound.getAsDouble()) / cost);
    }
}
