package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import benchtwin.club.LengthMethod;
import benchtwin.club.Quantity;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two people who look at the same thing and then enter something about it. */
class SeenTest {

    private static final int ROUNDS = 20;
    private static final String CLUB = "OAKES-3W";

    @TempDir
    private Path folder;

    @Test
    void theSecondIsToldWhatTheFirstEnteredAndNothingIsWritten() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        Seen both = Seen.at(book.lastEntry()).club(CLUB);
        read(book.by("Ms Fern").asSeen(both), 15.2);
        Map<String, List<List<Optional<String>>>> before = BenchBooks.everything(book);

        ChangedMeanwhile told = catchThrowableOfType(() -> read(book.by("Mr Heath").asSeen(both), 15.3), ChangedMeanwhile.class);

        assertThat(told.messages()).singleElement().asString().matches("club OAKES-3W  .* by Ms Fern  found: loft 15\\.20° \\(reading \\d+\\)");
        assertThat(BenchBooks.everything(book)).isEqualTo(before);
        assertThat(told.lastEntry()).isEqualTo(book.lastEntry());
    }

    @Test
    void whoHasReadWhatChangedCanEnterIt() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        Seen both = Seen.at(book.lastEntry()).club(CLUB);
        read(book.asSeen(both), 15.2);
        ChangedMeanwhile told = catchThrowableOfType(() -> read(book.asSeen(both), 15.3), ChangedMeanwhile.class);
        read(book.asSeen(Seen.at(told.lastEntry()).club(CLUB)), 15.3);
        assertThat(ClubViews.show(book, CLUB, ClubViews.When.NOW).values().get(Quantity.LOFT).value()).isEqualTo(15.3);
    }

    @Test
    void aNoteIsToldToo() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        Seen before = Seen.at(book.lastEntry()).club(CLUB);
        NoteBook.add(book, CLUB, "the crown is cracked");
        assertThatThrownBy(() -> read(book.asSeen(before), 15.2)).isInstanceOf(ChangedMeanwhile.class)
            .hasMessageContaining("note: the crown is cracked");
    }

    @Test
    void whatBefellOtherThingsIsNobodysConcern() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        Seen before = Seen.at(book.lastEntry()).club(CLUB);
        NoteBook.add(book, "N. Oakes", "called in the morning");
        NoteBook.add(book, "OAKES-DR", "is to be kept");
        read(book.asSeen(before), 15.2);
        assertThat(ClubViews.show(book, CLUB, ClubViews.When.NOW).values().get(Quantity.LOFT).value()).isEqualTo(15.2);
    }

    @Test
    void whatWasEnteredOfADayBeforeIsNewsAllTheSame() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        Seen before = Seen.at(book.lastEntry()).club(CLUB);
        ClubBook.record(book, CLUB, new Sitting(Map.of(Quantity.LOFT, List.of(15.1)), Optional.empty(), LengthMethod.AXIS, Optional.empty(),
            OptionalDouble.empty(), true, Optional.of(java.time.LocalDate.parse("2026-05-25")), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty()), Map.of(), Optional.empty(), true);
        assertThatThrownBy(() -> read(book.asSeen(before), 15.2)).isInstanceOf(ChangedMeanwhile.class).hasMessageContaining("15.10°");
    }

    @Test
    void aJobThatWasCalledOffIsNotHandedOver() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        String job = JobBook.add(book, new JobBook.Order(JobBook.What.REPAIR, Optional.empty(), Optional.of(CLUB), Optional.empty(), ""));
        Seen before = Seen.at(book.lastEntry()).job(job);
        JobBook.cancel(book.by("Ms Fern"), job, "the player withdrew");
        assertThatThrownBy(() -> JobBook.cancel(book.asSeen(before), job, "no time")).isInstanceOf(ChangedMeanwhile.class)
            .hasMessageContaining("by Ms Fern").hasMessageContaining("called off").hasMessageContaining("the player withdrew");
    }

    /** The look and the entry are one act: of two at the same moment exactly one is entered, every time. */
    @Test
    void ofTwoAtTheSameMomentOneIsEntered() throws Exception {
        Path file = BenchBooks.samples(folder).file();
        OpenBook fern = OpenBook.open(file, Optional.of("Ms Fern"), Clock.systemUTC());
        OpenBook heath = OpenBook.open(file, Optional.of("Mr Heath"), Clock.systemUTC());
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < ROUNDS; round++) {
                Seen both = Seen.at(fern.lastEntry()).club(CLUB);
                CyclicBarrier start = new CyclicBarrier(2);
                List<Future<String>> came = new ArrayList<>();
                came.add(two.submit(enters(fern.asSeen(both), 15 + round / 100.0, start)));
                came.add(two.submit(enters(heath.asSeen(both), 16 + round / 100.0, start)));
                List<String> said = List.of(came.get(0).get(), came.get(1).get());
                assertThat(said).containsOnlyOnce("entered");
                boolean fernWon = said.get(0).equals("entered");
                assertThat(said.get(fernWon ? 1 : 0)).contains(fernWon ? "by Ms Fern" : "by Mr Heath");
                assertThat(ClubViews.show(fern, CLUB, ClubViews.When.NOW).values().get(Quantity.LOFT).value())
                    .isEqualTo((fernWon ? 15 : 16) + round / 100.0);
            }
        } finally {
            two.shutdownNow();
        }
        BenchBooks.isClean(fern);
    }

    private static Callable<String> enters(OpenBook book, double loftDeg, CyclicBarrier start) {
        return () -> {
            start.await();
            try {
                read(book, loftDeg);
                return "entered";
            } catch (ChangedMeanwhile told) {
                return told.getMessage();
            }
        };
    }

    private static void read(OpenBook book, double loftDeg) throws BadInput {
        ClubBook.record(book, CLUB, OddReadingTest.sitting(Quantity.LOFT, loftDeg), Map.of(), Optional.empty(), true);
    }
}
