package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The same events, each on a day of its own, entered in any order, give the same state. */
class EntryOrderPropertyTest {

    private static final int EVENTS = 40;

    @TempDir
    private Path folder;

    @ParameterizedTest(name = "a {0}, seed 31 and its ordinal")
    @EnumSource(value = ThingKind.class, names = {"HEAD", "SHAFT", "WEIGHT", "CLUB", "JOB"})
    void theOrderOfEntryDoesNotMatter(ThingKind kind) throws BookProblem {
        Random random = new Random(31 + kind.ordinal());
        Book book = Books.in(folder);
        Thing job = book.write(Books.JO, "a job", entry -> entry.add(ThingKind.JOB, "900", NewEvent.of(EventKind.RECEIVED)));
        List<NewEvent> events = new ArrayList<>();
        for (int day = 0; day < EVENTS; day++) {
            NewEvent event = event(random, kind).at(Moment.on(LocalDate.of(2026, 1, 1).plusDays(day)));
            events.add(random.nextBoolean() ? event : event.of(job));
        }
        State expected = enter(book, kind, "0", events);
        for (int order = 1; order <= 5; order++) {
            Collections.shuffle(events, random);
            State state = enter(book, kind, Integer.toString(order), events);
            assertThat(withoutNumbers(state)).as("order %d", order).isEqualTo(withoutNumbers(expected));
        }
        assertThat(expected.facts()).isNotEmpty();
        assertThat(BookCheck.all(book).findings()).isEmpty();
    }

    private static NewEvent event(Random random, ThingKind kind) {
        List<EventKind> kinds = kind == ThingKind.JOB
            ? List.of(EventKind.PLANNED, EventKind.HANDED_OVER, EventKind.CALLED_OFF, EventKind.DESCRIBED)
            : List.of(EventKind.DESCRIBED, EventKind.MEASURED, EventKind.MOVED, EventKind.PROMISED, EventKind.RELEASED,
                EventKind.BUILT_IN, EventKind.PULLED, EventKind.BENT, EventKind.RETIRED, EventKind.RETURNED, EventKind.RECORDED);
        List<Map<String, String>> facts = List.of(Map.of("place", "drawer " + random.nextInt(5)), Map.of("head",
            "H-" + random.nextInt(3)), Map.of("grip", "G-" + random.nextInt(3), "place", ""), Map.of("setting", "s" + random.nextInt(3)),
            Map.of("bent_upright_deg", "0." + random.nextInt(9)), Map.of("club", "C-1", "whom", "Kim"), Map.of("whom", "Kim"));
        return NewEvent.of(kinds.get(random.nextInt(kinds.size()))).with(facts.get(random.nextInt(facts.size())))
            .reading(random.nextBoolean() ? List.of() : List.of(NewReading.of(random.nextBoolean() ? "loft_deg" : "frequency_cpm",
                random.nextInt(100), "unit")));
    }

    /** In entries of one, two or three events. */
    private static State enter(Book book, ThingKind kind, String tag, List<NewEvent> events) throws BookProblem {
        Thing thing = book.write(Books.JO, "first", entry -> entry.add(kind, tag, events.get(0)));
        for (int at = 1; at < events.size(); at += 3) {
            List<NewEvent> some = events.subList(at, Math.min(at + 3, events.size()));
            book.write(Books.JO, "more", entry -> {
                for (NewEvent event : some) {
                    entry.add(thing, event);
                }
                return null;
            });
        }
        return book.read(view -> view.state(thing));
    }

    private static State withoutNumbers(State state) {
        return new State(state.standing(), state.facts(), withoutNumbers(state.readings()), state.promises(), state.club(),
            state.accepted().map(was -> new Accepted(was.since(), was.facts(), withoutNumbers(was.readings()))));
    }

    private static List<CurrentReading> withoutNumbers(List<CurrentReading> readings) {
        return readings.stream().map(one -> new CurrentReading(0, 0, one.since(), one.read())).toList();
    }
}
