package benchtwin.stock;

import benchtwin.measure.Reading;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A row as the record has it: what it says, and the readings its measured cells rest on.
 * @param row      the row; a measured cell that has a reading may be left out
 * @param readings the readings by column, in the column's own unit. Value, uncertainty and how it was taken go into the
 *                 inventory as they are; a measured cell without a reading has its usual uncertainty
 */
public record RecordedRow(SheetRow row, Map<String, Reading> readings) {

    /**
     * Checks the columns.
     * @throws IllegalArgumentException for a reading of a column that is not a measured one of its kind
     */
    public RecordedRow {
        for (String column : readings.keySet()) {
            MeasuredColumns.known(row.kind(), column);
        }
        readings = Map.copyOf(readings);
    }

    /**
     * A row together with what it measured itself.
     * @param row the row
     * @return its measured cells as readings of the usual uncertainty
     * @throws IllegalArgumentException as {@link SheetRow#readings}
     */
    public static RecordedRow of(SheetRow row) {
        return new RecordedRow(row, byColumn(row.readings()));
    }

    /**
     * The row that these make up, resting on these readings.
     * @param kind     what the row is of
     * @param naming   the cells that say so
     * @param facts    its facts
     * @param readings its readings
     * @param extra    its cells of unknown columns
     * @return the row
     * @throws IllegalArgumentException as {@link SheetRow#joined}
     */
    public static RecordedRow joined(StockKind kind, Map<String, String> naming, Map<String, String> facts,
                                     List<SheetReading> readings, Map<String, String> extra) {
        return new RecordedRow(SheetRow.joined(kind, naming, facts, readings, extra), byColumn(readings));
    }

    private static Map<String, Reading> byColumn(List<SheetReading> readings) {
        Map<String, Reading> byColumn = new LinkedHashMap<>();
        readings.forEach(read -> byColumn.put(read.column(), read.reading()));
        return byColumn;
    }
}
