package benchtwin.mechanics;

import benchtwin.measure.Units;

/**
 * Swing weight: the moment of a club about a fulcrum near the grip end.
 *
 * <p>14-inch letter scale: points above A0 = (M − 161.0) / 1.75, M in oz·in about 14 in from the butt; ten points a
 * letter, so D0 = 213.5 oz·in. The 12-inch scale is the same moment about 12 in. Source: common practice, no source.
 */
public final class SwingWeight {

    /** Fulcrum of the letter scale from the butt end of the cap, mm. Common practice, no source. */
    public static final double FULCRUM_14_MM = 14 * Units.MM_PER_INCH;
    /** Fulcrum of the old scale from the butt end of the cap, mm. Common practice, no source. */
    public static final double FULCRUM_12_MM = 12 * Units.MM_PER_INCH;
    /** Moment at A0, oz·in. Common practice, no source. */
    public static final double A0_OZ_IN = 161.0;
    /** Moment of one point, oz·in. Common practice, no source. */
    public static final double POINT_OZ_IN = 1.75;
    private static final double G_MM_PER_OZ_IN = Units.G_PER_OZ * Units.MM_PER_INCH;

    private SwingWeight() {
    }

    /**
     * Points above A0 on the 14-inch scale.
     * @param massG     mass of the club, g
     * @param momentGMm its first moment about the butt end of the cap, g·mm
     * @return points; below 0 for a club lighter in swing than A0
     */
    public static double points(double massG, double momentGMm) {
        return (momentOzIn(massG, momentGMm, FULCRUM_14_MM) - A0_OZ_IN) / POINT_OZ_IN;
    }

    /**
     * Moment about a fulcrum.
     * @param massG     mass of the club, g
     * @param momentGMm its first moment about the butt end of the cap, g·mm
     * @param fulcrumMm where the fulcrum lies from the butt end of the cap, mm
     * @return oz·in
     */
    public static double momentOzIn(double massG, double momentGMm, double fulcrumMm) {
        return (momentGMm - massG * fulcrumMm) / G_MM_PER_OZ_IN;
    }
}
