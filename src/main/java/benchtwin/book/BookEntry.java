package benchtwin.book;

import java.time.Clock;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/**
 * One act at the book: all that is entered in it is confirmed together, or none of it. It sees what it has entered itself.
 */
public final class BookEntry extends BookView {

    private static final int LONGEST_TAG = 80;
    /** In an address these mean the place above, whatever is done to write them otherwise. Published: RFC 3986, 5.2.4; WHATWG URL. */
    private static final Pattern ONLY_DOTS = Pattern.compile("\\.+");
    private static final int LONGEST_NOTE = 20_000;
    /** A plan of a player's whole set, steps and all, is some ten thousand characters. */
    private static final int LONGEST_TEXT = 1_000_000;

    /** A reader of the file gives up on names of 50,000 characters. Published: Jackson, StreamReadConstraints. */
    private static final int LONGEST_NAME = 1000;

    private final long id;
    private final Moment at;
    private final Map<Long, Thing> touched = new LinkedHashMap<>();

    BookEntry(Handle handle, Author author, String what, Clock clock) {
        super(handle);
        at = later(Moment.at(clock.instant()));
        id = statements().number("INSERT INTO entry (entered_at, by_whom, what, program) VALUES (?, ?, ?, ?) RETURNING id",
            at.text(), author.by().map(TypedText::line).filter(by -> !by.isEmpty()).orElse(null), TypedText.line(what),
            author.program());
    }

    /** A clock that was put back must not put what is entered next before what it follows. */
    private Moment later(Moment now) {
        return statements().first("SELECT entered_at FROM entry ORDER BY id DESC LIMIT 1", row -> row.getString(1))
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
        if (name.isEmpty() || name.length() > LONGEST_TAG || ONLY_DOTS.matcher(name).matches()) {
            throw new BookProblem("\"%s\" cannot be the name of a %s; expected 1 to %d characters on one line%s".formatted(
                TypedText.shown(tag), kind.word(), LONGEST_TAG, name.startsWith(".") ? ", not dots alone" : ""));
        }
        Optional<Thing> taken = find(name).stream().filter(thing -> thing.kind() == kind && thing.tag().equals(name)).findFirst();
        if (taken.isPresent()) {
            throw new BookProblem("%s is in the book already".formatted(taken.get().name()));
        }
        long number = statements().number("INSERT INTO thing (kind, tag, folded, entry_id) VALUES (?, ?, ?, ?) RETURNING id",
            kind.word(), name, Folded.of(name), id);
        Thing thing = new Thing(number, kind, name);
        add(thing, received);
        return thing;
    }

    /**
     * Puts down an event.
     * @param thing what it befell
     * @param event what befell it
     * @throws BookProblem when a reading of it corrects one that is not this thing's, or was corrected already, or a text of
     *                     it is too long
     */
    public void add(Thing thing, NewEvent event) throws BookProblem {
        refuseLong(thing, event);
        Set<Long> corrected = new HashSet<>();
        for (NewReading reading : event.readings()) {
            if (reading.corrects().isPresent()) {
                refuseUnlessLast(thing, reading);
                if (!corrected.add(reading.corrects().getAsLong())) {
                    throw new BookProblem("reading %d of %s is corrected twice at once".formatted(
                        reading.corrects().getAsLong(), thing.name()));
                }
            }
        }
        long number = statements().number("INSERT INTO event (entry_id, thing_id, kind, happened_at, job_id, facts, words, "
            + "sheet_key, sheet) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id", id, thing.id(), event.kind().word(),
            event.happened().map(Moment::text).orElse(null), event.job().map(Thing::id).orElse(null),
            FactsJson.write(event.facts()), event.words().orElse(null), event.sheet().map(SheetOrigin::key).orElse(null),
            event.sheet().map(sheet -> FactsJson.write(sheet.cells())).orElse(null));
        for (NewReading reading : event.readings()) {
            add(number, reading);
        }
        touched.put(thing.id(), thing);
    }

    /** What was kept must come back, and a reader of the file gives up on texts without end. */
    private static void refuseLong(Thing thing, NewEvent event) throws BookProblem {
        Stream<String> names = Stream.concat(Stream.of(event.facts()), Stream.concat(event.readings().stream()
            .map(NewReading::condition), event.sheet().stream().map(SheetOrigin::cells))).flatMap(known -> known.keySet().stream());
        refuseLonger(thing, names, LONGEST_NAME);
        refuseLonger(thing, texts(event), LONGEST_TEXT);
    }

    private static Stream<String> texts(NewEvent event) {
        Stream<String> sheet = event.sheet().stream().flatMap(row -> Stream.concat(Stream.of(row.key()),
            row.cells().values().stream()));
        Stream<String> readings = event.readings().stream().flatMap(read -> Stream.concat(read.condition().values().stream(),
            Stream.of(Optional.of(read.quantity()), Optional.of(read.unit()), read.gauge(), read.station(), read.by(), read.note())
                .flatMap(Optional::stream)));
        return Stream.of(event.facts().values().stream(), event.words().stream(), sheet, readings).flatMap(texts -> texts);
    }

    private static void refuseLonger(Thing thing, Stream<String> texts, int most) throws BookProblem {
        Optional<String> longest = texts.max(Comparator.comparingInt(String::length));
        if (longest.isPresent() && longest.get().length() > most) {
            throw new BookProblem("%s: \"%s\" has %d characters; expected at most %d".formatted(thing.name(),
                TypedText.shown(longest.get()), longest.get().length(), most));
        }
    }

    private void refuseUnlessLast(Thing thing, NewReading reading) throws BookProblem {
        long wrong = reading.corrects().getAsLong();
        boolean itsOwn = statements().number("SELECT count(*) FROM reading JOIN event ON event.id = reading.event_id "
            + "WHERE reading.id = ? AND event.thing_id = ? AND reading.quantity = ?", wrong, thing.id(), reading.quantity()) == 1;
        if (!itsOwn) {
            throw new BookProblem("reading %d is no reading of the %s of %s".formatted(wrong, reading.quantity(), thing.name()));
        }
        Optional<Long> later = statements().first("SELECT id FROM reading WHERE corrects = ?", row -> row.getLong(1), wrong);
        if (later.isPresent()) {
            throw new BookProblem("reading %d of %s was corrected already, by reading %d; correct that one".formatted(wrong,
                thing.name(), later.get()));
        }
    }

    private void add(long event, NewReading reading) {
        statements().run("INSERT INTO reading (event_id, quantity, value, uncertainty, unit, condition, gauge, station, "
            + "measured_at, by_whom, note, corrects) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", event, reading.quantity(),
            reading.value().isPresent() ? (Double) reading.value().getAsDouble() : null,
            reading.uncertainty().isPresent() ? (Double) reading.uncertainty().getAsDouble() : null, reading.unit(),
            FactsJson.write(reading.condition()), reading.gauge().orElse(null), reading.station().orElse(null),
            reading.measuredAt().map(Moment::text).orElse(null), reading.by().orElse(null), reading.note().orElse(null),
            reading.corrects().isPresent() ? (Long) reading.corrects().getAsLong() : null);
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
        statements().run("INSERT INTO note (entry_id, thing_id, text) VALUES (?, ?, ?)", id, thing.id(), typed);
    }

    @Override
    void derive() {
        touched.values().forEach(thing -> States.put(statements(), thing, Fold.of(thing.kind(), events(thing))));
        touched.clear();
    }
}
