package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.book.Book;
import benchtwin.book.EventKind;
import benchtwin.book.NewEvent;
import benchtwin.book.ThingKind;
import benchtwin.samples.TestClock;
import java.time.Instant;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The stock kept at hand against the same book read anew, which is how files are read. */
class StockMemoryTest {

    private static final int ACTS = 60;

    @TempDir
    private Path folder;
    private final TestClock clock = TestClock.at(Instant.parse("2026-06-01T08:00:00Z"));
    private final StockMemory memory = new StockMemory();
    private OpenBook book;

    @BeforeEach
    void open() throws BadInput {
        book = OpenBook.open(BenchBooks.samples(folder).file(), Optional.of("Jo"), clock);
    }

    static Stream<Long> seeds() {
        return IntStream.range(0, 12).mapToObj(k -> 500L + k);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void afterAnyActsItIsTheStockReadAnew(long seed) throws BadInput {
        RandomActs acts = new RandomActs(book, clock, seed);
        for (int act = 0; act < ACTS; act++) {
            acts.act();
            isTheStockReadAnew(act % 2 == 0);
        }
        BenchBooks.isClean(book);
    }

    private void isTheStockReadAnew(boolean asFound) throws BadInput {
        Workshop anew = Workshop.of(book, Optional.empty(), asFound);
        Workshop kept = memory.of(book, asFound);
        assertThat(kept.inventory()).isEqualTo(anew.inventory());
        assertThat(kept.remarks()).containsExactlyInAnyOrderElementsOf(anew.remarks());
    }

    @Test
    void whatIsNoPartAndNoClubLeavesTheVeryStock() throws BadInput {
        Workshop before = memory.of(book, false);
        JobBook.add(book, new JobBook.Order(JobBook.What.REPAIR, Optional.of("N. Oakes"), Optional.empty(), Optional.empty(), ""));
        NoteBook.add(book, "H-110", "looks new");
        assertThat(memory.of(book, false)).isSameAs(before);
        StockBook.move(book, List.of("H-110"), "van");
        assertThat(memory.of(book, false)).isNotSameAs(before).isNotEqualTo(before);
    }

    @Test
    void aClubThatWasNeverReadCountsAsOfTheDay() throws BadInput {
        book.write("club add", entry -> entry.add(ThingKind.CLUB, "NEW-1", NewEvent.of(EventKind.RECEIVED).with(Map.of("player", "N. Oakes",
            "category", "driver", "hand", "right"))));
        assertThat(memory.of(book, true).club("NEW-1").rows()).singleElement().satisfies(row ->
            assertThat(row.measuredOn()).isEqualTo("2026-06-01"));
        clock.on(Duration.ofDays(2));
        assertThat(memory.of(book, true).club("NEW-1").rows()).singleElement().satisfies(row ->
            assertThat(row.measuredOn()).isEqualTo("2026-06-03"));
        isTheStockReadAnew(false);
    }

    @Test
    void anotherBookIsAnotherStock() throws BadInput {
        memory.of(book, false);
        OpenBook empty = BenchBooks.empty(folder);
        assertThat(memory.of(empty, false).inventory().heads()).isEmpty();
        assertThat(memory.of(book, false).inventory().heads()).isNotEmpty();
    }

    /** Without this the first test would hold however little was entered. */
    @Test
    void theActsAtRandomReachPartsClubsAndTheirFaults() throws BadInput {
        Book.Reads<Long> events = view -> view.lastEvent();
        long before = book.read(events);
        RandomActs acts = new RandomActs(book, clock, 500);
        IntStream.range(0, ACTS).forEach(act -> acts.act());
        assertThat(book.read(events) - before).isGreaterThan(ACTS);
        assertThat(memory.of(book, false).remarks()).isNotEmpty();
    }
}
