package benchtwin.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs that both promise the same heads, each to a job of its own, at the same time. */
class PartsRaceTest {

    @TempDir
    private Path folder;

    /** Each time it is told to, promises the next head to its job: prints "won" or what the book said. */
    static final class Racer {

        private Racer() {
        }

        public static void main(String[] args) throws IOException, BookProblem {
            Book book = Book.open(Path.of(args[0]), Clock.systemUTC());
            List<Thing> heads = book.read(view -> view.things(ThingKind.HEAD));
            Thing job = book.read(view -> view.thing(ThingKind.JOB, args[1])).orElseThrow();
            BufferedReader orders = ChildJava.orders();
            for (Thing head : heads) {
                if (orders.readLine() != null) {
                    System.out.println(promise(book, head, job));
                }
            }
        }

        private static String promise(Book book, Thing head, Thing job) {
            try {
                return book.write(Books.JO, "promise", entry -> {
                    new PartActs(entry).promise(head, Optional.of(job), "", 1);
                    return "won";
                });
            } catch (BookProblem told) {
                return told.getMessage();
            }
        }
    }

    @Test
    void everyHeadHasOneWinnerAndTheOtherIsToldWho() throws Exception {
        race(200);
    }

    @Tag("slow")
    @Test
    void everyOneOfAThousandHeadsHasOneWinner() throws Exception {
        race(1000);
    }

    private void race(int heads) throws Exception {
        Book book = Book.open(folder.resolve("race.book"), Clock.systemUTC());
        book.write(Books.JO, "two jobs", entry -> {
            new JobActs(entry).open(Map.of("player", "A. Okoro"), "");
            new JobActs(entry).open(Map.of("player", "B. Lindqvist"), "");
            for (int head = 1; head <= heads; head++) {
                entry.add(ThingKind.HEAD, "H-" + head, NewEvent.of(EventKind.RECEIVED));
            }
            return null;
        });
        List<List<String>> said = List.of(new ArrayList<>(), new ArrayList<>());
        try (ChildJava one = ChildJava.start(folder, Racer.class, book.file(), 1);
             ChildJava two = ChildJava.start(folder, Racer.class, book.file(), 2)) {
            one.here();
            two.here();
            for (int head = 0; head < heads; head++) {
                (head % 2 == 0 ? one : two).go();
                (head % 2 == 0 ? two : one).go();
                said.get(0).add(one.line());
                said.get(1).add(two.line());
            }
            assertThat(one.exit() + two.exit()).isZero();
        }
        List<StateOf> after = book.read(view -> view.states(ThingKind.HEAD));
        List<String> wrong = new ArrayList<>();
        int[] won = new int[3];
        for (int at = 0; at < heads; at++) {
            int winner = "won".equals(said.get(0).get(at)) ? 1 : 2;
            won[winner]++;
            String told = said.get(2 - winner).get(at);
            StateOf head = after.get(at);
            if (!"won".equals(said.get(winner - 1).get(at)) || !told.equals("head H-%d is promised to job %d; it has to be released first"
                .formatted(at + 1, winner)) || !head.state().promises().equals(List.of(new Promise(Optional.of("" + winner), "", 1)))) {
                wrong.add("%s: %s, %s, %s".formatted(head.thing().tag(), said.get(0).get(at), said.get(1).get(at),
                    head.state().promises()));
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(Math.min(won[1], won[2])).as("heads won by the one who won fewer: else it was no race").isPositive();
        assertThat(BookCheck.all(book).findings()).isEmpty();
        long promises = book.read(view -> view.eventsFor(view.thing(ThingKind.JOB, "1").orElseThrow()).size()
            + view.eventsFor(view.thing(ThingKind.JOB, "2").orElseThrow()).size());
        assertThat(promises).as("promises that were entered").isEqualTo(heads);
    }
}
