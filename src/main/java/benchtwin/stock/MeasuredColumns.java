package benchtwin.stock;

import static benchtwin.measure.DefaultUncertainty.BALANCE_MM;
import static benchtwin.measure.DefaultUncertainty.BORE_MM;
import static benchtwin.measure.DefaultUncertainty.BOUNCE_DEG;
import static benchtwin.measure.DefaultUncertainty.CAP_MM;
import static benchtwin.measure.DefaultUncertainty.CG_MM;
import static benchtwin.measure.DefaultUncertainty.CHARACTERISTIC_TIME_US;
import static benchtwin.measure.DefaultUncertainty.FACE_DEG;
import static benchtwin.measure.DefaultUncertainty.FREQUENCY_CPM;
import static benchtwin.measure.DefaultUncertainty.HEAD_SIZE_MM;
import static benchtwin.measure.DefaultUncertainty.IRON_LIE_DEG;
import static benchtwin.measure.DefaultUncertainty.IRON_LOFT_DEG;
import static benchtwin.measure.DefaultUncertainty.LENGTH_MM;
import static benchtwin.measure.DefaultUncertainty.MASS_G;
import static benchtwin.measure.DefaultUncertainty.OFFSET_MM;
import static benchtwin.measure.DefaultUncertainty.SWING_WEIGHT_POINTS;
import static benchtwin.measure.DefaultUncertainty.TORQUE_DEG;
import static benchtwin.measure.DefaultUncertainty.TRANSVERSE_INERTIA_G_CM2;
import static benchtwin.measure.DefaultUncertainty.VERTICAL_INERTIA_G_CM2;
import static benchtwin.measure.DefaultUncertainty.VOLUME_CM3;
import static benchtwin.measure.DefaultUncertainty.WOOD_LIE_DEG;
import static benchtwin.measure.DefaultUncertainty.WOOD_LOFT_DEG;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which columns hold something measured, what each was measured in, and what it is trusted to until a gauge's own
 * uncertainty is known. Names are those in the program's own units.
 *
 * <p>Measured is what somebody reads off a gauge for this one part and would read again to be surer. The rest are facts:
 * sizes that name a part rather than measure it and without which there is no part (bores, tips, butts, a grip's core, raw
 * lengths, what a weight is sold as), the books kept of it (cuts, bends used up, masses added, what is in a port, pulls),
 * what its maker says (angles as made, rings of a sleeve), and estimates (room for hot melt).
 */
public final class MeasuredColumns {

    /**
     * One of them.
     * @param name      its name
     * @param condition columns that say how it was measured
     * @param edge      standard uncertainty, in the column's unit, of a part read by the edge or of no such part
     * @param wood      the same of a wood
     * @param wording   the unit, in words
     */
    record Measured(String name, List<String> condition, double edge, double wood, String wording) {

        double uncertainty(boolean ofWood) {
            return ofWood ? wood : edge;
        }
    }

    private static final String FREQUENCY = "frequency_cpm";
    private static final List<String> SOLE = List.of("reading");
    private static final List<String> SET = List.of("reading", "read_at_setting");
    private static final List<String> CLUB_SET = List.of("reading", "setting");
    private static final List<String> TABLE = List.of("setting", "reading");
    private static final List<String> SHAFT_CLAMPED =
        List.of("clamp_mm", "free_length_mm", "tip_mass_g", "over_grip", "plane_deg");
    private static final List<String> CLUB_CLAMPED = List.of("clamp_mm", "over_grip", "plane_deg");
    private static final List<String> NONE = List.of();
    private static final Map<StockKind, Map<String, Measured>> ALL = new EnumMap<>(StockKind.class);

