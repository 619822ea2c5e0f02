package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was entered is not changed or deleted, by raw statements either. */
class AppendOnlyTest {

    @TempDir
    private Path folder;
    private Book book;
    private List<BookTable> before;

    @BeforeEach
    void aBook() throws BookProblem {
        book = Books.in(folder);
        SampleBook.fill(book);
        before = book.read(BookTable::all);
    }

    @ParameterizedTest
    @CsvSource({"entry, what = 'x', entries", "thing, tag = 'x', tags", "event, words = 'x', events", "reading, value = 1, readings",
        "note, text = 'x', notes"})
    void rowsAreNeitherChangedNorDeleted(String table, String change, String called) throws BookProblem {
        refused("UPDATE %s SET %s".formatted(table, change), called + " are never changed");
        refused("DELETE FROM %s".formatted(table), (called.equals("tags") ? "things" : called) + " are never deleted");
    }

    private void refused(String statement, String message) throws BookProblem {
        assertThatThrownBy(() -> Damage.sql(book.file(), statement)).isInstanceOf(SQLException.class).hasMessageContaining(message);
        assertThat(book.read(BookTable::all).equals(before)).isTrue();
        assertThat(BookCheck.all(book).findings()).isEmpty();
    }

    /** A row that takes another's place deletes it; the database asks the triggers only where it is told to. */
    @Test
    void noRowTakesAnothersPlaceThroughTheProgramsConnections() throws Exception {
        try (Connection connection = new Connections(book.file()).writing().getConnection();
             Statement statement = connection.createStatement()) {
            assertThatThrownBy(() -> statement.execute("REPLACE INTO note SELECT * FROM note"))
                .hasMessageContaining("notes are never deleted");
            assertThatThrownBy(() -> statement.execute("INSERT OR REPLACE INTO reading SELECT * FROM reading"))
                .hasMessageContaining("readings are never deleted");
        }
        assertThat(book.read(BookTable::all).equals(before)).isTrue();
    }
}
