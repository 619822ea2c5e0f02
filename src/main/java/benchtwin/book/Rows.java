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

    static final String ENTRY = "entry.id entry_id, entry.entered_at, entry.by_whom entered_by, entry.what, entry.program";
    static final String THING = "thing.id thing_id, thing.kind thing_kind, thing.tag";

    private static final Map<String, ThingKind> THING_KINDS =
        Arrays.stream(ThingKind.values()).collect(Collectors.toMap(ThingKind::word, kind -> kind));
    private static final Map<String, EventKind> EVENT_KINDS =
        Arrays.stream(EventKind.values()).collect(Collectors.toMap(EventKind::word, kind -> kind));
    private static final Map<String, Standing> STANDINGS =
        Arrays.stream(Standing.values()).collect(Collectors.toMap(Standing::word, standing -> standing));

    private Rows() {
    }

    static Entry entry(ResultSet row) throws SQLException {
        return new Entry(row.getLong("entry_id"), new Moment(row.getString("entered_at")), text(row, "entered_by"),
            row.getString("what"), row.getString("program"));
    }

    static Thing thing(ResultSet row) throws SQLException {
        return new Thing(row.getLong("thing_id"), THING_KINDS.get(row.getString("thing_kind")), row.getString("tag"));
    }

    static EventKind eventKind(String word) {
        return EVENT_KINDS.get(word);
    }

    static StateOf state(ResultSet row) throws SQLException {
        return new StateOf(thing(row), StateJson.read(STANDINGS.get(row.getString("standing")), row.getString("derived")));
    }

    static NewReading reading(ResultSet row) throws SQLException {
        double value = row.getDouble("value");
        OptionalDouble read = row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
        double spread = row.getDouble("uncertainty");
        OptionalDouble uncertainty = row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(spread);
        long corrected = row.getLong("corrects");
        OptionalLong corrects = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(corrected);
        return new NewReading(row.getString("quantity"), read, uncertainty, row.getString("unit"),
            FactsJson.read(row.getString("condition")), text(row, "gauge"), text(row, "station"),
            text(row, "measured_at").map(Moment::new), text(row, "by_whom"), text(row, "note"), corrects);
    }

    static Optional<String> text(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column));
    }
}
