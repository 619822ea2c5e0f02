package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Target;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Every way to change a club.
 * @param request    what was asked
 * @param target     what is asked, and what should stay as it is
 * @param now        what the club measures now, by quantity
 * @param measured   which of these were read; the others are worked out from its parts
 * @param ways       those that reach what was asked, fewest things changed first, then least miss
 * @param more       how many further ways reach it and are not shown
 * @param shortfalls what cannot reach it by itself, how near it comes and why
 * @param alreadySo  whether the club measures what was asked as it is
 * @param notes      what a reader should know
 */
public record ChangeAnswer(ChangeRequest request, Target target, Map<Quantity, Double> now, Set<Quantity> measured,
                           List<Way> ways, int more, List<Shortfall> shortfalls, boolean alreadySo, List<String> notes) {

    /**
     * Something that cannot reach what was asked by itself.
     * @param lever   what would be changed
     * @param nearest what it comes to at its nearest; empty when it cannot be done at all
     * @param missing how far each quantity asked for stays off, with sign; those inside tolerance are missing
     * @param why     why it goes no farther
     */
    public record Shortfall(Lever lever, Optional<Way> nearest, Map<Quantity, Double> missing, String why) {
    }
}
