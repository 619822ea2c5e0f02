package benchtwin.stock;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Splits a file's text into header and rows and hands the sound rows on, each with the line it starts on. */
final class TableReader {

    /**
     * What a table held besides its rows.
     * @param rows           rows seen, good or not
     * @param unknownColumns names the program does not know
     */
    record Table(int rows, List<String> unknownColumns) {

        static final Table NONE = new Table(0, List.of());
    }

    /** No honest cell is longer; a longer one is a quote in the wrong place, or no table at all. */
    static final int LONGEST_CELL = 4000;

    private final String file;
    private final String text;
    private final Separator separator;

    TableReader(String file, String text) {
        this.file = file;
        this.text = text;
        this.separator = Separator.of(text);
    }

    Separator separator() {
        return separator;
    }

    /** The cells of the header; empty when there is none that can be read. */
    List<String> headerCells() {
        try (CSVParser parser = open()) {
            for (CSVRecord record : parser) {
                if (!isBlank(record)) {
                    return names(record);
                }
            }
            return List.of();
        } catch (IOException | UncheckedIOException malformed) {
            return List.of();
        }
    }

    /** Reads the whole table. What is wrong with its shape goes to the source's faults. */
    Table read(Source source, Consumer<Row> rows) {
        long line = 1;
        Header header = null;
        int count = 0;
        int before = source.faults().count();
        try (CSVParser parser = open()) {
            Iterator<CSVRecord> records = parser.iterator();
            while (true) {
                line = parser.getCurrentLineNumber() + 1;
                if (!records.hasNext()) {
                    break;
                }
                CSVRecord record = records.next();
                if (isBlank(record)) {
                    continue;
                }
                if (header == null) {
                    Optional<Header> read = Header.read(names(record), file, line, source);
                    if (read.isEmpty()) {
                        return Table.NONE;
                    }
                    header = read.get();
                    continue;
                }
                count++;
                if (hasRightShape(record, header, line, source)) {
                    rows.accept(new Row(source, new FileCells(file, header, record, line)));
                }
            }
        } catch (IOException | UncheckedIOException malformed) {
            source.faults().add(new Fault(file, line, Optional.empty(), Optional.empty(),
                "has a quote that is never closed, or text after a closing quote; nothing after it was read",
                "quotes in pairs around a cell, and a quote inside one written twice"));
        }
        if (header == null && source.faults().count() == before) {
            source.faults().add(new Fault(file, 0, Optional.empty(), Optional.empty(), "is empty",
                "a header line with the columns " + String.join(", ", source.kind().requiredColumns())));
        } else if (header != null && count == 0 && source.faults().count() == before) {
            source.warnings().add(new Fault(file, 0, Optional.empty(), Optional.empty(),
                "has a header and no rows", "a row for each part"));
        }
        return header == null ? Table.NONE : new Table(count, List.copyOf(header.unknown().keySet()));
    }

    private boolean hasRightShape(CSVRecord record, Header header, long line, Source source) {
        if (record.size() != header.width()) {
            String hint = record.size() > header.width() && !source.decimalComma()
                ? "; a cell with a comma in it needs quotes" : "";
            source.faults().add(new Fault(file, line, Optional.empty(), Optional.empty(),
                "has %d cells".formatted(record.size()),
                "%d, one for each column of the header%s".formatted(header.width(), hint)));
            return false;
        }
        for (String cell : record) {
            if (cell.length() > LONGEST_CELL && SafeCell.read(cell).length() > LONGEST_CELL) {
                source.faults().add(new Fault(file, line, Optional.empty(), Optional.empty(),
                    "has a cell of %d characters".formatted(cell.length()),
                    "at most %d; a quote may be missing".formatted(LONGEST_CELL)));
                return false;
            }
        }
        for (int position : header.unnamed()) {
            if (!record.get(position).isBlank()) {
                source.faults().add(new Fault(file, line, Optional.empty(), Optional.of(record.get(position)),
                    "stands in column %d, which has no name".formatted(position + 1), "a name for it in the header"));
                return false;
            }
        }
        return true;
    }

    static List<String> names(CSVRecord header) {
        return header.stream().map(cell -> SafeCell.read(cell.strip())).toList();
    }

    CSVParser open() throws IOException {
        return CSVFormat.DEFAULT.builder().setDelimiter(separator.mark()).setIgnoreEmptyLines(false)
            .setIgnoreSurroundingSpaces(true).get().parse(new StringReader(text));
    }

    static boolean isBlank(CSVRecord record) {
        for (String cell : record) {
            if (!cell.isBlank()) {
                return false;
            }
        }
        return true;
    }
}
