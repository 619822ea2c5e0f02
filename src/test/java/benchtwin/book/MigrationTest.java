package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Books of earlier versions, of which a small one each is kept (see {@link SampleBook}), and what a later version would do. */
class MigrationTest {

    private static final String HOME = "classpath:benchtwin/book";
    private static final BookMigration LATER = new BookMigration(2, HOME, "classpath:benchtwin/later");
    private static final BookMigration BROKEN = new BookMigration(2, HOME, "classpath:benchtwin/broken");

    @TempDir
    private Path folder;

    static IntStream versions() {
        return IntStream.rangeClosed(1, BookMigration.NEWEST.version());
    }

    private Path kept(int version) throws IOException {
        Path file = folder.resolve("kept.book");
        try (InputStream in = MigrationTest.class.getResourceAsStream("version-%d.book".formatted(version))) {
            Files.copy(in, file);
        }
        return file;
    }

    private static List<String> lines(int version) throws IOException {
        try (InputStream in = MigrationTest.class.getResourceAsStream("version-%d.txt".formatted(version))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }

    private Book open(Path file, BookMigration migration) throws BookProblem {
        return Book.open(file, Clock.fixed(Instant.parse("2026-06-01T08:00:00Z"), ZoneOffset.UTC), OptionalInt.empty(),
            migration, true);
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> !name.matches(".*(-wal|-shm|\\.lock)")).sorted()
                .toList();
        }
    }

    private static int number(Path file, String query) throws SQLException {
        try (Connection connection = new Connections(file).reading().getConnection();
             Statement statement = connection.createStatement(); ResultSet row = statement.executeQuery(query)) {
            return row.getInt(1);
        }
    }

    @ParameterizedTest(name = "version {0}")
    @MethodSource("versions")
    void aBookOfEveryVersionOpensWithAllThatWasInIt(int version) throws Exception {
        Book book = Book.open(kept(version), Clock.systemUTC());
        assertThat(SampleBook.lines(book)).isEqualTo(lines(version));
        assertThat(BookCheck.all(book).findings()).isEmpty();
        Thing next = book.write(Books.JO, "go on", entry -> entry.add(ThingKind.HEAD, "H-015", NewEvent.of(EventKind.RECEIVED)));
        assertThat(Books.things(book, ThingKind.HEAD)).endsWith(next);
    }

    @Test
    void theKeptBookOfThisVersionIsWhatTheSampleMakesToday() throws Exception {
        Book book = Books.in(folder);
        SampleBook.fill(book);
        assertThat(SampleBook.lines(book)).isEqualTo(lines(BookMigration.NEWEST.version()));
    }

    @Test
    void anOlderBookIsKeptBesideTheOneThatWasBroughtUpToDate() throws Exception {
        Path file = kept(1);
        Book later = open(file, LATER);
        assertThat(SampleBook.lines(later)).as("its states, which the migration emptied").isEqualTo(lines(1));
        assertThat(BookCheck.all(later).findings()).isEmpty();
        assertThat(number(file, "PRAGMA user_version")).isEqualTo(2);
        assertThat(number(file, "SELECT count(*) FROM bench WHERE name = 'bench of Å. Brännström'")).isEqualTo(1);
        assertThat(files()).containsExactly("kept.book", "kept.book.before-version-2.2026-06-01T08-00-00Z");
        Book older = Book.open(folder.resolve(files().get(1)), Clock.systemUTC());
        assertThat(SampleBook.lines(older)).isEqualTo(lines(1));
        assertThat(BookCheck.all(older).findings()).isEmpty();
        open(file, LATER);
        assertThat(files()).as("nothing is done to a book that is up to date").hasSize(2);
        assertThatThrownBy(() -> Book.open(file, Clock.systemUTC())).as("and this program knows no version 2")
            .hasMessage("the book %s was written by a newer benchtwin (version 2 of the book; this program knows 1): use that "
                .formatted(file) + "program, or another book");
    }

    /** The states are emptied by a migration that changes what is worked out, and a crash comes before they are filled again. */
    @Test
    void statesThatAMigrationEmptiedAreWorkedOutAnewBeforeTheBookIsUsed() throws Exception {
        Path file = kept(1);
        Damage.sql(file, "DELETE FROM state", "PRAGMA user_version = -1");
        Book book = Book.open(file, Clock.systemUTC());
        assertThat(number(file, "PRAGMA user_version")).isEqualTo(1);
        assertThat(SampleBook.lines(book)).isEqualTo(lines(1));
        assertThat(BookCheck.all(book).findings()).isEmpty();
        assertThat(files()).as("it was kept when the migration began").containsExactly("kept.book");
        Damage.sql(file, "PRAGMA user_version = -2");
        assertThatThrownBy(() -> Book.open(file, Clock.systemUTC())).as("left half way by a newer program")
            .hasMessage("the book %s was written by a newer benchtwin (version 2 of the book; this program knows 1): use that "
                .formatted(file) + "program, or another book");
        open(file, LATER);
        assertThat(number(file, "PRAGMA user_version")).isEqualTo(2);
    }

    @Test
    void aBookThatCannotBeBroughtUpToDateIsAsItWas() throws Exception {
        Path file = kept(1);
        for (int time = 0; time < 2; time++) {
            assertThatThrownBy(() -> open(file, BROKEN)).isInstanceOf(BookProblem.class).message()
                .startsWith("the book %s cannot be brought from version 1 to 2, and is as it was: ".formatted(file))
                .contains("no such table: bench").hasLineCount(1);
        }
        assertThat(files()).as("the copy is of no use, and would be one more each time").containsExactly("kept.book");
        assertThat(number(file, "SELECT count(*) FROM pragma_table_info('thing') WHERE name = 'drawer'")).isZero();
        Book book = Book.open(file, Clock.systemUTC());
        assertThat(SampleBook.lines(book)).isEqualTo(lines(1));
        assertThat(BookCheck.all(book).findings()).isEmpty();
        open(file, LATER);
        assertThat(number(file, "PRAGMA user_version")).as("it can be brought up to date later").isEqualTo(2);
    }

    @Test
    void whereNoCopyCanBeKeptTheBookIsNotTouched() throws Exception {
        Path file = kept(1);
        Files.createDirectory(folder.resolve("kept.book.before-version-2.2026-06-01T08-00-00Z"));
        assertThatThrownBy(() -> open(file, LATER)).isInstanceOf(BookProblem.class).hasMessage(
            "%s is there already; name a file that is not", folder.resolve("kept.book.before-version-2.2026-06-01T08-00-00Z"));
        assertThat(number(file, "PRAGMA user_version")).isEqualTo(1);
    }

    @Test
    void aNewBookIsMadeAtTheNewestVersionAndNoCopyIsKeptOfNothing() throws Exception {
        open(folder.resolve("new.book"), LATER);
        assertThat(number(folder.resolve("new.book"), "SELECT count(*) FROM flyway_schema_history")).isEqualTo(2);
        assertThat(files()).containsExactly("new.book");
    }

    @Test
    void anOlderBackupIsRestoredUpToDate() throws Exception {
        Path backup = kept(1);
        Path book = folder.resolve("restored.book");
        Optional<Path> aside = BookRestore.restore(book, backup, Clock.systemUTC());
        assertThat(aside).isEmpty();
        assertThat(SampleBook.lines(Book.open(book, Clock.systemUTC()))).isEqualTo(lines(1));
        assertThat(files()).containsExactly("kept.book", "restored.book");
    }
}
