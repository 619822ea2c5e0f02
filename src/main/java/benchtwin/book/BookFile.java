package benchtwin.book;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.Arrays;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Makes sure that a file is a book of this program's version, before anybody reads it. */
final class BookFile {

    /** The version of the last migration among the resources. */
    static final int VERSION = 1;
    private static final int APPLICATION = 1_651_799_857;
    private static final String MIGRATIONS = "classpath:benchtwin/book";
    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
    private static final Object ONE_AT_A_TIME = new Object();

    private final Path file;
    private final Clock clock;

    BookFile(Path file, Clock clock) {
        this.file = file;
        this.clock = clock;
    }

    /** Nothing is done, and nothing checked but two numbers, when the book is up to date. */
    void makeReady() throws BookProblem {
        if (Files.isDirectory(file)) {
            throw new BookProblem("the book %s is a folder; expected a file, or a name for a new one".formatted(file));
        }
        if (version() == VERSION) {
            return;
        }
        Path folder = file.toAbsolutePath().getParent();
        try {
            Files.createDirectories(folder);
        } catch (IOException refused) {
            throw new BookProblem("the book %s cannot be made: its folder cannot be (%s)".formatted(file, refused.getMessage()),
                refused);
        }
        Path lockFile = folder.resolve("." + file.getFileName() + ".lock");
        synchronized (ONE_AT_A_TIME) {
            try (FileChannel channel = FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                 FileLock lock = channel.lock()) {
                bringUpToDate();
            } catch (IOException refused) {
                throw new BookProblem("the book %s cannot be made or brought up to date: %s may not be written to".formatted(file,
                    folder), refused);
            }
        }
    }

    private void bringUpToDate() throws BookProblem {
        int version = version();
        if (version == VERSION) {
            return;
        }
        if (version > 0) {
            BookBackup.write(file, beside("before-version-" + VERSION));
        }
        try (Connection connection = new Connections(file).writing().getConnection();
             Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA journal_mode = WAL");
        } catch (SQLException refused) {
            throw problem(refused);
        }
        try {
            Flyway.configure(BookFile.class.getClassLoader()).dataSource(new Connections(file).writing())
                .locations(MIGRATIONS).validateMigrationNaming(true).load().migrate();
        } catch (FlywayException refused) {
            throw problem(refused);
        }
    }

    /** A name beside the book that says what it is and when it was made. */
    Path beside(String what) {
        String time = clock.instant().toString().replaceAll("[:.]", "-");
        return file.resolveSibling("%s.%s.%s".formatted(file.getFileName(), what, time));
    }

    /** 0 for a file that is not there yet, or was left half made. */
    private int version() throws BookProblem {
        try {
            if (!Files.exists(file) || Files.size(file) == 0) {
                return 0;
            }
            try (var in = Files.newInputStream(file)) {
                if (!Arrays.equals(in.readNBytes(MAGIC.length), MAGIC)) {
                    throw new BookProblem("%s is no book of this program; name a book, or a file that is not there yet".formatted(
                        file));
                }
            }
        } catch (IOException unreadable) {
            throw new BookProblem("the book %s cannot be read: %s".formatted(file, unreadable.getMessage()), unreadable);
        }
        try (Connection connection = new Connections(file).reading().getConnection();
             Statement statement = connection.createStatement()) {
            int application = number(statement, "PRAGMA application_id");
            int version = number(statement, "PRAGMA user_version");
            boolean halfMade = application == 0 && number(statement,
                "SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'flyway%'") == 0;
            if (application != APPLICATION && !halfMade) {
                throw new BookProblem("%s is a database, but no book of this program; name a book, or a file that is not there "
                    .formatted(file) + "yet");
            }
            if (version > VERSION) {
                throw new BookProblem("the book %s was written by a newer benchtwin (version %d of the book; this program knows "
                    .formatted(file, version) + "%d): use that program, or another book".formatted(VERSION));
            }
            return version;
        } catch (SQLException refused) {
            throw problem(refused);
        }
    }

    private static int number(Statement statement, String query) throws SQLException {
        try (ResultSet row = statement.executeQuery(query)) {
            return row.next() ? row.getInt(1) : 0;
        }
    }

    private BookProblem problem(Exception refused) {
        BookProblem problem = BookTrouble.of(file, refused);
        return problem != null ? problem
            : new BookProblem("the book %s cannot be opened: %s".formatted(file, refused.getMessage()), refused);
    }
}
