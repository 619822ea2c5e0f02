package benchtwin.club;

import java.util.List;

/**
 * Every quantity a club is predicted, measured and compared in, in the order they are always shown. The first nine can
 * be targets of a club, the two after them of a shaft, the last one of a club in a set; the rest are shown. Default
 * tolerances: common practice, no source, the last from memory; default weights in the miss: this program's choice,
 * every one can be set per job.
 */
public enum Quantity implements Word {
    /** Angle of the face normal above the horizontal, degrees; weak is positive. */
    LOFT("loft", "loftDeg", "°", 0.25, 1),
    /** Angle between shaft axis and ground, degrees; upright is positive. */
    LIE("lie", "lieDeg", "°", 0.25, 1),
    /** Face angle, soled, degrees; open is positive. Woods only. */
    FACE("face", "faceDeg", "°", 0.5, 1),
    /** Bounce, degrees; positive when the trailing edge is below the leading edge. Irons and wedges. */
    BOUNCE("bounce", "bounceDeg", "°", 0.5, 1),
    /** Playing length along the axis from the end of the cap to the ground, mm. */
    LENGTH("length", "lengthMm", "mm", 25.4 / 16, 1),
    /** Swing weight on the 14-inch scale, points above A0. */
    SWING_WEIGHT("swing-weight", "swingWeightPoints", "pt", 0.5, 1),
    /** First-mode frequency of the club, cycles per minute, in the condition the target was read in. */
    FREQUENCY("frequency", "frequencyCpm", "cpm", 2, 1),
    /** Total mass, g. */
    TOTAL_MASS("total-mass", "totalMassG", "g", 3, 0.5),
    /** Twist of the trimmed shaft under 1 ft·lbf, degrees. Shown, not part of the miss unless weighted. */
    TORQUE("torque", "torqueDeg", "°", 0.3, 0),
    /** Mass of the trimmed shaft, g. Wanted where shafts are chosen, else shown. */
    SHAFT_MASS("shaft-mass", "shaftMassG", "g", 2, 0),
    /** Balance point of the trimmed shaft from its own butt, mm. Wanted where shafts are chosen, else shown. */
    SHAFT_BALANCE("shaft-balance", "shaftBalanceMm", "mm", 25.4 / 4, 0),
    /** Distance from the shaft axis forward to the leading edge line, mm. Shown only. */
    OFFSET("offset", "offsetMm", "mm", 0, 0),
    /** Length by the published 60-degree procedure, mm. Shown only. */
    RULES_LENGTH("rules-length", "rulesLengthMm", "mm", 0, 0),
    /** Balance point of the whole club from the end of the cap, mm. Shown only. */
    BALANCE_POINT("balance-point", "balancePointMm", "mm", 0, 0),
    /** Moment about 12 inches from the butt, oz·in: the old 12-inch scale. Shown only. */
    MOMENT_12_INCH("moment-12-inch", "moment12InchOzIn", "oz·in", 0, 0),
    /** Moment of inertia about the butt, kg·cm². Wanted where whole sets are built, else shown. Tolerance: memory. */
    BUTT_INERTIA("butt-inertia", "moiKgCm2", "kg·cm²", 10, 0);

    private static final List<Quantity> TARGETABLE =
        List.of(LOFT, LIE, FACE, BOUNCE, LENGTH, SWING_WEIGHT, FREQUENCY, TOTAL_MASS, TORQUE);

    private final String word;
    private final String jsonName;
    private final String unit;
    private final double defaultTolerance;
    private final double defaultWeight;

    Quantity(String word, String jsonName, String unit, double defaultTolerance, double defaultWeight) {
        this.word = word;
        this.jsonName = jsonName;
        this.unit = unit;
        this.defaultTolerance = defaultTolerance;
        this.defaultWeight = defaultWeight;
    }

    /**
     * The quantities a target can name.
     * @return in showing order
     */
    public static List<Quantity> targetable() {
        return TARGETABLE;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * The stable name of the value in JSON, ending in its unit.
     * @return for instance {@code loftDeg}
     */
    public String jsonName() {
        return jsonName;
    }

    /**
     * The unit as a screen writes it.
     * @return for instance {@code mm}
     */
    public String unit() {
        return unit;
    }

    /**
     * The tolerance used when a job sets none, in the quantity's unit. Common practice, no source.
     * @return above 0 for a quantity that can be a target
     */
    public double defaultTolerance() {
        return defaultTolerance;
    }

    /**
     * The weight in the miss used when a job sets none.
     * @return 0 for a quantity that is only shown
     */
    public double defaultWeight() {
        return defaultWeight;
    }

    /**
     * Whether this is one of the three angles a hosel tilt changes, or bounce.
     * @return true for loft, lie, face and bounce
     */
    public boolean isAngle() {
        return this == LOFT || this == LIE || this == FACE || this == BOUNCE;
    }
}
