package benchtwin.stock;

import static benchtwin.club.Category.DRIVER;
import static benchtwin.club.Category.FAIRWAY;
import static benchtwin.club.Category.HYBRID;
import static benchtwin.club.Category.IRON;
import static benchtwin.club.Category.PUTTER;
import static benchtwin.club.Category.WEDGE;

import benchtwin.club.Category;
import benchtwin.club.Quantity;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What every number in the files can be, and what it usually is. The possible ends are set wide, to catch slips of the
 * finger and wrong units rather than rare parts. Common practice, no source: the usual lofts, lies, lengths, head masses,
 * shaft lengths, masses and diameters, and frequencies of 150 to 400 cpm. Memory: every other usual end. All lengths in
 * mm, whatever unit the column is in.
 */
final class Ranges {

    private static final Map<String, Range> TABLE = new HashMap<>();
    /** By kind, place of the column and category, with a last one for no category. */
    private static final Map<StockKind, Range[][]> BY_KIND = new EnumMap<>(StockKind.class);

    static {
        angles("loft_deg", -20, 90);
        angles("made_loft_deg", -20, 90);
        for (String lie : new String[] {"lie_deg", "made_lie_deg"}) {
            all(lie, 30, 90, 50, 80);
            of(lie, DRIVER, 30, 90, 54, 62);
            of(lie, FAIRWAY, 30, 90, 54, 62);
            of(lie, HYBRID, 30, 90, 54, 64);
            of(lie, IRON, 30, 90, 56, 68);
            of(lie, WEDGE, 30, 90, 60, 68);
            of(lie, PUTTER, 30, 90, 66, 80);
        }
        all("face_deg", -45, 45, -6, 6);
        all("made_face_deg", -45, 45, -6, 6);
        all("bounce_deg", -30, 45, -4, 20);

        all("heads.offset_mm", -40, 80, -12, 12);
        of("heads.offset_mm", PUTTER, -40, 80, -25, 40);
        all("heads.mass_g", 20, 2000, 150, 450);
        of("heads.mass_g", DRIVER, 20, 2000, 170, 220);
        of("heads.mass_g", FAIRWAY, 20, 2000, 185, 240);
        of("heads.mass_g", HYBRID, 20, 2000, 205, 265);
        of("heads.mass_g", IRON, 20, 2000, 220, 315);
        of("heads.mass_g", WEDGE, 20, 2000, 275, 325);
        of("heads.mass_g", PUTTER, 20, 2000, 290, 450);
        all("heads.bore_in", 2, 30, 8, 16);
        all("heads.bore_depth_mm", 1, 150, 15, 50);
        all("heads.bore_to_ground_mm", -30, 250, 0, 90);
        all("heads.seat_to_ground_mm", -30, 250, 20, 110);
        all("heads.port_g", 0, 300, 0, 40);
        all("heads.hot_melt_max_g", 0, 100, 0, 25);
        for (String way : new String[] {"upright", "flat", "forward", "back"}) {
            all("heads.bent_%s_deg".formatted(way), 0, 45, 0, 6);
        }
        all("heads.cg_toe_mm", -50, 200, 10, 70);
        all("heads.cg_up_mm", 0, 120, 8, 45);
        all("heads.transverse_inertia_g_cm2", 1, 100_000, 500, 8000);
        all("heads.vertical_inertia_g_cm2", 1, 100_000, 800, 11_000);
        all("heads.volume_cm3", 1, 3000, 20, 480);
        of("heads.volume_cm3", DRIVER, 1, 3000, 250, 480);
        all("heads.ct_us", 1, 2000, 150, 270);
        all("heads.heel_toe_mm", 5, 500, 60, 130);
        all("heads.face_back_mm", 5, 500, 10, 130);
        all("heads.sole_crown_mm", 5, 500, 10, 75);
        all("heads.neck_mm", 5, 500, 20, 130);

        all("shafts.raw_length_in", 200, 2000, 750, 1250);
        all("shafts.mass_g", 5, 600, 35, 145);
        all("shafts.balance_in", 1, 2000, 1, 2000);
        all("shafts.torque_deg", 0.1, 45, 1, 8);
        all("shafts.tip_in", 3, 30, 8, 16);
        all("shafts.butt_in", 5, 40, 13, 17.5);
        all("shafts.parallel_tip_in", 0, 2000, 0, 500);
        all("shafts.tip_cut_in", 0, 2000, 0, 160);
        all("shafts.butt_cut_in", 0, 2000, 0, 400);
        all("shafts.pulls", 0, 100, 0, 6);
        all("frequency_cpm", 20, 2000, 150, 400);
        all("clamp_in", 5, 600, 70, 260);
        all("free_length_in", 20, 2000, 100, 1200);
        all("tip_mass_g", 0, 2000, 0, 320);
        all("plane_deg", -360, 360, -360, 360);

        all("grips.mass_g", 2, 400, 20, 160);
        all("grips.length_in", 30, 800, 200, 560);
        all("grips.cap_mm", 0, 60, 0.5, 12);
        all("grips.core_in", 5, 40, 13, 17.5);
        all("grips.cg_in", 1, 800, 60, 280);

        all("sleeves.bore_in", 2, 30, 8, 12);
        all("sleeves.bore_depth_mm", 1, 150, 15, 50);
        all("sleeves.stop_to_seat_mm", -150, 150, -40, 40);
        all("sleeves.mass_g", 0.1, 100, 3, 15);
        for (String ring : new String[] {"ring1", "ring2"}) {
            all("sleeves.%s_tilt_deg".formatted(ring), 0, 15, 0.1, 3);
            all("sleeves.%s_settings".formatted(ring), 1, 360, 2, 16);
            all("sleeves.%s_offset_deg".formatted(ring), -360, 360, -360, 360);
        }
        all("sleeves.count", 0, 100_000, 0, 500);
        all("dloft_deg", -20, 20, -4, 4);
        all("dlie_deg", -20, 20, -4, 4);
        all("dface_deg", -30, 30, -6, 6);

        all("weights.mass_g", 0, 500, 0, 60);
        all("weights.count", 0, 100_000, 0, 500);

        all("length_in", 300, 2000, 600, 1300);
        of("length_in", DRIVER, 300, 2000, 1065, 1195);
        of("length_in", FAIRWAY, 300, 2000, 1000, 1130);
        of("length_in", HYBRID, 300, 2000, 935, 1070);
        of("length_in", IRON, 300, 2000, 840, 1030);
        of("length_in", WEDGE, 300, 2000, 820, 945);
        of("length_in", PUTTER, 300, 2000, 710, 1320);
        all("swing_weight", -200, 400, 10, 60);
        all("total_mass_g", 50, 3000, 250, 480);
        of("total_mass_g", PUTTER, 50, 3000, 420, 1200);
        all("clubs.tape_layers", 0, 60, 0, 8);
        all("clubs.tip_weight_g", 0, 200, 0, 15);
        all("clubs.tape_g", 0, 200, 0, 15);
        all("clubs.melt_g", 0, 200, 0, 15);

        all("butt_inertia_kg_cm2", 100, 20_000, 2000, 3500);
        all("loft_tol_deg", 0.01, 20, 0.05, 2);
        all("lie_tol_deg", 0.01, 20, 0.05, 2);
        all("face_tol_deg", 0.01, 20, 0.05, 3);
        all("bounce_tol_deg", 0.01, 20, 0.05, 4);
        all("length_tol_in", 0.254, 200, 0.3, 13);
        all("swing_weight_tol_points", 0.01, 100, 0.1, 5);
        all("butt_inertia_tol_kg_cm2", 0.01, 2000, 1, 100);
        all("frequency_tol_cpm", 0.01, 200, 0.3, 10);
        all("total_mass_tol_g", 0.01, 500, 0.2, 25);
        for (String quantity : new String[] {"loft", "lie", "face", "bounce", "length", "swing_weight", "butt_inertia",
            "frequency", "total_mass"}) {
            all(quantity + "_weight", 0, 1000, 0, 20);
        }
        all("priority", 1, 9, 1, 9);
        all("temperature_c", -20, 150, 5, 45);
        all("handling_min", 0.5, 20_160, 3, 4320);
        all("full_cure_h", 0.01, 1000, 0.5, 336);
        all("frequency.slope", -500, 500, 0, 15);
        all("swing-weight.slope", -50, 50, -3, 3);
        all("butt-inertia.slope", -5000, 5000, -100, 100);
        all("loft.slope", -90, 90, 0, 12);

        for (StockKind kind : StockKind.values()) {
            BY_KIND.put(kind, resolved(kind));
        }
    }

