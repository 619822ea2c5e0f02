package benchtwin.sets;

import benchtwin.club.Target;
import benchtwin.club.WantedClub;
import benchtwin.match.Ranked;
import java.util.Optional;

/**
 * One club of a planned set.
 * @param wanted  what was asked
 * @param target  row and lines together; empty when nothing that ranks is wanted
 * @param build   parts and plan; empty when it is left unbuilt
 * @param unbuilt why it is, and what would stand in for it; empty when it is built
 * @param pinned  whether a part of it was decided beforehand
 */
public record ClubOfSet(WantedClub wanted, Optional<Target> target, Optional<Ranked> build, Optional<Unbuilt> unbuilt,
                        boolean pinned) {

    public ClubOfSet {
        if (build.isPresent() == unbuilt.isPresent()) {
            throw new IllegalArgumentException("a club is built, or there is a reason why not");
        }
    }
}
