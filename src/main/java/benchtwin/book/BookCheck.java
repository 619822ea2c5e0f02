package benchtwin.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether a book is whole: the file itself, what refers to what, and that everything derived is what its events say.
 * @param things   how many things were looked at
 * @param events   how many events they have
 * @param readings how many readings
 * @param findings what is wrong, one line each; empty for a clean book
 */
public record BookCheck(int things, long events, long readings, List<String> findings) {

    private static final int MOST_OF_A_KIND = 100;

    public BookCheck {
        findings = List.copyOf(findings);
    }

    /**
     * Whether nothing was found.
     * @return true for a clean book
     */
    public boolean isClean() {
        return findings.isEmpty();
    }

    /**
     * Looks at everything.
     * @param book the book
     * @return what was found
     * @throws BookProblem when it cannot even be read
     */
    public static BookCheck all(Book book) throws BookProblem {
        return book.read(view -> {
            List<String> findings = new ArrayList<>();
            try (Statement statement = view.handle().getConnection().createStatement()) {
                file(statement, findings);
                references(statement, findings);
            } catch (SQLException failed) {
                throw new BookProblem("the book %s cannot be checked: %s".formatted(book.file(), failed.getMessage()), failed);
            }
            return derived(view, findings);
        });
    }

    /**
     * Looks only at whether what is derived is what the events say.
     * @param view the book
     * @return what was found
     */
    public static BookCheck derived(BookView view) {
        return derived(view, new ArrayList<>());
    }

    private static void file(Statement statement, List<String> findings) throws SQLException {
        try (ResultSet rows = statement.executeQuery("PRAGMA integrity_check(%d)".formatted(MOST_OF_A_KIND))) {
            while (rows.next()) {
                if (!rows.getString(1).equals("ok")) {
                    findings.add("file: " + rows.getString(1));
                }
            }
        }
    }

    private static void references(Statement statement, List<String> findings) throws SQLException {
        try (ResultSet rows = statement.executeQuery("PRAGMA foreign_key_check")) {
            while (rows.next() && findings.size() < MOST_OF_A_KIND) {
                findings.add("row %d of table %s refers to a row of table %s that is not there".formatted(rows.getLong(2),
                    rows.getString(1), rows.getString(3)));
            }
        }
        String astray = "SELECT later.id, reading.id FROM reading later JOIN reading ON reading.id = later.corrects "
            + "JOIN event a ON a.id = later.event_id JOIN event b ON b.id = reading.event_id "
            + "WHERE a.thing_id <> b.thing_id OR later.quantity <> reading.quantity OR later.id <= reading.id";
        try (ResultSet rows = statement.executeQuery(astray)) {
            while (rows.next() && findings.size() < MOST_OF_A_KIND) {
                findings.add("reading %d corrects reading %d, which is not an earlier one of the same".formatted(rows.getLong(1),
                    rows.getLong(2)));
            }
        }
    }

    private static BookCheck derived(BookView view, List<String> findings) {
        Map<Long, String> kept = new HashMap<>();
        view.handle().createQuery("SELECT thing_id, kind, standing, owner, derived FROM state").map((row, context) ->
            Map.entry(row.getLong("thing_id"), line(row.getString("kind"), row.getString("standing"), row.getString("owner"),
                row.getString("derived")))).forEach(one -> kept.put(one.getKey(), one.getValue()));
        int things = 0;
        long events = 0;
        long readings = 0;
        for (ThingKind kind : ThingKind.values()) {
            for (Thing thing : view.things(kind)) {
                List<KeptEvent> befell = view.events(thing);
                State state = Fold.of(kind, befell);
                String worked = line(kind.word(), state.standing().word(), States.owner(thing, state), StateJson.write(state));
                Optional<String> stands = Optional.ofNullable(kept.remove(thing.id()));
                if (!stands.equals(Optional.of(worked)) && findings.size() < MOST_OF_A_KIND) {
                    findings.add("%s stands as %s, and its events say %s".formatted(thing.name(),
                        stands.orElse("nothing at all"), worked));
                }
                things++;
                events += befell.size();
                readings += befell.stream().mapToLong(event -> event.readings().size()).sum();
            }
        }
        kept.forEach((id, line) -> findings.add("a state of thing %d, which is not there: %s".formatted(id, line)));
        return new BookCheck(things, events, readings, findings);
    }

    private static String line(String kind, String standing, String owner, String derived) {
        return "%s, %s, %s, %s".formatted(kind, standing, owner == null ? "nobody's" : owner, derived);
    }
}
