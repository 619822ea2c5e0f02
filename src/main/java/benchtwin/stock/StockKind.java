package benchtwin.stock;

import static benchtwin.stock.Column.may;
import static benchtwin.stock.Column.need;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.Set;
import java.util.stream.IntStream;

/** The kinds of stock file and the columns each may have. */
public enum StockKind {
    /** Heads, one a row. */
    HEADS("heads", List.of("tag"),
        need("tag", "H-014"), need("model", "Alder 2"), need("category", "driver"), may("number", "7"),
        need("hand", "right"), may("loft_deg", "9.3"), may("lie_deg", "58.5"), may("face_deg", "-0.5"),
        may("reading", "soled"), may("bounce_deg", "5"), may("offset_mm", "2.5"), may("grind", "heel relief"),
        may("mass_g", "203.5"), may("weighed_with", "weights+screw"), may("bore_in", "0.335"),
        may("bore_kind", "parallel"), may("bore_depth_mm", "32"), may("bore_to_ground_mm", "30"),
        may("material", "titanium"), need("adjust", "bend"), may("sleeve_fit", "Q2"), may("seat_to_ground_mm", "62"),
        may("read_at_setting", "1"), may("port", "P8"), may("port_g", "4"), may("hot_melt_max_g", "6"),
        may("made_loft_deg", "9"), may("made_lie_deg", "58"), may("made_face_deg", "0"),
        may("bent_upright_deg", "0.5"), may("bent_flat_deg", "0"), may("bent_forward_deg", "0"),
        may("bent_back_deg", "0"), may("cg_toe_mm", "38"), may("cg_up_mm", "28"),
        may("transverse_inertia_g_cm2", "3000"), may("vertical_inertia_g_cm2", "4800"), may("volume_cm3", "455"),
        may("ct_us", "240"), may("heel_toe_mm", "121"), may("face_back_mm", "116"), may("sole_crown_mm", "64"),
        may("neck_mm", "90"), may("condition", "used"), may("measured_on", "2026-05-03"), may("measured_by", "Kim"),
        may("gauge", "bench 1"), may("reserved_for", "job 12"), may("place", "drawer 3"), may("note", "paint chip")),
    /** Shafts, one a row. */
    SHAFTS("shafts", List.of("tag"),
        need("tag", "S-031"), need("model", "Brook 60"), need("material", "graphite"),
        need("meant_for", "driver+fairway"), may("made_for_number", "7"), need("raw_length_in", "46"),
        may("mass_g", "61.5"), may("balance_in", "23 1/2"), may("torque_deg", "4.2"), need("tip_in", "0.335"),
        need("tip_kind", "parallel"), need("butt_in", "0.6"), may("parallel_tip_in", "3"), may("tip_cut_in", "1"),
        may("butt_cut_in", "0"), may("frequency_cpm", "255"), may("clamp_in", "5"), may("free_length_in", "41"),
        may("tip_mass_g", "205"), may("over_grip", "no"), may("plane_deg", "0"), may("sleeve_on", "Q2-335"),
        may("grip_on", "G-05"), may("orientation", "logo down"), may("pulls", "1"), may("condition", "pulled"),
        may("measured_on", "2026-05-03"), may("measured_by", "Kim"), may("gauge", "bench 1"),
        may("reserved_for", "job 12"), may("place", "rack 2"), may("note", "from the broken club")),
    /** Grips, one a row. */
    GRIPS("grips", List.of("tag"),
        need("tag", "G-05"), need("model", "Moss round"), may("mass_g", "50"), may("length_in", "10 1/2"),
        may("cap_mm", "3"), may("core_in", "0.6"), may("rib", "no"), may("cg_in", "4.2"),
        may("measured_on", "2026-05-03"), may("measured_by", "Kim"), may("gauge", "bench 1"),
        may("reserved_for", "job 12"), may("place", "bin 4"), may("note", "soft")),
    /** Sleeve types, one a row. */
    SLEEVES("sleeves", List.of("sleeve"),
        need("sleeve", "Q2-335"), need("fits", "Q2+Q3"), may("hand", "right"), need("bore_in", "0.335"),
        may("bore_depth_mm", "33"), may("stop_to_seat_mm", "6"), may("mass_g", "8.2"), need("turns_shaft", "yes"),
        may("ring1_tilt_deg", "1"), may("ring1_settings", "12"), may("ring1_offset_deg", "0"),
        may("ring2_tilt_deg", "0.75"), may("ring2_settings", "5"), may("ring2_offset_deg", "0"), may("count", "4"),
        may("reserved_for", "job 12"), may("place", "tin 1"), may("note", "long screw")),
    /** Weights in the drawer, one kind a row. */
    WEIGHTS("weights", List.of("tag"),
        need("tag", "W-08"), need("port", "P8"), need("mass_g", "7"), need("count", "3"),
        may("reserved_for", "job 12"), may("place", "tray 2"), may("note", "new screws")),
    /** Players' recorded clubs, one measuring day a row. */
    CLUBS("clubs", List.of("tag", "measured_on"),
        need("tag", "C-17"), need("player", "R. Fenn"), need("category", "driver"), may("number", "1"),
        need("hand", "right"), may("head", "H-014"), may("shaft", "S-031"), may("grip", "G-05"),
        may("sleeve", "Q2-335"), may("setting", "1"), may("loft_deg", "9.3"), may("lie_deg", "58.5"),
        may("face_deg", "-0.5"), may("reading", "soled"), may("bounce_deg", "5"), may("length_in", "45 1/4"),
        may("length_method", "axis"), may("swing_weight", "D2.4"), may("frequency_cpm", "252"), may("clamp_in", "5"),
        may("over_grip", "yes"), may("plane_deg", "0"), may("total_mass_g", "318"), may("tape_layers", "1"),
        may("orientation", "logo down"), need("measured_on", "2026-05-03"), need("state", "in play"),
        may("tip_weight_g", "2"), may("tape_g", "1.5"), may("melt_g", "2"), may("measured_by", "Kim"),
        may("gauge", "bench 1"), may("note", "after round two")),
    /** Measured sleeve settings, one a row. */
    SLEEVE_SETTINGS("sleeve-settings", List.of("sleeve", "setting"),
        need("sleeve", "Q2-335"), need("setting", "3"), need("dloft_deg", "0.8"), need("dlie_deg", "-0.4"),
        may("dface_deg", "-1.2"), need("reading", "square")),
    /** Further frequency readings of shafts, one a row. */
    FREQUENCIES("frequencies", List.of(),
        need("tag", "S-031"), need("frequency_cpm", "310"), may("clamp_in", "5"), may("free_length_in", "36"),
        may("tip_mass_g", "205"), may("over_grip", "no"), may("plane_deg", "0"), may("measured_on", "2026-05-03"),
        may("measured_by", "Kim"), may("gauge", "bench 1")),
    /** Clubs of sets to be built, one a row. */
    SET_TARGETS("set-targets", List.of("player", "club"),
        need("player", "R. Fenn"), need("club", "7-iron"), need("category", "iron"), may("number", "7"),
        need("hand", "right"), may("group", "irons"), may("group_rule", "must"), may("loft_deg", "34"),
        may("lie_deg", "62.5"), may("face_deg", "-0.5"), may("reading", "edge"), may("bounce_deg", "5"),
        may("length_in", "37"), may("swing_weight", "D2.4"), may("butt_inertia_kg_cm2", "2650"),
        may("frequency_cpm", "300"), may("frequency_line", "irons"), may("swing_line", "even"),
        may("loft_line", "gaps"), may("total_mass_g", "430"), may("loft_tol_deg", "0.25"), may("loft_weight", "1"), may("lie_tol_deg", "0.25"),
        may("lie_weight", "1"), may("face_tol_deg", "0.5"), may("face_weight", "1"), may("bounce_tol_deg", "0.5"),
        may("bounce_weight", "0.5"), may("length_tol_in", "1/16"), may("length_weight", "1"),
        may("swing_weight_tol_points", "0.5"), may("swing_weight_weight", "1"), may("butt_inertia_tol_kg_cm2", "10"),
        may("butt_inertia_weight", "1"), may("frequency_tol_cpm", "2"), may("frequency_weight", "1"),
        may("total_mass_tol_g", "3"), may("total_mass_weight", "0.5"), may("priority", "3"),
        may("needed_by", "2026-05-21"), may("note", "wants it for the pro-am")),
    /** Lines through sets, one a row. */
    LINES("lines", List.of("line"),
        need("line", "irons"), need("quantity", "frequency"), need("anchor_club", "7-iron"), need("anchor_value", "300"),
        need("slope", "8"), need("per", "inch")),
    /** Cure times of the workshop's resins, one temperature a row, as the makers state them. */
    RESINS("resins", List.of("resin", "temperature_c"),
        need("resin", "slow"), need("temperature_c", "23"), need("handling_min", "240"), need("full_cure_h", "24"),
        may("note", "from the leaflet"));

