package benchtwin.book;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * One act at the book: all that is entered in it is confirmed together, or none of it. It sees what it has entered itself.
 */
public final class BookEntry extends BookView {

    private static final int LONGEST_TAG = 80;
    private static final int LONGEST_NOTE = 20_000;

    private final long id;
    private final Moment at;
    private final Map<Long, Thing> touched = new LinkedHashMap<>();

    BookEntry(Handle handle, Author author, String what, Clock clock) {
        super(handle);
        at = later(Moment.at(clock.instant()), handle);
        id = handle.createUpdate("INSERT INTO entry (entered_at, by_whom, what, program) VALUES (:at, :by, :what, :program)")
            .bind("at", at.text()).bind("by", author.by().map(TypedText::line).filter(by -> !by.isEmpty()).orElse(null)).bind("what", TypedText.line(what))
            .bind("program", author.program()).executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
    }

    /** A clock that was put back must not put what is entered next before what it follows. */
    private static Moment later(Moment now, Handle handle) {
        return handle.createQuery("SELECT entered_at FROM entry ORDER BY id DESC LIMIT 1").mapTo(String.class).findOne()
            .map(Moment::new).filter(last -> last.compareTo(now) > 0).orElse(now);
    }

    /**
     * When it is entered.
     * @return an instant, the same for all of it
     */
    public Moment at() {
        return at;
    }

    /**
     * Takes a thing into the record.
     * @param kind     what it is
     * @param tag      the name written on it
     * @param received what is known of it
     * @return the thing
     * @throws BookProblem when the tag is taken, blank, too long or not on one line
     */
    public Thing add(ThingKind kind, String tag, NewEvent received) throws BookProblem {
        String name = TypedText.line(tag);
        if (name.isEmpty() || name.length() > LONGEST_TAG) {
            throw new BookProblem("\"%s\" cannot be the name of a %s; expected 1 to %d characters on one line".formatted(
                TypedText.shown(tag), kind.word(), LONGEST_TAG));
        }
        Optional<Thing> taken = find(name).stream().filter(thing -> thing.kind() == kind && thing.tag().equals(name)).findFirst();
        if (taken.isPresent()) {
            throw new BookProblem("%s is in the book already".formatted(taken.get().name()));
        }
        long number = handle().createUpdate("INSERT INTO thing (kind, tag, folded, entry_id) VALUES (:kind, :tag, :folded, :entry)")
            .bind("kind", kind.word()).bind("tag", name).bind("folded", Folded.of(name)).bind("entry", id)
            .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
        Thing thing = new Thing(number, kind, name);
        add(thing, received);
        return thing;
    }

    /**
     * Puts down an event.
     * @param thing what it befell
     * @param event what befell it
     * @throws BookProblem when a reading of it corrects one that is not this thing's, or was corrected already
     */
    public void add(Thing thing, NewEvent event) throws BookProblem {
        for (NewReading reading : event.readings()) {
            if (reading.corrects().isPresent()) {
                refuseUnlessLast(thing, reading);
            }
        }
        long number = handle().createUpdate("INSERT INTO event (entry_id, thing_id, kind, happened_at, job_id, facts, words, "
                + "sheet_key, sheet) VALUES (:entry, :thing, :kind, :at, :job, :facts, :words, :key, :sheet)")
            .bind("entry", id).bind("thing", thing.id()).bind("kind", event.kind().word())
            .bind("at", event.happened().map(Moment::text).orElse(null)).bind("job", event.job().map(Thing::id).orElse(null))
            .bind("facts", FactsJson.write(event.facts())).bind("words", event.words().orElse(null))
            .bind("key", event.sheet().map(SheetOrigin::key).orElse(null))
            .bind("sheet", event.sheet().map(sheet -> FactsJson.write(sheet.cells())).orElse(null))
            .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
        for (NewReading reading : event.readings()) {
            add(number, reading);
        }
        touched.put(thing.id(), thing);
    }

    private void refuseUnlessLast(Thing thing, NewReading reading) throws BookProblem {
        long wrong = reading.corrects().getAsLong();
        boolean itsOwn = handle().createQuery("SELECT count(*) FROM reading JOIN event ON event.id = reading.event_id "
                + "WHERE reading.id = :wrong AND event.thing_id = :thing AND reading.quantity = :quantity")
            .bind("wrong", wrong).bind("thing", thing.id()).bind("quantity", reading.quantity()).mapTo(Integer.class).one() == 1;
        if (!itsOwn) {
            throw new BookProblem("reading %d is no reading of the %s of %s".formatted(wrong, reading.quantity(), thing.name()));
        }
        Optional<Long> later = handle().createQuery("SELECT id FROM reading WHERE corrects = :wrong").bind("wrong", wrong)
            .mapTo(Long.class).findOne();
        if (later.isPresent()) {
            throw new BookProblem("reading %d of %s was corrected already, by reading %d; correct that one".formatted(wrong,
                thing.name(), later.get()));
        }
    }

    private void add(long event, NewReading reading) {
        handle().createUpdate("INSERT INTO reading (event_id, quantity, value, uncertainty, unit, condition, "
                + "gauge, station, measured_at, by_whom, note, corrects) VALUES (:event, :quantity, :value, :uncertainty, :unit, "
                + ":condition, :gauge, :station, :at, :by, :note, :corrects)")
            .bind("event", event).bind("quantity", reading.quantity()).bind("unit", reading.unit())
            .bind("value", reading.value().isPresent() ? (Double) reading.value().getAsDouble() : null)
            .bind("uncertainty", reading.uncertainty().isPresent() ? (Double) reading.uncertainty().getAsDouble() : null)
            .bind("condition", FactsJson.write(reading.condition())).bind("gauge", reading.gauge().orElse(null))
            .bind("station", reading.station().orElse(null)).bind("at", reading.measuredAt().map(Moment::text).orElse(null))
            .bind("by", reading.by().orElse(null)).bind("note", reading.note().orElse(null))
            .bind("corrects", reading.corrects().isPresent() ? (Long) reading.corrects().getAsLong() : null).execute();
    }

    /**
     * Puts down a note.
     * @param thing what it is about
     * @param text  as typed
     * @throws BookProblem when it is blank or too long
     */
    public void note(Thing thing, String text) throws BookProblem {
        String typed = TypedText.paragraphs(text);
        if (typed.isEmpty() || typed.length() > LONGEST_NOTE) {
            throw new BookProblem("a note on %s has %d characters; expected 1 to %d".formatted(thing.name(), typed.length(),
                LONGEST_NOTE));
        }
        handle().createUpdate("INSERT INTO note (entry_id, thing_id, text) VALUES (:entry, :thing, :text)")
            .bind("entry", id).bind("thing", thing.id()).bind("text", typed).execute();
    }

    @Override
    void derive() {
        touched.values().forEach(thing -> States.put(handle(), thing, Fold.of(thing.kind(), events(thing))));
        touched.clear();
    }
}
