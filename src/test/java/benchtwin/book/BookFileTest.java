package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no book, or none any more, or not yet. */
class BookFileTest {

    @TempDir
    private Path folder;

    private static void sql(Path file, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
             Statement statement = connection.createStatement()) {
            for (String one : statements) {
                statement.execute(one);
            }
        }
    }

    private static void refused(Path file, String message) throws IOException {
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> Book.open(file, Clock.systemUTC())).isInstanceOf(BookProblem.class).hasMessage(message);
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void aNewerBookIsRefusedAndNotTouched() throws Exception {
        Book book = Books.in(folder);
        sql(book.file(), "PRAGMA user_version = 7");
        refused(book.file(), "the book %s was written by a newer benchtwin (version 7 of the book; this program knows 1): use that "
            .formatted(book.file()) + "program, or another book");
        assertThat(folder.toFile().list()).as("no copy of it is kept").containsOnlyOnce("test.book")
            .noneMatch(name -> name.contains("before"));
    }

    @Test
    void anotherProgramsDatabaseIsRefusedAndNotTouched() throws Exception {
        Path file = folder.resolve("addresses.db");
        sql(file, "CREATE TABLE address (street TEXT)", "INSERT INTO address VALUES ('Fairway 1')", "PRAGMA user_version = 1");
        refused(file, file + " is a database, but no book of this program; name a book, or a file that is not there yet");
        sql(file, "PRAGMA application_id = 42");
        refused(file, file + " is a database, but no book of this program; name a book, or a file that is not there yet");
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "tag,loft_deg\nH-014,9.3\n", "SQLite format 3", "SQLite format 3\0", "\uFEFF\0\0\0"})
    void aFileOfAnotherKindIsRefusedAndNotTouched(String content) throws IOException {
        Path file = Files.writeString(folder.resolve("heads.csv"), content);
        refused(file, file + " is no book of this program, or a damaged one; name a book, or a file that is not there yet");
        Path longer = Files.writeString(folder.resolve("long.csv"), content + "\n" + "H-014,9.3\n".repeat(2000));
        refused(longer, longer + " is no book of this program, or a damaged one; name a book, or a file that is not there yet");
    }

    @Test
    void aFolderIsRefused() throws IOException {
        Path place = Files.createDirectory(folder.resolve("place"));
        assertThatThrownBy(() -> Book.open(place, Clock.systemUTC())).isInstanceOf(BookProblem.class)
            .hasMessage("the book %s is a folder; expected a file, or a name for a new one", place);
    }

    @Test
    void aFolderThatCannotBeMadeIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("a file"), "x").resolve("sub").resolve("new.book");
        assertThatThrownBy(() -> Book.open(file, Clock.systemUTC())).isInstanceOf(BookProblem.class)
            .message().startsWith("the book %s cannot be made: its folder cannot be (".formatted(file)).hasLineCount(1);
    }

    @Test
    void anEmptyFileBecomesABook() throws Exception {
        becomesABook(Files.createFile(folder.resolve("empty.book")));
    }

    @Test
    void whatAnInterruptedFirstOpeningLeftBecomesABook() throws Exception {
        Path log = folder.resolve("log.book");
        sql(log, "PRAGMA journal_mode = WAL");
        becomesABook(log);
        Path list = folder.resolve("list.book");
        sql(list, "PRAGMA journal_mode = WAL", "CREATE TABLE \"flyway_schema_history\" (installed_rank INT NOT NULL PRIMARY KEY, "
            + "version VARCHAR(50), description VARCHAR(200) NOT NULL, type VARCHAR(20) NOT NULL, script VARCHAR(1000) NOT NULL, "
            + "checksum INT, installed_by VARCHAR(100) NOT NULL, installed_on TEXT NOT NULL DEFAULT "
            + "(strftime('%Y-%m-%d %H:%M:%f','now')), execution_time INT NOT NULL, "
            + "success BOOLEAN NOT NULL)");
        becomesABook(list);
        Path cut = folder.resolve("cut.book");
        sql(cut, "PRAGMA user_version = 1");
        becomesABook(cut);
    }

    private static void becomesABook(Path file) throws BookProblem {
        Book book = Book.open(file, Clock.systemUTC());
        Thing head = book.write(Books.JO, "receive", entry -> entry.add(ThingKind.HEAD, "H-1", NewEvent.of(EventKind.RECEIVED)));
        assertThat(Books.things(book, ThingKind.HEAD)).containsExactly(head);
        assertThat(BookCheck.all(book).findings()).isEmpty();
    }

    @Test
    void aBookWhoseFolderIsNotThereYetIsMadeWithIt() throws Exception {
        Path file = folder.resolve("data").resolve("benchtwin").resolve("workshop.book");
        becomesABook(file);
        assertThat(List.of(file.getParent().toFile().list())).contains("workshop.book", ".workshop.book.lock");
    }

    @Test
    void aBackupThatIsOpenedAsABookIsWrittenThroughALogLikeAnyBook() throws Exception {
        Book book = Books.in(folder);
        Path copy = folder.resolve("copy.book");
        book.backUp(copy);
        assertThat(new BookLook(copy, copy, 1).found()).isEqualTo(new BookLook.Found(1, false, false));
        Book opened = Book.open(copy, Clock.systemUTC());
        assertThat(new BookLook(copy, copy, 1).found()).isEqualTo(new BookLook.Found(1, true, false));
        opened.read(view -> {
            view.things(ThingKind.HEAD);
            return opened.write(Books.JO, "while it is read", BookEntry::at);
        });
    }
}
