package benchtwin.mechanics;

/**
 * A rigid body at the end of a beam: what moves with the head. Moments are taken about the beam's end, positive beyond it.
 * @param massG            mass, g
 * @param momentGMm        first moment, g·mm
 * @param secondMomentGMm2 second moment, g·mm²
 */
public record TipBody(double massG, double momentGMm, double secondMomentGMm2) {

    /** Nothing at the end. */
    public static final TipBody NONE = new TipBody(0, 0, 0);

    /**
     * A point mass at the very end, as on a raw shaft under test.
     * @param massG mass, g, 0 or more
     * @return the body
     */
    public static TipBody point(double massG) {
        return new TipBody(massG, 0, 0);
    }

    /**
     * This body with another mass fixed to it.
     * @param massG      mass, g
     * @param distanceMm its place beyond the beam's end, mm
     * @return the joint body
     */
    public TipBody with(double massG, double distanceMm) {
        return new TipBody(this.massG + massG, momentGMm + massG * distanceMm,
            secondMomentGMm2 + massG * distanceMm * distanceMm);
    }
}
