package benchtwin.stock;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** A small invented workshop as CSV text, clean and without a warning, to be changed cell by cell. */
final class Workshop {

    private final Path folder;
    private final Map<StockKind, List<Map<String, String>>> tables = new EnumMap<>(StockKind.class);

    private Workshop(Path folder) {
        this.folder = folder;
    }

    /** Nothing in it yet. */
    static Workshop emptyIn(Path folder) {
        return new Workshop(folder);
    }

    /**
     * Two heads, two shafts, a grip, a sleeve with a measured setting, a weight, a club over time, a further reading; and
     * three wanted clubs on two lines.
     */
    static Workshop in(Path folder) {
        return new Workshop(folder)
            .row(StockKind.HEADS, "tag=H-1", "model=Alder", "category=driver", "number=1", "hand=right", "loft_deg=9.3",
                "lie_deg=58.5", "face_deg=-0.5", "reading=soled", "mass_g=198.5", "weighed_with=weights+screw",
                "bore_in=", "bore_kind=", "bore_depth_mm=", "bore_to_ground_mm=", "material=titanium", "adjust=sleeve",
                "sleeve_fit=Q2", "seat_to_ground_mm=62", "read_at_setting=1", "port=P8+P8", "port_g=4+7",
                "hot_melt_max_g=6", "condition=new", "place=drawer 3")
            .row(StockKind.HEADS, "tag=H-2", "model=Fern", "category=iron", "number=7", "hand=left", "loft_deg=34",
                "lie_deg=62.5", "mass_g=268", "bore_in=0.37", "bore_kind=parallel", "bore_depth_mm=32",
                "bore_to_ground_mm=30", "material=carbon-steel", "adjust=bend", "bounce_deg=5")
            .row(StockKind.SHAFTS, "tag=S-1", "model=Brook", "material=graphite", "meant_for=driver+fairway",
                "raw_length_in=46", "mass_g=61.5", "balance_in=23 1/2", "torque_deg=4.2", "tip_in=0.335",
                "tip_kind=parallel", "butt_in=0.6", "parallel_tip_in=3", "tip_cut_in=0.5", "butt_cut_in=1/2",
                "frequency_cpm=255", "clamp_in=5", "free_length_in=40", "tip_mass_g=205", "over_grip=no", "sleeve_on=Q2-335",
                "grip_on=", "pulls=1", "condition=pulled")
            .row(StockKind.SHAFTS, "tag=S-2", "model=Ridge", "material=steel", "meant_for=iron", "raw_length_in=37",
                "tip_in=0.355", "tip_kind=taper", "butt_in=0.6", "made_for_number=7", "grip_on=G-1")
            .row(StockKind.GRIPS, "tag=G-1", "model=Moss", "mass_g=50", "length_in=10 1/2", "cap_mm=3", "core_in=0.6",
                "rib=no", "cg_in=4.2")
            .row(StockKind.SLEEVES, "sleeve=Q2-335", "fits=Q2+Q3", "hand=right", "bore_in=0.335", "bore_depth_mm=33",
                "stop_to_seat_mm=6", "mass_g=8.2", "turns_shaft=yes", "ring1_tilt_deg=1", "ring1_settings=12",
                "ring1_offset_deg=0", "ring2_tilt_deg=", "ring2_settings=", "ring2_offset_deg=", "count=4")
            .row(StockKind.WEIGHTS, "tag=W-1", "port=P8", "mass_g=7", "count=3", "place=tray 2")
            .row(StockKind.CLUBS, "tag=C-1", "player=Ansel Brook", "category=driver", "number=1", "hand=right", "head=H-1",
                "shaft=S-1", "grip=G-1", "sleeve=Q2-335", "setting=1", "loft_deg=9.3", "lie_deg=58.5", "face_deg=-0.5",
                "reading=soled", "length_in=45 1/4", "length_method=axis", "swing_weight=D2.4", "frequency_cpm=252",
                "clamp_in=5", "over_grip=yes", "total_mass_g=318", "tape_layers=", "measured_on=2026-05-03",
                "state=in play", "tape_g=1.5", "note=after round two")
            .row(StockKind.CLUBS, "tag=C-1", "player=Ansel Brook", "category=driver", "number=1", "hand=right",
                "measured_on=2026-05-06", "state=damaged")
            .row(StockKind.SLEEVE_SETTINGS, "sleeve=Q2-335", "setting=1", "dloft_deg=0.5", "dlie_deg=-0.4",
                "dface_deg=-1.2", "reading=square")
            .row(StockKind.FREQUENCIES, "tag=S-1", "frequency_cpm=310", "clamp_in=", "free_length_in=36", "over_grip=no")
            .row(StockKind.SET_TARGETS, "player=Ansel Brook", "club=driver", "category=driver", "number=", "hand=right",
                "group=", "group_rule=", "loft_deg=9.3", "lie_deg=58.5", "face_deg=-0.5", "reading=soled",
                "length_in=45 1/4", "swing_weight=D2.4", "frequency_line=", "swing_line=", "total_mass_g=318",
                "loft_tol_deg=0.2", "priority=1", "needed_by=2026-05-21", "note=a second one")
            .row(StockKind.SET_TARGETS, "player=Ansel Brook", "club=7-iron", "category=iron", "number=7", "hand=right",
                "group=irons", "group_rule=must", "loft_deg=34", "lie_deg=62.5", "bounce_deg=5", "length_in=37",
                "frequency_line=irons", "swing_line=even")
            .row(StockKind.SET_TARGETS, "player=Ansel Brook", "club=8-iron", "category=iron", "number=8", "hand=right",
                "group=irons", "group_rule=must", "loft_deg=38", "lie_deg=63", "length_in=36 1/2", "frequency_line=irons",
                "swing_line=even", "frequency_tol_cpm=1", "frequency_weight=0.5")
            .row(StockKind.LINES, "line=irons", "quantity=frequency", "anchor_club=7-iron", "anchor_value=300", "slope=8",
                "per=inch")
            .row(StockKind.LINES, "line=even", "quantity=swing-weight", "anchor_club=7-iron", "anchor_value=D2",
                "slope=0", "per=club")
            .row(StockKind.RESINS, "resin=slow", "temperature_c=20", "handling_min=480", "full_cure_h=30", "note=");
    }

