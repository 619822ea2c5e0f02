package benchtwin.book;

import static benchtwin.book.Books.JO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtwin.samples.TestClock;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookTest {

    @TempDir
    private Path folder;

    @Test
    void whatWasEnteredIsThereWhenTheBookIsOpenedAgain() throws BookProblem {
        Book book = Books.in(folder);
        book.write(JO, "receive a head", entry -> entry.add(ThingKind.HEAD, "H-014", NewEvent.of(EventKind.RECEIVED)
            .with(Map.of("model", "Sedge", "place", "drawer 1")).reading(List.of(NewReading.of("loft_deg", 9.3, "degrees")))));
        Book again = Book.open(book.file(), Clock.systemUTC());
        State state = again.read(view -> view.state(view.thing(ThingKind.HEAD, "h-014").orElseThrow()));
        assertThat(state.facts()).containsEntry("model", "Sedge").containsEntry("place", "drawer 1");
        assertThat(state.readings()).singleElement().satisfies(reading -> {
            assertThat(reading.read().value()).hasValue(9.3);
            assertThat(reading.since()).isEqualTo(Moment.at(Instant.parse("2026-05-01T08:01:00Z")));
        });
    }

    @Test
    void aRefusedActLeavesNothingBehind() throws BookProblem {
        Book book = Books.in(folder);
        assertThatThrownBy(() -> book.write(JO, "receive two", entry -> {
            entry.add(ThingKind.HEAD, "H-1", NewEvent.of(EventKind.RECEIVED));
            return entry.add(ThingKind.HEAD, "H-1", NewEvent.of(EventKind.RECEIVED));
        })).isInstanceOf(BookProblem.class).hasMessage("head H-1 is in the book already");
        List<Thing> heads = book.read(view -> view.things(ThingKind.HEAD));
        assertThat(heads).isEmpty();
    }

    @Test
    void aCorrectionTakesTheOldReadingsPlaceAndBothAreKept() throws BookProblem {
        Book book = Books.in(folder);
        Thing head = book.write(JO, "receive", entry -> entry.add(ThingKind.HEAD, "H-1", NewEvent.of(EventKind.RECEIVED)
            .at(Moment.on(LocalDate.of(2026, 4, 1))).reading(List.of(NewReading.of("lie_deg", 85.5, "degrees")))));
        long wrong = book.read(view -> view.state(head)).readings().get(0).id();
        book.write(JO, "correct", entry -> {
            entry.add(head, NewEvent.of(EventKind.CORRECTED).at(Moment.on(LocalDate.of(2026, 4, 1)))
                .reading(List.of(NewReading.of("lie_deg", 58.5, "degrees").correcting(wrong, "digits swapped"))));
            return null;
        });
        assertThat(book.read(view -> view.state(head)).readings()).singleElement()
            .satisfies(reading -> assertThat(reading.read().value()).hasValue(58.5));
        List<KeptEvent> events = book.read(view -> view.events(head));
        assertThat(events).hasSize(2);
        assertThatThrownBy(() -> book.write(JO, "correct it again", entry -> {
            entry.add(head, NewEvent.of(EventKind.CORRECTED).reading(List.of(
                NewReading.of("lie_deg", 58.6, "degrees").correcting(wrong, "again"))));
            return null;
        })).as("a reading is corrected once; after that its correction is").isInstanceOf(BookProblem.class)
            .hasMessageContaining("was corrected already");
    }

    @Test
    void aLookBackShowsWhatWasKnownThenAndWhatWasTrueThen() throws BookProblem {
        TestClock clock = TestClock.ticking(Instant.parse("2026-05-01T08:00:00Z"));
        Book book = Book.open(folder.resolve("back.book"), clock);
        Thing club = book.write(JO, "record", entry -> entry.add(ThingKind.CLUB, "C-1", NewEvent.of(EventKind.RECORDED)
            .at(Moment.on(LocalDate.of(2026, 5, 1))).reading(List.of(NewReading.of("loft_deg", 9, "degrees")))));
        clock.set(Instant.parse("2026-05-09T08:00:00Z"));
        book.write(JO, "what was read on the second, written down on the ninth", entry -> {
            entry.add(club, NewEvent.of(EventKind.RECORDED).at(Moment.on(LocalDate.of(2026, 5, 2)))
                .reading(List.of(NewReading.of("loft_deg", 9.4, "degrees"))));
            return null;
        });
        Optional<LocalDate> third = Optional.of(LocalDate.of(2026, 5, 3));
        assertThat(loft(book, club, new AsOf(third, third, ZoneOffset.UTC))).isEqualTo(9);
        assertThat(loft(book, club, new AsOf(Optional.empty(), third, ZoneOffset.UTC))).isEqualTo(9.4);
        Optional<State> before = book.read(view -> view.state(club, new AsOf(Optional.of(LocalDate.of(2026, 4, 30)),
            Optional.empty(), ZoneOffset.UTC)));
        assertThat(before).isEmpty();
    }

    private static double loft(Book book, Thing club, AsOf asOf) throws BookProblem {
        return book.read(view -> view.state(club, asOf)).orElseThrow().readings().get(0).read().value().orElseThrow();
    }

    @Test
    void notesAreFoundByTheStartOfAnyWord() throws BookProblem {
        Book book = Books.in(folder);
        book.write(JO, "note", entry -> {
            Thing player = entry.add(ThingKind.PLAYER, "Å. Brännström", NewEvent.of(EventKind.RECEIVED));
            entry.note(player, "likes the rib a touch left; \"DROP TABLE note\"; über soft");
            return null;
        });
        List<Note> found = book.read(view -> view.search("rib uber", 10));
        List<Note> hostile = book.read(view -> view.search("\" OR *", 10));
        List<Thing> named = book.read(view -> view.find("å. brännström"));
        assertThat(found).hasSize(1);
        assertThat(hostile).isEmpty();
        assertThat(named).hasSize(1);
    }
}
