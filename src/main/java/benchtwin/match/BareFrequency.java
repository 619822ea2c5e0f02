package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.mechanics.ClubModel;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.Stiffness;
import java.util.OptionalDouble;

/**
 * A recorded club's frequency as its bare butt would read in the usual clamp. Over a grip in that clamp, the reading divided by
 * the grip factor; in another clamp, what the model of the club makes of it once its shaft is scaled to the reading.
 */
final class BareFrequency {

    /** Clamps this near are one: what a ruler can tell. Ours. */
    private static final double SAME_CLAMP_MM = 0.5;

    private BareFrequency() {
    }

    static boolean isBare(FrequencyCondition condition) {
        return !condition.overGrip() && isUsualClamp(condition);
    }

    private static boolean isUsualClamp(FrequencyCondition condition) {
        return Math.abs(condition.clampMm() - FrequencyCondition.BARE.clampMm()) < SAME_CLAMP_MM;
    }

    /**
     * Carries a reading.
     * @param club the club, in whose condition it was read
     * @param cpm  what was read
     * @return cpm on the bare butt; empty when another clamp was used and the parts it takes are not all on record
     */
    static OptionalDouble cpm(Favourite club, double cpm) {
        if (isUsualClamp(club.condition())) {
            return OptionalDouble.of(club.condition().overGrip() ? cpm / club.assemblies().factor().value() : cpm);
        }
        if (club.old().isEmpty()) {
            return OptionalDouble.empty();
        }
        OldClub old = club.old().get();
        double root = Stiffness.rootFromClub(old.assembly(), old.setup(), old.condition(), cpm);
        double bare = ClubModel.predict(old.assembly(), old.setup(), FrequencyCondition.BARE, root,
            club.reading())[Quantity.FREQUENCY.ordinal()];
        return Double.isFinite(bare) ? OptionalDouble.of(bare) : OptionalDouble.empty();
    }
}