    static {
        for (StockKind kind : StockKind.values()) {
            ALL.put(kind, new LinkedHashMap<>());
        }
        angles(StockKind.HEADS, SET, SOLE);
        add(StockKind.HEADS, "offset_mm", NONE, OFFSET_MM);
        add(StockKind.HEADS, "mass_g", List.of("weighed_with"), MASS_G);
        add(StockKind.HEADS, "bore_depth_mm", NONE, BORE_MM);
        add(StockKind.HEADS, "bore_to_ground_mm", NONE, BORE_MM);
        add(StockKind.HEADS, "seat_to_ground_mm", NONE, BORE_MM);
        add(StockKind.HEADS, "cg_toe_mm", NONE, CG_MM);
        add(StockKind.HEADS, "cg_up_mm", NONE, CG_MM);
        add(StockKind.HEADS, "transverse_inertia_g_cm2", NONE, TRANSVERSE_INERTIA_G_CM2);
        add(StockKind.HEADS, "vertical_inertia_g_cm2", NONE, VERTICAL_INERTIA_G_CM2);
        add(StockKind.HEADS, "volume_cm3", NONE, VOLUME_CM3);
        add(StockKind.HEADS, "ct_us", NONE, CHARACTERISTIC_TIME_US);
        for (String size : List.of("heel_toe_mm", "face_back_mm", "sole_crown_mm", "neck_mm")) {
            add(StockKind.HEADS, size, NONE, HEAD_SIZE_MM);
        }

        add(StockKind.SHAFTS, "mass_g", NONE, MASS_G);
        add(StockKind.SHAFTS, "balance_mm", NONE, BALANCE_MM);
        add(StockKind.SHAFTS, "torque_deg", NONE, TORQUE_DEG);
        add(StockKind.SHAFTS, FREQUENCY, SHAFT_CLAMPED, FREQUENCY_CPM);

        add(StockKind.GRIPS, "mass_g", NONE, MASS_G);
        add(StockKind.GRIPS, "length_mm", NONE, LENGTH_MM);
        add(StockKind.GRIPS, "cap_mm", NONE, CAP_MM);
        add(StockKind.GRIPS, "cg_mm", NONE, BALANCE_MM);

        add(StockKind.SLEEVES, "bore_depth_mm", NONE, BORE_MM);
        add(StockKind.SLEEVES, "stop_to_seat_mm", NONE, BORE_MM);
        add(StockKind.SLEEVES, "mass_g", NONE, MASS_G);

        angles(StockKind.CLUBS, CLUB_SET, CLUB_SET);
        add(StockKind.CLUBS, "length_mm", List.of("length_method"), LENGTH_MM);
        add(StockKind.CLUBS, "swing_weight_points", NONE, SWING_WEIGHT_POINTS);
        add(StockKind.CLUBS, FREQUENCY, CLUB_CLAMPED, FREQUENCY_CPM);
        add(StockKind.CLUBS, "total_mass_g", NONE, MASS_G);

        // a change from neutral is read on one gauge, whose own offset drops out: trusted as the angle is
        add(StockKind.SLEEVE_SETTINGS, "dloft_deg", TABLE, IRON_LOFT_DEG, WOOD_LOFT_DEG);
        add(StockKind.SLEEVE_SETTINGS, "dlie_deg", TABLE, IRON_LIE_DEG, WOOD_LIE_DEG);
        add(StockKind.SLEEVE_SETTINGS, "dface_deg", TABLE, FACE_DEG);

        add(StockKind.FREQUENCIES, FREQUENCY, SHAFT_CLAMPED, FREQUENCY_CPM);
    }

    private MeasuredColumns() {
    }

    private static void angles(StockKind kind, List<String> condition, List<String> conditionOfBounce) {
        add(kind, "loft_deg", condition, IRON_LOFT_DEG, WOOD_LOFT_DEG);
        add(kind, "lie_deg", condition, IRON_LIE_DEG, WOOD_LIE_DEG);
        add(kind, "face_deg", condition, FACE_DEG);
        add(kind, "bounce_deg", conditionOfBounce, BOUNCE_DEG);
    }

    private static void add(StockKind kind, String name, List<String> condition, double uncertainty) {
        add(kind, name, condition, uncertainty, uncertainty);
    }

    private static void add(StockKind kind, String name, List<String> condition, double edge, double wood) {
        ALL.get(kind).put(name, new Measured(name, condition, edge, wood, Unit.of(name).words()));
    }

    /** The measured columns of a kind, by name. */
    static Map<String, Measured> of(StockKind kind) {
        return ALL.get(kind);
    }

    /** Whether a column says more of the part than how something was measured, so that it is a fact as well. */
    static boolean isFactToo(StockKind kind, String condition) {
        return kind == StockKind.CLUBS && condition.equals("setting");
    }

    /**
     * The columns of a kind that hold something measured.
     * @param kind the kind
     * @return their names, in no more than the program's own units; none for wishes and weights
     */
    public static List<String> names(StockKind kind) {
        return List.copyOf(ALL.get(kind).keySet());
    }

    /**
     * The columns that say how a value was measured.
     * @param kind   the kind
     * @param column one of its measured columns
     * @return their names; empty where there is one way only
     * @throws IllegalArgumentException for any other column
     */
    public static List<String> condition(StockKind kind, String column) {
        return known(kind, column).condition();
    }

    /**
     * What a measured column is trusted to until a gauge's own uncertainty is known.
     * @param kind   the kind
     * @param column one of its measured columns
     * @param ofWood whether the part is read as a wood
     * @return standard uncertainty, in the column's unit
     * @throws IllegalArgumentException for any other column
     */
    public static double uncertainty(StockKind kind, String column, boolean ofWood) {
        return known(kind, column).uncertainty(ofWood);
    }

    /**
     * The unit of a measured column.
     * @param kind   the kind
     * @param column one of its measured columns
     * @return in words
     * @throws IllegalArgumentException for any other column
     */
    public static String unit(StockKind kind, String column) {
        return known(kind, column).wording();
    }

    static Measured known(StockKind kind, String column) {
        Measured measured = ALL.get(kind).get(column);
        if (measured == null) {
            throw new IllegalArgumentException("%s has no measured column %s".formatted(kind.fileName(), column));
        }
        return measured;
    }
}
