package benchtwin.mechanics;

import benchtwin.club.AngleReading;

/**
 * A head's angles after a tilt or at a sleeve setting; NaN where an input is missing.
 * @param loftDeg   a wood's soled loft, an iron's loft, degrees
 * @param lieDeg    lie, degrees
 * @param faceDeg   a wood's soled face angle, degrees, open positive; NaN for an iron
 * @param bounceDeg an iron's bounce, degrees; NaN for a wood
 * @param turnDeg   a wood's yaw (closing positive) or an iron's pitch (weaker positive), degrees
 */
public record ClubAngles(double loftDeg, double lieDeg, double faceDeg, double bounceDeg, double turnDeg) {

    /**
     * The angles of an assembly.
     * @param assembly the club
     * @param aim      tilt, or measured changes
     * @return the angles after it
     */
    public static ClubAngles of(Assembly assembly, Setup.Aim aim) {
        return of(assembly.reading(), assembly.get(Input.HEAD_LOFT_DEG), assembly.get(Input.HEAD_LIE_DEG),
            assembly.get(Input.HEAD_FACE_DEG), assembly.get(Input.HEAD_BOUNCE_DEG), aim);
    }

    /**
     * The angles of a head by itself.
     * @param reading how its angles were read
     * @param loftDeg loft as read, degrees; each angle is NaN where it was not read
     * @param lie     lie, degrees
     * @param face    soled face angle, degrees
     * @param bounce  bounce, degrees
     * @param aim     tilt, or measured changes
     * @return the angles after it
     */
    public static ClubAngles of(AngleReading reading, double loftDeg, double lie, double face, double bounce, Setup.Aim aim) {
        boolean wood = reading.isWood();
        double loft = reading == AngleReading.SQUARE ? WoodLoft.soledDeg(loftDeg, face, lie) : loftDeg;
        if (aim instanceof Setup.Shifted shifted) {
            double newLie = lie + shifted.dLieDeg();
            if (!wood) {
                return new ClubAngles(loft + shifted.dLoftDeg(), newLie, Double.NaN, bounce + shifted.dLoftDeg(),
                    shifted.dLoftDeg());
            }
            double newFace = face + shifted.dFaceDeg();
            double newLoft = shifted.square()
                ? WoodLoft.soledDeg(WoodLoft.squareDeg(loft, face, lie) + shifted.dLoftDeg(), newFace, newLie)
                : loft + shifted.dLoftDeg();
            return new ClubAngles(newLoft, newLie, newFace, Double.NaN, -shifted.dFaceDeg());
        }
        HoselTilt tilt = ((Setup.Tilted) aim).tilt();
        if (tilt.uprightDeg() == 0 && tilt.forwardDeg() == 0) {
            return new ClubAngles(loft, lie, wood ? face : Double.NaN, wood ? Double.NaN : bounce, 0);
        }
        if (wood) {
            double yaw = tilt.woodYawDeg(lie);
            return new ClubAngles(loft, tilt.woodLieDeg(lie), face - yaw, Double.NaN, yaw);
        }
        double pitch = tilt.ironPitchDeg(lie);
        return new ClubAngles(loft + pitch, tilt.ironLieDeg(lie), Double.NaN, bounce + pitch, pitch);
    }

    /**
     * Loft as a reading shows it.
     * @param reading how it is read
     * @return degrees; NaN when a square loft lacks the face angle or lie it needs
     */
    public double loftDeg(AngleReading reading) {
        return reading == AngleReading.SQUARE ? WoodLoft.squareDeg(loftDeg, faceDeg, lieDeg) : loftDeg;
    }
}
