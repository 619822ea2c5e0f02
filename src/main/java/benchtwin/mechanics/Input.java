package benchtwin.mechanics;

/** The numbers a club is predicted from, in the order {@link Assembly} holds them. Units end the names. */
public enum Input {
    /** Loft as read, degrees. */
    HEAD_LOFT_DEG,
    /** Lie as read, degrees. */
    HEAD_LIE_DEG,
    /** Soled face angle as read, degrees, open positive. */
    HEAD_FACE_DEG,
    /** Bounce as read, degrees. */
    HEAD_BOUNCE_DEG,
    /** Offset, mm. */
    HEAD_OFFSET_MM,
    /** Mass of the head with nothing in or on it, g. */
    HEAD_MASS_G,
    /** Centre of gravity toward the toe from the ground point, mm. */
    CG_TOE_MM,
    /** Centre of gravity above the ground, mm. */
    CG_UP_MM,
    /** Centre of gravity farther along the axis than its two coordinates say, mm: 0, with an uncertainty. */
    CG_ALONG_MM,
    /** Head's inertia about the axis through its centre of gravity square to the shaft, g·cm². */
    TRANSVERSE_INERTIA_G_CM2,
    /** How far the shaft goes in, mm. */
    INSERTION_MM,
    /** Bottom of the bore (head's or sleeve's) to the ground point along the axis, mm. */
    BORE_TO_GROUND_MM,
    /** Where the axis turns in a bend or sleeve setting, from the ground point along the axis, mm. */
    BEND_POINT_MM,
    /** Length of the shaft as it lies, mm. */
    SHAFT_LENGTH_MM,
    /** Mass of the shaft as it lies, g. */
    SHAFT_MASS_G,
    /** Balance point of the shaft as it lies from its butt, mm. */
    SHAFT_BALANCE_MM,
    /** Torque of the shaft as it lies, degrees. */
    SHAFT_TORQUE_DEG,
    /** Raw frequency reading, cpm. */
    SHAFT_CPM,
    /** Ratio of a reading over a grip to a bare one. */
    GRIP_FACTOR,
    /** Mass of the grip, g. */
    GRIP_MASS_G,
    /** Centre of gravity of the grip from the butt end, mm. */
    GRIP_CG_MM,
    /** Half the grip's length, mm: where tape under it is counted. */
    GRIP_MIDDLE_MM,
    /** Thickness of the grip's end wall, mm. */
    CAP_MM,
    /** Mass of one layer of tape under the grip, g. */
    TAPE_LAYER_G,
    /** Mass of the sleeve with its screw, g; 0 without one. */
    SLEEVE_MASS_G,
    /** Mass of the adhesive, g. */
    ADHESIVE_G,
    /** Mass of the ferrule, g. */
    FERRULE_G;

    /**
     * The unit its value is in, as a screen writes it.
     * @return for instance {@code mm}; empty for a ratio
     */
    public String unit() {
        if (name().endsWith("_G_CM2")) {
            return "g·cm²";
        }
        return switch (name().substring(name().lastIndexOf('_') + 1)) {
            case "DEG" -> "°";
            case "MM" -> "mm";
            case "G" -> "g";
            case "CPM" -> "cpm";
            default -> "";
        };
    }
}
