package benchtwin.sets;

import java.time.Duration;
import java.util.OptionalInt;

/**
 * When a search ends, whichever comes first; it also ends when the plan is proven best.
 * @param time       after so long; zero for no limit
 * @param gapPercent when the plan is proven to be so near the best, per cent, 0 or more
 * @param rounds     after so many rounds; with a number of rounds and no limit of time, the same on any machine
 * @param seed       of the search
 */
public record PlanLimits(Duration time, double gapPercent, OptionalInt rounds, long seed) {

    public PlanLimits {
        if (time.isNegative() || !(gapPercent >= 0) || rounds.isPresent() && rounds.getAsInt() < 0) {
            throw new IllegalArgumentException("time, gap and rounds are 0 or more");
        }
    }
}
