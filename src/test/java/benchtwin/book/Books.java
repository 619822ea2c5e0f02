package benchtwin.book;

import benchtwin.samples.TestClock;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Books for tests. */
final class Books {

    static final Author JO = new Author(Optional.of("Jo"), "test build");

    private Books() {
    }

    private static byte[] empty;

    /** An empty book. Making one takes half a second, so the first is made and the others are copies of it. */
    static synchronized Book in(Path folder) throws BookProblem {
        Path file = folder.resolve("test.book");
        try {
            if (empty == null) {
                Book.open(file, Clock.systemUTC());
                empty = Files.readAllBytes(file);
            } else {
                Files.write(file, empty);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return Book.open(file, TestClock.ticking(Instant.parse("2026-05-01T08:00:00Z")));
    }

    static List<Thing> things(Book book, ThingKind kind) throws BookProblem {
        return book.read(view -> view.things(kind));
    }

    static List<String> tags(Book book, ThingKind kind) throws BookProblem {
        return things(book, kind).stream().map(Thing::tag).toList();
    }
}
