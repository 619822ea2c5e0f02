package benchtwin.stock;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.LongPredicate;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Rows of a file as somebody typed them, to be shown beside what is wrong with them.
 * @param headerLine the line the header starts on; 0 where there is none
 * @param header     the names of the columns as written
 * @param rows       those that were asked for
 * @param left       how many others there are, as far as the file can be read
 */
public record TypedRows(long headerLine, List<String> header, List<TypedRow> rows, int left) {

    /**
     * One row.
     * @param line  the physical line it starts on, from 1
     * @param cells as written
     */
    public record TypedRow(long line, List<String> cells) {
    }

    /**
     * Reads rows.
     * @param file   any file
     * @param wanted the lines of the rows that are wanted
     * @param most   no more than these
     * @return the rows; none of a file that is no table
     */
    public static TypedRows of(Path file, LongPredicate wanted, int most) {
        Optional<String> text = FileText.load(file, "", new FaultList());
        List<String> header = new ArrayList<>();
        List<TypedRow> rows = new ArrayList<>();
        long headerLine = 0;
        int left = 0;
        try (CSVParser parser = new TableReader("", text.orElse("")).open()) {
            long line = 1;
            for (CSVRecord record : parser) {
                if (TableReader.isBlank(record)) {
                    line = parser.getCurrentLineNumber() + 1;
                    continue;
                }
                if (headerLine == 0) {
                    headerLine = line;
                    header.addAll(TableReader.names(record));
                } else if (wanted.test(line) && rows.size() < most) {
                    rows.add(new TypedRow(line, record.stream().map(SafeCell::read).toList()));
                } else {
                    left++;
                }
                line = parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException malformed) {
            return new TypedRows(headerLine, header, rows, left);   // what stands before the break is shown; a fault says where it is
        }
        return new TypedRows(headerLine, header, rows, left);
    }

    /**
     * Which cell of a row a fault is about.
     * @param fault a fault of this file
     * @return the cell's place, 0 for the first; empty when the row as a whole is meant
     */
    public OptionalInt cell(Fault fault) {
        for (int i = 0; i < header.size() && fault.column().isPresent(); i++) {
            if (Header.fold(header.get(i)).equals(fault.column().get())) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }
}
