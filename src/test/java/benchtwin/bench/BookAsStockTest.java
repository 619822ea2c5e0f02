package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Inventory;
import benchtwin.stock.StockFiles;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The book laid out as stock, held against the files it came from, record for record. */
class BookAsStockTest {

    @TempDir
    private Path folder;
    private OpenBook book;
    private Inventory files;

    @BeforeEach
    void read() throws BadInput {
        book = BenchBooks.samples(folder);
        files = Workshop.load(StockFiles.inFolder(BenchBooks.SAMPLES), false).inventory();
    }

    private static <T> List<T> byTag(List<T> things, Function<T, String> tag) {
        return things.stream().sorted(Comparator.comparing(tag)).toList();
    }

    @Test
    void everyPartIsTheSame() throws BadInput {
        Inventory there = Workshop.of(book, Optional.empty(), false).inventory();
        assertThat(byTag(there.grips(), grip -> grip.tag())).isEqualTo(byTag(files.grips(), grip -> grip.tag()));
        assertThat(byTag(there.sleeves(), sleeve -> sleeve.name())).isEqualTo(byTag(files.sleeves(), sleeve -> sleeve.name()));
        assertThat(byTag(there.weights(), weight -> weight.tag())).isEqualTo(byTag(files.weights(), weight -> weight.tag()));
        assertThat(byTag(there.shafts(), shaft -> shaft.tag())).isEqualTo(byTag(files.shafts(), shaft -> shaft.tag()));
        // the file promises one cracked head: a promise of what is no stock is remarked upon and not kept
        assertThat(byTag(there.heads().stream().filter(head -> !head.tag().equals("H-041")).toList(), head -> head.tag()))
            .isEqualTo(byTag(files.heads().stream().filter(head -> !head.tag().equals("H-041")).toList(), head -> head.tag()));
        assertThat(there.head("H-041").orElseThrow().condition()).isEqualTo(files.head("H-041").orElseThrow().condition());
    }

    @Test
    void everyClubsLastSoundDayIsTheSame() throws BadInput {
        Inventory there = Workshop.of(book, Optional.empty(), false).inventory();
        assertThat(there.clubs()).hasSameSizeAs(files.clubs());
        files.clubs().forEach(club -> {
            // a day's note stands in the history, not among what the club is
            assertThat(there.club(club.tag()).orElseThrow().lastSound()).as(club.tag()).usingRecursiveComparison()
                .ignoringFields("value.note").isEqualTo(club.lastSound());
            assertThat(there.club(club.tag()).orElseThrow().newest().state()).as(club.tag()).isEqualTo(club.newest().state());
        });
    }

    @Test
    void whatAJobHoldsIsGoneForOthersAndThereForTheJob() throws BadInput {
        String job = JobBook.add(book, new JobBook.Order(JobBook.What.REPAIR, Optional.of("T. Tolver"), Optional.empty(),
            Optional.empty(), ""));
        StockBook.reserve(book, List.of("lock-2-335"), Optional.of(job), "", 3);
        StockBook.reserve(book, List.of("H-110"), Optional.of(job), "T. Tolver", 1);
        Inventory others = Workshop.of(book, Optional.empty(), false).inventory();
        assertThat(others.sleeve("lock-2-335").orElseThrow().count()).hasValue(1);
        assertThat(others.head("H-110").orElseThrow().keeping().reservedFor()).contains("job 1, T. Tolver");
        Inventory its = Workshop.of(book, Optional.of(job), false).inventory();
        assertThat(its.sleeve("lock-2-335").orElseThrow().count()).hasValue(4);
        assertThat(its.head("H-110").orElseThrow().keeping().reservedFor()).isEmpty();
    }

    @Test
    void whatNobodyCountedIsNotUsedUp() throws BadInput {
        BenchBooks.take(book, folder, "sleeves.csv", "sleeve,fits,bore_in,turns_shaft,ring1_tilt_deg,ring1_settings",
            "Q9-335,Q9,0.335,yes,1,12");
        assertThat(Workshop.of(book, Optional.empty(), false).inventory().sleeve("Q9-335").orElseThrow().count()).isEmpty();
        assertThat(BenchBooks.part(book, "Q9-335").count()).isEmpty();
    }

    @Test
    void whatIsRetiredIsNoStockAndWhatIsCrackedIsNamedAsSuch() throws BadInput {
        StockBook.retire(book, List.of("S-155"), false, "sold");
        StockBook.retire(book, List.of("H-110"), true, "");
        Inventory there = Workshop.of(book, Optional.empty(), false).inventory();
        assertThat(there.shaft("S-155")).isEmpty();
        assertThat(there.head("H-110").orElseThrow().condition()).isEqualTo(benchtwin.club.HeadCondition.CRACKED);
    }
}
