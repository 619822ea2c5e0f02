package benchtwin.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Writes rows as the text of a stock file, for keeping, for a spreadsheet, and for reading again: {@link InventoryReader}
 * gives equal rows back. Lengths stand in mm. A cell that a spreadsheet would run as a formula is written so that it does
 * not ({@link SafeCell}). A no-break space comes back as a space.
 */
public final class SheetWriter {

    /** The longest cell a file may have, characters. */
    public static final int LONGEST_CELL = TableReader.LONGEST_CELL;

    private SheetWriter() {
    }

    /**
     * The rows as a file, to be saved in UTF-8.
     * @param kind what they are of
     * @param rows the rows, in the order of the file
     * @return its text: a header with the columns that must be there and those that a row fills, then columns the program
     *         does not know; those whose names differ in no more than capitals or spaces share one, under the first name
     * @throws IllegalArgumentException for a row of another kind, and for a cell or name that no file can hold: too long, or
     *                                  with a control character besides tabs and line ends, or half a character
     */
    public static String text(StockKind kind, List<SheetRow> rows) {
        Set<String> filled = new LinkedHashSet<>();
        Map<String, String> extras = new LinkedHashMap<>();
        for (SheetRow row : rows) {
            if (row.kind() != kind) {
                throw new IllegalArgumentException("a row of %s among those of %s".formatted(row.kind().fileName(),
                    kind.fileName()));
            }
            filled.addAll(row.cells().keySet());
            row.extra().keySet().forEach(name -> extras.putIfAbsent(Header.fold(name), checked(row, name, Header.LONGEST_NAME)));
        }
        Set<String> header = kind.columns().stream().filter(column -> column.required() || filled.contains(column.recordName()))
            .map(Column::recordName).collect(Collectors.toCollection(LinkedHashSet::new));
        header.addAll(extras.values());
        List<Map<String, String>> cells = new ArrayList<>();
        for (SheetRow row : rows) {
            Map<String, String> line = new LinkedHashMap<>();
            row.cells().forEach((column, cell) -> line.put(column, checked(row, cell, LONGEST_CELL)));
            row.extra().forEach((name, cell) -> line.put(extras.get(Header.fold(name)), checked(row, cell, LONGEST_CELL)));
            cells.add(line);
        }
        return CsvText.table(header, cells);
    }

    private static String checked(SheetRow row, String text, int longest) {
        boolean odd = text.length() > longest;
        for (int i = 0; i < text.length() && !odd; i++) {
            char c = text.charAt(i);
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                i++;
            } else {
                odd = c < ' ' && c != '\t' && c != '\r' && c != '\n' || Character.isSurrogate(c);
            }
        }
        if (odd) {
            throw new IllegalArgumentException("%s %s holds a text no file can: over %d characters, or with one that is no text"
                .formatted(row.kind().word(), row.tag(), longest));
        }
        return text;
    }
}
