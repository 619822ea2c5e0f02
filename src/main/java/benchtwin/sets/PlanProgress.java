package benchtwin.sets;

import java.util.OptionalDouble;

/**
 * Where a search stands.
 * @param rounds         rounds done
 * @param unbuilt        clubs left out
 * @param cost           of the best plan so far, squared tolerances
 * @param gapPercent     how far it may be from the best, per cent, if that is known
 * @param outOfTolerance built clubs with a quantity beyond its tolerance
 * @param seconds        since the start
 */
public record PlanProgress(int rounds, int unbuilt, double cost, OptionalDouble gapPercent, int outOfTolerance,
                           double seconds) {
}
