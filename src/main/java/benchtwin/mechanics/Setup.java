package benchtwin.mechanics;

/**
 * What is done to an assembly: cuts, tilt and masses, as plain numbers.
 * @param tipTrimMm      cut from the tip, mm, 0 or more
 * @param buttCutMm      cut from the butt, mm, 0 or more
 * @param extensionMm    added at the butt, mm, 0 or more
 * @param extensionMassG mass of the extension, g
 * @param tapeLayers     layers of tape under the grip
 * @param headAddedG     mass at the head's centre of gravity: what is in the ports, lead tape, hot melt, g
 * @param tipWeightG     weight in the shaft's tip, g; when above 0 its flange lifts the shaft
 * @param aim            the head's angles after the bend or at the sleeve setting
 */
public record Setup(double tipTrimMm, double buttCutMm, double extensionMm, double extensionMassG, double tapeLayers,
                    double headAddedG, double tipWeightG, Aim aim) {

    /**
     * The head's angles changed, from what was read.
     * <p>For a hosel tilt give the tilt; for a measured sleeve table give the changes of the angles directly.
     */
    public sealed interface Aim permits Tilted, Shifted {
    }

    /**
     * By a tilt of the hosel axis.
     * @param tilt the tilt from where the head was read
     */
    public record Tilted(HoselTilt tilt) implements Aim {
    }

    /**
     * By measured amounts.
     * @param dLoftDeg change of loft in the given reading, degrees
     * @param dLieDeg  change of lie, degrees
     * @param dFaceDeg change of soled face angle, degrees
     * @param square   whether the loft change was read square
     */
    public record Shifted(double dLoftDeg, double dLieDeg, double dFaceDeg, boolean square) implements Aim {
    }

    /** The angles as they were read. */
    public static final Aim AS_READ = new Tilted(HoselTilt.NONE);

    /**
     * A setup that changes nothing but carries what the ports hold.
     * @param tapeLayers layers of tape under the grip
     * @param headAddedG mass at the head's centre of gravity, g
     * @return the setup
     */
    public static Setup plain(double tapeLayers, double headAddedG) {
        return new Setup(0, 0, 0, 0, tapeLayers, headAddedG, 0, AS_READ);
    }

    /**
     * The same with other angles.
     * @param other the angles
     * @return a copy
     */
    public Setup aimed(Aim other) {
        return new Setup(tipTrimMm, buttCutMm, extensionMm, extensionMassG, tapeLayers, headAddedG, tipWeightG, other);
    }

    /**
     * The same with another mass at the head.
     * @param grams mass at the head's centre of gravity, g
     * @return a copy
     */
    public Setup withHeadAdded(double grams) {
        return new Setup(tipTrimMm, buttCutMm, extensionMm, extensionMassG, tapeLayers, grams, tipWeightG, aim);
    }
}
