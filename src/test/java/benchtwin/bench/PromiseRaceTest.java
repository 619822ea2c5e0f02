package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two people at two openings of one book who want the same parts at the same moment. */
class PromiseRaceTest {

    private static final int ROUNDS = 20;

    @TempDir
    private Path folder;

    @Test
    void everyPartHasExactlyOneWinnerAndTheOtherIsToldWhoItIs() throws Exception {
        Path file = BenchBooks.samples(folder).file();
        OpenBook jo = OpenBook.open(file, Optional.of("Jo"), Clock.systemUTC());
        OpenBook kim = OpenBook.open(file, Optional.of("Kim"), Clock.systemUTC());
        List<String> tags = StockViews.list(jo, new StockViews.Asked(List.of("head"), List.of(), true, false)).stream()
            .map(StockViews.Part::tag).limit(2 * ROUNDS).toList();
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < ROUNDS; round++) {
                List<String> wanted = tags.subList(2 * round, 2 * round + 2);
                CyclicBarrier both = new CyclicBarrier(2);
                List<Future<String>> came = new ArrayList<>();
                came.add(two.submit(wants(jo, wanted, "Ms Fern", both)));
                came.add(two.submit(wants(kim, List.of(wanted.get(1), wanted.get(0)), "Mr Heath", both)));
                List<String> said = List.of(came.get(0).get(), came.get(1).get());
                assertThat(said).as("one has both parts, the other none").containsOnlyOnce("kept");
                String loser = said.get(0).equals("kept") ? said.get(1) : said.get(0);
                String winner = said.get(0).equals("kept") ? "Ms Fern" : "Mr Heath";
                assertThat(loser).matches("head (%s) is promised to %s; it has to be released first".formatted(
                    String.join("|", wanted), winner));
                for (String tag : wanted) {
                    assertThat(BenchBooks.part(jo, tag).promises()).containsExactly(winner);
                }
            }
        } finally {
            two.shutdownNow();
        }
        BenchBooks.isClean(jo);
    }

    private static Callable<String> wants(OpenBook book, List<String> tags, String whom, CyclicBarrier both) {
        return () -> {
            both.await();
            try {
                StockBook.reserve(book, tags, Optional.empty(), whom, 1);
                return "kept";
            } catch (BadInput refused) {
                return refused.getMessage();
            }
        };
    }
}
