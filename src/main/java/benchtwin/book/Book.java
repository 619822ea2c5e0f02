package benchtwin.book;

import java.nio.file.Path;
import java.time.Clock;
import java.util.OptionalInt;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * An opened book. Any number of threads and programs may use one file at the same time: readers see one moment, writers take
 * turns.
 */
public final class Book {

    /**
     * Something read from the book.
     * @param <T> what comes of it
     */
    @FunctionalInterface
    public interface Reads<T> {
        /**
         * @param view good until this returns
         * @return what comes of it
         * @throws BookProblem when it cannot be done
         */
        T in(BookView view) throws BookProblem;
    }

    /**
     * Something entered into the book.
     * @param <T> what comes of it
     */
    @FunctionalInterface
    public interface Writes<T> {
        /**
         * @param entry good until this returns
         * @return what comes of it
         * @throws BookProblem when it cannot be done; then nothing of it is kept
         */
        T in(BookEntry entry) throws BookProblem;
    }

    private final Path file;
    private final BookSource source;
    private final Supplier<Jdbi> writing;
    private final int version;
    private final Clock clock;

    private Book(Path file, BookSource source, DataSource writing, int version, Clock clock) {
        this.file = file;
        this.source = source;
        this.writing = once(() -> Jdbi.create(writing));
        this.version = version;
        this.clock = clock;
    }

    /** Most programs only read. */
    private static Supplier<Jdbi> once(Supplier<Jdbi> make) {
        return new Supplier<>() {
            private Jdbi made;

            @Override
            public synchronized Jdbi get() {
                if (made == null) {
                    made = make.get();
                }
                return made;
            }
        };
    }

    /**
     * Opens a book; makes one when there is none there. An older one is backed up and brought up to date.
     * @param file  where it lies
     * @param clock gives the time of what is entered
     * @return the book
     * @throws BookProblem when it cannot be opened, is no book, or is newer than this program
     */
    public static Book open(Path file, Clock clock) throws BookProblem {
        return open(file, clock, OptionalInt.empty());
    }

    /** The same with a limit on its size in pages, which stands in for a full disk. */
    static Book open(Path file, Clock clock, OptionalInt mostPages) throws BookProblem {
        return open(file, clock, mostPages, BookMigration.NEWEST, true);
    }

    /** The same at another version of the book, and with or without a copy of an older one. */
    static Book open(Path file, Clock clock, OptionalInt mostPages, BookMigration migration, boolean keepsOlder)
            throws BookProblem {
        BookFile ready = new BookFile(file, clock, mostPages, migration, keepsOlder);
        boolean onlyAsItLies = ready.makeReady();
        return new Book(file, new BookSource(file, ready.target(), onlyAsItLies),
            new Connections(ready.target(), mostPages).writing(), migration.version(), clock);
    }

    /** With connections that cannot write, which stand in for a file that may not be written to. */
    static Book openUnwritable(Path file, Clock clock) throws BookProblem {
        BookFile ready = new BookFile(file, clock);
        boolean onlyAsItLies = ready.makeReady();
        return new Book(file, new BookSource(file, ready.target(), onlyAsItLies), new Connections(ready.target()).reading(),
            BookMigration.NEWEST.version(), clock);
    }

    /**
     * Where it lies.
     * @return the file
     */
    public Path file() {
        return file;
    }

    /**
     * The time of what is entered.
     * @return the clock
     */
    public Clock clock() {
        return clock;
    }

    /**
     * Reads, all of it as of one moment.
     * @param reads what is read
     * @param <T>   what comes of it
     * @return the same
     * @throws BookProblem when it cannot be read
     */
    public <T> T read(Reads<T> reads) throws BookProblem {
        try {
            return source.read(handle -> {
                refuseUnlessSame(handle);
                BookView view = new BookView(handle);
                try {
                    return reads.in(view);
                } finally {
                    view.close();
                }
            });
        } catch (RuntimeException failure) {
            throw explained(failure);
        }
    }

    /**
     * Enters something: all of it, or nothing.
     * @param author who
     * @param what   the act, in words
     * @param writes what is entered
     * @param <T>    what comes of it
     * @return the same, once all is confirmed
     * @throws BookProblem when it cannot be done; then the book is as before
     */
    public <T> T write(Author author, String what, Writes<T> writes) throws BookProblem {
        try {
            return writing.get().inTransaction(handle -> {
                refuseUnlessSame(handle);
                BookEntry entry = new BookEntry(handle, author, what, clock);
                try {
                    T result = writes.in(entry);
                    entry.derive();
                    return result;
                } finally {
                    entry.close();
                }
            });
        } catch (RuntimeException failure) {
            throw explained(failure);
        }
    }

    /**
     * Copies the book while it may be in use; the copy is whole or not there at all.
     * @param copy a file that is not there yet
     * @throws BookProblem when it is there, or cannot be written
     */
    public void backUp(Path copy) throws BookProblem {
        BookBackup.write(file, source.now(), copy);
    }

    /** Something done to a whole, empty book. */
    @FunctionalInterface
    interface Fills {
        void in(Handle handle) throws BookProblem;
    }

    void fill(Fills fills) throws BookProblem {
        try {
            writing.get().useTransaction(handle -> {
                refuseUnlessSame(handle);
                fills.in(handle);
            });
        } catch (RuntimeException failure) {
            BookProblem problem = BookTrouble.of(file, failure);
            throw problem != null ? problem
                : new BookProblem(BookTable.DOES_NOT_FIT + BookTrouble.said(failure), failure);
        }
    }

    /** A newer program may have brought the book up to date, or somebody put another file in its place. */
    private void refuseUnlessSame(Handle handle) throws BookProblem {
        int now = handle.createQuery("PRAGMA user_version").mapTo(Integer.class).one();
        if (now != version) {
            throw new BookProblem("the book %s has become another since it was opened (version %d of the book; it was %d): "
                .formatted(file, now, version) + "start benchtwin again");
        }
    }

    private BookProblem explained(RuntimeException failure) {
        BookProblem problem = source.isOnlyAsItLies() && BookTrouble.code(failure) == BookTrouble.CANNOT_OPEN
            ? BookTrouble.readOnly(file, failure) : BookTrouble.of(file, failure);
        if (problem == null) {
            throw failure;
        }
        return problem;
    }
}
