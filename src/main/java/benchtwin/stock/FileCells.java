package benchtwin.stock;

import benchtwin.measure.Reading;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;

/** A row of a file. */
final class FileCells implements RowCells {

    private final String file;
    private final Header header;
    private final String[] cells;
    /** The same, stripped once they have been asked for. */
    private final String[] stripped;
    private final long line;

    FileCells(String file, Header header, CSVRecord record, long line) {
        this.file = file;
        this.header = header;
        this.cells = record.values();
        this.stripped = new String[cells.length];
        this.line = line;
    }

    private String at(int position) {
        if (position < 0) {
            return "";
        }
        if (stripped[position] == null) {
            stripped[position] = SafeCell.read(strip(cells[position])).strip();
        }
        return stripped[position];
    }

    /** A cell's text without the spaces around it, no-break spaces taken for plain ones. */
    static String strip(String cell) {
        return cell.replace('\u00a0', ' ').strip();
    }

    @Override
    public String own(Column column) {
        return at(header.position(column));
    }

    @Override
    public String other(Column column) {
        return at(header.otherPosition(column));
    }

    @Override
    public boolean isUnderOtherName(Column column) {
        return own(column).isEmpty() && header.otherPosition(column) >= 0
            && (header.position(column) < 0 || !other(column).isEmpty());
    }

    @Override
    public Reading reading(Column column) {
        return null;
    }

    @Override
    public Map<String, String> extra() {
        Map<String, String> extra = new LinkedHashMap<>();
        header.unknown().forEach((name, position) -> {
            if (!cells[position].isBlank()) {
                extra.put(name, SafeCell.read(cells[position]));
            }
        });
        return extra;
    }

    @Override
    public String source() {
        return file;
    }

    @Override
    public long line() {
        return line;
    }

    @Override
    public String words() {
        return "line " + line;
    }
}
