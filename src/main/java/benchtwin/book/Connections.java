package benchtwin.book;

import java.net.URI;
import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.OptionalInt;
import javax.sql.DataSource;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteOpenMode;

/** Connections to one file, set up so that what was confirmed outlives a crash of program, system or power. */
final class Connections {

    private static final int PATIENCE_MS = 20_000;

    private final String url;
    private final OptionalInt mostPages;

    Connections(Path file) {
        this(file, OptionalInt.empty());
    }

    /**
     * The same with a limit on the file's size.
     * @param mostPages stands in for a full disk
     */
    Connections(Path file, OptionalInt mostPages) {
        URI name = file.toAbsolutePath().toUri();
        // written as a URI, or a question mark in a name would begin settings; the third and fourth slash are for a host
        this.url = "jdbc:sqlite:file://" + (name.getRawAuthority() == null ? "" : "//" + name.getRawAuthority()) + name.getRawPath();
        this.mostPages = mostPages;
    }

    /** For reading: what is read in one transaction is all of one moment. */
    DataSource reading() {
        return reading("");
    }

    /**
     * For reading a file that nothing can be put beside, as on a disk that cannot be written to. It takes no lock and sees
     * no log, so it is right only while there is no log and nobody writes.
     * Published: sqlite.org, Write-Ahead Logging, "Read-Only Databases"; Uniform Resource Identifiers, "immutable".
     */
    DataSource readingAsItLies() {
        return reading("?immutable=1");
    }

    private DataSource reading(String how) {
        SQLiteConfig config = config(SQLiteConfig.TransactionMode.DEFERRED);
        config.setReadOnly(true);
        return source(config, url + how);
    }

    /** For writing: a transaction takes its turn before it looks, so that what it saw still holds when it is confirmed. */
    DataSource writing() {
        SQLiteConfig config = config(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.resetOpenMode(SQLiteOpenMode.CREATE);
        return source(config, url);
    }

    /** For writing to a file that need not be there yet. */
    DataSource making() {
        return source(config(SQLiteConfig.TransactionMode.IMMEDIATE), url);
    }

    private SQLiteConfig config(SQLiteConfig.TransactionMode mode) {
        SQLiteConfig config = new SQLiteConfig();
        config.setTransactionMode(mode);
        config.setBusyTimeout(PATIENCE_MS);
        config.enforceForeignKeys(true);
        config.enableRecursiveTriggers(true);    // else REPLACE deletes rows without asking the triggers that forbid it
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        mostPages.ifPresent(config::setMaxPageCount);
        return config;
    }

    private static DataSource source(SQLiteConfig config, String url) {
        SQLiteDataSource source = new Forcing(config);
        source.setUrl(url);
        return source;
    }

    /**
     * On a Mac the system's plain call returns before the disk has it; elsewhere the setting does nothing. The driver's own
     * setting of nearly that name is none the database knows.
     * Published: sqlite.org, Pragma statements, fullfsync.
     */
    private static final class Forcing extends SQLiteDataSource {

        private Forcing(SQLiteConfig config) {
            super(config);
        }

        @Override
        public SQLiteConnection getConnection(String user, String password) throws SQLException {
            SQLiteConnection connection = super.getConnection(user, password);
            try (Statement statement = connection.createStatement()) {
                statement.execute("PRAGMA fullfsync = ON");
            } catch (SQLException refused) {
                connection.close();
                throw refused;
            }
            return connection;
        }
    }
}
