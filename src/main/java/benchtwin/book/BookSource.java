package benchtwin.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import javax.sql.DataSource;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.Jdbi;

/** Where a book is read from: as one of many programs that share it, or as it lies where nothing can be put beside it. */
final class BookSource {

    /** What changes when a file is written to. */
    private record Stamp(FileTime written, long bytes, boolean isWhole) {
    }

    private final Path file;
    private final Path target;
    private final boolean onlyAsItLies;
    private final DataSource shared;
    private final DataSource asItLies;
    private final Jdbi reading;
    private final Jdbi readingAsItLies;

    /**
     * @param file         as it was named
     * @param target       where it really lies
     * @param onlyAsItLies whether nothing can be put beside it
     */
    BookSource(Path file, Path target, boolean onlyAsItLies) {
        this.file = file;
        this.target = target;
        this.onlyAsItLies = onlyAsItLies;
        this.shared = new Connections(target).reading();
        this.asItLies = new Connections(target).readingAsItLies();
        this.reading = Jdbi.create(shared);
        this.readingAsItLies = Jdbi.create(asItLies);
    }

    boolean isOnlyAsItLies() {
        return onlyAsItLies;
    }

    /** Connections that read what is confirmed now. */
    DataSource now() {
        return onlyAsItLies && BookLook.isWhole(target) ? asItLies : shared;
    }

    /** One moment of the book. A file that is read as it lies takes no lock, so it is seen to afterwards that nobody wrote. */
    <T> T read(HandleCallback<T, BookProblem> reads) throws BookProblem {
        if (!onlyAsItLies) {
            return read(reading, reads);
        }
        Stamp before = stamp();
        T result = read(before.isWhole() ? readingAsItLies : reading, reads);
        if (!stamp().equals(before)) {
            throw new BookProblem("the book %s was written to by another program while it was read; try again".formatted(file));
        }
        return result;
    }

    /** Nothing was written, so there is nothing to confirm; a damaged file would refuse even that. */
    private static <T> T read(Jdbi from, HandleCallback<T, BookProblem> reads) throws BookProblem {
        return from.inTransaction(handle -> {
            T result = reads.withHandle(handle);
            handle.rollback();
            return result;
        });
    }

    private Stamp stamp() throws BookProblem {
        try {
            BasicFileAttributes now = Files.readAttributes(target, BasicFileAttributes.class);
            return new Stamp(now.lastModifiedTime(), now.size(), BookLook.isWhole(target));
        } catch (IOException gone) {
            throw new BookProblem("the book %s cannot be read: %s".formatted(file, gone.getMessage()), gone);
        }
    }
}
