package benchtwin.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Collectors;

/** Rows of the file as records. */
final class Rows {

    static final String ENTRY = "entry.id, entry.entered_at, entry.by_whom, entry.what, entry.program";
    static final int ENTRY_COLUMNS = 5;
    static final String THING = "thing.id, thing.kind, thing.tag";
    static final int THING_COLUMNS = 3;
    static final String READING = "reading.quantity, reading.value, reading.uncertainty, reading.unit, reading.condition, "
        + "reading.gauge, reading.station, reading.measured_at, reading.by_whom, reading.note, reading.corrects";

    private static final Map<String, ThingKind> THING_KINDS =
        Arrays.stream(ThingKind.values()).collect(Collectors.toMap(ThingKind::word, kind -> kind));
    private static final Map<String, EventKind> EVENT_KINDS =
        Arrays.stream(EventKind.values()).collect(Collectors.toMap(EventKind::word, kind -> kind));
    private static final Map<String, Standing> STANDINGS =
        Arrays.stream(Standing.values()).collect(Collectors.toMap(Standing::word, standing -> standing));

    private Rows() {
    }

    /** An entry whose columns begin at a place. */
    static Entry entry(ResultSet row, int from) throws SQLException {
        return new Entry(row.getLong(from), new Moment(row.getString(from + 1)), text(row, from + 2), row.getString(from + 3),
            row.getString(from + 4));
    }

    static Thing thing(ResultSet row, int from) throws SQLException {
        return new Thing(row.getLong(from), THING_KINDS.get(row.getString(from + 1)), row.getString(from + 2));
    }

    static EventKind eventKind(String word) {
        EventKind kind = EVENT_KINDS.get(word);
        if (kind == null) {
            throw new IllegalArgumentException("\"%s\" is no kind of event".formatted(TypedText.shown(word)));
        }
        return kind;
    }

    /** A thing, its standing and its state. */
    static StateText state(ResultSet row) throws SQLException {
        return new StateText(thing(row, 1), STANDINGS.get(row.getString(THING_COLUMNS + 1)), row.getString(THING_COLUMNS + 2));
    }

    static NewReading reading(ResultSet row, int from) throws SQLException {
        double value = row.getDouble(from + 1);
        OptionalDouble read = row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
        double spread = row.getDouble(from + 2);
        OptionalDouble uncertainty = row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(spread);
        long corrected = row.getLong(from + 10);
        OptionalLong corrects = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(corrected);
        return new NewReading(row.getString(from), read, uncertainty, row.getString(from + 3),
            FactsJson.read(row.getString(from + 4)), text(row, from + 5), text(row, from + 6),
            text(row, from + 7).map(Moment::new), text(row, from + 8), text(row, from + 9), corrects);
    }

    static Optional<String> text(ResultSet row, int column) throws SQLException {
        return Optional.ofNullable(row.getString(column));
    }
}
