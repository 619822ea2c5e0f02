package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A writer that is killed at a random moment, while it makes the book and while it enters: what it confirmed is there. */
class KilledWriterTest {

    private static final int MAKING_MS = 1200;
    private static final int WRITING_MS = 250;

    @TempDir
    private Path folder;

    /** Enters one head after another and confirms each once it is entered, until it is killed. */
    static final class Writer {

        private Writer() {
        }

        public static void main(String[] args) throws IOException, BookProblem {
            String[] told = ChildJava.waitForGo().split(" ", 2);
            Book book = Book.open(Path.of(told[1]), Clock.systemUTC());
            for (int number = Integer.parseInt(told[0]);; number++) {
                int now = number;
                book.write(Books.JO, "receive head " + now, entry -> {
                    Thing head = entry.add(ThingKind.HEAD, "H-" + now, NewEvent.of(EventKind.RECEIVED));
                    entry.add(head, NewEvent.of(EventKind.MEASURED).reading(List.of(
                        NewReading.of("loft_deg", loftDeg(now), "degrees"), NewReading.of("mass_g", 198 + now, "grams"))));
                    entry.note(head, "as measured, number " + now);
                    return head;
                });
                System.out.print(now + "\n");
                System.out.flush();
            }
        }
    }

    private static double loftDeg(int number) {
        return 9 + number / 64.0;
    }

    @ParameterizedTest(name = "20 kills, seed {0}")
    @ValueSource(longs = 20260501)
    void whatWasConfirmedIsThere(long seed) throws Exception {
        kill(new Random(seed), 6, 14);
    }

    @Tag("slow")
    @ParameterizedTest(name = "200 kills, seed {0}")
    @ValueSource(longs = 20260502)
    void whatWasConfirmedIsThereAfterManyKills(long seed) throws Exception {
        kill(new Random(seed), 60, 140);
    }

    /** The next writer's Java is started while the last one is seen to. */
    private void kill(Random random, int makings, int writings) throws Exception {
        ChildJava next = ChildJava.start(folder, Writer.class);
        int last = 0;
        for (int round = 1; round <= makings + writings; round++) {
            boolean making = round <= makings;
            Path book = folder.resolve(making ? "made %d.book".formatted(round) : "one.book");
            int confirmed = making ? 0 : last;
            try (ChildJava writer = next.here().go("%d %s".formatted(confirmed + 1, book))) {
                next = ChildJava.start(folder, Writer.class);
                if (!making) {
                    assertThat(writer.line()).as("the first confirmation of round %d", round).isNotNull();
                    confirmed++;
                }
                Thread.sleep(random.nextInt(making ? MAKING_MS : WRITING_MS));
                writer.kill();
                confirmed += writer.rest().size();
            }
            int there = check(book, confirmed);
            last = making ? 0 : there;
        }
        next.close();
        assertThat(last).as("heads in the book of all rounds but those of making").isGreaterThanOrEqualTo(writings);
    }

    /** Everything that was confirmed is there and whole; what was not confirmed is whole or not there. */
    private static int check(Path file, int confirmed) throws BookProblem {
        Book book = Book.open(file, Clock.systemUTC());
        List<String> heads = book.read(view -> view.states(ThingKind.HEAD).stream().map(head -> "%s %s, %d note".formatted(
            head.thing().tag(), head.state().readings().stream().map(one -> one.read().value().orElseThrow()).toList(),
            view.notes(head.thing()).size())).toList());
        assertThat(heads).hasSizeBetween(confirmed, confirmed + 1);
        assertThat(heads).isEqualTo(IntStream.rangeClosed(1, heads.size()).mapToObj(number -> "H-%d %s, 1 note".formatted(number,
            List.of(loftDeg(number), 198.0 + number))).toList());
        assertThat(BookCheck.all(book).findings()).isEmpty();
        return heads.size();
    }
}
