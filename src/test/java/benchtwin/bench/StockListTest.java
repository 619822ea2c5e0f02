package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtwin.samples.TestClock;
import java.time.Instant;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The parts kept in short against the same book read from end to end. */
class StockListTest {

    private static final int ACTS = 40;
    private static final List<List<String>> KINDS = List.of(List.of(), List.of("head"), List.of("weights", "Shaft"), List.of("sleeve"));
    private static final List<List<String>> WORDS = List.of(List.of(), List.of("driver"), List.of("DRIVER", "van"), List.of("fern"),
        List.of("bank \"a\""), List.of("h-1"), List.of("facts"), List.of("job"));

    @TempDir
    private Path folder;
    private final TestClock clock = TestClock.at(Instant.parse("2026-06-01T08:00:00Z"));
    private final StockList list = new StockList();
    private OpenBook book;

    @BeforeEach
    void open() throws BadInput {
        book = OpenBook.open(BenchBooks.samples(folder).file(), Optional.of("Jo"), clock);
    }

    static Stream<Long> seeds() {
        return IntStream.range(0, 6).mapToObj(k -> 900L + k);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void afterAnyActsItGivesWhatTheWholeListGives(long seed) throws BadInput {
        Random random = new Random(seed);
        RandomActs acts = new RandomActs(book, clock, seed);
        for (int act = 0; act < ACTS; act++) {
            acts.act();
            StockViews.Asked asked = new StockViews.Asked(KINDS.get(random.nextInt(KINDS.size())), WORDS.get(random.nextInt(WORDS.size())),
                random.nextBoolean(), random.nextBoolean());
            List<StockViews.Part> all = StockViews.list(book, asked);
            int from = random.nextInt(all.size() + 2);
            StockList.Page page = list.page(book, asked, from, 20);
            assertThat(page.all()).isEqualTo(all.size());
            assertThat(page.parts()).isEqualTo(all.stream().skip(from).limit(20).toList());
            assertThat(list.tally(book, asked.kinds())).isEqualTo(StockViews.tally(book, new StockViews.Asked(asked.kinds(), List.of(),
                false, true)));
        }
    }

    @Test
    void pastTheEndNothingIsShownAndTheCountHolds() throws BadInput {
        StockViews.Asked heads = new StockViews.Asked(List.of("head"), List.of(), false, false);
        StockList.Page page = list.page(book, heads, 1_000_000, 20);
        assertThat(page.parts()).isEmpty();
        assertThat(page.from()).isEqualTo(page.all()).isEqualTo(StockViews.list(book, heads).size());
    }

    @Test
    void anUnknownKindIsRefusedInWords() {
        assertThatThrownBy(() -> list.page(book, new StockViews.Asked(List.of("hammer"), List.of(), false, false), 0, 20))
            .isInstanceOf(BadInput.class)
            .hasMessage("\"hammer\" is no kind of part; expected one of head, shaft, grip, sleeve, weight");
    }
}
