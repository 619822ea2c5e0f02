package benchtwin.stock;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table whose columns mean nothing here, as a CSV file: commas, a header, no cell a formula ({@link SafeCell}). Blank cells
 * hold nothing; no cell holds an empty text.
 * @param columns the columns' names, each once
 * @param rows    one cell for each column
 */
public record PlainTable(List<String> columns, List<List<Optional<String>>> rows) {

    public PlainTable {
        columns = List.copyOf(columns);
        rows = Collections.unmodifiableList(rows);
    }

    /** That a text is no such table; the message says where and why. */
    public static final class NoTable extends Exception {

        private static final long serialVersionUID = 1;

        NoTable(String message) {
            super(message);
        }
    }

    /**
     * The table as a file's text.
     * @return lines that end in a line feed; {@link #read} gives the table back
     */
    public String text() {
        StringBuilder text = new StringBuilder();
        CsvText.line(text, columns);
        rows.forEach(row -> CsvText.line(text, row.stream().map(cell -> cell.orElse("")).toList()));
        return text.toString();
    }

    /**
     * Reads a table.
     * @param file what messages call it
     * @param in   the text; closed afterwards
     * @return the table
     * @throws NoTable     when a row has too few or too many cells, or a quote is never closed
     * @throws IOException when it cannot be read
     */
    public static PlainTable read(String file, Reader in) throws NoTable, IOException {
        try (CSVParser parser = CSVParser.parse(in, CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get())) {
            List<String> columns = null;
            List<List<Optional<String>>> rows = new ArrayList<>();
            for (CSVRecord record : parser) {
                if (columns == null) {
                    columns = record.stream().map(SafeCell::read).toList();
                } else if (record.size() != columns.size()) {
                    throw new NoTable("%s line %d: has %d cells; expected %d, one for each column".formatted(file,
                        parser.getCurrentLineNumber(), record.size(), columns.size()));
                } else {
                    rows.add(record.stream().map(cell -> cell.isEmpty() ? Optional.<String>empty()
                        : Optional.of(SafeCell.read(cell))).toList());
                }
            }
            if (columns == null) {
                throw new NoTable("%s: is empty; expected a line with the columns' names".formatted(file));
            }
            return new PlainTable(columns, rows);
        } catch (UncheckedIOException malformed) {
            throw new NoTable("%s: has a quote that is never closed, or text after a closing quote".formatted(file));
        }
    }
}
