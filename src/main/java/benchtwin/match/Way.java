package benchtwin.match;

import benchtwin.club.Grip;
import java.util.Optional;
import java.util.Set;

/**
 * One way to change a club.
 * @param changed    what is changed
 * @param option     its plan and what the club measures afterwards; differences are from what was asked and from what was
 * @param grip       the grip on it afterwards
 * @param tapeLayers layers of tape under it afterwards
 */
public record Way(Set<Lever> changed, Ranked option, Optional<Grip> grip, double tapeLayers) {
}