    private Ranges() {
    }

    /** The range of a column, for a category where one is known and has its own, lengths in mm. */
    static Range of(StockKind kind, String column, Optional<Category> category) {
        return of(kind, kind.known(column), category);
    }

    static Range of(StockKind kind, Column column, Optional<Category> category) {
        Range[] ranges = BY_KIND.get(kind)[column.place()];
        if (ranges == null) {
            throw new IllegalStateException("no range for column %s of %s".formatted(column.name(), kind.fileName()));
        }
        return ranges[category.isPresent() ? category.get().ordinal() : ranges.length - 1];
    }

    /** The range of a line's slope through a quantity, whatever its step. */
    static Range ofSlope(Quantity quantity) {
        return TABLE.get(quantity.word() + ".slope");
    }

    /** For each column one range a category and a last one for none; null for a column without numbers. */
    private static Range[][] resolved(StockKind kind) {
        Range[][] byPlace = new Range[kind.columns().size()][];
        for (Column column : kind.columns()) {
            String name = TABLE.containsKey(kind.word() + "." + column.name()) ? kind.word() + "." + column.name()
                : column.name();
            if (TABLE.containsKey(name)) {
                Range[] ranges = new Range[Category.values().length + 1];
                Arrays.fill(ranges, TABLE.get(name));
                for (Category category : Category.values()) {
                    ranges[category.ordinal()] = TABLE.getOrDefault(name + "." + category.word(), TABLE.get(name));
                }
                byPlace[column.place()] = ranges;
            }
        }
        return byPlace;
    }

    private static void angles(String loft, double least, double most) {
        all(loft, least, most, -4, 68);
        of(loft, DRIVER, least, most, 6, 16);
        of(loft, FAIRWAY, least, most, 11, 28);
        of(loft, HYBRID, least, most, 14, 34);
        of(loft, IRON, least, most, 14, 52);
        of(loft, WEDGE, least, most, 42, 68);
        of(loft, PUTTER, least, most, -4, 8);
    }

    private static void all(String column, double least, double most, double usualLeast, double usualMost) {
        TABLE.put(column, new Range(least, most, usualLeast, usualMost));
    }

    private static void of(String column, Category category, double least, double most, double usualLeast,
                           double usualMost) {
        TABLE.put(column + "." + category.word(), new Range(least, most, usualLeast, usualMost));
    }
}
