package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import benchtwin.samples.TestClock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a program does to a book's file beside the database, and what a crash leaves beside it. */
class LocksTest {

    @TempDir
    private Path folder;

    /** Tries to begin writing to a book, and says whether it could. */
    static final class Visitor {

        private Visitor() {
        }

        public static void main(String[] args) throws Exception {
            ChildJava.waitForGo();
            try (Connection connection = new Connections(Path.of(args[0])).writing().getConnection();
                 Statement statement = connection.createStatement()) {
                statement.execute("PRAGMA busy_timeout = 0");
                statement.execute("BEGIN IMMEDIATE");
                System.out.println("written to by two at once");
            } catch (SQLException refused) {
                System.out.println(BookTrouble.code(refused));
            }
        }
    }

    /**
     * A process that closes a file of its own accord loses its locks on it (POSIX). A book without a log is looked at here,
     * because there the lock of who writes lies on the file itself.
     */
    @Test
    void lookingAtABookKeepsTheLocksThisProgramHasOnIt() throws Exception {
        Book book = Books.in(folder);
        Path copy = folder.resolve("copy.book");
        book.backUp(copy);
        try (ChildJava visitor = ChildJava.start(folder, Visitor.class, copy);
             Connection connection = new Connections(copy).writing().getConnection();
             Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            statement.execute("DELETE FROM state");
            assertThat(new BookLook(copy, copy, 1).found()).isEqualTo(new BookLook.Found(1, false, false));
            assertThat(visitor.here().go().rest()).containsExactly(Integer.toString(BookTrouble.BUSY));
            connection.rollback();
        }
    }

    /** A backup that is used as a book is written without a log until it is opened; a crash then leaves a journal to roll back. */
    @Test
    void aJournalLeftByACrashIsRolledBackWhenTheBookIsOpened() throws Exception {
        Book book = Books.in(folder);
        book.write(Books.JO, "receive", entry -> entry.add(ThingKind.HEAD, "H-1", NewEvent.of(EventKind.RECEIVED)));
        Path copy = folder.resolve("copy.book");
        book.backUp(copy);
        Path crashed = folder.resolve("crashed.book");
        try (Connection connection = new Connections(copy).writing().getConnection();
             Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA cache_size = 10");
            connection.setAutoCommit(false);
            statement.execute("DELETE FROM state");
            statement.execute("WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 5000) INSERT INTO entry "
                + "SELECT i + 100, '2026-05-01T08:00:00.000Z', NULL, 'lost in a crash ' || i, 'test build' FROM n");
            Files.copy(copy, crashed);
            Files.copy(folder.resolve("copy.book-journal"), folder.resolve("crashed.book-journal"));
            connection.rollback();
        }
        assertThat(Files.size(crashed)).as("half of the transaction was written").isGreaterThan(200_000);
        Book again = Book.open(crashed, Clock.systemUTC());
        List<Thing> heads = again.read(view -> view.things(ThingKind.HEAD));
        assertThat(heads).hasSize(1);
        assertThat(BookCheck.all(again).findings()).isEmpty();
        assertThat(entries(crashed)).isEqualTo(1);
    }

    private static int entries(Path file) throws SQLException {
        try (Connection connection = new Connections(file).reading().getConnection();
             Statement statement = connection.createStatement();
             ResultSet row = statement.executeQuery("SELECT count(*) FROM entry")) {
            return row.getInt(1);
        }
    }

    /** Copied while a connection is open: what a crash leaves beside the file. */
    @Test
    void theLogOfADeletedBookDoesNotComeIntoANewOne() throws Exception {
        Book book = Books.in(folder);
        Path fresh = folder.resolve("fresh.book");
        book.write(Books.JO, "receive", entry -> {
            entry.add(ThingKind.HEAD, "H-1", NewEvent.of(EventKind.RECEIVED));
            return null;
        });
        book.read(view -> {
            book.write(Books.JO, "receive another", entry -> entry.add(ThingKind.HEAD, "H-2", NewEvent.of(EventKind.RECEIVED)));
            try {
                Files.copy(folder.resolve("test.book-wal"), folder.resolve("fresh.book-wal"));
                Files.copy(folder.resolve("test.book-shm"), folder.resolve("fresh.book-shm"));
            } catch (IOException failed) {
                throw new AssertionError(failed);
            }
            return null;
        });
        assertThat(Files.size(folder.resolve("fresh.book-wal"))).isPositive();
        Book made = Book.open(fresh, Clock.systemUTC());
        assertThat(made.read(view -> view.things(ThingKind.HEAD)).size()).isZero();
        assertThat(BookCheck.all(made).findings()).isEmpty();
    }

    @Test
    void aClockThatWasPutBackDoesNotPutAnEntryBeforeTheOneItFollows() throws BookProblem {
        TestClock clock = TestClock.ticking(Instant.parse("2026-05-03T08:00:00Z"));
        Book book = Book.open(folder.resolve("clock.book"), clock);
        Moment first = book.write(Books.JO, "first", BookEntry::at);
        clock.set(Instant.parse("2026-05-01T08:00:00Z"));
        Moment second = book.write(Books.JO, "second", BookEntry::at);
        assertThat(second).isEqualTo(first);
    }

    @Test
    void aBookThatWasDeletedIsNotMadeAnewByWritingToIt() throws Exception {
        Book book = Books.in(folder);
        Files.delete(book.file());
        assertThat(catchThrowable(() -> book.write(Books.JO, "receive", BookEntry::at)))
            .isInstanceOf(BookProblem.class)
            .hasMessage("the book %s: it cannot be opened; see that its folder is there and may be written to", book.file());
        assertThat(book.file()).doesNotExist();
    }

    @Test
    void aBookThatBecameAnotherSinceItWasOpenedIsNotWrittenTo() throws Exception {
        Book book = Books.in(folder);
        try (Connection connection = new Connections(book.file()).writing().getConnection();
             Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA user_version = 2");
        }
        String message = "the book %s has become another since it was opened (version 2 of the book; it was 1): start benchtwin "
            .formatted(book.file()) + "again";
        assertThat(catchThrowable(() -> book.write(Books.JO, "receive", BookEntry::at)))
            .isInstanceOf(BookProblem.class).hasMessage(message);
        assertThat(catchThrowable(() -> book.read(view -> view.find("H-1"))))
            .isInstanceOf(BookProblem.class).hasMessage(message);
    }
}
