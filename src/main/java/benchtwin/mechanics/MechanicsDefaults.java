package benchtwin.mechanics;

import benchtwin.club.Category;

/**
 * Values that stand in for a measurement. Every one is memory (recalled, not looked up) unless marked otherwise; a
 * measured value always takes its place.
 */
public final class MechanicsDefaults {

    /** Thickness of a grip's end wall, mm. Memory. */
    public static final double CAP_MM = 3;
    /** Bend point of an iron from the ground point along the axis, mm. Memory. */
    public static final double IRON_BEND_POINT_MM = 30;
    /** Bend point of a wood from the ground point along the axis, mm. Memory. */
    public static final double WOOD_BEND_POINT_MM = 40;
    /** Uncertainty of a bend point, mm. Memory. */
    public static final double BEND_POINT_U_MM = 5;
    /** Uncertainty along the axis of a default centre of gravity, mm. Memory. */
    public static final double CG_DEFAULT_U_MM = 3;
    /** Uncertainty along the axis of a measured centre of gravity, mm; also how heads of one model differ. Memory. */
    public static final double CG_MEASURED_U_MM = 1;
    /** Bore depth when it was not measured, mm. Memory. */
    public static final double BORE_DEPTH_MM = 32;
    /** Uncertainty of a bore depth that was not measured, mm. Memory. */
    public static final double BORE_DEPTH_U_MM = 3;
    /** Centre of gravity of a grip as a share of its length from the butt. Memory. */
    public static final double GRIP_CG_FRACTION = 0.40;
    /** Length of a grip when it was not measured, mm. Memory. */
    public static final double GRIP_LENGTH_MM = 267;
    /** Mass of one layer of tape under a grip, g. Memory. */
    public static final double TAPE_LAYER_G = 2;
    /** Mass of the adhesive in a bore, g. Memory. */
    public static final double ADHESIVE_G = 1;
    /** Mass of a ferrule, g. Memory. */
    public static final double FERRULE_G = 1.5;
    /** Mass of a sleeve's screw, g. Memory. */
    public static final double SLEEVE_SCREW_G = 2;
    /** Mass of a sleeve with its screw when it was not weighed, g: the middle of 6 to 10. Memory. */
    public static final double SLEEVE_G = 8;
    /** Standard raw-shaft tip mass, g. Common practice, no source. */
    public static final double RAW_TIP_MASS_G = 205;
    /** Standard clamp, mm (5 in). Common practice, no source. */
    public static final double CLAMP_MM = 127;
    /** Ratio of a reading over a grip to one on the bare butt. Memory, until the shop's own pairs teach it. */
    public static final double GRIP_FACTOR = 0.98;
    /** Uncertainty of that ratio. Memory. */
    public static final double GRIP_FACTOR_U = 0.01;
    /** How that ratio differs from grip to grip on one machine. Memory. */
    public static final double GRIP_TO_GRIP_U = 0.003;
    /** What the beam model adds to the uncertainty of a club's frequency, cpm. Memory. */
    public static final double MODEL_CPM_U = 1;
    /** How far a tip weight's flange lifts the shaft, mm. Memory. */
    public static final double TIP_WEIGHT_LIFT_MM = 1;
    /** Uncertainty of a mass that stands in for a weighing, g. Memory. */
    public static final double ASSUMED_MASS_U_G = 0.5;

    private MechanicsDefaults() {
    }

    /**
     * Centre of gravity toward the toe from the ground point. Memory.
     * @param category of the head, not a putter
     * @return mm
     */
    static double cgToeMm(Category category) {
        return switch (category) {
            case DRIVER -> 38;
            case FAIRWAY -> 36;
            case HYBRID -> 34;
            case IRON, WEDGE, PUTTER -> 32;
        };
    }

    /**
     * Centre of gravity above the ground. Memory.
     * @param category of the head, not a putter
     * @return mm
     */
    static double cgUpMm(Category category) {
        return switch (category) {
            case DRIVER -> 28;
            case FAIRWAY, IRON, PUTTER -> 20;
            case HYBRID -> 17;
            case WEDGE -> 18;
        };
    }
}
