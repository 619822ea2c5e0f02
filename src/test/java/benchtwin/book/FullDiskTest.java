package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A limit on the book's size stands in for a disk without room. */
class FullDiskTest {

    private static final String FULL = "the book %s: the disk is full: nothing of this was recorded; make room, then enter it again";
    private static final int SMALLEST_PAGES = 2;

    @TempDir
    private Path folder;

    private static Thing enter(Book book, int number) throws BookProblem {
        return book.write(Books.JO, "receive", entry -> {
            Thing head = entry.add(ThingKind.HEAD, "H-" + number, NewEvent.of(EventKind.RECEIVED));
            entry.note(head, "the same words again and again ".repeat(40));
            return head;
        });
    }

    @Test
    void entriesUpToTheLastThatFittedAreKeptWholeAndWritingGoesOnOnceThereIsRoom() throws Exception {
        Path file = Books.in(folder).file();
        int pages = (int) (Files.size(file) / 4096);
        Book full = Book.open(file, Clock.systemUTC(), OptionalInt.of(pages + 10));
        List<Thing> kept = new ArrayList<>();
        assertThatThrownBy(() -> {
            for (int number = 1; number < 1000; number++) {
                kept.add(enter(full, number));
            }
        }).isInstanceOf(BookProblem.class).hasMessage(FULL, file);
        assertThat(kept).hasSizeBetween(3, 100);
        assertThat(Books.things(full, ThingKind.HEAD)).isEqualTo(kept);
        assertThat(BookCheck.all(full).findings()).isEmpty();
        assertThatThrownBy(() -> enter(full, 1000)).as("still full").hasMessage(FULL, file);
        Book roomy = Book.open(file, Clock.systemUTC());
        Thing next = enter(roomy, 1001);
        List<Note> notes = full.read(view -> view.notes(next));
        assertThat(notes).as("seen by those who opened it while it was full").hasSize(1);
        assertThat(BookCheck.all(roomy).findings()).isEmpty();
    }

    @Test
    void aBigActThatDoesNotFitLeavesNothingOfItself() throws Exception {
        Path file = Books.in(folder).file();
        Book full = Book.open(file, Clock.systemUTC(), OptionalInt.of((int) (Files.size(file) / 4096) + 60));
        Thing before = enter(full, 1);
        assertThatThrownBy(() -> full.write(Books.JO, "receive very many", entry -> {
            for (int number = 2; number < 5000; number++) {
                entry.add(ThingKind.HEAD, "H-" + number, NewEvent.of(EventKind.RECEIVED).reading(List.of(
                    NewReading.of("loft_deg", 9, "degrees"))));
            }
            return null;
        })).isInstanceOf(BookProblem.class).hasMessage(FULL, file);
        assertThat(Books.things(full, ThingKind.HEAD)).containsExactly(before);
        assertThat(BookCheck.all(full)).isEqualTo(new BookCheck(1, 1, 0, List.of()));
        assertThat(enter(full, 2).tag()).as("what is small still fits").isEqualTo("H-2");
    }

    /** From a disk with room for nothing to one with room for nearly all of it. */
    @Test
    void aBookThatCannotBeMadeForLackOfRoomIsMadeOnceThereIsRoom() throws Exception {
        int needed = (int) (Files.size(Books.in(folder).file()) / 4096);
        for (int pages = SMALLEST_PAGES; pages < needed; pages += needed / 2) {
            Path file = folder.resolve("tight %d.book".formatted(pages));
            OptionalInt room = OptionalInt.of(pages);
            assertThatThrownBy(() -> Book.open(file, Clock.systemUTC(), room)).as("%d pages of %d", room.getAsInt(), needed)
                .isInstanceOf(BookProblem.class).hasMessage(FULL, file);
            assertThatThrownBy(() -> Book.open(file, Clock.systemUTC(), room)).as("again").hasMessage(FULL, file);
            Book book = Book.open(file, Clock.systemUTC());
            enter(book, 1);
            assertThat(BookCheck.all(book).findings()).isEmpty();
        }
    }

    @Test
    void takingInAWholeBookThatDoesNotFitLeavesAnEmptyOne() throws Exception {
        Book from = Books.in(folder);
        for (int number = 1; number <= 40; number++) {
            enter(from, number);
        }
        List<BookTable> tables = from.read(BookTable::all);
        Path file = Book.open(folder.resolve("to.book"), Clock.systemUTC()).file();
        Book full = Book.open(file, Clock.systemUTC(), OptionalInt.of((int) (Files.size(file) / 4096) + 5));
        assertThatThrownBy(() -> BookTable.fill(full, tables)).isInstanceOf(BookProblem.class).hasMessage(FULL, file);
        assertThat(BookCheck.all(full)).isEqualTo(new BookCheck(0, 0, 0, List.of()));
        Book roomy = Book.open(file, Clock.systemUTC());
        BookTable.fill(roomy, tables);
        assertThat(roomy.read(BookTable::all)).isEqualTo(tables);
        Optional<Thing> found = roomy.read(view -> view.thing(ThingKind.HEAD, "H-40"));
        assertThat(found).isPresent();
    }
}
