package benchtwin.bench;

import benchtwin.stock.SheetRow;
import benchtwin.stock.StockKind;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Which columns files say anything in. A cell is blanked only in a column that other rows fill; a column that nobody fills
 * may as well not be there, and says nothing of what was known before.
 */
final class FilledColumns {

    private final Map<StockKind, Set<String>> filled = new EnumMap<>(StockKind.class);

    FilledColumns(Iterable<SheetRow> rows) {
        for (SheetRow row : rows) {
            Set<String> columns = filled.computeIfAbsent(row.kind(), kind -> new HashSet<>());
            columns.addAll(row.cells().keySet());
            row.extra().keySet().forEach(name -> columns.add(ImportedRow.EXTRA + name));
        }
    }

    boolean has(StockKind kind, String column) {
        return filled.getOrDefault(kind, Set.of()).contains(column);
    }
}
