package benchtwin.bench;

import benchtwin.book.Author;
import benchtwin.book.Book;
import benchtwin.book.BookPlace;
import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The workshop's book, opened for one user of it. */
public final class OpenBook {

    private final Book book;
    private final Author author;
    private final Seen seen;
    private final WayIn way;

    private OpenBook(Book book, Author author, Seen seen, WayIn way) {
        this.book = book;
        this.author = author;
        this.seen = seen;
        this.way = way;
    }

    /**
     * Opens the book; makes it when there is none.
     * @param named the file, if one was named; else the environment or the user's data folder says where it lies
     * @param by    who uses it, if they said so
     * @return the book
     * @throws BadInput when it cannot be opened
     */
    public static OpenBook open(Optional<Path> named, Optional<String> by) throws BadInput {
        return open(place(named), by, Clock.systemUTC());
    }

    /**
     * Opens the book that is there.
     * @param named the file, if one was named
     * @param by    who uses it, if they said so
     * @return the book; empty when there is none and none was named
     * @throws BadInput when it cannot be opened, or the named one is not there
     */
    public static Optional<OpenBook> ifThere(Optional<Path> named, Optional<String> by) throws BadInput {
        Path place = place(named);
        if (!Files.exists(place)) {
            if (named.isPresent()) {
                throw new BadInput("there is no book %s; benchtwin stock import DIR --book %s makes one".formatted(place, place));
            }
            return Optional.empty();
        }
        return Optional.of(open(named, by));
    }

    /** The same at another time. */
    static OpenBook open(Path file, Optional<String> by, Clock clock) throws BadInput {
        try {
            return new OpenBook(Book.open(file, clock), new Author(by, BuildIdentity.text()), Seen.NOTHING, WayIn.LINE);
        } catch (BookProblem problem) {
            throw new BadInput(problem.getMessage());
        }
    }

    /**
     * Where the book lies.
     * @param named the file, if one was named
     * @return that, else what the environment or the platform's convention says
     */
    public static Path place(Optional<Path> named) {
        return BookPlace.of(named, System.getenv(), System.getProperty("os.name"), Path.of(System.getProperty("user.home")));
    }

    /**
     * Where it lies.
     * @return the file
     */
    public Path file() {
        return book.file();
    }

    /**
     * The same book for somebody who looked at things in it before: nothing is entered once one of them has changed since.
     * @param before what was looked at, and when
     * @return the book; entering then throws {@link ChangedMeanwhile} where something came between
     */
    public OpenBook asSeen(Seen before) {
        return new OpenBook(book, author, before, way);
    }

    /**
     * The same book in other hands.
     * @param name who enters from now on
     * @return the book
     */
    public OpenBook by(String name) {
        return new OpenBook(book, new Author(Optional.of(name), BuildIdentity.text()), seen, way);
    }

    /**
     * The same book for somebody at the pages: what has to be done is said as it is done there.
     * @return the book
     */
    public OpenBook onPages() {
        return new OpenBook(book, author, seen, WayIn.PAGES);
    }

    /**
     * The number of the last entry, for {@link Seen}.
     * @return 0 for an empty book
     * @throws BadInput when the book cannot be read
     */
    public long lastEntry() throws BadInput {
        return read(BookView::lastEntry);
    }

    Book book() {
        return book;
    }

    WayIn way() {
        return way;
    }

    /** What is to be done, in the words of the way its user came in. */
    String asks(ToDo what, Object... values) {
        return what.in(way, values);
    }

    Author author() {
        return author;
    }

    ZoneId zone() {
        return ZoneId.systemDefault();
    }

    LocalDate today() {
        return LocalDate.ofInstant(book.clock().instant(), zone());
    }

    <T> T read(Book.Reads<T> reads) throws BadInput {
        try {
            return book.read(reads);
        } catch (BookProblem problem) {
            throw new BadInput(ToBeDone.words(problem, way));
        }
    }

    <T> T write(String what, Book.Writes<T> writes) throws BadInput {
        List<Seen.Change> since = new ArrayList<>();
        try {
            return book.write(author, what, entry -> {
                since.addAll(seen.changes(this, entry));
                if (!since.isEmpty()) {
                    throw new BookProblem(since.get(0).words());
                }
                return writes.in(entry);
            });
        } catch (BookProblem problem) {
            throw since.isEmpty() ? new BadInput(ToBeDone.words(problem, way)) : new ChangedMeanwhile(since);
        }
    }

    /** A thing that must be there; the problem names the nearest three. */
    static Thing need(BookView view, ThingKind kind, String tag) throws BookProblem {
        Optional<Thing> found = view.thing(kind, tag);
        if (found.isPresent()) {
            return found.get();
        }
        if (kind == ThingKind.JOB) {
            throw new ToBeDone("there is no job %s; ".formatted(tag), ToDo.LIST_JOBS);
        }
        List<String> tags = view.things(kind).stream().map(Thing::tag).toList();
        throw new BookProblem(tags.isEmpty() ? "no %s %s: the book has no %ss yet".formatted(kind.word(), tag, kind.word())
            : "no %s is called %s in the book; nearest are %s".formatted(kind.word(), tag, NearNames.of(tag, tags)));
    }
}