    /** Adds a row of name=cell pairs; columns it lacks are blank. */
    Workshop row(StockKind kind, String... cells) {
        Map<String, String> row = new LinkedHashMap<>();
        Arrays.stream(cells).forEach(cell -> row.put(cell.substring(0, cell.indexOf('=')), cell.substring(cell.indexOf('=') + 1)));
        tables.computeIfAbsent(kind, any -> new ArrayList<>()).add(row);
        return this;
    }

    /** Changes a cell of a row, counted from 0. */
    Workshop set(StockKind kind, int row, String column, String cell) {
        tables.get(kind).get(row).put(column, cell);
        return this;
    }

    /** Takes a column away from every row. */
    Workshop without(StockKind kind, String column) {
        tables.get(kind).forEach(row -> row.remove(column));
        return this;
    }

    /** Gives a column another name and its cells another spelling; nothing where there is no such column. */
    Workshop rename(StockKind kind, String from, String to, UnaryOperator<String> spelling) {
        for (Map<String, String> row : tables.getOrDefault(kind, List.of())) {
            String cell = row.remove(from);
            if (cell != null) {
                row.put(to, spelling.apply(cell));
            }
        }
        return this;
    }

    Workshop onlyKinds(StockKind... kinds) {
        tables.keySet().retainAll(List.of(kinds));
        return this;
    }

    List<String> columns(StockKind kind) {
        return tables.get(kind).stream().flatMap(row -> row.keySet().stream()).distinct().toList();
    }

    /** The file's text with its columns in this order. */
    String text(StockKind kind, List<String> columns, char separator, String lineEnd, boolean decimalComma) {
        StringBuilder text = new StringBuilder(line(columns, separator)).append(lineEnd);
        for (Map<String, String> row : tables.get(kind)) {
            text.append(line(columns.stream().map(column -> row.getOrDefault(column, ""))
                .map(cell -> decimalComma ? cell.replaceAll("(\\d)\\.(\\d)", "$1,$2") : cell).toList(), separator))
                .append(lineEnd);
        }
        return text.toString();
    }

    String text(StockKind kind) {
        return text(kind, columns(kind), ',', "\n", false);
    }

    private static String line(List<String> cells, char separator) {
        return String.join(String.valueOf(separator), cells.stream().map(cell -> quoted(cell, separator)).toList());
    }

    static String quoted(String cell, char separator) {
        boolean needed = cell.indexOf(separator) >= 0 || cell.contains("\"") || cell.contains("\n") || cell.contains("\r");
        return needed ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }

    StockFiles write() {
        tables.keySet().forEach(kind -> write(kind, text(kind)));
        return StockFiles.inFolder(folder);
    }

    void write(StockKind kind, String text) {
        write(kind, text.getBytes(StandardCharsets.UTF_8));
    }

    void write(StockKind kind, byte[] bytes) {
        try {
            Files.write(folder.resolve(kind.fileName()), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    InventoryRead read() {
        return InventoryReader.read(write(), false);
    }

    SheetRead readSheets() {
        return InventoryReader.readSheets(write(), false);
    }

    InventoryRead readGoodRows() {
        return InventoryReader.read(write(), true);
    }

    SetTargetRead readSets(boolean goodRowsOnly) {
        write();
        Optional<Path> lines = Optional.of(folder.resolve(StockKind.LINES.fileName()))
            .filter(path -> tables.containsKey(StockKind.LINES));
        return SetTargetReader.read(folder.resolve(StockKind.SET_TARGETS.fileName()), lines, goodRowsOnly);
    }

    /** The messages of all faults. */
    List<String> faults() {
        return read().faults().stream().map(Fault::text).toList();
    }

    List<String> warnings() {
        InventoryRead read = read();
        if (!read.isClean()) {
            throw new AssertionError("unexpected faults: " + read.faults().stream().map(Fault::text).toList());
        }
        return read.warnings().stream().map(Fault::text).toList();
    }
}
