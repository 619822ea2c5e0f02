package benchtwin.stock;

import benchtwin.measure.PlainNumber;
import benchtwin.measure.Reading;
import java.util.Map;

/** A row out of the record. Every cell stands under its name in the program's own unit. */
final class RecordCells implements RowCells {

    private final SheetRow row;
    /** By the columns' places; null where there is none. */
    private final String[] cells;
    private final Reading[] readings;

    RecordCells(RecordedRow recorded) {
        row = recorded.row();
        int columns = row.kind().columns().size();
        cells = new String[columns];
        readings = new Reading[columns];
        row.cells().forEach((name, cell) -> cells[row.kind().known(name).place()] = cell);
        recorded.readings().forEach((name, reading) -> {
            int place = row.kind().known(name).place();
            cells[place] = PlainNumber.text(reading.value());
            readings[place] = reading;
        });
    }

    private String at(Column column) {
        String cell = cells[column.place()];
        return cell == null ? "" : cell;
    }

    @Override
    public String own(Column column) {
        return column.isInOwnUnit() ? at(column) : "";
    }

    @Override
    public String other(Column column) {
        return column.isInOwnUnit() ? "" : at(column);
    }

    @Override
    public boolean isUnderOtherName(Column column) {
        return !column.isInOwnUnit();
    }

    @Override
    public Reading reading(Column column) {
        return readings[column.place()];
    }

    @Override
    public Map<String, String> extra() {
        return row.extra();
    }

    @Override
    public String source() {
        String tag = row.tag();
        String named = switch (row.kind()) {
            case HEADS -> "head " + tag;
            case SHAFTS -> "shaft " + tag;
            case GRIPS -> "grip " + tag;
            case SLEEVES -> "sleeve " + tag;
            case WEIGHTS -> "weight " + tag;
            case CLUBS -> "club %s of %s".formatted(tag, day());
            case SLEEVE_SETTINGS -> "setting %s of sleeve %s".formatted(row.cells().get("setting"), tag);
            default -> "a frequency of shaft " + tag;
        };
        return named + " in " + RecordLots.BOOK;
    }

    private String day() {
        return row.cells().get("measured_on");
    }

    @Override
    public long line() {
        return 0;
    }

    @Override
    public String words() {
        return row.kind() == StockKind.CLUBS ? "its row of " + day() : source();
    }
}
