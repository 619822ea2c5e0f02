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
            for (Look look : List.<Look>of(BookCheck::file, BookCheck::references, BookCheck::notes)) {
                try (Statement statement = view.handle().getConnection().createStatement()) {
                    look.at(statement, findings);
                } catch (SQLException failed) {
                    add(findings, "file: " + failed.getMessage());
                }
            }
            return derived(view, findings);
        });
    }

    /** One way to look at a book. */
    @FunctionalInterface
    private interface Look {
        void at(Statement statement, List<String> findings) throws SQLException;
    }

    /** What refers to nothing, or to what it must not. */
    static List<String> astray(BookView view) throws SQLException {
        List<String> findings = new ArrayList<>();
        try (Statement statement = view.handle().getConnection().createStatement()) {
            references(statement, findings);
        }
        return findings;
    }

    /**
     * Looks only at whether what is derived is what the events say.
     * @param view the book
     * @return what was found
     */
    public static BookCheck derived(BookView view) {
        return derived(view, new ArrayList<>());
    }

    private static void add(List<String> findings, String finding) {
        if (findings.size() < MOST_OF_A_KIND) {
            findings.add(finding.replaceAll("\\s*\\R\\s*", "; "));
        }
    }

    private static void file(Statement statement, List<String> findings) throws SQLException {
        try (ResultSet rows = statement.executeQuery("PRAGMA integrity_check(%d)".formatted(MOST_OF_A_KIND))) {
            while (rows.next()) {
                if (!rows.getString(1).equals("ok")) {
                    add(findings, "file: " + rows.getString(1));
                }
            }
        }
    }

    private static void references(Statement statement, List<String> findings) throws SQLException {
        try (ResultSet rows = statement.executeQuery("PRAGMA foreign_key_check")) {
            while (rows.next()) {
                add(findings, "row %d of table %s refers to a row of table %s that is not there".formatted(rows.getLong(2),
                    rows.getString(1), rows.getString(3)));
            }
        }
        String astray = "SELECT later.id, reading.id FROM reading later JOIN reading ON reading.id = later.corrects "
            + "JOIN event a ON a.id = later.event_id JOIN event b ON b.id = reading.event_id "
            + "WHERE a.thing_id <> b.thing_id OR later.quantity <> reading.quantity OR later.id <= reading.id";
        try (ResultSet rows = statement.executeQuery(astray)) {
            while (rows.next()) {
                add(findings, "reading %d corrects reading %d, which is not an earlier one of the same".formatted(rows.getLong(1),
                    rows.getLong(2)));
            }
        }
    }

    /** The index of the notes' words against one made of the notes anew, word by word. */
    private static void notes(Statement statement, List<String> findings) throws SQLException {
        statement.execute("CREATE VIRTUAL TABLE temp.anew USING fts5 (text, tokenize = 'unicode61 remove_diacritics 2')");
        statement.execute("INSERT INTO temp.anew (rowid, text) SELECT id, text FROM note");
        statement.execute("CREATE VIRTUAL TABLE temp.anew_words USING fts5vocab ('temp', 'anew', 'instance')");
        statement.execute("CREATE VIRTUAL TABLE temp.kept_words USING fts5vocab ('main', 'note_words', 'instance')");
        String different = "SELECT doc FROM (SELECT * FROM temp.anew_words EXCEPT SELECT * FROM temp.kept_words) UNION "
            + "SELECT doc FROM (SELECT * FROM temp.kept_words EXCEPT SELECT * FROM temp.anew_words) ORDER BY doc";
        try (ResultSet rows = statement.executeQuery(different)) {
            while (rows.next()) {
                add(findings, "note %d is not found by its words".formatted(rows.getLong(1)));
            }
        }
    }

    private static BookCheck derived(BookView view, List<String> findings) {
        try {
            return compared(view, findings);
        } catch (RuntimeException unreadable) {
            add(findings, "cannot be read on: " + BookTrouble.said(unreadable));
            return new BookCheck(0, 0, 0, findings);
        }
    }

    private static BookCheck compared(BookView view, List<String> findings) {
        Map<Long, String> kept = new HashMap<>();
        view.handle().createQuery("SELECT thing_id, kind, standing, owner, derived FROM state").map((row, context) ->
            Map.entry(row.getLong("thing_id"), line(row.getString("kind"), row.getString("standing"), row.getString("owner"),
                row.getString("derived")))).forEach(one -> kept.put(one.getKey(), one.getValue()));
        int things = 0;
        long events = 0;
        long readings = 0;
        for (ThingKind kind : ThingKind.values()) {
            for (Thing thing : view.things(kind)) {
                Optional<String> stands = Optional.ofNullable(kept.remove(thing.id()));
                things++;
                try {
                    List<KeptEvent> befell = view.events(thing);
                    events += befell.size();
                    readings += befell.stream().mapToLong(event -> event.readings().size()).sum();
                    compare(thing, stands, Fold.of(kind, befell), findings);
                } catch (RuntimeException unreadable) {
                    add(findings, "%s cannot be worked out from its events: %s".formatted(thing.name(),
                        BookTrouble.said(unreadable)));
                }
            }
        }
        kept.forEach((id, line) -> add(findings, "a state of thing %d, which is not there: %s".formatted(id, line)));
        folded(view, findings);
        return new BookCheck(things, events, readings, findings);
    }

    private static void compare(Thing thing, Optional<String> stands, State state, List<String> findings) {
        String worked = line(thing.kind().word(), state.standing().word(), States.owner(thing, state), StateJson.write(state));
        if (!stands.equals(Optional.of(worked))) {
            add(findings, "%s stands as %s, and its events say %s".formatted(thing.name(), stands.orElse("nothing at all"),
                worked));
        }
    }

    private static void folded(BookView view, List<String> findings) {
        view.handle().createQuery("SELECT " + Rows.THING + ", folded FROM thing").map((row, context) ->
                Map.entry(Rows.thing(row, 1), row.getString("folded"))).stream()
            .filter(one -> !Folded.of(one.getKey().tag()).equals(one.getValue()))
            .forEach(one -> add(findings, "%s is looked up as \"%s\", and its tag says \"%s\"".formatted(one.getKey().name(),
                one.getValue(), Folded.of(one.getKey().tag()))));
    }

    private static String line(String kind, String standing, String owner, String derived) {
        return "%s, %s, %s, %s".formatted(kind, standing, owner == null ? "nobody's" : owner, derived);
    }
}
