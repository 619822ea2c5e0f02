package benchtwin.bend;

import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import benchtwin.mechanics.HoselTilt;
import benchtwin.mechanics.WoodLoft;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where bends are to bring a head, and what a tilt does to its angles on the way. A wood is steered by lie and face, an iron
 * by lie and loft; whatever else is read follows. Signs are those of the package of mechanics.
 * @param reading      how its angles are read
 * @param targetDeg    wanted angles: lie, and face or loft; at least one
 * @param toleranceDeg how far off still counts as right, for each of them, above 0
 */
public record BendGoal(AngleReading reading, Map<Quantity, Double> targetDeg, Map<Quantity, Double> toleranceDeg) {

    /** So small a tilt is taken to see how an angle follows the hosel, degrees. */
    private static final double SMALL_DEG = 0.1;

    public BendGoal {
        targetDeg = ordered(targetDeg);
        toleranceDeg = ordered(toleranceDeg);
        if (targetDeg.isEmpty() || !steered(reading).containsAll(targetDeg.keySet())
            || !toleranceDeg.keySet().containsAll(targetDeg.keySet())
            || toleranceDeg.values().stream().anyMatch(tolerance -> !(tolerance > 0))) {
            throw new IllegalArgumentException("bends to %s within %s: expected %s, each with a tolerance above 0".formatted(targetDeg,
                toleranceDeg, steered(reading)));
        }
    }

    private static Map<Quantity, Double> ordered(Map<Quantity, Double> values) {
        Map<Quantity, Double> copy = new EnumMap<>(Quantity.class);
        copy.putAll(values);
        return Collections.unmodifiableMap(copy);
    }

    /**
     * What bends steer.
     * @param reading how the angles are read
     * @return loft and lie of an iron, lie and face of a wood
     */
    public static List<Quantity> steered(AngleReading reading) {
        return reading.isWood() ? List.of(Quantity.LIE, Quantity.FACE) : List.of(Quantity.LOFT, Quantity.LIE);
    }

    /**
     * Whether the head is read as a wood.
     * @return true for soled and square readings
     */
    public boolean isWood() {
        return reading.isWood();
    }

    /**
     * The target furthest off, in its tolerance, of those that are out of tolerance.
     * @param nowDeg the head's angles, lie among them
     * @return empty when all are within tolerance
     */
    public Optional<Quantity> furthestOff(Map<Quantity, Double> nowDeg) {
        Quantity furthest = null;
        for (Quantity quantity : targetDeg.keySet()) {
            if (off(quantity, nowDeg) > 1 && (furthest == null || off(quantity, nowDeg) > off(furthest, nowDeg))) {
                furthest = quantity;
            }
        }
        return Optional.ofNullable(furthest);
    }

    private double off(Quantity quantity, Map<Quantity, Double> nowDeg) {
        double off = Math.abs(nowDeg.get(quantity) - targetDeg.get(quantity)) / toleranceDeg.get(quantity);
        return Math.abs(off - 1) < 1e-9 ? 1 : off;   // what is typed to a hundredth and ends on the limit is within it
    }

    /**
     * The tilt that leads from the angles now to the target.
     * @param nowDeg the head's angles, lie and whatever is targeted among them
     * @return the tilt
     */
    public HoselTilt needed(Map<Quantity, Double> nowDeg) {
        double lie = nowDeg.get(Quantity.LIE);
        double newLie = targetDeg.getOrDefault(Quantity.LIE, lie);
        Quantity other = isWood() ? Quantity.FACE : Quantity.LOFT;
        double turn = targetDeg.containsKey(other) ? targetDeg.get(other) - nowDeg.get(other) : 0;
        return isWood() ? HoselTilt.forWood(lie, newLie, -turn) : HoselTilt.forIron(lie, newLie, turn);
    }

    /**
     * The tilt two readings tell of.
     * @param beforeDeg the angles before
     * @param afterDeg  the angles after
     * @return the tilt; an angle that either lacks is taken not to have moved
     */
    public HoselTilt between(Map<Quantity, Double> beforeDeg, Map<Quantity, Double> afterDeg) {
        Quantity other = isWood() ? Quantity.FACE : Quantity.LOFT;
        double turn = beforeDeg.containsKey(other) && afterDeg.containsKey(other) ? afterDeg.get(other) - beforeDeg.get(other) : 0;
        double lie = beforeDeg.get(Quantity.LIE);
        return isWood() ? HoselTilt.forWood(lie, afterDeg.get(Quantity.LIE), -turn)
            : HoselTilt.forIron(lie, afterDeg.get(Quantity.LIE), turn);
    }

    /**
     * What the angles become by a tilt.
     * @param nowDeg the head's angles, lie among them
     * @param tilt   the tilt
     * @return those of them that are known, by quantity
     */
    public Map<Quantity, Double> after(Map<Quantity, Double> nowDeg, HoselTilt tilt) {
        Map<Quantity, Double> after = new EnumMap<>(Quantity.class);
        after.putAll(nowDeg);
        double lie = nowDeg.get(Quantity.LIE);
        if (!isWood()) {
            double pitch = tilt.ironPitchDeg(lie);
            after.put(Quantity.LIE, tilt.ironLieDeg(lie));
            after.computeIfPresent(Quantity.LOFT, (quantity, loft) -> loft + pitch);
            after.computeIfPresent(Quantity.BOUNCE, (quantity, bounce) -> bounce + pitch);
            return after;
        }
        after.put(Quantity.LIE, tilt.woodLieDeg(lie));
        after.computeIfPresent(Quantity.FACE, (quantity, face) -> face - tilt.woodYawDeg(lie));
        if (reading == AngleReading.SQUARE && nowDeg.containsKey(Quantity.LOFT)) {
            if (nowDeg.containsKey(Quantity.FACE)) {
                double soled = WoodLoft.soledDeg(nowDeg.get(Quantity.LOFT), nowDeg.get(Quantity.FACE), lie);
                after.put(Quantity.LOFT, WoodLoft.squareDeg(soled, after.get(Quantity.FACE), after.get(Quantity.LIE)));
            } else {
                after.remove(Quantity.LOFT);   // without the face angle nothing can be said of it
            }
        }
        return after;
    }

    /**
     * How far the angle a direction is read in moves for a degree of hosel tilt.
     * @param direction which way
     * @param nowDeg    the head's angles, lie among them
     * @return degrees a degree, above 0
     */
    public double leverage(BendDirection direction, Map<Quantity, Double> nowDeg) {
        double lie = nowDeg.get(Quantity.LIE);
        HoselTilt small = direction.tilt(SMALL_DEG);
        double moved;
        if (direction.isLie()) {
            moved = (isWood() ? small.woodLieDeg(lie) : small.ironLieDeg(lie)) - lie;
        } else {
            moved = isWood() ? small.woodYawDeg(lie) : small.ironPitchDeg(lie);
        }
        return Math.abs(moved) / SMALL_DEG;
    }
}
