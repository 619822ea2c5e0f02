package benchtwin.match;

import benchtwin.club.Inventory;
import java.util.OptionalDouble;

/**
 * What is asked of a match.
 * @param favourite        what the twin is made of
 * @param inventory        the stock
 * @param keep             what the twin keeps
 * @param otherModels      whether other models may be used
 * @param top              how many results are wanted, 1 or more
 * @param shop             what the workshop can set and what it costs
 * @param mostReadyMinutes minutes until the club is due; plans that take longer stand below the line
 */
public record MatchRequest(Favourite favourite, Inventory inventory, Keep keep, boolean otherModels, int top,
                           ShopSettings shop, OptionalDouble mostReadyMinutes) {

    public MatchRequest {
        if (top < 1) {
            throw new IllegalArgumentException("at least one result must be asked for, not " + top);
        }
    }
}
