package benchtwin.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One row of a stock file, in the spelling that all rows which say the same thing share: every length in mm and under its
 * name in mm, a swing weight in points, numbers in the fewest plain decimals to a millionth, words, settings and lists as
 * this program writes them, other text stripped. Two rows that differ only in units, capitals, decimal commas, separators
 * or the order of columns are equal.
 * @param kind  what the row is of; not a wish for a set
 * @param cells what is filled, by the columns' names in the program's own units, in the order of the kind's columns
 * @param extra filled cells of columns the program does not know, by their names, both as written
 */
public record SheetRow(StockKind kind, Map<String, String> cells, Map<String, String> extra) {

    /**
     * Puts the cells into the columns' order and takes off the spaces around them.
     * @throws IllegalArgumentException for a kind that is no stock, a column the kind does not have under that name, a
     *                                  blank cell, a part of the key that is missing, or an extra column that has the
     *                                  name of a known one or of another extra one
     */
    public SheetRow {
        if (!kind.isStock()) {
            throw new IllegalArgumentException(kind.fileName() + " says what is wished for, not what there is");
        }
        Map<String, String> ordered = new LinkedHashMap<>();
        for (Column column : kind.columns()) {
            String cell = cells.get(column.recordName());
            if (cell != null) {
                ordered.put(column.recordName(), FileCells.strip(cell));
            }
        }
        if (ordered.size() != cells.size()) {
            String stranger = cells.keySet().stream().filter(name -> !ordered.containsKey(name)).findFirst().orElseThrow();
            throw new IllegalArgumentException("a row of %s has no column %s".formatted(kind.fileName(), stranger));
        }
        cells = Collections.unmodifiableMap(ordered);
        Set<String> names = new HashSet<>();
        Map<String, String> others = new LinkedHashMap<>();
        for (String name : extra.keySet()) {
            others.put(name.strip(), extra.get(name));
            String folded = Header.fold(name);
            if (folded.isEmpty() || kind.column(folded).isPresent() || !names.add(folded)) {
                throw new IllegalArgumentException("an extra column of %s is called \"%s\"".formatted(kind.fileName(), name));
            }
        }
        extra = Collections.unmodifiableMap(others);
        refuseBlank(cells);
        refuseBlank(extra);
        for (String column : kind.namingColumns()) {
            if (!cells.containsKey(column)) {
                throw new IllegalArgumentException("a row of %s lacks %s".formatted(kind.fileName(), column));
            }
        }
    }

    private static void refuseBlank(Map<String, String> cells) {
        cells.forEach((column, cell) -> {
            if (cell.isBlank()) {
                throw new IllegalArgumentException("the cell of %s is blank; a blank one is left out".formatted(column));
            }
        });
    }

    /**
     * The tag of the part or club it is of; of a sleeve and its settings, the sleeve's name.
     * @return never blank
     */
    public String tag() {
        return cells.get(kind.namingColumns().get(0));
    }

    /**
     * What tells it from the other rows of its kind: mostly its tag; of a club the tag and the day, of a sleeve's setting
     * the sleeve and the setting.
     * @return the cells of the key; empty for a further frequency, as there may be any number of equal ones
     */
    public List<String> key() {
        List<String> key = new ArrayList<>();
        kind.keyColumns().forEach(column -> key.add(cells.get(column)));
        return List.copyOf(key);
    }

    /**
     * The cells that say what the row is of.
     * @return those of its key; of a further frequency, the shaft's tag
     */
    public Map<String, String> naming() {
        Map<String, String> naming = new LinkedHashMap<>();
        kind.namingColumns().forEach(column -> naming.put(column, cells.get(column)));
        return naming;
    }

    /**
     * What the row measured. Each reading carries the usual uncertainty of its column, which on a wood may be another, the
     * row's day, gauge and reader, and those cells of its condition that are filled.
     * @return in the order of {@link MeasuredColumns#names}
     * @throws IllegalArgumentException when a measured cell is no plain number, or the day is none
     */
    public List<SheetReading> readings() {
        return SheetParts.readings(this);
    }

    /**
     * What the row says besides its key and its readings. A cell that says how something was measured belongs to the
     * readings, and is a fact only where no reading carries it; a club's sleeve setting is a fact in any case.
     * @return cells by column
     */
    public Map<String, String> facts() {
        return SheetParts.facts(this);
    }

    /**
     * The row that these make up: of any row, its own parts give the row back. A condition of the readings takes the place of
     * one among the facts. Day, gauge and reader are filled where all readings share them.
     * @param kind     what the row is of
     * @param naming   the cells that say so
     * @param facts    its facts
     * @param readings its readings
     * @param extra    its cells of unknown columns
     * @return the row, every reading's value rounded to a millionth
     * @throws IllegalArgumentException for a row that could not be, and where two readings disagree about a condition that
     *                                  stands once in a row
     */
    public static SheetRow joined(StockKind kind, Map<String, String> naming, Map<String, String> facts,
                                  List<SheetReading> readings, Map<String, String> extra) {
        return SheetParts.joined(kind, naming, facts, readings, extra);
    }

    /**
     * A cell.
     * @param column a name in the program's own units
     * @return the cell, or empty when it is blank
     */
    public Optional<String> cell(String column) {
        return Optional.ofNullable(cells.get(column));
    }
}
