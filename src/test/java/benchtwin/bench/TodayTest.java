package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Hazard;
import benchtwin.match.Keep;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import benchtwin.match.ShopSettings;
import benchtwin.match.Tolerances;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TodayTest {

    @TempDir
    private Path folder;

    @ParameterizedTest(name = "due {0} at 14:20 on 1 June: {1}")
    @CsvSource({"2026-06-01T14:19, OVERDUE", "2026-06-01T14:20, TODAY", "2026-06-01T23:00, TODAY", "2026-05-31, OVERDUE",
        "2026-06-01, TODAY", "2026-06-02T08:00, TOMORROW", "2026-06-02, TOMORROW", "2026-06-03, LATER"})
    void aDayLastsUntilItEndsAndAnHourUntilItStrikes(String due, Today.Urgency urgency) {
        assertThat(Today.urgency(due, LocalDateTime.parse("2026-06-01T14:20"))).isEqualTo(urgency);
    }

    @Test
    void jobsStandInOrderOfTheirTimeWithWhatTheyWaitFor() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        String repair = JobBook.add(book, order(JobBook.What.REPAIR, "TOLVER-3W", Optional.empty()));
        String twin = twin(book, "OAKES-DR", Optional.of("2026-06-01 07:00"));
        Today today = Today.of(book);

        assertThat(today.jobs()).extracting(Today.Due::number).containsExactly(twin, repair);
        Today.Due first = today.jobs().get(0);
        assertThat(first.urgency()).isEqualTo(Today.Urgency.OVERDUE);
        assertThat(first.isPlanned()).isTrue();
        assertThat(first.needs()).extracting(JobNeeds.Need::tag).contains("H-110", "S-234");
        assertThat(first.needs()).filteredOn(need -> need.tag().equals("H-110")).first().satisfies(head ->
            assertThat(head.where()).isEqualTo(BenchBooks.part(book, "H-110").place().orElseThrow()));
        assertThat(first.needs()).allMatch(need -> need.trouble().isEmpty());
        assertThat(today.jobs().get(1).isPlanned()).as("waits for its plan").isFalse();
        assertThat(today.cautions()).first().isEqualTo(Hazard.FIRST);
    }

    @Test
    void aPartThatWentElsewhereIsSaid() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        twin(book, "OAKES-DR", Optional.empty());
        StockBook.release(book, List.of("H-110"), Optional.of("1"), "looked at again");
        assertThat(need(book, "H-110").trouble()).as("free again, and nobody else's").isEmpty();
        StockBook.reserve(book, List.of("H-110"), Optional.empty(), "Ms Fern", 1);
        assertThat(need(book, "H-110").trouble()).contains("is promised to Ms Fern");
    }

    @Test
    void aGaugeWhoseCheckIsDueIsSaid() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        GaugeBook.describe(book, new GaugeBook.Described("bench 1", Optional.of(GaugeBook.Kind.LOFT_AND_LIE), Map.of(), Map.of(),
            Optional.of(LocalDate.parse("2026-05-01")), Optional.of(30)));
        GaugeBook.describe(book, new GaugeBook.Described("bench 2", Optional.of(GaugeBook.Kind.LOFT_AND_LIE), Map.of(), Map.of(),
            Optional.of(LocalDate.parse("2026-05-30")), Optional.of(30)));
        assertThat(Today.of(book).gauges()).extracting(GaugeBook.Standing::name).containsExactly("bench 1");
    }

    @Test
    void aJobsSheetHasItsAimsItsSketchAndWhetherItMakesAClub() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        JobSheet sheet = JobSheet.of(book, twin(book, "OAKES-DR", Optional.empty()));
        assertThat(sheet.aims()).singleElement().satisfies(aim -> {
            assertThat(aim.club()).isEqualTo("OAKES-DR");
            assertThat(aim.predicted().keySet()).containsAll(aim.wanted().keySet());
            assertThat(aim.uncertainty().keySet()).containsAll(aim.wanted().keySet());
        });
        assertThat(sheet.work().get(0).sketch().orElseThrow().svg()).contains("H-110");
        assertThat(sheet.makesNew()).as("it keeps its shaft").isFalse();
        assertThat(sheet.isOpen()).isTrue();
    }

    private static JobNeeds.Need need(OpenBook book, String tag) throws BadInput {
        return Today.of(book).jobs().get(0).needs().stream().filter(need -> need.tag().equals(tag)).findFirst().orElseThrow();
    }

    private static JobBook.Order order(JobBook.What what, String club, Optional<String> due) {
        return new JobBook.Order(what, Optional.empty(), Optional.of(club), due, "");
    }

    /** The nearest head on the club's own shaft, promised. */
    private static String twin(OpenBook book, String club, Optional<String> due) throws BadInput {
        MatchAnswer answer = MatchService.twinOf(Workshop.of(book, Optional.empty(), false), club, new MatchService.Wish(Keep.SHAFT, false, 3,
            Tolerances.DEFAULT, ShopSettings.DEFAULT, OptionalDouble.empty(), Map.of(), Set.of()));
        Ranked nearest = answer.results().get(0);
        return JobPlanning.promise(book, new JobPlanning.For(Optional.empty(), order(JobBook.What.TWIN, club, due)),
            List.of(JobPlanning.twin(club, nearest, answer.favourite())));
    }
}
