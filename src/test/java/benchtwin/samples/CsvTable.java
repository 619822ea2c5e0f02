package benchtwin.samples;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A table on its way into a CSV file: the same cells in every row. */
final class CsvTable {

    private static final CSVFormat FORMAT = CSVFormat.Builder.create().setRecordSeparator("\n").get();

    private final List<Map<String, String>> rows = new ArrayList<>();

    /** A row under way: cells in column order. */
    static final class Row {
        private final Map<String, String> cells = new LinkedHashMap<>();

        Row put(String column, String cell) {
            cells.put(column, cell);
            return this;
        }

        String get(String column) {
            return cells.getOrDefault(column, "");
        }
    }

    static CsvTable of(List<Row> rows) {
        CsvTable table = new CsvTable();
        rows.forEach(table::add);
        return table;
    }

    void add(Row row) {
        if (!rows.isEmpty() && !rows.get(0).keySet().equals(row.cells.keySet())) {
            throw new IllegalStateException("rows of one table have the same columns: " + row.cells.keySet());
        }
        rows.add(row.cells);
    }

    void write(Path file) throws IOException {
        try (Writer writer = Files.newBufferedWriter(file); CSVPrinter printer = new CSVPrinter(writer, FORMAT)) {
            printer.printRecord(rows.get(0).keySet());
            for (Map<String, String> row : rows) {
                printer.printRecord(row.values());
            }
        }
    }
}
