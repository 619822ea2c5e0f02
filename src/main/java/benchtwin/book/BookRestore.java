package benchtwin.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.sqlite.SQLiteConnection;
import org.sqlite.core.DB;

/** Puts a backup in a book's place. The book as it was is kept beside it; other programs that have it open see the change. */
public final class BookRestore {

    private static final int STEP_PAUSE_MS = 50;
    private static final int MOST_PAUSES = 400;
    private static final int ALL_PAGES = -1;
    private static final List<String> ENDS = List.of("", "-wal", "-shm", "-journal");

    private final Path book;
    private final Path backup;
    private final Clock clock;
    private final BookFile file;
    private final Path trial;
    private final Path aside;

    private BookRestore(Path book, Path backup, Clock clock) {
        this.book = book;
        this.backup = backup;
        this.clock = clock;
        this.file = new BookFile(book, clock);
        this.trial = file.beside("being-restored");
        this.aside = file.beside("before-restore");
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
        return new BookRestore(book, backup, clock).run();
    }

    private Optional<Path> run() throws BookProblem {
        try {
            boolean isThere = isBookToKeep();
            Files.createDirectories(file.target().getParent());
            copy();
            lookThrough();
            if (isThere ? keepCopy() : Files.exists(file.target())) {
                file.makeReady();
                overwrite();
            } else {
                replace();
            }
            return isThere ? Optional.of(aside) : Optional.empty();
        } catch (IOException refused) {
            throw new BookProblem("%s cannot be restored to %s: %s".formatted(backup, book, refused.getMessage()), refused);
        } finally {
            ENDS.forEach(end -> BookBackup.delete(beside(trial, end)));
            BookBackup.delete(trial.resolveSibling("." + trial.getFileName() + ".lock"));
        }
    }

    /** Another program's database and a newer book are left alone; a damaged book is what backups are for. */
    private boolean isBookToKeep() throws BookProblem, IOException {
        try {
            return file.look().version() > 0;
        } catch (BookProblem problem) {
            if (BookTrouble.isDamage(problem)) {
                return true;
            }
            throw problem;
        }
    }

    /** A file copy, so that damage is seen; a book in use, whose newest entries stand in its log, is copied by the database. */
    private void copy() throws BookProblem, IOException {
        if (BookLook.isWhole(backup.toRealPath())) {
            Files.copy(backup, trial);
            trial.toFile().setWritable(true);
        } else {
            BookBackup.write(backup, new Connections(backup.toRealPath()).reading(), trial);
        }
    }

    /** Brings the copy up to date, so that an older backup is as good as a new one, and leaves it one whole file. */
    private void lookThrough() throws BookProblem {
        BookCheck check;
        try {
            check = BookCheck.all(Book.open(trial, clock, OptionalInt.empty(), BookMigration.NEWEST, false));
        } catch (BookProblem problem) {
            throw new BookProblem(problem.getMessage().replace(trial.toString(), backup.toString()), problem);
        }
        if (!check.isClean()) {
            throw new BookProblem("%s is not whole, so nothing was restored: %s%s".formatted(backup, check.findings().get(0),
                check.findings().size() > 1 ? " and %d more".formatted(check.findings().size() - 1) : ""));
        }
        try (Connection connection = new Connections(trial).writing().getConnection();
             Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
        } catch (SQLException refused) {
            throw BookTrouble.opening(backup, refused);
        }
    }

    /** False where the book is past copying. */
    private boolean keepCopy() throws BookProblem {
        try {
            BookBackup.write(book, new Connections(file.target()).reading(), aside);
            return true;
        } catch (BookProblem problem) {
            if (BookTrouble.isDamage(problem)) {
                return false;
            }
            throw problem;
        }
    }

    /**
     * Puts the copy where no book is, or a damaged one. That is moved aside, and back when it comes to nothing; so is a log
     * that has lost its book, or the database would put it into this one.
     */
    private void replace() throws BookProblem, IOException {
        file.alone(() -> {
            move(file.target(), aside);
            try {
                Files.move(trial, file.target());
            } catch (IOException refused) {
                move(aside, file.target());
                throw refused;
            }
        });
    }

    private static void move(Path from, Path to) throws IOException {
        for (String end : ENDS) {
            if (Files.exists(beside(from, end))) {
                Files.move(beside(from, end), beside(to, end));
            }
        }
    }

    private void overwrite() throws BookProblem {
        try (Connection connection = new Connections(file.target()).writing().getConnection()) {
            DB database = connection.unwrap(SQLiteConnection.class).getDatabase();
            int code = database.restore("main", trial.toString(), (remaining, pages) -> { }, STEP_PAUSE_MS, MOST_PAUSES,
                ALL_PAGES);
            if (code != 0) {
                throw DB.newSQLException(code, "restore");
            }
        } catch (SQLException refused) {
            throw BookTrouble.opening(book, refused);
        }
    }

    private static Path beside(Path file, String end) {
        return file.resolveSibling(file.getFileName() + end);
    }
}
