package benchtwin.bend;

import benchtwin.club.Quantity;
import benchtwin.mechanics.HoselTilt;
import java.util.Map;

/** What to do next with a head that is being bent. */
public sealed interface BendAdvice {

    /** Every target is within tolerance: stop here. */
    record Reached() implements BendAdvice {
    }

    /**
     * Bend.
     * @param direction   which way
     * @param askedDeg    what to ask, in degrees of the angle that is read
     * @param expectedDeg what that should leave, in degrees of the same angle
     * @param spreadDeg   how sure that is: standard deviation, degrees of the same angle
     * @param tilt        the same in hosel tilt, with its chances
     * @param known       what it rests on
     * @param foreseenDeg what the head should read afterwards
     */
    record Ask(BendDirection direction, double askedDeg, double expectedDeg, double spreadDeg, NextBend tilt, Springback known,
               Map<Quantity, Double> foreseenDeg) implements BendAdvice {

        /** Copies what it is given. */
        public Ask {
            foreseenDeg = Map.copyOf(foreseenDeg);
        }
    }

    /**
     * The hosel has not enough left.
     * @param direction which way
     * @param needed    what the target needs
     * @param leftDeg   what is left that way, degrees of hosel tilt
     */
    record PastLimit(BendDirection direction, HoselTilt needed, double leftDeg) implements BendAdvice {
    }

    /**
     * No ask of any use is safe enough.
     * @param direction which way
     * @param atLimit   whether it is the hosel's limit that is near, and not the far end of the tolerance
     */
    record TooRisky(BendDirection direction, boolean atLimit) implements BendAdvice {
    }
}
