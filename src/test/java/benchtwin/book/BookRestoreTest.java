package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookRestoreTest {

    private static final Clock JUNE = Clock.fixed(Instant.parse("2026-06-01T08:00:00Z"), ZoneOffset.UTC);
    private static final String ASIDE = "test.book.before-restore.2026-06-01T08-00-00Z";

    @TempDir
    private Path folder;
    private Book book;
    private Path backup;

    /** The backup knows of one head, the book of two. */
    @BeforeEach
    void aBookAndItsBackup() throws BookProblem, IOException {
        book = Books.in(folder);
        enter("H-1");
        backup = Files.createDirectory(folder.resolve("safe")).resolve("copy.book");
        book.backUp(backup);
        enter("H-2");
    }

    private void enter(String tag) throws BookProblem {
        book.write(Books.JO, "receive", entry -> entry.add(ThingKind.HEAD, tag, NewEvent.of(EventKind.RECEIVED).with(
            Map.of("model", "Sedge"))));
    }

    private List<String> heads() throws BookProblem {
        return Books.tags(book, ThingKind.HEAD);
    }

    /** What lies beside the book. */
    private List<String> beside() {
        return Arrays.stream(folder.toFile().list()).filter(name -> !name.matches(".*(-wal|-shm|\\.lock)")).sorted().toList();
    }

    /** Shows the heads of a book whenever it is told to. */
    static final class Reader {

        private Reader() {
        }

        public static void main(String[] args) throws Exception {
            Book book = Book.open(Path.of(args[0]), Clock.systemUTC());
            var orders = ChildJava.orders();
            while (orders.readLine() != null) {
                System.out.println(Books.tags(book, ThingKind.HEAD));
            }
        }
    }

    @Test
    void whoHasTheBookOpenSeesTheRestoredOneAndTheFormerIsKept() throws Exception {
        try (ChildJava reader = ChildJava.start(folder.resolve("safe"), Reader.class, book.file()).here()) {
            assertThat(reader.go().line()).isEqualTo("[H-1, H-2]");
            Optional<Path> aside = book.read(view -> {
                view.things(ThingKind.HEAD);
                Optional<Path> kept = BookRestore.restore(book.file(), backup, JUNE);
                assertThat(view.things(ThingKind.HEAD)).as("one moment stays one moment").hasSize(2);
                return kept;
            });
            assertThat(reader.go().line()).isEqualTo("[H-1]");
            assertThat(heads()).containsExactly("H-1");
            assertThat(aside).contains(folder.resolve(ASIDE));
            assertThat(Books.tags(Book.open(aside.orElseThrow(), JUNE), ThingKind.HEAD)).containsExactly("H-1", "H-2");
        }
        assertThat(BookCheck.all(book).findings()).isEmpty();
        enter("H-3");
        assertThat(heads()).containsExactly("H-1", "H-3");
    }

    @Test
    void aBackupIsRestoredWhereNoBookIs() throws Exception {
        Path elsewhere = folder.resolve("new").resolve("elsewhere.book");
        assertThat(BookRestore.restore(elsewhere, backup, JUNE)).isEmpty();
        assertThat(Books.tags(Book.open(elsewhere, JUNE), ThingKind.HEAD)).containsExactly("H-1");
        Path empty = Files.createFile(folder.resolve("empty.book"));
        assertThat(BookRestore.restore(empty, backup, JUNE)).isEmpty();
        assertThat(Books.tags(Book.open(empty, JUNE), ThingKind.HEAD)).containsExactly("H-1");
    }

    /** The log of a deleted book still stands where it was; it belongs to no other. */
    @Test
    void aLogThatLostItsBookIsNotPutIntoTheRestoredOne() throws Exception {
        Path lost = folder.resolve("lost.book");
        book.read(view -> {
            view.things(ThingKind.HEAD);
            enter("H-3");
            try {
                Files.copy(folder.resolve("test.book-wal"), folder.resolve("lost.book-wal"));
            } catch (IOException failed) {
                throw new AssertionError(failed);
            }
            return null;
        });
        BookRestore.restore(lost, backup, JUNE);
        Book restored = Book.open(lost, JUNE);
        assertThat(Books.tags(restored, ThingKind.HEAD)).containsExactly("H-1");
        assertThat(BookCheck.all(restored).findings()).isEmpty();
    }

    /** Somebody names the book of another bench rather than a backup of it, while it is in use. */
    @Test
    void aBookInUseServesAsABackupWithItsNewestEntries() throws Exception {
        Book other = Book.open(backup, JUNE);
        other.read(view -> {
            view.things(ThingKind.HEAD);
            other.write(Books.JO, "receive", entry -> entry.add(ThingKind.HEAD, "H-9", NewEvent.of(EventKind.RECEIVED)));
            return BookRestore.restore(book.file(), backup, JUNE);
        });
        assertThat(heads()).containsExactly("H-1", "H-9");
    }

    private void refusedAndNothingChanged(String message) throws BookProblem {
        assertThatThrownBy(() -> BookRestore.restore(book.file(), backup, JUNE)).isInstanceOf(BookProblem.class)
            .hasMessage(message);
        assertThat(heads()).containsExactly("H-1", "H-2");
        assertThat(beside()).containsExactly("safe", "test.book");
    }

    @Test
    void aBackupThatIsNoBookChangesNothing() throws Exception {
        Files.writeString(backup, "tag,loft_deg\nH-014,9.3\n");
        refusedAndNothingChanged(backup + " is no book of this program, or a damaged one; name a book, or a file that is not there "
            + "yet");
        Files.delete(backup);
        refusedAndNothingChanged(backup + " is no file; expected a backup of a book");
        Files.createDirectory(backup);
        refusedAndNothingChanged(backup + " is no file; expected a backup of a book");
    }

    @Test
    void aNewerBackupChangesNothing() throws Exception {
        Damage.sql(backup, "PRAGMA user_version = 2");
        refusedAndNothingChanged("the book %s was written by a newer benchtwin (version 2 of the book; this program knows 1): use "
            .formatted(backup) + "that program, or another book");
    }

    @Test
    void aBackupWithATamperedStateChangesNothing() throws Exception {
        Damage.sql(backup, "UPDATE state SET standing = 'retired'");
        refusedAndNothingChanged(backup + " is not whole, so nothing was restored: head H-1 stands as head, retired, nobody's, "
            + "{\"facts\":{\"model\":\"Sedge\"},\"readings\":[],\"promises\":[]}, and its events say head, there, nobody's, "
            + "{\"facts\":{\"model\":\"Sedge\"},\"readings\":[],\"promises\":[]}");
    }

    @Test
    void aBackupOfWhichBytesAreWrongOrMissingChangesNothing() throws Exception {
        byte[] whole = Files.readAllBytes(backup);
        for (String table : List.of("event", "thing", "state", "entry", "event_by_thing")) {
            Damage.inside(backup, table);
            assertThatThrownBy(() -> BookRestore.restore(book.file(), backup, JUNE)).as("damage in %s", table)
                .isInstanceOf(BookProblem.class).message().startsWith(backup + " is not whole, so nothing was restored: file: ")
                .hasLineCount(1);
            Files.write(backup, whole);
        }
        for (int left : new int[] {whole.length - 4096, 8192, 1000, 100, 1}) {
            Damage.truncate(backup, left);
            Throwable refused = catchThrowable(() -> BookRestore.restore(book.file(), backup, JUNE));
            assertThat(refused).as("%d bytes of %d", left, whole.length).isInstanceOf(BookProblem.class).message()
                .contains(backup.toString()).hasLineCount(1);
            Files.write(backup, whole);
        }
        assertThat(heads()).containsExactly("H-1", "H-2");
        assertThat(beside()).containsExactly("safe", "test.book");
    }

    @Test
    void aDamagedBookIsRestoredOverAndKept() throws Exception {
        byte[] whole = Files.readAllBytes(book.file());
        for (String table : List.of("event", "sqlite_autoindex_thing_1", "state")) {
            Damage.inside(book.file(), table);
            restoredOver("damage in " + table);
            Files.write(book.file(), whole);
        }
        Damage.bytes(book.file(), 0, 64);
        restoredOver("its first bytes");
        Files.write(book.file(), whole);
        Damage.bytes(book.file(), 100, 600);
        restoredOver("its first page");
        for (int left : new int[] {4096, 1000, 20}) {
            Files.write(book.file(), whole);
            Damage.truncate(book.file(), left);
            restoredOver(left + " bytes left");
        }
    }

    private void restoredOver(String what) throws BookProblem, IOException {
        byte[] damaged = Files.readAllBytes(book.file());
        Path aside = BookRestore.restore(book.file(), backup, JUNE).orElseThrow();
        assertThat(heads()).as(what).containsExactly("H-1");
        assertThat(BookCheck.all(book).findings()).as(what).isEmpty();
        assertThat(beside()).as(what).containsExactly("safe", "test.book", ASIDE);
        assertThat(Files.size(aside)).as(what).isGreaterThanOrEqualTo(Math.min(damaged.length, 90_000));
        Files.delete(aside);
        for (String end : List.of("-wal", "-shm")) {
            Files.deleteIfExists(folder.resolve("test.book" + end));
            Files.deleteIfExists(folder.resolve(ASIDE + end));
        }
    }

    @Test
    void aNewerBookIsNotOverwritten() throws Exception {
        Damage.sql(book.file(), "PRAGMA user_version = 2");
        assertThatThrownBy(() -> BookRestore.restore(book.file(), backup, JUNE)).isInstanceOf(BookProblem.class)
            .hasMessage("the book %s was written by a newer benchtwin (version 2 of the book; this program knows 1): use that "
                .formatted(book.file()) + "program, or another book");
        assertThat(beside()).containsExactly("safe", "test.book");
    }

    /** Somebody keeps a copy of that name already: without one the book is not overwritten, and it is not moved away. */
    @Test
    void whereTheFormerBookCannotBeKeptNothingIsRestored() throws Exception {
        Files.createDirectory(folder.resolve(ASIDE));
        assertThatThrownBy(() -> BookRestore.restore(book.file(), backup, JUNE)).isInstanceOf(BookProblem.class)
            .hasMessage("%s is there already; name a file that is not", folder.resolve(ASIDE));
        assertThat(heads()).containsExactly("H-1", "H-2");
        assertThat(beside()).containsExactly("safe", "test.book", ASIDE);
    }
}
