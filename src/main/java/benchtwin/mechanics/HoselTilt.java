package benchtwin.mechanics;

import static java.lang.Math.asin;
import static java.lang.Math.atan2;
import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.sqrt;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;

/**
 * A tilt of the hosel axis in the head, by a bend or by a sleeve. The tilted axis is
 * a' = (sin f, cos f · cos(lie + u), cos f · sin(lie + u)), u upright and f toward the target.
 *
 * <p>Worked: a tilt of (0, 0) leaves a = (0, cos lie, sin lie). A tilt of (1, 0) at lie 58 gives the axis of lie 59. A
 * tilt of (0, 1) at lie 58 turns a wood's face by 1.89° closed and, read with the edge square, adds 1.18° of loft.
 * <p>Source: geometry, derived here; checked against Hipparchus' {@code Rotation} in the tests.
 * @param uprightDeg tilt toward upright, degrees
 * @param forwardDeg tilt of the butt toward the target, degrees
 */
public record HoselTilt(double uprightDeg, double forwardDeg) {

    /** No tilt. */
    public static final HoselTilt NONE = new HoselTilt(0, 0);

    /**
     * The lie a wood has after the tilt, soled: asin of the axis' Z.
     * @param lieDeg lie before, degrees, 0 to 90
     * @return lie after, degrees
     */
    public double woodLieDeg(double lieDeg) {
        double lie = toRadians(lieDeg + uprightDeg);
        return toDegrees(asin(cos(toRadians(forwardDeg)) * sin(lie)));
    }

    /**
     * How far the soled head must turn for the shaft to point at the player again. The face closes by this much.
     * @param lieDeg lie before, degrees
     * @return yaw, degrees; positive closes the face
     */
    public double woodYawDeg(double lieDeg) {
        double forward = toRadians(forwardDeg);
        return toDegrees(atan2(sin(forward), cos(forward) * cos(toRadians(lieDeg + uprightDeg))));
    }

    /**
     * The lie an iron has after the tilt, its leading edge square.
     * @param lieDeg lie before, degrees
     * @return lie after, degrees
     */
    public double ironLieDeg(double lieDeg) {
        double forward = toRadians(forwardDeg);
        double lie = toRadians(lieDeg + uprightDeg);
        double x = sin(forward);
        double y = cos(forward) * cos(lie);
        double z = cos(forward) * sin(lie);
        return toDegrees(atan2(sqrt(x * x + z * z), y));
    }

    /**
     * What the tilt adds to an iron's loft and bounce, its leading edge square.
     * @param lieDeg lie before, degrees
     * @return pitch, degrees; positive is weaker
     */
    public double ironPitchDeg(double lieDeg) {
        double forward = toRadians(forwardDeg);
        return toDegrees(atan2(sin(forward), cos(forward) * sin(toRadians(lieDeg + uprightDeg))));
    }

    /**
     * The tilt that brings a wood to a wanted lie and turns its face by a wanted yaw: the inverse of
     * {@link #woodLieDeg} and {@link #woodYawDeg}.
     * @param lieDeg    lie before, degrees
     * @param newLieDeg lie wanted, degrees
     * @param yawDeg    yaw wanted, degrees; positive closes
     * @return the tilt
     */
    public static HoselTilt forWood(double lieDeg, double newLieDeg, double yawDeg) {
        double lie = toRadians(newLieDeg);
        double yaw = toRadians(yawDeg);
        return ofAxis(lieDeg, cos(lie) * sin(yaw), cos(lie) * cos(yaw), sin(lie));
    }

    /**
     * The tilt that brings an iron to a wanted lie and changes its loft by a wanted pitch: the inverse of
     * {@link #ironLieDeg} and {@link #ironPitchDeg}.
     * @param lieDeg    lie before, degrees
     * @param newLieDeg lie wanted, degrees
     * @param pitchDeg  pitch wanted, degrees; positive is weaker
     * @return the tilt
     */
    public static HoselTilt forIron(double lieDeg, double newLieDeg, double pitchDeg) {
        double lie = toRadians(newLieDeg);
        double pitch = toRadians(pitchDeg);
        return ofAxis(lieDeg, sin(lie) * sin(pitch), cos(lie), sin(lie) * cos(pitch));
    }

    private static HoselTilt ofAxis(double lieDeg, double x, double y, double z) {
        return new HoselTilt(toDegrees(atan2(z, y)) - lieDeg, toDegrees(asin(x)));
    }

    /**
     * This tilt less another, as sleeve settings are differenced (small angles add).
     * @param other the tilt to take away
     * @return the difference
     */
    public HoselTilt minus(HoselTilt other) {
        return new HoselTilt(uprightDeg - other.uprightDeg, forwardDeg - other.forwardDeg);
    }

    /**
     * How much tilt the metal sees, both directions added.
     * @return |upright| + |forward|, degrees
     */
    public double totalDeg() {
        return Math.abs(uprightDeg) + Math.abs(forwardDeg);
    }
}
