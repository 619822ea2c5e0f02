package benchtwin.bend;

/**
 * How much of a bend an elastic, perfectly plastic bar gives back.
 *
 * <p>R_i/R_f = 4X³ − 3X + 1 with X = R_i·Y/(E·T), the radii before and after the load is taken off.
 * <p>Source: published, Kalpakjian and Schmid, <i>Manufacturing Engineering and Technology</i>, bending of sheet.
 */
public final class ElasticRecovery {

    /** Beyond it the bar is bent elastically only, and springs back wholly. */
    private static final double ELASTIC_ONLY = 0.5;

    private ElasticRecovery() {
    }

    /**
     * The part of a bend that stays.
     * @param radiusMm     radius under load, mm, above 0
     * @param yieldMpa     yield stress, MPa, above 0
     * @param elasticMpa   elastic modulus, MPa, above 0
     * @param thicknessMm  thickness across the bend, mm, above 0
     * @return R_i/R_f, 0 to 1; 0 where nothing of it is plastic
     * @throws IllegalArgumentException for anything not above 0
     */
    public static double staying(double radiusMm, double yieldMpa, double elasticMpa, double thicknessMm) {
        if (!(radiusMm > 0) || !(yieldMpa > 0) || !(elasticMpa > 0) || !(thicknessMm > 0)) {
            throw new IllegalArgumentException("radius %s mm, yield %s MPa, modulus %s MPa, thickness %s mm: expected all above 0"
                .formatted(radiusMm, yieldMpa, elasticMpa, thicknessMm));
        }
        double x = radiusMm * yieldMpa / (elasticMpa * thicknessMm);
        return x >= ELASTIC_ONLY ? 0 : 4 * x * x * x - 3 * x + 1;
    }

    /**
     * The same for a hosel bent by an angle over a length.
     * @param bentLengthMm length that bends, mm, above 0
     * @param askedDeg     angle under load, degrees, above 0
     * @param yieldMpa     yield stress, MPa
     * @param elasticMpa   elastic modulus, MPa
     * @param diameterMm   the hosel's diameter, mm
     * @return the part of the angle that stays, 0 to 1
     */
    public static double ofHosel(double bentLengthMm, double askedDeg, double yieldMpa, double elasticMpa, double diameterMm) {
        return staying(bentLengthMm / Math.toRadians(askedDeg), yieldMpa, elasticMpa, diameterMm);
    }
}
