package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Texts of every kind come back as they were typed, and none of them is taken for something else. */
class TypedTextTest {

    @TempDir
    private Path folder;
    private Book book;
    private Thing head;

    @BeforeEach
    void aHead() throws BookProblem {
        book = Books.in(folder);
        head = book.write(Books.JO, "a head", entry -> entry.add(ThingKind.HEAD, "H-1", NewEvent.of(EventKind.RECEIVED)));
    }

    private void add(NewEvent event) throws BookProblem {
        book.write(Books.JO, "an event", entry -> {
            entry.add(head, event);
            return null;
        });
    }

    @Test
    void everyTextOfAnEventComesBackAsItWas() throws BookProblem {
        book.write(Books.JO, "events", entry -> {
            for (String text : HostileTexts.TEXTS) {
                Optional<String> some = Optional.of(text);
                entry.add(head, new NewEvent(EventKind.MEASURED, Optional.empty(), Optional.empty(), Map.of("fact", text, text,
                    "fact"), some, List.of(new NewReading(text, OptionalDouble.of(1), OptionalDouble.empty(), text, Map.of(text,
                    text), some, some, Optional.empty(), some, some, OptionalLong.empty())), Optional.of(new SheetOrigin(text,
                    Map.of(text, text)))));
            }
            return null;
        });
        List<KeptEvent> events = book.read(view -> view.events(head));
        State state = book.read(view -> view.state(head));
        for (int at = 0; at < HostileTexts.TEXTS.size(); at++) {
            String text = HostileTexts.TEXTS.get(at);
            KeptEvent kept = events.get(at + 1);
            Optional<String> stripped = Optional.of(text.strip()).filter(left -> !left.isEmpty());
            assertThat(kept.event().facts()).as(text).isEqualTo(Map.of("fact", text, text, "fact"));
            assertThat(kept.event().words()).isEqualTo(stripped);
            assertThat(kept.event().sheet()).contains(new SheetOrigin(text, Map.of(text, text)));
            NewReading read = kept.readings().get(0).read();
            assertThat(List.of(read.quantity(), read.unit(), read.condition())).isEqualTo(List.of(text, text, Map.of(text, text)));
            assertThat(List.of(read.gauge(), read.station(), read.by(), read.note())).allMatch(stripped::equals);
            assertThat(state.fact(text)).contains("fact");
            assertThat(state.readings()).extracting(CurrentReading::read).contains(read);
        }
        assertThat(BookCheck.all(book).findings()).isEmpty();
    }

    /** Names are kept as typed, less control characters; a name of nothing else is none. */
    @Test
    void everyTagIsKeptAsTypedAndFoundByIt() throws BookProblem {
        for (String text : HostileTexts.TEXTS) {
            String line = text.replaceAll("[\\x00-\\x1F\\x7F]+", " ").strip();
            if (line.isEmpty()) {
                assertThatThrownBy(() -> player(text)).isInstanceOf(BookProblem.class)
                    .hasMessage("\"\" cannot be the name of a player; expected 1 to 80 characters on one line");
                continue;
            }
            Thing player = player(text);
            assertThat(player.tag()).isEqualTo(line);
            Optional<Thing> found = book.read(view -> view.thing(ThingKind.PLAYER, line));
            assertThat(found).as(text).contains(player);
            assertThatThrownBy(() -> player(text)).isInstanceOf(BookProblem.class)
                .hasMessage("player %s is in the book already", line);
        }
        assertThat(BookCheck.all(book).findings()).isEmpty();
    }

    private Thing player(String tag) throws BookProblem {
        return book.write(Books.JO, "a player", entry -> entry.add(ThingKind.PLAYER, tag, NewEvent.of(EventKind.RECEIVED)));
    }

    @Test
    void aTagOfTooManyCharactersIsRefused() {
        assertThatThrownBy(() -> player("x".repeat(81))).isInstanceOf(BookProblem.class)
            .hasMessage("\"%s…\" cannot be the name of a player; expected 1 to 80 characters on one line", "x".repeat(60));
    }

    /** Half of a pair of surrogates would come back as a question mark, and two such tags as the same. */
    @Test
    void halfACharacterIsReplacedBeforeItIsKept() throws BookProblem {
        Thing player = player("half \uD83C");
        assertThat(player.tag()).isEqualTo("half \uFFFD");
        assertThat(Books.things(book, ThingKind.PLAYER)).containsExactly(player);
        assertThatThrownBy(() -> player("half \uDFCC")).hasMessage("player half \uFFFD is in the book already");
    }

