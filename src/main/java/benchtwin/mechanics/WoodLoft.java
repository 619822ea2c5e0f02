package benchtwin.mechanics;

import static java.lang.Math.asin;
import static java.lang.Math.atan;
import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.sqrt;
import static java.lang.Math.tan;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;

/**
 * A wood's loft read soled, and read square (the head turned about the shaft axis until the face points at the target).
 *
 * <p>sin square = sin soled − cos soled · sin face · cot lie: the Z component of the face normal after the turn. A closed
 * wood plays with more loft than it shows soled. Worked: soled 9.0°, face −1.0°, lie 58° gives 9.63° square.
 * <p>Source: geometry, derived here; checked against Hipparchus' {@code Rotation} in the tests. The shop's rule of one
 * degree of loft for one of face (common practice, no source) overstates it: 0.58 to 0.68 for a driver.
 */
public final class WoodLoft {

    private WoodLoft() {
    }

    /**
     * Square loft from a soled one.
     * @param soledLoftDeg loft soled, degrees
     * @param faceDeg      soled face angle, degrees, open positive
     * @param lieDeg       lie, degrees, above 0 and below 180
     * @return square loft, degrees; NaN if any argument is
     */
    public static double squareDeg(double soledLoftDeg, double faceDeg, double lieDeg) {
        double loft = toRadians(soledLoftDeg);
        return toDegrees(asin(sin(loft) - cos(loft) * sin(toRadians(faceDeg)) / tan(toRadians(lieDeg))));
    }

    /**
     * Soled loft from a square one.
     * @param squareLoftDeg loft square, degrees
     * @param faceDeg       soled face angle, degrees, open positive
     * @param lieDeg        lie, degrees, above 0 and below 180
     * @return soled loft, degrees; NaN if any argument is
     */
    public static double soledDeg(double squareLoftDeg, double faceDeg, double lieDeg) {
        double slant = sin(toRadians(faceDeg)) / tan(toRadians(lieDeg));
        return toDegrees(asin(sin(toRadians(squareLoftDeg)) / sqrt(1 + slant * slant)) + atan(slant));
    }
}