    private final String word;
    private final List<String> keyColumns;
    private final List<String> namingColumns;
    private final List<Column> columns;
    private final List<String> requiredColumns;
    private final Set<String> recordColumns;
    private final Map<String, Column> byName = new HashMap<>();

    StockKind(String word, List<String> keyColumns, Column... columns) {
        this.word = word;
        this.keyColumns = keyColumns;
        this.namingColumns = keyColumns.isEmpty() ? List.of("tag") : keyColumns;
        this.columns = IntStream.range(0, columns.length).mapToObj(place -> columns[place].at(place)).toList();
        this.requiredColumns = this.columns.stream().filter(Column::required).map(Column::name).toList();
        this.recordColumns = this.columns.stream().map(Column::recordName).collect(Collectors.toUnmodifiableSet());
        for (Column column : this.columns) {
            byName.put(column.name(), column);
            column.otherName().ifPresent(other -> byName.put(other, column));
        }
    }

    /**
     * The file's usual name without its ending.
     * @return for instance {@code heads}
     */
    public String word() {
        return word;
    }

    /**
     * The file's usual name.
     * @return for instance {@code heads.csv}
     */
    public String fileName() {
        return word + ".csv";
    }

    /**
     * Columns the header must have, under their canonical names.
     * @return at least one
     */
    public List<String> requiredColumns() {
        return requiredColumns;
    }

    /** The columns that together name a row; no two rows may share them. Empty where rows may repeat. */
    List<String> keyColumns() {
        return keyColumns;
    }

    /** The columns that say what a row is of: its key, or the tag where rows may repeat. */
    List<String> namingColumns() {
        return namingColumns;
    }

    /**
     * The columns a row may have, under their names in the program's own units.
     * @return every column once
     */
    public Set<String> recordColumns() {
        return recordColumns;
    }

    List<Column> columns() {
        return columns;
    }

    /**
     * Whether it says what the workshop has; else what is wished of it.
     * @return false for set targets, lines and resins
     */
    public boolean isStock() {
        return this != SET_TARGETS && this != LINES && this != RESINS;
    }

    /** The column a header name stands for, canonical or in its other unit. */
    Optional<Column> column(String nameInFile) {
        return Optional.ofNullable(byName.get(nameInFile));
    }

    /** A column that must be one of the kind's. */
    Column known(String name) {
        Column column = byName.get(name);
        if (column == null) {
            throw new IllegalArgumentException("%s has no column %s".formatted(fileName(), name));
        }
        return column;
    }
}
