package benchtwin.match;

import benchtwin.club.Grip;
import benchtwin.club.Inventory;
import benchtwin.club.Quantity;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is to be changed about a recorded club.
 * @param club        the club with its last sound readings
 * @param wished      what it should measure afterwards, by quantity; lengths along the axis, mm
 * @param grip        the grip it should have afterwards, if another is asked for
 * @param gripMassG   the mass its grip should have afterwards, g, if one is asked for
 * @param inventory   the stock
 * @param shop        what the workshop can set and what it costs
 * @param tolerances  tolerances and weights
 * @param otherModels whether heads and shafts of other models may be used
 * @param top         how many ways are wanted, 1 or more
 */
public record ChangeRequest(Favourite club, Map<Quantity, Double> wished, Optional<Grip> grip, OptionalDouble gripMassG,
                            Inventory inventory, ShopSettings shop, Tolerances tolerances, boolean otherModels, int top) {

    /** How far a grip's mass may be from the one asked for, g. Ours. */
    public static final double GRIP_TOLERANCE_G = 1;

    public ChangeRequest {
        EnumMap<Quantity, Double> copy = new EnumMap<>(Quantity.class);
        copy.putAll(wished);
        wished = Collections.unmodifiableMap(copy);
        if (wished.isEmpty() && grip.isEmpty() && gripMassG.isEmpty()) {
            throw new IllegalArgumentException("a change asks for at least one quantity or a grip");
        }
        if (grip.isPresent() && gripMassG.isPresent()) {
            throw new IllegalArgumentException("a grip is asked for by tag or by mass, not both");
        }
    }

    boolean asksForAGrip() {
        return grip.isPresent() || gripMassG.isPresent();
    }
}
