package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookBackupTest {

    @TempDir
    private Path folder;

    private static Thing enter(Book book, ThingKind kind, String tag) throws BookProblem {
        return book.write(Books.JO, "receive", entry -> entry.add(kind, tag, NewEvent.of(EventKind.RECEIVED)));
    }

    /** Each entry is of a head and a shaft, so at any one moment there are as many of one as of the other. */
    @Test
    void aBackupWhileSomebodyWritesIsOfOneMoment() throws Exception {
        Book book = Books.in(folder);
        AtomicBoolean stop = new AtomicBoolean();
        ExecutorService threads = Executors.newSingleThreadExecutor();
        try {
            Future<Integer> written = threads.submit(() -> {
                int number = 0;
                while (!stop.get()) {
                    int now = number++;
                    book.write(Books.JO, "receive two", entry -> {
                        entry.add(ThingKind.HEAD, "H-" + now, NewEvent.of(EventKind.RECEIVED).with(
                            Map.of("note", "x".repeat(3000))));
                        return entry.add(ThingKind.SHAFT, "S-" + now, NewEvent.of(EventKind.RECEIVED));
                    });
                }
                return number;
            });
            int before = 0;
            for (int copies = 0; copies < 12; copies++) {
                Path copy = folder.resolve("copy-%d.book".formatted(copies));
                book.backUp(copy);
                Book copied = Book.open(copy, Clock.systemUTC());
                int heads = Books.things(copied, ThingKind.HEAD).size();
                assertThat(Books.things(copied, ThingKind.SHAFT)).hasSize(heads);
                assertThat(heads).isGreaterThanOrEqualTo(before);
                assertThat(BookCheck.all(copied).findings()).isEmpty();
                before = heads;
            }
            stop.set(true);
            assertThat(before).as("it was written to meanwhile").isBetween(1, written.get());
        } finally {
            stop.set(true);
            threads.shutdown();
        }
    }

    @Test
    void aBackupIsOneFileThatHoldsTheWholeBook() throws Exception {
        Book book = Books.in(folder);
        SampleBook.fill(book);
        Path copy = Files.createDirectory(folder.resolve("safe")).resolve("copy.book");
        book.backUp(copy);
        assertThat(copy.getParent().toFile().list()).containsExactly("copy.book");
        Book copied = Book.open(copy, Clock.systemUTC());
        List<BookTable> tables = copied.read(BookTable::all);
        assertThat(tables).isEqualTo(book.read(BookTable::all));
        assertThat(SampleBook.lines(copied)).isEqualTo(SampleBook.lines(book));
    }

    @Test
    void aFileThatIsThereIsNotOverwritten() throws Exception {
        Book book = Books.in(folder);
        Path copy = Files.writeString(folder.resolve("copy.book"), "mine");
        assertThatThrownBy(() -> book.backUp(copy)).isInstanceOf(BookProblem.class)
            .hasMessage("%s is there already; name a file that is not", copy);
        assertThat(copy).hasContent("mine");
    }

    @Test
    void whatAnInterruptedBackupLeftIsNoHindrance() throws Exception {
        Book book = Books.in(folder);
        enter(book, ThingKind.HEAD, "H-1");
        Path copy = folder.resolve("copy.book");
        Files.writeString(folder.resolve("copy.book.part"), "half of a backup");
        book.backUp(copy);
        assertThat(folder.resolve("copy.book.part")).doesNotExist();
        assertThat(Books.tags(Book.open(copy, Clock.systemUTC()), ThingKind.HEAD)).containsExactly("H-1");
    }

    @Test
    void aFolderThatIsNotThereIsNamed() throws Exception {
        Book book = Books.in(folder);
        Path copy = folder.resolve("not there").resolve("copy.book");
        assertThatThrownBy(() -> book.backUp(copy)).isInstanceOf(BookProblem.class)
            .hasMessage("no backup was written to %s: there is no folder %s", copy, copy.getParent());
    }

    /** Bytes in the middle of the table of events: the copy would lack them. */
    @Test
    void aDamagedBookIsNotBackedUp() throws Exception {
        Book book = Books.in(folder);
        SampleBook.fill(book);
        Damage.inside(book.file(), "event");
        Path copy = folder.resolve("copy.book");
        assertThatThrownBy(() -> book.backUp(copy)).isInstanceOf(BookProblem.class).hasMessage(
            "no backup was written to %s: the book %s: it is damaged; see what is left with benchtwin book check, or restore a "
            + "backup with benchtwin book restore", copy, book.file());
        assertThat(left()).containsExactly("test.book");
    }

    private List<String> left() throws IOException {
        return Arrays.stream(folder.toFile().list()).filter(name -> !name.matches(".*(-wal|-shm|\\.lock)")).toList();
    }
}
