package benchtwin.sets;

import benchtwin.match.Ranked;
import java.util.Optional;

/**
 * Why a club is left out of a plan.
 * @param reason     in plain words
 * @param substitute the nearest build of what the plan leaves free, another number of the same kind allowed; empty when there
 *                   is none
 */
public record Unbuilt(String reason, Optional<Ranked> substitute) {
}
