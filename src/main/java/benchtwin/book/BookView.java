package benchtwin.book;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** What the book says, all of it as of one moment. Good only inside {@link Book#read} or {@link Book#write}. */
public class BookView {

    private static final String EVENTS = "SELECT event.id event_id, event.kind event_kind, event.happened_at, event.facts, "
        + "event.words, event.sheet_key, event.sheet, job.id job_thing, job.tag job_tag, " + Rows.ENTRY + ", " + Rows.THING
        + " FROM event JOIN entry ON entry.id = event.entry_id JOIN thing ON thing.id = event.thing_id "
        + "LEFT JOIN thing job ON job.id = event.job_id ";
    private static final String NOTES = "SELECT note.id note_id, note.text, " + Rows.ENTRY + ", " + Rows.THING
        + " FROM note JOIN entry ON entry.id = note.entry_id JOIN thing ON thing.id = note.thing_id ";

    private final Handle handle;

    BookView(Handle handle) {
        this.handle = handle;
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
        return handle.createQuery("SELECT " + Rows.THING + " FROM thing WHERE folded = :folded")
            .bind("folded", Folded.of(tag)).map((row, context) -> Rows.thing(row)).stream()
            .sorted(Comparator.comparing(Thing::kind).thenComparing(Thing::tag)).toList();
    }

    /**
     * Every thing of a kind.
     * @param kind what
     * @return in order of entry
     */
    public final List<Thing> things(ThingKind kind) {
        return handle.createQuery("SELECT " + Rows.THING + " FROM thing WHERE kind = :kind ORDER BY id")
            .bind("kind", kind.word()).map((row, context) -> Rows.thing(row)).list();
    }

    /**
     * How a thing stands now.
     * @param thing one of this book
     * @return its state
     */
    public final State state(Thing thing) {
        derive();
        return handle.createQuery("SELECT " + Rows.THING + ", state.standing, state.derived FROM state "
                + "JOIN thing ON thing.id = state.thing_id WHERE thing.id = :id")
            .bind("id", thing.id()).map((row, context) -> Rows.state(row)).one().state();
    }

    /**
     * How every thing of a kind stands now.
     * @param kind what
     * @return in order of entry
     */
    public final List<StateOf> states(ThingKind kind) {
        derive();
        return handle.createQuery("SELECT " + Rows.THING + ", state.standing, state.derived FROM state "
                + "JOIN thing ON thing.id = state.thing_id WHERE state.kind = :kind ORDER BY thing.id")
            .bind("kind", kind.word()).map((row, context) -> Rows.state(row)).list();
    }

    /**
     * How the things of a player stand now.
     * @param kind  what: clubs or jobs
     * @param owner the player's tag
     * @return in order of entry
     */
    public final List<StateOf> statesOf(ThingKind kind, String owner) {
        derive();
        return handle.createQuery("SELECT " + Rows.THING + ", state.standing, state.derived FROM state JOIN thing "
                + "ON thing.id = state.thing_id WHERE state.owner = :owner AND state.kind = :kind ORDER BY thing.id")
            .bind("kind", kind.word()).bind("owner", owner).map((row, context) -> Rows.state(row)).list();
    }

    /**
     * How a thing stood at another time, or as it was known then.
     * @param thing one of this book
     * @param asOf  what is looked at
     * @return empty when nothing of it was known or had happened
     */
    public final Optional<State> state(Thing thing, AsOf asOf) {
        List<KeptEvent> seen = events(thing).stream().filter(asOf::shows).toList();
        return seen.isEmpty() ? Optional.empty() : Optional.of(Fold.of(thing.kind(), seen));
    }

    /**
     * What befell a thing, corrections among them.
     * @param thing one of this book
     * @return oldest first by the time they count from
     */
    public final List<KeptEvent> events(Thing thing) {
        return events("WHERE event.thing_id = :id", thing.id()).stream()
            .sorted(Comparator.comparing(KeptEvent::since).thenComparing(KeptEvent::id)).toList();
    }

    /**
     * What was done for a job to other things.
     * @param job a job of this book
     * @return in order of entry
     */
    public final List<KeptEvent> eventsFor(Thing job) {
        return events("WHERE event.job_id = :id", job.id());
    }

    private List<KeptEvent> events(String where, long id) {
        Map<Long, List<KeptReading>> readings = new HashMap<>();
        handle.createQuery("SELECT reading.* FROM reading JOIN event ON event.id = reading.event_id " + where
                + " ORDER BY reading.id").bind("id", id)
            .map((row, context) -> Map.entry(row.getLong("event_id"), new KeptReading(row.getLong("id"), Rows.reading(row))))
            .forEach(one -> readings.computeIfAbsent(one.getKey(), event -> new ArrayList<>()).add(one.getValue()));
        return handle.createQuery(EVENTS + where + " ORDER BY event.id").bind("id", id).map((row, context) -> {
            long event = row.getLong("event_id");
            long job = row.getLong("job_thing");
            Optional<Thing> forJob = row.wasNull() ? Optional.empty()
                : Optional.of(new Thing(job, ThingKind.JOB, row.getString("job_tag")));
            Optional<SheetOrigin> sheet = Rows.text(row, "sheet").isEmpty() ? Optional.empty()
                : Optional.of(new SheetOrigin(row.getString("sheet_key"), FactsJson.read(row.getString("sheet"))));
            return new KeptEvent(event, Rows.entry(row), Rows.thing(row), new NewEvent(
                Rows.eventKind(row.getString("event_kind")), Rows.text(row, "happened_at").map(Moment::new), forJob,
                FactsJson.read(row.getString("facts")), Rows.text(row, "words"), List.of(), sheet),
                readings.getOrDefault(event, List.of()));
        }).list();
    }

    /**
     * The readings of everything that was ever read on one gauge, those on other gauges among them.
     * @param gauge the gauge's name
     * @return thing by thing, each oldest first
     */
    public final List<GaugedReading> readingsAround(String gauge) {
        List<Thing> read = handle.createQuery("SELECT DISTINCT " + Rows.THING + " FROM reading JOIN event ON event.id = reading.event_id "
                + "JOIN thing ON thing.id = event.thing_id WHERE reading.gauge = :gauge ORDER BY thing.id").bind("gauge", gauge)
            .map((row, context) -> Rows.thing(row)).list();
        return read.stream().flatMap(thing -> GaugedReadings.of(thing, events(thing)).stream()).toList();
    }

    /**
     * The rows last imported of each thing of a kind.
     * @param kind what
     * @return by tag and by the row's key
     */
    public final Map<String, Map<String, SheetOrigin>> sheets(ThingKind kind) {
        Map<String, Map<String, SheetOrigin>> sheets = new HashMap<>();
        handle.createQuery("SELECT thing.tag, event.sheet_key, event.sheet FROM event JOIN thing ON thing.id = event.thing_id "
                + "WHERE thing.kind = :kind AND event.sheet IS NOT NULL ORDER BY event.id").bind("kind", kind.word())
            .map((row, context) -> Map.entry(row.getString("tag"),
                new SheetOrigin(row.getString("sheet_key"), FactsJson.read(row.getString("sheet")))))
            .forEach(one -> sheets.computeIfAbsent(one.getKey(), tag -> new HashMap<>())
                .put(one.getValue().key(), one.getValue()));
        return sheets;
    }

    /**
     * Notes on a thing.
     * @param thing one of this book
     * @return oldest first
     */
    public final List<Note> notes(Thing thing) {
        return handle.createQuery(NOTES + "WHERE note.thing_id = :id ORDER BY note.id").bind("id", thing.id())
            .map((row, context) -> new Note(row.getLong("note_id"), Rows.entry(row), Rows.thing(row), row.getString("text")))
            .list();
    }

    /**
     * Notes that hold all of these words, each as it is or as the start of a longer one; accents and capitals do not count.
     * @param words as typed
     * @param most  how many at most
     * @return newest first
     */
    public final List<Note> search(String words, int most) {
        String asked = Arrays.stream(words.replace('"', ' ').split("[^\\p{L}\\p{N}]+"))
            .filter(Predicate.not(String::isBlank)).map(word -> "\"%s\"*".formatted(word)).collect(Collectors.joining(" "));
        return asked.isEmpty() ? List.of() : handle.createQuery(NOTES
                + "WHERE note.id IN (SELECT rowid FROM note_words WHERE note_words MATCH :asked) ORDER BY note.id DESC LIMIT :most")
            .bind("asked", asked).bind("most", most)
            .map((row, context) -> new Note(row.getLong("note_id"), Rows.entry(row), Rows.thing(row), row.getString("text")))
            .list();
    }
}
