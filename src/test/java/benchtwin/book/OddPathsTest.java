package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import benchtwin.samples.TestClock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of files that mean something to a database, an address or a shell. */
class OddPathsTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"with space.book", "what?.book", "what?mode=memory&cache=shared", "100%.book", "a%20b.book", "#1.book",
        "it's \"here\".book", "semi;colon.book", "a&b=c.book", "file:x.book", ":memory:", "[brackets].book", "Brännström ⛳ 書.book",
        "-dash", "back\\slash.book", "name?immutable=1"})
    void aBookOfAnyNameIsMadeThereBackedUpCheckedAndRestored(String name) throws BookProblem, IOException {
        Path file = path(name).resolve(name);
        Book book = Book.open(file, Clock.systemUTC());
        book.write(Books.JO, "receive", entry -> entry.add(ThingKind.HEAD, "H-1", NewEvent.of(EventKind.RECEIVED)));
        Path copy = file.resolveSibling("copy of " + name);
        book.backUp(copy);
        book.write(Books.JO, "receive", entry -> entry.add(ThingKind.HEAD, "H-2", NewEvent.of(EventKind.RECEIVED)));
        Optional<Path> aside = BookRestore.restore(file, copy, TestClock.ticking(Instant.parse(
            "2026-05-01T08:00:00Z")));
        List<String> heads = book.read(view -> view.things(ThingKind.HEAD)).stream().map(Thing::tag).toList();
        assertThat(heads).containsExactly("H-1");
        assertThat(BookCheck.all(book).findings()).isEmpty();
        assertThat(names(file.getParent())).containsExactlyInAnyOrder(name, "copy of " + name,
            aside.orElseThrow().getFileName().toString(), "." + name + ".lock");
    }

    /** The folder bears the odd name too. */
    private Path path(String name) {
        try {
            return folder.resolve(name);
        } catch (InvalidPathException notHere) {
            assumeTrue(false, notHere.getMessage());
            return folder;
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> !name.endsWith("-wal") && !name.endsWith("-shm"))
                .toList();
        }
    }

    @Test
    void aBookIsOneAndTheSameThroughALink() throws BookProblem, IOException {
        Path far = Files.createDirectories(folder.resolve("far"));
        Path link = folder.resolve("link.book");
        try {
            Files.createSymbolicLink(link, Path.of("far", "real.book"));
        } catch (UnsupportedOperationException | IOException notHere) {
            assumeTrue(false, "no links on this system");
        }
        Book book = Book.open(link, Clock.systemUTC());
        book.write(Books.JO, "receive", entry -> entry.add(ThingKind.HEAD, "H-1", NewEvent.of(EventKind.RECEIVED)));
        Path copy = folder.resolve("copy.book");
        book.backUp(copy);
        Files.writeString(far.resolve("real.book"), "overwritten by mistake");
        Optional<Path> aside = BookRestore.restore(link, copy, Clock.systemUTC());
        assertThat(link).isSymbolicLink();
        assertThat(aside.orElseThrow().getParent()).as("beside the book itself").isEqualTo(far);
        assertThat(Files.readString(aside.orElseThrow())).isEqualTo("overwritten by mistake");
        List<Thing> heads = Book.open(far.resolve("real.book"), Clock.systemUTC()).read(view -> view.things(ThingKind.HEAD));
        assertThat(heads).hasSize(1);
        assertThat(names(folder)).containsExactlyInAnyOrder("far", "link.book", "copy.book");
    }
}
