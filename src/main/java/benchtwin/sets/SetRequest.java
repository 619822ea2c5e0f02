package benchtwin.sets;

import benchtwin.club.Grip;
import benchtwin.club.Inventory;
import benchtwin.club.SetTargets;
import benchtwin.match.ShopSettings;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is asked of a plan of sets.
 * @param targets   the clubs that are wanted
 * @param inventory the stock
 * @param shop      what the workshop can set and what it costs
 * @param grip      the grip every club gets; empty: what the player's recorded clubs have, else what there is most of
 * @param pins      parts that are decided
 * @param banned    tags of parts that may not be used
 * @param alikeness what unlike clubs in a group cost
 */
public record SetRequest(SetTargets targets, Inventory inventory, ShopSettings shop, Optional<Grip> grip, List<SetPin> pins,
                         Set<String> banned, Alikeness alikeness) {

    public SetRequest {
        pins = List.copyOf(pins);
        banned = Set.copyOf(banned);
    }
}
