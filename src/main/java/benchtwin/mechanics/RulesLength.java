package benchtwin.mechanics;

import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.tan;
import static java.lang.Math.toRadians;

/**
 * Club length by the published procedure: the club lies on a horizontal plane with its sole against a plane inclined at
 * 60°, and the length runs from where the planes meet to the end of the grip.
 *
 * <p>With the sole centre at distance c from the ground point toward the toe and a heel-to-toe sole radius R, and
 * d = lie − 60°: t = (c · sin d − R · (1 − cos d)) / sin 60°, rules length = playing length − t. The formula follows the
 * shaft axis; on the bench the hosel lies on the plane, so a ruler can read up to (hosel radius)·cot 60° less.
 * <p>Source: published, R&amp;A and USGA, procedure for the measurement of club length, rev. 1.1, 2007; Equipment Rules
 * Part 2, 1c. The sole's c and R are memory.
 */
public final class RulesLength {

    /** Sole centre toward the toe from the ground point, irons, mm. Memory. */
    public static final double IRON_SOLE_CENTRE_MM = 35;
    /** Sole centre toward the toe from the ground point, woods, mm. Memory. */
    public static final double WOOD_SOLE_CENTRE_MM = 45;
    /** Heel-to-toe radius of the sole, mm. Memory. */
    public static final double SOLE_RADIUS_MM = 250;
    private static final double PLANE_DEG = 60;

    private RulesLength() {
    }

    /**
     * Where the sole centre lies unless it was measured. Memory.
     * @param wood whether the club's angles are read as a wood's
     * @return toward the toe from the ground point, mm
     */
    public static double soleCentreMm(boolean wood) {
        return wood ? WOOD_SOLE_CENTRE_MM : IRON_SOLE_CENTRE_MM;
    }

    /**
     * Rules length from playing length.
     * @param playingLengthMm along the axis to the ground point, mm
     * @param lieDeg          lie, degrees
     * @param soleCentreMm    sole centre toward the toe from the ground point, mm
     * @param soleRadiusMm    heel-to-toe radius of the sole, mm
     * @return rules length, mm
     */
    public static double mm(double playingLengthMm, double lieDeg, double soleCentreMm, double soleRadiusMm) {
        return playingLengthMm - shorterByMm(lieDeg, soleCentreMm, soleRadiusMm);
    }

    /**
     * What the rules length is shorter by than the playing length.
     * @param lieDeg       lie, degrees
     * @param soleCentreMm sole centre toward the toe from the ground point, mm
     * @param soleRadiusMm heel-to-toe radius of the sole, mm
     * @return mm; negative where the rules length is the longer
     */
    public static double shorterByMm(double lieDeg, double soleCentreMm, double soleRadiusMm) {
        double over = toRadians(lieDeg - PLANE_DEG);
        return (soleCentreMm * sin(over) - soleRadiusMm * (1 - cos(over))) / sin(toRadians(PLANE_DEG));
    }

    /**
     * Where the sole centre lies after a lie bend: the ground point moves, the sole stays.
     * @param soleCentreMm before, toward the toe from the ground point, mm
     * @param bendPointMm  bend point from the ground point along the axis, mm
     * @param lieDeg       lie before, degrees
     * @param newLieDeg    lie after, degrees
     * @return after, mm
     */
    public static double soleCentreAfterMm(double soleCentreMm, double bendPointMm, double lieDeg, double newLieDeg) {
        double lie = toRadians(lieDeg);
        return soleCentreMm + bendPointMm * (cos(lie) - sin(lie) / tan(toRadians(newLieDeg)));
    }
}
