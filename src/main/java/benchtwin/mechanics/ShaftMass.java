package benchtwin.mechanics;

import benchtwin.club.Shaft;
import benchtwin.measure.Reading;

/**
 * How a shaft's mass lies along it: linear density d(u) = start + slope·u, u from the butt of the shaft as it lies, fitted
 * to its mass and balance point; uniform when no balance point is known. Stays positive while the balance point lies in
 * the middle third.
 *
 * <p>Worked: 60 g over 1000 mm balanced at 500 mm is 0.06 g/mm throughout; balanced at 450 mm it starts at 0.078 and ends
 * at 0.042 g/mm. Source: statics, derived here.
 * @param lengthMm        length of the shaft as it lies, mm
 * @param startGPerMm     density at the butt, g/mm
 * @param slopeGPerMm2    change of density toward the tip, g/mm²
 */
record ShaftMass(double lengthMm, double startGPerMm, double slopeGPerMm2) {

    /** Nearest to a third of its length that a balance point is let come, so that the density stays positive. */
    private static final double LEAST_FRACTION = 0.335;

    /**
     * Fits the density.
     * @param lengthMm  length as it lies, mm, above 0
     * @param massG     mass as it lies, g
     * @param balanceMm balance point from the butt, mm; a value outside the middle third is brought to its edge
     * @return the distribution
     */
    static ShaftMass of(double lengthMm, double massG, double balanceMm) {
        double fraction = Math.min(1 - LEAST_FRACTION, Math.max(LEAST_FRACTION, balanceMm / lengthMm));
        return new ShaftMass(lengthMm, massG / lengthMm * (4 - 6 * fraction),
            massG / (lengthMm * lengthMm) * (12 * fraction - 6));
    }

    /**
     * Fits the density of a recorded shaft, uniform where its balance point is missing or cannot be used.
     * @param shaft the shaft
     * @return the distribution; NaN throughout when the shaft was not weighed
     */
    static ShaftMass of(Shaft shaft) {
        double length = shaft.lengthMm();
        double balance = shaft.balanceMm().map(Reading::value).filter(mm -> isBalanceUsable(length, mm)).orElse(length / 2);
        return of(length, shaft.massG().map(Reading::value).orElse(Double.NaN), balance);
    }

    /**
     * Whether a balance point keeps the density positive.
     * @param lengthMm  length as it lies, mm
     * @param balanceMm balance point from the butt, mm
     * @return true in the middle third
     */
    static boolean isBalanceUsable(double lengthMm, double balanceMm) {
        double fraction = balanceMm / lengthMm;
        return fraction >= LEAST_FRACTION && fraction <= 1 - LEAST_FRACTION;
    }

    /**
     * Density at a place.
     * @param u from the butt of the shaft as it lies, mm
     * @return g/mm
     */
    double at(double u) {
        return startGPerMm + slopeGPerMm2 * u;
    }

    /**
     * Mass between two places.
     * @param from from the butt of the shaft as it lies, mm
     * @param to   from the same, mm
     * @return g
     */
    double massG(double from, double to) {
        return startGPerMm * (to - from) + slopeGPerMm2 * (to * to - from * from) / 2;
    }

    /**
     * First moment about a point of the mass between two places.
     * @param from  from the butt of the shaft as it lies, mm
     * @param to    from the same, mm
     * @param about the point, from the same, mm
     * @return g·mm
     */
    double momentGMm(double from, double to, double about) {
        double raw = startGPerMm * (to * to - from * from) / 2 + slopeGPerMm2 * (cube(to) - cube(from)) / 3;
        return raw - about * massG(from, to);
    }

    /**
     * Second moment about a point of the mass between two places.
     * @param from  from the butt of the shaft as it lies, mm
     * @param to    from the same, mm
     * @param about the point, from the same, mm
     * @return g·mm²
     */
    double secondMomentGMm2(double from, double to, double about) {
        double raw = startGPerMm * (cube(to) - cube(from)) / 3
            + slopeGPerMm2 * (cube(to) * to - cube(from) * from) / 4;
        double first = startGPerMm * (to * to - from * from) / 2 + slopeGPerMm2 * (cube(to) - cube(from)) / 3;
        return raw - 2 * about * first + about * about * massG(from, to);
    }

    private static double cube(double value) {
        return value * value * value;
    }
}
