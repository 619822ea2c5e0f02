package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A book that is taken elsewhere whole is the same book there. */
class BookTablePropertyTest {

    private static final int ACTS = 60;

    @TempDir
    private Path folder;

    private Book random(long seed, int acts) throws BookProblem {
        RandomBook acting = new RandomBook(seed);
        Book book = Book.open(Books.in(folder).file(), acting.clock());
        acting.act(book, acts);
        assertThat(acting.done()).isGreaterThan(acts / 4);
        assertThat(acting.refused()).as("acts that were refused: else the book is too tame").isPositive();
        return book;
    }

    private static List<StateOf> states(Book book) throws BookProblem {
        return book.read(view -> {
            List<StateOf> states = new ArrayList<>();
            for (ThingKind kind : ThingKind.values()) {
                states.addAll(view.states(kind));
            }
            return states;
        });
    }

    private static List<KeptEvent> events(Book book) throws BookProblem {
        return book.read(view -> {
            List<KeptEvent> events = new ArrayList<>();
            for (ThingKind kind : ThingKind.values()) {
                view.things(kind).forEach(thing -> events.addAll(view.events(thing)));
            }
            return events;
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatIsTakenOutAndFilledInIsTheSameBook(long seed) throws BookProblem {
        Book book = random(seed, ACTS);
        assertThat(BookCheck.all(book).findings()).isEmpty();
        List<BookTable> tables = book.read(BookTable::all);
        Book filled = Book.open(folder.resolve("filled.book"), Clock.systemUTC());
        BookTable.fill(filled, tables);
        List<BookTable> again = filled.read(BookTable::all);
        for (int at = 0; at < tables.size(); at++) {
            assertThat(again.get(at).rows()).as(tables.get(at).name()).isEqualTo(tables.get(at).rows());
        }
        assertThat(states(filled)).isEqualTo(states(book));
        assertThat(events(filled)).isEqualTo(events(book));
        assertThat(BookCheck.all(filled)).isEqualTo(BookCheck.all(book));
        for (String words : List.of("line", "drop table", "書書", "e", "right left")) {
            List<Note> found = filled.read(view -> view.search(words, 1000));
            assertThat(found).isEqualTo(book.read(view -> view.search(words, 1000)));
        }
    }

    private Book refused(List<BookTable> tables) throws BookProblem {
        return refused(tables, null);
    }

    private Book refused(List<BookTable> tables, String message) throws BookProblem {
        Book empty = Book.open(folder.resolve("empty.book"), Clock.systemUTC());
        var thrown = assertThatThrownBy(() -> BookTable.fill(empty, tables)).isInstanceOf(BookProblem.class);
        if (message != null) {
            thrown.hasMessage(message);
        }
        thrown.message().hasLineCount(1);
        assertThat(BookCheck.all(empty)).isEqualTo(new BookCheck(0, 0, 0, List.of()));
        List<BookTable> left = empty.read(BookTable::all);
        assertThat(left).allMatch(table -> table.rows().isEmpty());
        return empty;
    }

    private List<BookTable> sample() throws BookProblem {
        Book book = Books.in(folder);
        SampleBook.fill(book);
        return book.read(BookTable::all);
    }

    private static List<BookTable> change(List<BookTable> tables, String name, UnaryOperator<List<List<Optional<String>>>> how) {
        return tables.stream().map(table -> table.name().equals(name)
            ? new BookTable(name, table.columns(), how.apply(new ArrayList<>(table.rows()))) : table).toList();
    }

    private static List<BookTable> cell(List<BookTable> tables, String name, int row, String column, String text) {
        return change(tables, name, rows -> {
            List<Optional<String>> cells = new ArrayList<>(rows.get(row));
            cells.set(tables.stream().filter(table -> table.name().equals(name)).findFirst().orElseThrow().columns().indexOf(column),
                Optional.ofNullable(text));
            rows.set(row, cells);
            return rows;
        });
    }

    @Test
    void aBookThatIsNotEmptyIsNotFilled() throws BookProblem {
        List<BookTable> tables = sample();
        Book full = Book.open(folder.resolve("test.book"), Clock.systemUTC());
        assertThatThrownBy(() -> BookTable.fill(full, tables)).isInstanceOf(BookProblem.class)
            .hasMessage("the book %s is not empty; name a new one with --book", full.file());
        assertThat(full.read(BookTable::all).equals(tables)).isTrue();
    }

    @Test
    void aTableOrColumnThatIsMissingOrNotKnownIsNamed() throws BookProblem {
        List<BookTable> tables = sample();
        refused(tables.subList(0, 4), "the table note is missing; expected entry, thing, event, reading, note");
        List<BookTable> other = new ArrayList<>(tables);
        other.set(4, new BookTable("note", List.of("id", "entry_id", "thing_id", "words"), List.of()));
        refused(other, "the table note has the columns id, entry_id, thing_id, words; expected id, entry_id, thing_id, text");
    }

    @Test
    void rowsThatDoNotFitTogetherAreRefusedWithOneLineThatSaysWhy() throws BookProblem {
        List<BookTable> tables = sample();
        refused(change(tables, "note", rows -> List.of(rows.get(0).subList(0, 3))), "a row of the table note has 3 cells; expected 4");
        refused(cell(tables, "reading", 0, "value", "9.3 degrees"), "\"9.3 degrees\" is not a number");
        refused(cell(tables, "event", 0, "kind", "melted"), "what was read does not fit together: \"melted\" is no kind of event");
        refused(cell(tables, "event", 0, "thing_id", "99"), "what was read does not fit together: [SQLITE_CONSTRAINT_FOREIGNKEY] A "
            + "foreign key constraint failed (FOREIGN KEY constraint failed)");
        refused(cell(tables, "event", 0, "facts", "{"));
        refused(cell(tables, "event", 3, "happened_at", "yesterday"));
        refused(cell(tables, "thing", 0, "kind", "caddie"));
        refused(cell(tables, "thing", 0, "tag", ""));
        refused(cell(tables, "thing", 0, "tag", null));
        refused(cell(tables, "note", 0, "id", "one"));
        refused(cell(tables, "reading", 0, "uncertainty", "-1"));
        refused(change(tables, "entry", rows -> List.of()));
    }

    /** The lie that was put right is made the correction of the loft. */
    @Test
    void aCorrectionOfSomethingElseIsRefused() throws BookProblem {
        List<BookTable> tables = sample();
        int row = 0;
        while (tables.get(3).rows().get(row).get(tables.get(3).columns().indexOf("corrects")).isEmpty()) {
            row++;
        }
        refused(cell(tables, "reading", row, "corrects", "1"),
            "what was read does not fit together: reading 4 corrects reading 1, which is not an earlier one of the same");
    }

    @Test
    void howATagIsLookedUpIsWorkedOutAnew() throws BookProblem {
        List<BookTable> tables = cell(sample(), "thing", 0, "folded", "something else");
        Book filled = Book.open(folder.resolve("filled.book"), Clock.systemUTC());
        BookTable.fill(filled, tables);
        assertThat(BookCheck.all(filled).findings()).isEmpty();
        Optional<Thing> player = filled.read(view -> view.thing(ThingKind.PLAYER, "å. brännström"));
        assertThat(player).isPresent();
    }
}
