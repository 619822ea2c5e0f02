package benchtwin.club;

import java.util.OptionalDouble;

/**
 * Hosel tilt a head has already been through, added up over its life, each direction on its own, in degrees, 0 or more.
 * @param uprightDeg tilt towards upright
 * @param flatDeg    tilt towards flat
 * @param forwardDeg tilt towards the target
 * @param backDeg    tilt away from the target
 */
public record BendHistory(OptionalDouble uprightDeg, OptionalDouble flatDeg, OptionalDouble forwardDeg,
                          OptionalDouble backDeg) {

    /** Nothing recorded. */
    public static final BendHistory UNRECORDED = new BendHistory(OptionalDouble.empty(), OptionalDouble.empty(),
        OptionalDouble.empty(), OptionalDouble.empty());

    /**
     * Whether every direction is recorded.
     * @return false when any is missing
     */
    public boolean isComplete() {
        return uprightDeg.isPresent() && flatDeg.isPresent() && forwardDeg.isPresent() && backDeg.isPresent();
    }
}
