package benchtwin.bend;

import benchtwin.club.Adjust;
import benchtwin.club.BendHistory;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.HeadMaterial;
import benchtwin.club.MadeAngles;
import benchtwin.measure.Reading;
import benchtwin.mechanics.HoselTilt;
import java.util.Optional;

/**
 * What a hosel can still be bent: hosel tilt left in each of four directions, degrees, 0 or more. A limit is on tilt added
 * up over the head's life, each direction on its own, so bending back uses metal too.
 *
 * <p>Limits by material: memory, changeable; the maker's limit always prevails.
 * @param uprightDeg    left toward upright
 * @param flatDeg       left toward flat
 * @param forwardDeg    left toward the target
 * @param backDeg       left away from the target
 * @param historyAssumed whether the tilt used so far was taken from the change since the head was made, or as none, for
 *                      want of a record
 */
public record HoselLimits(double uprightDeg, double flatDeg, double forwardDeg, double backDeg,
                          boolean historyAssumed) {

    /** A hosel that cannot be bent at all. */
    public static final HoselLimits NONE = new HoselLimits(0, 0, 0, 0, false);

    /**
     * Tilt a hosel stands over its life in one direction.
     * @param material what it is made of
     * @return degrees; 0 for a material that is never bent, or not known
     */
    public static double lifeLimitDeg(HeadMaterial material) {
        return switch (material) {
            case CARBON_STEEL, STAINLESS_431, STAINLESS_SOFT -> 3;
            case STAINLESS_17_4 -> 2;
            case TITANIUM -> 1.5;
            case HOLLOW -> 1;
            case ALUMINIUM, ZINC, UNKNOWN -> 0;
        };
    }

    /**
     * What a head has left.
     * @param head any head
     * @return {@link #NONE} for a cracked, sleeved or fixed head and for materials that are not bent
     */
    public static HoselLimits of(Head head) {
        return of(head, lifeLimitDeg(head.material()));
    }

    /**
     * The same with a limit somebody answers for.
     * @param head  any head
     * @param limit tilt its hosel stands over its life in one direction, degrees, 0 or more
     * @return {@link #NONE} for a cracked, sleeved or fixed head
     */
    public static HoselLimits of(Head head, double limit) {
        if (head.adjust() != Adjust.BEND || head.condition() == HeadCondition.CRACKED || limit == 0) {
            return NONE;
        }
        BendHistory bent = head.bent();
        HoselTilt net = netSinceMade(head);
        return new HoselLimits(
            left(limit, bent.uprightDeg().orElse(Math.max(0, net.uprightDeg()))),
            left(limit, bent.flatDeg().orElse(Math.max(0, -net.uprightDeg()))),
            left(limit, bent.forwardDeg().orElse(Math.max(0, net.forwardDeg()))),
            left(limit, bent.backDeg().orElse(Math.max(0, -net.forwardDeg()))),
            !bent.isComplete());
    }

    /**
     * Whether a tilt stays inside what is left.
     * @param tilt a hosel tilt from where the head is now
     * @return true when every direction has room for it
     */
    public boolean allow(HoselTilt tilt) {
        return tilt.uprightDeg() <= uprightDeg + ROUNDING && -tilt.uprightDeg() <= flatDeg + ROUNDING
            && tilt.forwardDeg() <= forwardDeg + ROUNDING && -tilt.forwardDeg() <= backDeg + ROUNDING;
    }

    /**
     * What is left one way.
     * @param direction which
     * @return degrees, 0 or more
     */
    public double leftDeg(BendDirection direction) {
        return switch (direction) {
            case UPRIGHT -> uprightDeg;
            case FLAT -> flatDeg;
            case FORWARD -> forwardDeg;
            case BACK -> backDeg;
        };
    }

    /**
     * What is left after a tilt. A direction the tilt does not go in keeps what it has.
     * @param tilt what was bent
     * @return what is left
     */
    public HoselLimits after(HoselTilt tilt) {
        return new HoselLimits(left(uprightDeg, Math.max(0, tilt.uprightDeg())), left(flatDeg, Math.max(0, -tilt.uprightDeg())),
            left(forwardDeg, Math.max(0, tilt.forwardDeg())), left(backDeg, Math.max(0, -tilt.forwardDeg())), historyAssumed);
    }

    /** Degrees that arithmetic may be off by. */
    private static final double ROUNDING = 1e-9;

    private static double left(double limit, double used) {
        return Math.max(0, limit - used);
    }

    /** The tilt that would lead from the angles as made to those read now; none where either is missing. */
    private static HoselTilt netSinceMade(Head head) {
        MadeAngles made = head.made();
        Optional<Reading> lie = head.angles().lieDeg();
        if (made.lieDeg().isEmpty() || lie.isEmpty()) {
            return HoselTilt.NONE;
        }
        double from = made.lieDeg().getAsDouble();
        if (head.isWood()) {
            double closed = made.faceDeg().isPresent() && head.angles().faceDeg().isPresent()
                ? made.faceDeg().getAsDouble() - head.angles().faceDeg().get().value() : 0;
            return HoselTilt.forWood(from, lie.get().value(), closed);
        }
        double weaker = made.loftDeg().isPresent() && head.angles().loftDeg().isPresent()
            ? head.angles().loftDeg().get().value() - made.loftDeg().getAsDouble() : 0;
        return HoselTilt.forIron(from, lie.get().value(), weaker);
    }
}
