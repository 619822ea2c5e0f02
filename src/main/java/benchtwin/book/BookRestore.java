package benchtwin.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.sqlite.SQLiteConnection;
import org.sqlite.core.DB;

/** Puts a backup in a book's place. The book as it was is kept beside it; other programs that have it open see the change. */
public final class BookRestore {

    private static final int STEP_PAUSE_MS = 50;
    private static final int MOST_PAUSES = 400;
    private static final int ALL_PAGES = -1;

    private BookRestore() {
    }

    /**
     * Restores a backup. It is looked through first; one that is not whole changes nothing.
     * @param book   where the book lies, or is to lie
     * @param backup the backup, of this version of the book or an older one
     * @param clock  names the copy of what was there before
     * @return the copy of the book as it was, if there was one
     * @throws BookProblem when the backup cannot be read or is not whole, or the book cannot be written
     */
    public static Optional<Path> restore(Path book, Path backup, Clock clock) throws BookProblem {
        if (!Files.isRegularFile(backup)) {
            throw new BookProblem("%s is no file; expected a backup of a book".formatted(backup));
        }
        BookFile file = new BookFile(book, clock);
        Path trial = file.beside("being-restored");
        try {
            Files.createDirectories(book.toAbsolutePath().getParent());
            Files.copy(backup, trial);
            lookThrough(backup, trial, clock);
            Optional<Path> aside = Files.exists(book) ? Optional.of(keepAside(book, file.beside("before-restore"))) : Optional.empty();
            file.makeReady();
            overwrite(book, trial);
            return aside;
        } catch (IOException refused) {
            throw new BookProblem("%s cannot be restored to %s: %s".formatted(backup, book, refused.getMessage()), refused);
        } finally {
            for (String end : List.of("", "-wal", "-shm")) {
                delete(trial.resolveSibling(trial.getFileName() + end));
            }
            delete(trial.resolveSibling("." + trial.getFileName() + ".lock"));
        }
    }

    /** Brings the copy up to date, so that an older backup is as good as a new one. */
    private static void lookThrough(Path backup, Path trial, Clock clock) throws BookProblem {
        BookCheck check = BookCheck.all(Book.open(trial, clock));
        if (!check.isClean()) {
            throw new BookProblem("%s is not whole, so nothing was restored: %s%s".formatted(backup, check.findings().get(0),
                check.findings().size() > 1 ? " and %d more".formatted(check.findings().size() - 1) : ""));
        }
        try (Connection connection = new Connections(trial).writing().getConnection();
             Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
        } catch (SQLException refused) {
            throw new BookProblem("%s cannot be read: %s".formatted(backup, refused.getMessage()), refused);
        }
    }

    /** A copy; where the book is past copying, the file itself. */
    private static Path keepAside(Path book, Path aside) throws BookProblem, IOException {
        try {
            BookBackup.write(book, aside);
        } catch (BookProblem damaged) {
            for (String end : List.of("", "-wal", "-shm")) {
                Path part = book.resolveSibling(book.getFileName() + end);
                if (Files.exists(part)) {
                    Files.move(part, aside.resolveSibling(aside.getFileName() + end), StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
        return aside;
    }

    private static void overwrite(Path book, Path with) throws BookProblem {
        try (Connection connection = new Connections(book).writing().getConnection()) {
            DB database = connection.unwrap(SQLiteConnection.class).getDatabase();
            int code = database.restore("main", with.toAbsolutePath().toString(), (remaining, pages) -> { }, STEP_PAUSE_MS,
                MOST_PAUSES, ALL_PAGES);
            if (code != 0) {
                throw DB.newSQLException(code, "restore");
            }
        } catch (SQLException refused) {
            BookProblem problem = BookTrouble.of(book, refused);
            throw problem != null ? problem : new BookProblem("%s cannot be restored: %s".formatted(book, refused.getMessage()),
                refused);
        }
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            // what is left of the trial is no book anybody opens
        }
    }
}
