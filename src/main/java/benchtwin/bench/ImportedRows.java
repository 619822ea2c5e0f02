package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.SheetOrigin;
import benchtwin.book.ThingKind;
import benchtwin.stock.SheetRow;
import benchtwin.stock.StockKind;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the rows of stock files said when they were imported last. Rows are asked about in one order, from the first on. */
final class ImportedRows {

    private final BookView view;
    private final Map<ThingKind, Map<String, Map<String, SheetOrigin>>> before = new EnumMap<>(ThingKind.class);
    private final Map<String, Integer> alike = new HashMap<>();

    ImportedRows(BookView view) {
        this.view = view;
    }

    /** Whether a row says what it said the last time. */
    boolean isAsBefore(SheetRow row) {
        SheetOrigin origin = origin(row);
        return origin.equals(last(row, origin));
    }

    /** The row as the book keeps it. */
    SheetOrigin origin(SheetRow row) {
        Map<String, String> cells = new LinkedHashMap<>(row.cells());
        row.extra().forEach((name, text) -> cells.put(ImportedRow.EXTRA + name, text));
        return new SheetOrigin(key(row), cells);
    }

    /** The row as it was imported last; null where it never was. */
    SheetOrigin last(SheetRow row, SheetOrigin origin) {
        return before.computeIfAbsent(ImportedRow.kind(row), view::sheets).getOrDefault(row.tag(), Map.of()).get(origin.key());
    }

    /** What tells a row from the other rows of its part; equal further frequencies are numbered. */
    private String key(SheetRow row) {
        String rest = row.kind() == StockKind.FREQUENCIES ? " " + row.cells()
            : row.key().size() > 1 ? " " + row.key().get(1) : "";
        String key = row.kind().word() + rest;
        int number = row.kind() == StockKind.FREQUENCIES ? alike.merge(row.tag() + key, 1, Integer::sum) : 1;
        return number > 1 ? key + " #" + number : key;
    }
}
