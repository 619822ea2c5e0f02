package benchtwin.book;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.Optional;
import java.util.OptionalInt;
import javax.sql.DataSource;
import org.jdbi.v3.core.Jdbi;

/** Makes sure that a file is a book of this program's version, before anybody reads it. */
final class BookFile {

    private static final int MOST_LINKS = 40;
    private static final Object ONE_AT_A_TIME = new Object();

    /** Something done while no other program makes the book or brings it up to date. */
    @FunctionalInterface
    interface Alone {
        void run() throws BookProblem, IOException;
    }

    private final Path file;
    private final Path target;
    private final Clock clock;
    private final OptionalInt mostPages;
    private final BookMigration migration;
    private final boolean keepsOlder;

    BookFile(Path file, Clock clock) {
        this(file, clock, OptionalInt.empty(), BookMigration.NEWEST, true);
    }

    /**
     * @param mostPages  stands in for a full disk
     * @param migration  the version it is to have
     * @param keepsOlder whether a copy is kept of a book that is brought up to date
     */
    BookFile(Path file, Clock clock, OptionalInt mostPages, BookMigration migration, boolean keepsOlder) {
        this.file = file;
        this.target = target(file);
        this.clock = clock;
        this.mostPages = mostPages;
        this.migration = migration;
        this.keepsOlder = keepsOlder;
    }

    /** Where links lead, so that one book has one lock and one log, however it is called. */
    private static Path target(Path file) {
        Path at = file.toAbsolutePath();
        for (int links = 0; links < MOST_LINKS && Files.isSymbolicLink(at); links++) {
            try {
                at = at.resolveSibling(Files.readSymbolicLink(at));
            } catch (IOException unreadable) {
                return at;
            }
        }
        return at;
    }

    /** Where it really lies. */
    Path target() {
        return target;
    }

    BookLook.Found look() throws BookProblem {
        return new BookLook(file, target, migration.version()).found();
    }

    /**
     * Nothing is done, and little looked at, when the book is up to date.
     * @return whether it can only be read as it lies
     */
    boolean makeReady() throws BookProblem {
        BookLook.Found found = look();
        if (found.version() == migration.version()) {
            if (!found.logged() && !found.onlyAsItLies()) {
                useLog();
            }
            return found.onlyAsItLies();
        }
        Path folder = target.getParent();
        try {
            Files.createDirectories(folder);
        } catch (IOException refused) {
            throw new BookProblem("the book %s cannot be made: its folder cannot be (%s)".formatted(file, refused.getMessage()),
                refused);
        }
        try {
            alone(this::bringUpToDate);
        } catch (IOException refused) {
            throw new BookProblem("the book %s cannot be made or brought up to date: %s may not be written to".formatted(file,
                folder), refused);
        }
        return false;
    }

    /** A backup that is opened as a book gets its log; one that cannot be written to is read without. */
    private void useLog() throws BookProblem {
        try {
            alone(() -> log(new Connections(target).writing()));
        } catch (IOException readOnly) {
            return;
        } catch (BookProblem refused) {
            if (BookTrouble.code(refused) != BookTrouble.READ_ONLY) {
                throw refused;
            }
        }
    }

    /** Shuts out the other threads and programs that would do the same; the lock falls when the program does, however it ends. */
    void alone(Alone work) throws BookProblem, IOException {
        Path lockFile = target.resolveSibling("." + target.getFileName() + ".lock");
        synchronized (ONE_AT_A_TIME) {
            try (FileChannel channel = FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                 FileLock lock = channel.lock()) {
                work.run();
            }
        }
    }

    private void bringUpToDate() throws BookProblem {
        int version = look().version();
        if (version == migration.version()) {
            return;
        }
        Optional<Path> older = version != 0 && keepsOlder && version != -migration.version() ? Optional.of(beside("before-version-" + migration.version()))
            : Optional.empty();
        if (older.isPresent()) {
            BookBackup.write(file, new Connections(target).reading(), older.get());
        }
        log(new Connections(target, mostPages).making());
        try {
            migration.run(target, mostPages);
        } catch (RuntimeException refused) {
            throw version == 0 ? BookTrouble.opening(file, refused) : notMigrated(version, older, refused);
        }
        if (version != 0) {
            finish();
        }
    }

    /** Works out the states a migration emptied. Until that is confirmed the version is negative, and nobody uses the book. */
    private void finish() throws BookProblem {
        try {
            Jdbi.create(new Connections(target, mostPages).writing()).useTransaction(handle -> {
                BookView view = new BookView(handle);
                States.putMissing(view);
                view.close();
                handle.execute("PRAGMA user_version = " + migration.version());
            });
        } catch (RuntimeException refused) {
            throw BookTrouble.opening(file, refused);
        }
    }

    private void log(DataSource source) throws BookProblem {
        try (Connection connection = source.getConnection(); Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA journal_mode = WAL");
        } catch (SQLException refused) {
            throw BookTrouble.opening(file, refused);
        }
    }

    /** The copy is of no use while the book itself is still what it was. */
    private BookProblem notMigrated(int version, Optional<Path> older, RuntimeException refused) throws BookProblem {
        boolean asItWas = look().version() == version;
        if (asItWas) {
            older.ifPresent(BookBackup::delete);
        }
        return new BookProblem("the book %s cannot be brought from version %d to %d%s: %s".formatted(file, version,
            migration.version(), asItWas ? ", and is as it was"
                : older.map(copy -> "; a copy of it as it was is " + copy).orElse(""),
            BookTrouble.said(refused)), refused);
    }

    /** A name beside the book that says what it is and when it was made. */
    Path beside(String what) {
        String time = clock.instant().toString().replaceAll("[:.]", "-");
        return target.resolveSibling("%s.%s.%s".formatted(target.getFileName(), what, time));
    }
}
