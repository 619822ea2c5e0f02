package benchtwin.stock;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.measure.PlainNumber;
import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Takes a row apart into what names it, its readings and its facts, and puts it together again. */
final class SheetParts {

    private static final String DAY = "measured_on";
    private static final String GAUGE = "gauge";
    private static final String BY = "measured_by";
    private static final List<String> TAKEN = List.of(DAY, BY, GAUGE);

    private SheetParts() {
    }

    /** What the row measured, in the order of its columns. */
    static List<SheetReading> readings(SheetRow row) {
        List<SheetReading> readings = new ArrayList<>();
        Taken taken = taken(row);
        boolean wood = isWood(row);
        for (MeasuredColumns.Measured measured : MeasuredColumns.of(row.kind()).values()) {
            String cell = row.cells().get(measured.name());
            if (cell != null) {
                Map<String, String> condition = new LinkedHashMap<>();
                measured.condition().forEach(column -> row.cell(column).ifPresent(said -> condition.put(column, said)));
                readings.add(new SheetReading(measured.name(),
                    new Reading(number(row, measured.name(), cell), measured.uncertainty(wood), taken), measured.wording(),
                    condition));
            }
        }
        return readings;
    }

    private static double number(SheetRow row, String column, String cell) {
        double number = PlainNumber.parse(cell);
        if (Double.isNaN(number)) {
            throw new IllegalArgumentException("%s of %s %s is \"%s\", which is no plain number"
                .formatted(column, row.kind().word(), row.tag(), cell));
        }
        return number;
    }

    /** As the readers of angles see it: by how they were read, else by the category. */
    private static boolean isWood(SheetRow row) {
        Optional<AngleReading> written = row.kind().column("reading").isEmpty() ? Optional.of(AngleReading.EDGE)
            : row.cell("reading").flatMap(word -> Words.find(word, AngleReading.class));
        return written.orElseGet(() -> AngleCells.usual(
            row.cell("category").flatMap(word -> Words.find(word, Category.class)))).isWood();
    }

    private static Taken taken(SheetRow row) {
        if (row.kind().column(DAY).isEmpty()) {
            return Taken.UNRECORDED;
        }
        try {
            return new Taken(row.cell(DAY).map(LocalDate::parse), row.cell(GAUGE), row.cell(BY));
        } catch (DateTimeParseException noDay) {
            throw new IllegalArgumentException("%s of %s %s is \"%s\", which is no day".formatted(DAY, row.kind().word(),
                row.tag(), row.cell(DAY).orElse("")), noDay);
        }
    }

    /** What the row says besides its readings. What says how something was measured stays here when nothing was. */
    static Map<String, String> facts(SheetRow row) {
        Set<String> elsewhere = new HashSet<>(row.kind().namingColumns());
        for (MeasuredColumns.Measured measured : MeasuredColumns.of(row.kind()).values()) {
            elsewhere.add(measured.name());
            if (row.cells().containsKey(measured.name())) {
                measured.condition().stream().filter(column -> !MeasuredColumns.isFactToo(row.kind(), column))
                    .forEach(elsewhere::add);
                elsewhere.addAll(TAKEN);
            }
        }
        Map<String, String> facts = new LinkedHashMap<>(row.cells());
        facts.keySet().removeAll(elsewhere);
        return facts;
    }

    /** The row those make up. */
    static SheetRow joined(StockKind kind, Map<String, String> naming, Map<String, String> facts,
                           List<SheetReading> readings, Map<String, String> extra) {
        Map<String, String> cells = new LinkedHashMap<>(facts);
        Map<String, Optional<String>> said = new LinkedHashMap<>();
        for (SheetReading read : readings) {
            cells.put(read.column(), PlainNumber.text(read.reading().value()));
            for (String column : MeasuredColumns.condition(kind, read.column())) {
                Optional<String> condition = Optional.ofNullable(read.condition().get(column));
                Optional<String> earlier = said.putIfAbsent(column, condition);
                if (earlier != null && !earlier.equals(condition)) {
                    throw new IllegalArgumentException("%s was read with %s %s, another value with %s".formatted(read.column(),
                        column, condition.orElse("blank"), earlier.orElse("blank")));
                }
            }
        }
        said.forEach((column, condition) -> {
            if (!MeasuredColumns.isFactToo(kind, column) || !cells.containsKey(column)) {
                put(cells, column, condition);
            }
        });
        if (!readings.isEmpty()) {
            Taken taken = readings.get(0).reading().taken();
            boolean together = readings.stream().allMatch(read -> read.reading().taken().equals(taken));
            Optional<Taken> shared = Optional.of(taken).filter(any -> together && kind.column(DAY).isPresent());
            put(cells, DAY, shared.flatMap(Taken::on).map(LocalDate::toString));
            put(cells, GAUGE, shared.flatMap(Taken::gauge));
            put(cells, BY, shared.flatMap(Taken::by));
        }
        cells.putAll(naming);
        return new SheetRow(kind, cells, extra);
    }

    private static void put(Map<String, String> cells, String column, Optional<String> cell) {
        cell.ifPresentOrElse(said -> cells.put(column, said), () -> cells.remove(column));
    }
}
