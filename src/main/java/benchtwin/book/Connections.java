package benchtwin.book;

import java.nio.file.Path;
import java.util.OptionalInt;
import javax.sql.DataSource;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** Connections to one file, set up so that what was confirmed outlives a crash of program, system or power. */
final class Connections {

    private static final int PATIENCE_MS = 20_000;

    private final String url;

    Connections(Path file) {
        url = "jdbc:sqlite:" + file.toAbsolutePath();
    }

    /** For reading: what is read in one transaction is all of one moment. */
    DataSource reading() {
        return source(SQLiteConfig.TransactionMode.DEFERRED, true, OptionalInt.empty());
    }

    /** For writing: a transaction takes its turn before it looks, so that what it saw still holds when it is confirmed. */
    DataSource writing() {
        return writing(OptionalInt.empty());
    }

    /**
     * The same with a limit on the file's size.
     * @param mostPages stands in for a full disk
     */
    DataSource writing(OptionalInt mostPages) {
        return source(SQLiteConfig.TransactionMode.IMMEDIATE, false, mostPages);
    }

    private DataSource source(SQLiteConfig.TransactionMode mode, boolean readOnly, OptionalInt mostPages) {
        SQLiteConfig config = new SQLiteConfig();
        config.setTransactionMode(mode);
        config.setBusyTimeout(PATIENCE_MS);
        config.enforceForeignKeys(true);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setReadOnly(readOnly);
        mostPages.ifPresent(config::setMaxPageCount);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl(url);
        return source;
    }
}
