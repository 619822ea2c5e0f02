package benchtwin.mechanics;

/**
 * The first mode of a beam with a body at its end.
 *
 * <p>λ = 1/ω² is, for any fixed beam, the largest value of (kinetic)/(strain) over all shapes; the kinetic part is linear
 * in the end body's mass, moment and second moment. So λ is convex in them, and the tangent that this mode gives never
 * lies above it: what {@link #lambdaTangent} returns is a lower bound, and a chord between two solved bodies an upper one.
 * Source: Rayleigh's principle, textbook.
 * @param lambda      1/ω², s²
 * @param tipY        deflection at the end, scaled to unit strain energy
 * @param tipSlope    slope at the end per mm, same scale
 */
public record Mode(double lambda, double tipY, double tipSlope) {

    private static final double CPM = 60 / (2 * Math.PI);

    /**
     * The frequency.
     * @return cycles per minute
     */
    public double cpm() {
        return cpm(lambda);
    }

    /**
     * Frequency of a λ.
     * @param lambda 1/ω², s², above 0
     * @return cycles per minute
     */
    public static double cpm(double lambda) {
        return CPM / Math.sqrt(lambda);
    }

    /**
     * A lower bound on λ for another end body, exact to first order.
     * @param addMassG            mass added, g
     * @param addMomentGMm        first moment added, g·mm
     * @param addSecondMomentGMm2 second moment added, g·mm²
     * @return s²
     */
    public double lambdaTangent(double addMassG, double addMomentGMm, double addSecondMomentGMm2) {
        return lambda + (addMassG * tipY + 2 * addMomentGMm * tipSlope) * tipY
            + addSecondMomentGMm2 * tipSlope * tipSlope;
    }
}
