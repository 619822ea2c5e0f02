package benchtwin.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** What the book says, all of it as of one moment. Good only inside {@link Book#read} or {@link Book#write}. */
public class BookView {

    private static final String EVENTS = "SELECT event.id, event.kind, event.happened_at, event.facts, event.words, "
        + "event.sheet_key, event.sheet, job.id, job.tag, " + Rows.ENTRY + ", " + Rows.THING
        + " FROM event JOIN entry ON entry.id = event.entry_id JOIN thing ON thing.id = event.thing_id "
        + "LEFT JOIN thing job ON job.id = event.job_id ";
    private static final int ENTRY_OF_EVENT = 10;
    private static final int THING_OF_EVENT = ENTRY_OF_EVENT + Rows.ENTRY_COLUMNS;
    private static final String READINGS = "SELECT event.id, reading.id, " + Rows.READING
        + " FROM event JOIN reading ON reading.event_id = event.id ";
    private static final String STATES = "SELECT " + Rows.THING + ", state.standing, state.derived FROM state "
        + "JOIN thing ON thing.id = state.thing_id ";
    private static final String THINGS = "SELECT " + Rows.THING + " FROM thing ";
    private static final String NOTES = "SELECT note.id, note.text, " + Rows.ENTRY + ", " + Rows.THING
        + " FROM note JOIN entry ON entry.id = note.entry_id JOIN thing ON thing.id = note.thing_id ";

    private final Handle handle;
    private final Statements statements;

    BookView(Handle handle) {
        this.handle = handle;
        this.statements = new Statements(handle);
    }

    final Statements statements() {
        return statements;
    }

    /** Ends what was read. */
    final void close() {
        statements.close();
    }

    final Handle handle() {
        return handle;
    }

    /** Brings what is derived up to what was entered in the same act. */
    void derive() {
        // a view enters nothing
    }

    /**
     * A thing by its tag, as written on it.
     * @param kind what it is
     * @param tag  its tag; capitals, accents and widths need not agree where only one thing can be meant
     * @return empty when there is none, or more than one that nearly agrees
     */
    public final Optional<Thing> thing(ThingKind kind, String tag) {
        List<Thing> near = find(tag).stream().filter(thing -> thing.kind() == kind).toList();
        return near.stream().filter(thing -> thing.tag().equals(tag)).findFirst()
            .or(() -> near.size() == 1 ? Optional.of(near.get(0)) : Optional.empty());
    }

    /**
     * Everything a tag can stand for.
     * @param tag as typed or scanned
     * @return in order of kind
     */
    public final List<Thing> find(String tag) {
        List<Thing> found = statements.list(THINGS + "WHERE folded = ?", row -> Rows.thing(row, 1), Folded.of(tag));
        found.sort(Comparator.comparing(Thing::kind).thenComparing(Thing::tag));
        return found;
    }

    /**
     * Every thing of a kind.
     * @param kind what
     * @return in order of entry
     */
    public final List<Thing> things(ThingKind kind) {
        return statements.list(THINGS + "WHERE kind = ? ORDER BY id", row -> Rows.thing(row, 1), kind.word());
    }

    /**
     * How a thing stands now.
     * @param thing one of this book
     * @return its state
     */
    public final State state(Thing thing) {
        return text(thing).state();
    }

    /**
     * The same, read only as far as it is asked for.
     * @param thing one of this book
     * @return its state
     */
    public final StateText text(Thing thing) {
        derive();
        return statements.first(STATES + "WHERE thing.id = ?", Rows::state, thing.id()).orElseThrow();
    }

    /**
     * How every thing of a kind stands now.
     * @param kind what
     * @return in order of entry
     */
    public final List<StateOf> states(ThingKind kind) {
        List<StateOf> states = new ArrayList<>();
        eachState(kind, text -> states.add(text.whole()));
        return states;
    }

    /**
     * The same, one after the other and read only as far as it is asked for.
     * @param kind what
     * @param with takes each, in order of entry
     */
    public final void eachState(ThingKind kind, Consumer<StateText> with) {
        derive();
        statements.each(STATES + "WHERE state.kind = ? ORDER BY state.thing_id", row -> with.accept(Rows.state(row)), kind.word());
    }

    /**
     * How the things of a player stand now.
     * @param kind  what: clubs or jobs
     * @param owner the player's tag
     * @return in order of entry
     */
    public final List<StateOf> statesOf(ThingKind kind, String owner) {
        derive();
        return statements.list(STATES + "WHERE state.owner = ? AND state.kind = ? ORDER BY state.thing_id",
            row -> Rows.state(row).whole(), owner, kind.word());
    }

    /**
     * How many things each player has.
     * @param kind what: clubs or jobs
     * @return by the player's tag, those who have any
     */
    public final Map<String, Integer> countByOwner(ThingKind kind) {
        derive();
        Map<String, Integer> counts = new HashMap<>();
        statements.each("SELECT owner, count(*) FROM state WHERE kind = ? AND owner IS NOT NULL GROUP BY owner",
            row -> counts.put(row.getString(1), row.getInt(2)), kind.word());
        return counts;
    }

    /**
     * How a thing stood at another time, or as it was known then.
     * @param thing one of this book
     * @param asOf  what is looked at
     * @return empty when nothing of it was known or had happened
     */
    public final Optional<State> state(Thing thing, AsOf asOf) {
        List<KeptEvent> known = events(thing).stream().filter(asOf::knows).toList();
        List<KeptEvent> seen = known.stream().filter(asOf::saw).toList();
        boolean any = seen.stream().anyMatch(event -> event.event().kind() != EventKind.CORRECTED);
        return any ? Optional.of(Fold.of(thing.kind(), seen, known)) : Optional.empty();
    }

    /**
     * What befell a thing, corrections among them.
     * @param thing one of this book
     * @return oldest first by the time they count from
     */
    public final List<KeptEvent> events(Thing thing) {
        List<KeptEvent> events = events("WHERE event.thing_id = ?", thing.id());
        events.sort(Comparator.comparing(KeptEvent::since).thenComparing(KeptEvent::id));
        return events;
    }

    /**
     * What was done for a job to other things.
     * @param job a job of this book
     * @return in order of entry
     */
    public final List<KeptEvent> eventsFor(Thing job) {
        return events("WHERE event.job_id = ?", job.id());
    }

    /**
     * The number of the last entry: while it stays the same, so does everything else.
     * @return 0 for a book nothing was entered in
     */
    public final long lastEntry() {
        return statements.first("SELECT coalesce(max(id), 0) FROM entry", row -> row.getLong(1)).orElseThrow();
    }

    /**
     * The number of the last event: whatever is entered later befalls a thing in an event with a greater one.
     * @return 0 for a book in which nothing befell anything
     */
    public final long lastEvent() {
        return statements.first("SELECT coalesce(max(id), 0) FROM event", row -> row.getLong(1)).orElseThrow();
    }

    /**
     * What something befell after an event: only these things stand otherwise than they did then.
     * @param event the event's number, from {@link #lastEvent}
     * @return each once
     */
    public final List<Thing> touchedSince(long event) {
        return statements.list(THINGS + "WHERE id IN (SELECT thing_id FROM event WHERE id > ?) ORDER BY id", row -> Rows.thing(row, 1), event);
    }

    /**
     * Every event of one kind.
     * @param kind what befell
     * @return in order of entry
     */
    public final List<KeptEvent> events(EventKind kind) {
        return events("WHERE event.kind = ?", kind.word());
    }

    /**
     * What befell a thing and was entered after an entry.
     * @param thing one of this book
     * @param entry the number of the entry
     * @return in order of entry
     */
    public final List<KeptEvent> eventsSince(Thing thing, long entry) {
        return events("WHERE event.thing_id = ? AND event.entry_id > ?", thing.id(), entry);
    }

    private List<KeptEvent> events(String where, Object... ids) {
        Map<Long, List<KeptReading>> readings = new HashMap<>();
        statements.each(READINGS + where + " ORDER BY event.id, reading.id", row -> readings.computeIfAbsent(row.getLong(1),
            event -> new ArrayList<>()).add(new KeptReading(row.getLong(2), Rows.reading(row, 3))), ids);
        return statements.list(EVENTS + where + " ORDER BY event.id", row -> event(row, readings), ids);
    }

    private static KeptEvent event(ResultSet row, Map<Long, List<KeptReading>> readings) throws SQLException {
        long event = row.getLong(1);
        String sheet = row.getString(7);
        long job = row.getLong(8);
        Optional<Thing> forJob = row.wasNull() ? Optional.empty()
            : Optional.of(new Thing(job, ThingKind.JOB, row.getString(9)));
        Optional<SheetOrigin> origin = sheet == null ? Optional.empty()
            : Optional.of(new SheetOrigin(row.getString(6), FactsJson.read(sheet)));
        return new KeptEvent(event, Rows.entry(row, ENTRY_OF_EVENT), Rows.thing(row, THING_OF_EVENT), new NewEvent(
            Rows.eventKind(row.getString(2)), Rows.text(row, 3).map(Moment::new), forJob, FactsJson.read(row.getString(4)),
            Rows.text(row, 5), List.of(), origin), readings.getOrDefault(event, List.of()));
    }

    /**
     * The readings of everything that was ever read on one gauge, those on other gauges among them.
     * @param gauge the gauge's name
     * @return thing by thing, each oldest first
     */
    public final List<GaugedReading> readingsAround(String gauge) {
        List<Thing> read = statements.list("SELECT DISTINCT " + Rows.THING + " FROM reading JOIN event ON event.id = reading.event_id "
            + "JOIN thing ON thing.id = event.thing_id WHERE reading.gauge = ? ORDER BY thing.id", row -> Rows.thing(row, 1), gauge);
        return read.stream().flatMap(thing -> GaugedReadings.of(thing, events(thing)).stream()).toList();
    }

    /**
     * The rows last imported of each thing of a kind.
     * @param kind what
     * @return by tag and by the row's key
     */
    public final Map<String, Map<String, SheetOrigin>> sheets(ThingKind kind) {
        Map<String, Map<String, SheetOrigin>> sheets = new HashMap<>();
        statements.each("SELECT thing.tag, event.sheet_key, event.sheet FROM thing JOIN event ON event.thing_id = thing.id "
            + "WHERE thing.kind = ? AND event.sheet IS NOT NULL ORDER BY thing.tag, event.id", row ->
            sheets.computeIfAbsent(row.getString(1), tag -> new HashMap<>()).put(row.getString(2),
                new SheetOrigin(row.getString(2), FactsJson.read(row.getString(3)))), kind.word());
        return sheets;
    }

    /**
     * Notes on a thing.
     * @param thing one of this book
     * @return oldest first
     */
    public final List<Note> notes(Thing thing) {
        return statements.list(NOTES + "WHERE note.thing_id = ? ORDER BY note.id", BookView::note, thing.id());
    }

    private static Note note(ResultSet row) throws SQLException {
        return new Note(row.getLong(1), Rows.entry(row, 3), Rows.thing(row, 3 + Rows.ENTRY_COLUMNS), row.getString(2));
    }

    /**
     * Notes that hold all of these words, each as it is or as the start of a longer one; accents and capitals do not count.
     * @param words as typed
     * @param most  how many at most
     * @return newest first
     */
    public final List<Note> search(String words, int most) {
        String asked = Arrays.stream(words.replace('"', ' ').split("[^\\p{L}\\p{N}\\p{M}]+"))
            .filter(Predicate.not(String::isBlank)).map(word -> "\"%s\"*".formatted(word)).collect(Collectors.joining(" "));
        return asked.isEmpty() ? List.of() : statements.list(NOTES
            + "WHERE note.id IN (SELECT rowid FROM note_words WHERE note_words MATCH ?) ORDER BY note.id DESC LIMIT ?",
            BookView::note, asked, most);
    }
}
