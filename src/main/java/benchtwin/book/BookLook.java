package benchtwin.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * What a file is, before it is used as a book. It is looked at through the database only: on most systems a program that
 * opens and closes a file of its own accord loses every lock the database holds on it in that program.
 * Published: sqlite.org, How To Corrupt An SQLite Database File, section 2.2.
 */
final class BookLook {

    private static final int APPLICATION = 1_651_799_857;
    /** Bytes. Published: sqlite.org, Database File Format, page sizes. The database takes a file of one byte for an empty one. */
    private static final int SMALLEST_PAGE = 512;

    /**
     * What a file turned out to be.
     * @param version      of the book; 0 for a file that is not there yet, is empty, or was left half made; negative while the
     *                     states are still to be worked out that a migration to that version emptied
     * @param logged       whether it is written through a log, as a book in use is and a backup is not
     * @param onlyAsItLies whether nothing can be put beside it, so that it can only be read as it lies
     */
    record Found(int version, boolean logged, boolean onlyAsItLies) {
    }

    private final Path file;
    private final Path target;
    private final int newest;

    /**
     * @param file   as it was named
     * @param target where it really lies
     * @param newest the last version of the book that is known
     */
    BookLook(Path file, Path target, int newest) {
        this.file = file;
        this.target = target;
        this.newest = newest;
    }

    Found found() throws BookProblem {
        if (Files.isDirectory(target)) {
            throw new BookProblem("the book %s is a folder; expected a file, or a name for a new one".formatted(file));
        }
        try {
            if (!Files.exists(target) || Files.size(target) == 0) {
                return new Found(0, false, false);
            }
            if (Files.size(target) < SMALLEST_PAGE) {
                throw noBook(new SQLiteException("too short", SQLiteErrorCode.SQLITE_NOTADB));
            }
            Connections connections = new Connections(target);
            try {
                return found(connections.reading(), false);
            } catch (SQLException refused) {
                return otherwise(connections, refused);
            }
        } catch (IOException | SQLException refused) {
            throw BookTrouble.code(refused) == BookTrouble.NO_DATABASE ? noBook(refused) : BookTrouble.opening(file, refused);
        }
    }

    private BookProblem noBook(Exception refused) {
        return new BookProblem("%s is no book of this program, or a damaged one; name a book, or a file that is not there yet"
            .formatted(file), refused);
    }

    /** What a crash left beside the book is put in order by writing; where nothing can be written, it is read as it lies. */
    private Found otherwise(Connections connections, SQLException refused) throws BookProblem, SQLException {
        if (!isOutOfReach(refused)) {
            throw refused;
        }
        try {
            return found(connections.writing(), false);
        } catch (SQLException again) {
            if (!isOutOfReach(again) || !isWhole(target)) {
                throw again;
            }
            return found(connections.readingAsItLies(), true);
        }
    }

    private static boolean isOutOfReach(SQLException refused) {
        int code = BookTrouble.code(refused);
        return code == BookTrouble.READ_ONLY || code == BookTrouble.CANNOT_OPEN;
    }

    /** Whether a file holds all there is of its book: nothing stands beside it that would have to be put in. */
    static boolean isWhole(Path target) {
        return isNothing(target.resolveSibling(target.getFileName() + "-wal"))
            && isNothing(target.resolveSibling(target.getFileName() + "-journal"));
    }

    private static boolean isNothing(Path file) {
        try {
            return !Files.exists(file) || Files.size(file) == 0;
        } catch (IOException unreadable) {
            return false;
        }
    }

    /** All numbers as of one moment, or a book that is being made would look like another program's. */
    private Found found(DataSource source, boolean onlyAsItLies) throws BookProblem, SQLException {
        try (Connection connection = source.getConnection(); Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            int tables = Integer.parseInt(text(statement, "SELECT count(*) FROM sqlite_schema "
                + "WHERE type = 'table' AND name NOT LIKE 'flyway%'"));
            int application = Integer.parseInt(text(statement, "PRAGMA application_id"));
            int version = Integer.parseInt(text(statement, "PRAGMA user_version"));
            boolean logged = text(statement, "PRAGMA journal_mode").equals("wal");
            connection.commit();
            if (application == 0 && tables == 0) {
                return new Found(0, logged, onlyAsItLies);
            }
            if (application != APPLICATION) {
                throw new BookProblem("%s is a database, but no book of this program; name a book, or a file that is not there "
                    .formatted(file) + "yet");
            }
            if (Math.abs(version) > newest) {
                throw new BookProblem("the book %s was written by a newer benchtwin (version %d of the book; this program knows "
                    .formatted(file, Math.abs(version)) + "%d): use that program, or another book".formatted(newest));
            }
            return new Found(version, logged, onlyAsItLies);
        }
    }

    private static String text(Statement statement, String query) throws SQLException {
        try (ResultSet row = statement.executeQuery(query)) {
            return row.next() ? row.getString(1) : "0";
        }
    }
}
