package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.measure.Reading;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.Setup;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The club a twin is made of, as it was last known sound: its parts as numbers and what it measured.
 * @param assembly  its parts
 * @param setup     how it was built and set
 * @param condition how its frequency was read
 * @param measured  what it measured; length along the axis, mm
 */
public record OldClub(Assembly assembly, Setup setup, FrequencyCondition condition, Map<Quantity, Reading> measured) {

    public OldClub {
        EnumMap<Quantity, Reading> copy = new EnumMap<>(Quantity.class);
        copy.putAll(measured);
        measured = Collections.unmodifiableMap(copy);
    }

    /** The same with its measured loft in another reading. */
    OldClub withLoft(double loftDeg) {
        EnumMap<Quantity, Reading> other = new EnumMap<>(measured);
        other.computeIfPresent(Quantity.LOFT, (q, r) -> new Reading(loftDeg, r.standardUncertainty(), r.taken()));
        return new OldClub(assembly, setup, condition, other);
    }

    OldClub withAssembly(Assembly other) {
        return new OldClub(other, setup, condition, measured);
    }
}
