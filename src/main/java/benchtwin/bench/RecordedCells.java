package benchtwin.bench;

import benchtwin.book.CurrentReading;
import benchtwin.measure.PlainNumber;
import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import benchtwin.stock.RecordedRow;
import benchtwin.stock.SheetRow;
import benchtwin.stock.StockKind;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One part of the book on its way to be a row of stock. */
final class RecordedCells {

    /** What says what a part is and where it sits, by kind; without it a row is none. */
    private static final Map<StockKind, Set<String>> IN_SHORT = Map.of(
        StockKind.HEADS, Set.of("model", "category", "number", "hand", "adjust", "bore_mm", "bore_kind", "sleeve_fit", "condition"),
        StockKind.SHAFTS, Set.of("model", "material", "meant_for", "raw_length_mm", "tip_mm", "tip_kind", "butt_mm",
            "parallel_tip_mm", "tip_cut_mm", "butt_cut_mm", "sleeve_on", "grip_on", "pulls", "condition"),
        StockKind.GRIPS, Set.of("model"),
        StockKind.CLUBS, Set.of("player", "category", "number", "hand", "head", "shaft", "grip", "state"));

    private final StockKind kind;
    private final Set<String> columns;
    private final Map<String, String> cells = new LinkedHashMap<>();
    private final Map<String, String> extra = new LinkedHashMap<>();
    private final Map<String, Reading> readings = new HashMap<>();

    RecordedCells(StockKind kind, String tag) {
        this.kind = kind;
        this.columns = kind.recordColumns();
        cells.put(kind.requiredColumns().get(0), tag);
    }

    RecordedCells put(String column, String text) {
        cells.put(column, text);
        return this;
    }

    /** Facts the kind has a column for, and those of columns that came with a file. */
    void facts(Map<String, String> facts) {
        facts.forEach((name, text) -> {
            if (columns.contains(name)) {
                cells.put(name, text);
            } else if (name.startsWith(ImportedRow.EXTRA)) {
                extra.put(name.substring(ImportedRow.EXTRA.length()), text);
            }
        });
    }

    /** Of these facts only what says what the part is and where it sits. */
    RecordedCells inShort(Map<String, String> facts) {
        Set<String> wanted = IN_SHORT.get(kind);
        facts.forEach((name, text) -> {
            if (wanted.contains(name)) {
                cells.put(name, text);
            }
        });
        return this;
    }

    /**
     * The newest sitting of each quantity, as a mean where it was read several times. A row says once how its angles were
     * read, so a reading in another condition than a newer one stays out.
     */
    void readings(List<CurrentReading> current, ZoneId zone) {
        List<CurrentReading> newestFirst = current.stream().filter(reading -> columns.contains(reading.read().quantity()))
            .sorted(CurrentReading.BY_TIME.reversed()).toList();
        Map<String, CurrentReading> chosen = new HashMap<>();
        for (CurrentReading reading : newestFirst) {
            if (!chosen.containsKey(reading.read().quantity()) && agrees(reading)) {
                chosen.put(reading.read().quantity(), reading);
                reading.read().condition().forEach((name, text) -> {
                    if (columns.contains(name)) {
                        cells.putIfAbsent(name, text);
                    }
                });
            }
        }
        chosen.values().forEach(newest -> readings.put(newest.read().quantity(), mean(newest, current, zone)));
    }

    private boolean agrees(CurrentReading reading) {
        return reading.read().condition().entrySet().stream().allMatch(said -> !columns.contains(said.getKey())
            || cells.getOrDefault(said.getKey(), said.getValue()).equals(said.getValue()));
    }

    private static Reading mean(CurrentReading newest, List<CurrentReading> current, ZoneId zone) {
        Repeats repeats = Repeats.with(newest, current);
        return new Reading(repeats.mean(), repeats.uncertainty(), new Taken(
            newest.read().measuredAt().map(moment -> moment.day(zone)), newest.read().gauge(), newest.read().by()));
    }

    /** Its readings as they would stand on the gauge others are carried to. */
    RecordedCells carriedBy(GaugeReference gauges) {
        readings.replaceAll(gauges::carried);
        return this;
    }

    /** The same as a row of a file, its measured cells filled from the readings. */
    SheetRow sheet() {
        Map<String, String> filled = new LinkedHashMap<>(cells);
        readings.forEach((column, reading) -> filled.put(column, PlainNumber.text(reading.value())));
        readings.values().stream().max(Comparator.comparing(reading -> reading.taken().on().map(LocalDate::toString).orElse("")))
            .ifPresent(newest -> {
                newest.taken().on().ifPresent(day -> known(filled, "measured_on", day.toString()));
                newest.taken().by().ifPresent(by -> known(filled, "measured_by", by));
                newest.taken().gauge().ifPresent(gauge -> known(filled, "gauge", gauge));
            });
        return new SheetRow(kind, filled, extra);
    }

    private void known(Map<String, String> filled, String column, String text) {
        if (columns.contains(column)) {
            filled.putIfAbsent(column, text);
        }
    }

    StockKind kind() {
        return kind;
    }

    RecordedRow row() {
        return new RecordedRow(new SheetRow(kind, cells, extra), readings);
    }
}
