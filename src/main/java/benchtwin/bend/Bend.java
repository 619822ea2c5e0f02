package benchtwin.bend;

import benchtwin.club.Quantity;
import benchtwin.mechanics.HoselTilt;
import java.util.Map;

/**
 * One push and the reading after it.
 * @param direction which way it was asked
 * @param askedDeg  what was asked, degrees of the angle that is read
 * @param trial     the same with what was got, in hosel tilt
 * @param beforeDeg angles before
 * @param afterDeg  angles after
 * @param used      tilt it cost the metal, degrees
 */
public record Bend(BendDirection direction, double askedDeg, BendTrial trial, Map<Quantity, Double> beforeDeg,
                   Map<Quantity, Double> afterDeg, HoselTilt used) {

    public Bend {
        beforeDeg = Map.copyOf(beforeDeg);
        afterDeg = Map.copyOf(afterDeg);
    }
}
