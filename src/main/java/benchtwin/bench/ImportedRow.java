package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.EventKind;
import benchtwin.book.Moment;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.SheetOrigin;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.stock.SheetReading;
import benchtwin.stock.SheetRow;
import benchtwin.stock.StockKind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** One row of a stock file on its way into the book: what it says, and what of that is new since it was imported last. */
final class ImportedRow {

    /** What the names of columns the program does not know begin with in the book. */
    static final String EXTRA = "x:";

    private final BookEntry entry;
    private final SheetRow row;
    private final SheetOrigin origin;
    private final SheetOrigin last;
    private final FilledColumns filled;
    private final List<String> remarks;

    /**
     * What came of a row.
     * @param isNew  whether the book did not know the thing
     * @param change what was new about a thing it knew, in words
     */
    record Came(boolean isNew, Optional<String> change) {
    }

    /**
     * @param entry   the act it belongs to
     * @param row     the row
     * @param origin  the same as the book keeps it
     * @param last    what the row said when it was imported last; null for the first time
     * @param filled  which columns the files say anything in
     * @param remarks takes what could not be taken over
     */
    ImportedRow(BookEntry entry, SheetRow row, SheetOrigin origin, SheetOrigin last, FilledColumns filled, List<String> remarks) {
        this.entry = entry;
        this.row = row;
        this.origin = origin;
        this.last = last;
        this.filled = filled;
        this.remarks = remarks;
    }

    static ThingKind kind(SheetRow row) {
        return switch (row.kind()) {
            case HEADS -> ThingKind.HEAD;
            case SHAFTS, FREQUENCIES -> ThingKind.SHAFT;
            case GRIPS -> ThingKind.GRIP;
            case SLEEVES, SLEEVE_SETTINGS -> ThingKind.SLEEVE;
            case WEIGHTS -> ThingKind.WEIGHT;
            default -> ThingKind.CLUB;
        };
    }

    /** Enters what it says. */
    Came enter() throws BookProblem {
        Optional<Thing> known = entry.thing(kind(row), row.tag()).filter(thing -> thing.tag().equals(row.tag()));
        gauges();
        return row.kind() == StockKind.CLUBS ? new ImportedClub(this).enter(known) : new ImportedPart(this).enter(known);
    }

    /** Every gauge a reading names is one of the book's. */
    private void gauges() throws BookProblem {
        for (SheetReading reading : row.readings()) {
            Optional<String> gauge = reading.reading().taken().gauge();
            if (gauge.isPresent() && entry.thing(ThingKind.GAUGE, gauge.get()).isEmpty()) {
                entry.add(ThingKind.GAUGE, gauge.get(), NewEvent.of(EventKind.RECEIVED));
            }
        }
    }

    BookEntry entry() {
        return entry;
    }

    SheetRow row() {
        return row;
    }

    SheetOrigin origin() {
        return origin;
    }

    void remark(String remark) {
        remarks.add(remark);
    }

    void remarks(List<String> more) {
        remarks.addAll(more);
    }

    /** Whether the row comes into the book for the first time. */
    boolean isFirst() {
        return last == null;
    }

    /** A cell as it was when the row was imported last. */
    Optional<String> before(String column) {
        return last == null ? Optional.empty() : Optional.ofNullable(last.cells().get(column));
    }

    /** Whether a cell says something it did not say the last time. */
    boolean isNews(String column) {
        return last == null || !Objects.equals(last.cells().get(column), origin.cells().get(column));
    }

    /** Whether a cell was emptied since the last time, in a column that is still there. */
    boolean isBlanked(String column) {
        return before(column).isPresent() && !origin.cells().containsKey(column) && filled.has(row.kind(), column);
    }

    /** Columns that were emptied. */
    List<String> blanked() {
        return last == null ? List.of() : last.cells().keySet().stream().filter(this::isBlanked).toList();
    }

    /** Whether a reading's value, or how it was read, is said anew. */
    boolean isNews(SheetReading read) {
        return isNews(read.column()) || read.condition().keySet().stream().anyMatch(this::isNews);
    }

    /** The day the row was read. */
    Optional<Moment> measured() {
        return row.cell("measured_on").map(Moment::new);
    }

    NewEvent when(NewEvent event) {
        return measured().map(event::at).orElse(event);
    }

    /** What it says besides its readings, columns of the file's own among it. */
    Map<String, String> facts() {
        Map<String, String> facts = new HashMap<>(row.facts());
        row.extra().forEach((name, text) -> facts.put(EXTRA + name, text));
        return facts;
    }

    List<NewReading> readings() {
        return row.readings().stream().map(ImportedRow::reading).toList();
    }

    static NewReading reading(SheetReading read) {
        return new NewReading(read.column(), OptionalDouble.of(read.reading().value()),
            OptionalDouble.of(read.reading().standardUncertainty()), read.unit(), read.condition(), read.reading().taken().gauge(),
            Optional.empty(), read.reading().taken().on().map(Moment::on), read.reading().taken().by(), Optional.empty(),
            OptionalLong.empty());
    }

    /** Something that is said anew, in words. */
    static String news(String column, Optional<String> before, String now) {
        String was = before.map(old -> ColumnText.value(column, old) + " → ").orElse("");
        return "%s %s".formatted(ColumnText.name(column), now.isEmpty() ? "no longer recorded"
            : was + ColumnText.value(column, now));
    }
}
