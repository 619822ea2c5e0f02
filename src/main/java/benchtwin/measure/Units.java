package benchtwin.measure;

/** Exact unit conversions. Source: published, NIST SP 811, appendix B (1 in = 25.4 mm, 1 oz = 28.349523125 g). */
public final class Units {

    /** Millimetres in one inch, exact. */
    public static final double MM_PER_INCH = 25.4;

    /** Grams in one avoirdupois ounce, exact. */
    public static final double G_PER_OZ = 28.349523125;

    /** Newton metres in one foot pound-force: 0.3048 m × 4.4482216152605 N, exact. */
    public static final double NM_PER_FT_LBF = 0.3048 * 4.4482216152605;

    private Units() {
    }

    /**
     * Inches to millimetres.
     * @param inches any length, in
     * @return the same length, mm
     */
    public static double mm(double inches) {
        return inches * MM_PER_INCH;
    }

    /**
     * Millimetres to inches.
     * @param mm any length, mm
     * @return the same length, in
     */
    public static double inches(double mm) {
        return mm / MM_PER_INCH;
    }
}
