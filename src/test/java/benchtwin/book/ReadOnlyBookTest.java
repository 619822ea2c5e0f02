package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Books that may be read and not written to. Permissions prove nothing to an administrator, so there are other ways too. */
class ReadOnlyBookTest {

    private static final String READ_ONLY = "the book %s: it can only be read: nothing of this was recorded; make the file and its "
        + "folder writable, or use another book";

    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void aBookWithOneHead() throws BookProblem {
        Book book = Books.in(folder);
        file = book.file();
        enter(book, "H-1");
    }

    @AfterEach
    void letItBeDeleted() {
        folder.toFile().setWritable(true);
    }

    private static Thing enter(Book book, String tag) throws BookProblem {
        return book.write(Books.JO, "receive", entry -> entry.add(ThingKind.HEAD, tag, NewEvent.of(EventKind.RECEIVED)));
    }

    private void readsAndSaysThatItCannotBeWritten(Book book) throws BookProblem {
        assertThat(Books.tags(book, ThingKind.HEAD)).containsExactly("H-1");
        assertThatThrownBy(() -> enter(book, "H-2")).isInstanceOf(BookProblem.class).hasMessage(READ_ONLY, file);
        assertThat(BookCheck.all(book)).isEqualTo(new BookCheck(1, 1, 0, List.of()));
    }

    private static void linkToNowhere(Path link) {
        try {
            Files.createSymbolicLink(link, Path.of("no folder", "no file"));
        } catch (UnsupportedOperationException | IOException notHere) {
            assumeTrue(false, "no links on this system");
        }
    }

    @Test
    void connectionsThatCannotWriteRefuseTheEntryAndNothingElse() throws BookProblem {
        readsAndSaysThatItCannotBeWritten(Book.openUnwritable(file, Clock.systemUTC()));
        Thing next = enter(Book.open(file, Clock.systemUTC()), "H-2");
        assertThat(next.tag()).isEqualTo("H-2");
    }

    /** A link to nowhere stands where the database would put its file beside the book: an administrator cannot either. */
    @Test
    void aBookThatNothingCanBePutBesideIsReadAsItLies() throws BookProblem, IOException {
        linkToNowhere(folder.resolve("test.book-shm"));
        Book book = Book.open(file, Clock.systemUTC());
        readsAndSaysThatItCannotBeWritten(book);
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere")).resolve("copy.book");
        book.backUp(elsewhere);
        Thing next = enter(Book.open(elsewhere, Clock.systemUTC()), "H-2");
        assertThat(next.tag()).isEqualTo("H-2");
    }

    /** What stands in the log is confirmed, so a book is not read without it. */
    @Test
    void aBookWithALogThatCannotBeUsedIsNotReadWithoutIt() throws Exception {
        Book book = Book.open(file, Clock.systemUTC());
        Path other = Files.createDirectory(folder.resolve("other")).resolve("other.book");
        Path shm = other.resolveSibling("other.book-shm");
        book.read(view -> {
            view.things(ThingKind.HEAD);
            enter(book, "H-2");
            try {
                Files.copy(file, other);
                Files.copy(folder.resolve("test.book-wal"), other.resolveSibling("other.book-wal"));
            } catch (IOException failed) {
                throw new AssertionError(failed);
            }
            return null;
        });
        linkToNowhere(shm);
        assertThatThrownBy(() -> Book.open(other, Clock.systemUTC())).isInstanceOf(BookProblem.class)
            .hasMessage("the book %s: it cannot be opened; see that its folder is there and may be written to", other);
        Files.delete(shm);
        assertThat(Books.tags(Book.open(other, Clock.systemUTC()), ThingKind.HEAD)).containsExactly("H-1", "H-2");
    }

    /** Nobody keeps others out of a file that is read as it lies, so it is seen to afterwards that they stayed out. */
    @Test
    void aBookThatIsReadAsItLiesAndWrittenToMeanwhileIsNotTrusted() throws Exception {
        linkToNowhere(folder.resolve("test.book-shm"));
        Book book = Book.open(file, Clock.systemUTC());
        assertThatThrownBy(() -> book.read(view -> {
            try {
                Files.setLastModifiedTime(file, FileTime.from(Files.getLastModifiedTime(file).toInstant().plusSeconds(1)));
            } catch (IOException failed) {
                throw new AssertionError(failed);
            }
            return view.things(ThingKind.HEAD);
        })).isInstanceOf(BookProblem.class)
            .hasMessage("the book %s was written to by another program while it was read; try again", file);
        assertThat(Books.tags(book, ThingKind.HEAD)).as("read again").containsExactly("H-1");
    }

    /** A failed entry closes its connection. The list of what is open is kept so by Linux only. */
    @Test
    void refusedEntriesLeaveNothingOpen() throws Exception {
        Path open = Path.of("/proc/self/fd");
        assumeTrue(Files.isDirectory(open));
        Book book = Book.openUnwritable(file, Clock.systemUTC());
        assertThatThrownBy(() -> enter(book, "H-2")).hasMessage(READ_ONLY, file);
        int before = open.toFile().list().length;
        for (int again = 0; again < 20; again++) {
            assertThatThrownBy(() -> enter(book, "H-2")).hasMessage(READ_ONLY, file);
        }
        assertThat(open.toFile().list().length).isLessThan(before + 10);
    }

    @Test
    void permissionsOfFileAndFolderAreRespected() throws Exception {
        assumeTrue(file.toFile().setWritable(false) && folder.toFile().setWritable(false));
        File probe = folder.resolve("probe").toFile();
        assumeFalse(Files.isWritable(file) || isCreated(probe), "permissions mean nothing here: an administrator runs this");
        readsAndSaysThatItCannotBeWritten(Book.open(file, Clock.systemUTC()));
        assertThatThrownBy(() -> Book.open(folder.resolve("new.book"), Clock.systemUTC())).isInstanceOf(BookProblem.class)
            .hasMessage("the book %s cannot be made or brought up to date: %s may not be written to", folder.resolve("new.book"),
                folder);
    }

    private static boolean isCreated(File probe) {
        try {
            return probe.createNewFile();
        } catch (IOException refused) {
            return false;
        }
    }

    /** A backup has no log, so it needs nothing beside it to be read. */
    @Test
    void aBackupIsReadWhereItCannotBeWrittenTo() throws BookProblem, IOException {
        Path copy = Files.createDirectory(folder.resolve("copies")).resolve("copy.book");
        Book.open(file, Clock.systemUTC()).backUp(copy);
        Files.createDirectory(copy.resolveSibling(".copy.book.lock"));
        assertThat(Books.tags(Book.open(copy, Clock.systemUTC()), ThingKind.HEAD)).containsExactly("H-1");
    }
}