    @Test
    void notesKeepTheirLinesAndAreFoundByTheirWordsWhateverTheyHold() throws BookProblem {
        for (String text : HostileTexts.TEXTS) {
            String lines = text.replaceAll("\\r\\n?", "\n").replaceAll("[\\x00-\\x09\\x0B-\\x1F\\x7F]", " ").strip();
            if (!lines.isEmpty()) {
                book.write(Books.JO, "a note", entry -> {
                    entry.note(head, text);
                    return null;
                });
                List<Note> notes = book.read(view -> view.notes(head));
                assertThat(notes.get(notes.size() - 1).text()).isEqualTo(lines);
            }
            book.read(view -> view.search(text, 100));
        }
        List<Note> all = book.read(view -> view.notes(head));
        for (String words : List.of("drop note table", "Brännström", "line two", "书", "مضر", "עץ", "e\u0301 and", "golf", "NEAR b")) {
            List<Note> found = book.read(view -> view.search(words, 100));
            assertThat(found).as(words).isSubsetOf(all);
        }
        List<Note> composed = book.read(view -> view.search("e\u0301", 100));
        assertThat(composed).as("an accent typed on its own").isNotEmpty();
        assertThat(BookCheck.all(book).findings()).isEmpty();
    }

    @Test
    void textsWithoutEndAreRefused() throws BookProblem {
        String tooLong = "y".repeat(1_000_001);
        String message = "head H-1: \"%s…\" has 1000001 characters; expected at most 1000000".formatted("y".repeat(60));
        for (NewEvent event : List.of(NewEvent.of(EventKind.MEASURED).saying(tooLong),
            NewEvent.of(EventKind.MEASURED).with(Map.of("fact", tooLong)),
            NewEvent.of(EventKind.MEASURED).from(new SheetOrigin("key", Map.of("cell", tooLong))),
            NewEvent.of(EventKind.MEASURED).reading(List.of(NewReading.of(tooLong, 1, "unit"))))) {
            assertThatThrownBy(() -> add(event)).isInstanceOf(BookProblem.class).hasMessage(message);
        }
        add(NewEvent.of(EventKind.MEASURED).with(Map.of("fact", "y".repeat(1_000_000))));
        assertThat(book.read(view -> view.state(head)).fact("fact").orElseThrow()).hasSize(1_000_000);
        assertThatThrownBy(() -> book.write(Books.JO, "a note", entry -> {
            entry.note(head, "y".repeat(20_001));
            return null;
        })).hasMessage("a note on head H-1 has 20001 characters; expected 1 to 20000");
    }

    @Test
    void namesWithoutEndAreRefused() throws BookProblem {
        Map<String, String> tooLong = Map.of("y".repeat(1001), "fact");
        String message = "head H-1: \"%s…\" has 1001 characters; expected at most 1000".formatted("y".repeat(60));
        NewReading read = Slips.loft(9);
        for (NewEvent event : List.of(NewEvent.of(EventKind.MEASURED).with(tooLong),
            NewEvent.of(EventKind.MEASURED).from(new SheetOrigin("key", tooLong)),
            NewEvent.of(EventKind.MEASURED).reading(List.of(new NewReading("loft_deg", read.value(), read.uncertainty(), "degrees",
                tooLong, read.gauge(), read.station(), read.measuredAt(), read.by(), read.note(), read.corrects()))))) {
            assertThatThrownBy(() -> add(event)).isInstanceOf(BookProblem.class).hasMessage(message);
        }
        add(NewEvent.of(EventKind.MEASURED).with(Map.of("y".repeat(1000), "fact")));
        assertThat(book.read(view -> view.state(head)).fact("y".repeat(1000))).contains("fact");
    }

    @Test
    void aReadingIsNotCorrectedTwiceAtOnceAndOnlyByOneOfItsOwn() throws BookProblem {
        add(NewEvent.of(EventKind.MEASURED).reading(List.of(Slips.loft(9))));
        long wrong = book.read(view -> view.state(head)).readings().get(0).id();
        assertThatThrownBy(() -> add(NewEvent.of(EventKind.CORRECTED).reading(List.of(Slips.loft(8).correcting(wrong, "a"),
            Slips.loft(7).correcting(wrong, "b"))))).isInstanceOf(BookProblem.class)
            .hasMessage("reading %d of head H-1 is corrected twice at once", wrong);
        assertThatThrownBy(() -> add(NewEvent.of(EventKind.CORRECTED).reading(List.of(
            Slips.frequency(250).correcting(wrong, "a"))))).isInstanceOf(BookProblem.class)
            .hasMessage("reading %d is no reading of the frequency_cpm of head H-1", wrong);
        assertThatThrownBy(() -> add(NewEvent.of(EventKind.CORRECTED).reading(List.of(
            Slips.loft(8).correcting(wrong + 1, "a"))))).hasMessage("reading %d is no reading of the loft_deg of head H-1", wrong + 1);
    }
}
