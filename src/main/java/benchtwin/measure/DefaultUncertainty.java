package benchtwin.measure;

/**
 * Standard uncertainties that stand in until a gauge's own are known. All of them: memory, changeable per gauge.
 * Angles in degrees, lengths in mm, masses in g.
 */
public final class DefaultUncertainty {

    /** Loft of an iron, wedge or putter on a bench gauge, degrees. */
    public static final double IRON_LOFT_DEG = 0.2;
    /** Lie of an iron, wedge or putter on a bench gauge, degrees. */
    public static final double IRON_LIE_DEG = 0.2;
    /** Loft of a wood on a bench gauge, degrees: bulge and roll make it coarser. */
    public static final double WOOD_LOFT_DEG = 0.3;
    /** Lie of a wood on a bench gauge, degrees. */
    public static final double WOOD_LIE_DEG = 0.2;
    /** Face angle of a wood on a bench gauge, degrees. */
    public static final double FACE_DEG = 0.4;
    /** Bounce on a bench gauge, degrees: taken like an iron's loft. */
    public static final double BOUNCE_DEG = 0.2;
    /** Any angle on a coordinate machine, degrees. */
    public static final double COORDINATE_MACHINE_DEG = 0.05;
    /** A length by ruler, mm. */
    public static final double LENGTH_MM = 0.8;
    /** A mass on a bench scale, g. */
    public static final double MASS_G = 0.1;
    /** A frequency, cpm. */
    public static final double FREQUENCY_CPM = 0.5;
    /** A swing weight, points. */
    public static final double SWING_WEIGHT_POINTS = 0.2;
    /** A torque, degrees. */
    public static final double TORQUE_DEG = 0.1;
    /** A balance point by knife edge, mm: taken as a length by ruler is. */
    public static final double BALANCE_MM = 0.8;
    /** A diameter by caliper, mm. */
    public static final double DIAMETER_MM = 0.02;
    /** Bore depth, and seat or bottom of bore to the ground point, mm, when they stand in for a measurement. */
    public static final double BORE_MM = 0.3;

    /** Offset of a leading edge by rule or caliper against the hosel, mm. */
    public static final double OFFSET_MM = 0.3;
    /** Thickness of a grip's end wall, mm: taken like a depth. */
    public static final double CAP_MM = BORE_MM;
    /** A measured centre of gravity, mm. */
    public static final double CG_MM = 1;
    /** A measured transverse inertia, g·cm²: one part in twenty of 3000. */
    public static final double TRANSVERSE_INERTIA_G_CM2 = 150;
    /** A measured vertical inertia, g·cm²: one part in twenty of 4800. */
    public static final double VERTICAL_INERTIA_G_CM2 = 240;
    /** A volume by displacement, cm³. */
    public static final double VOLUME_CM3 = 2;
    /** An outside dimension of a head by caliper, mm: its edges are round. */
    public static final double HEAD_SIZE_MM = 0.5;
    /** A characteristic time, microseconds. */
    public static final double CHARACTERISTIC_TIME_US = 3;

    private DefaultUncertainty() {
    }
}
