package benchtwin.bench;

import static benchtwin.bench.BenchBooks.cell;
import static benchtwin.bench.BenchBooks.changed;
import static benchtwin.bench.BenchBooks.everything;
import static benchtwin.bench.BenchBooks.isClean;
import static benchtwin.bench.BenchBooks.part;
import static benchtwin.bench.BenchBooks.reading;
import static benchtwin.bench.BenchBooks.take;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtwin.stock.StockFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stock files into the book: the sample workshop, and the same with something changed. */
class StockImportTest {

    @TempDir
    private Path folder;
    private OpenBook book;

    @BeforeEach
    void theSampleWorkshop() throws BadInput {
        book = BenchBooks.samples(folder);
    }

    @Test
    void everyPartAndClubOfTheFilesIsThere() throws BadInput, IOException {
        for (String kind : List.of("head", "shaft", "grip", "sleeve", "weight")) {
            long rows = Files.readAllLines(BenchBooks.SAMPLES.resolve(kind + "s.csv")).size() - 1;
            assertThat(StockViews.list(book, new StockViews.Asked(List.of(kind), List.of(), false, true))).as(kind)
                .hasSize((int) rows);
        }
        assertThat(PlayerBook.list(book)).extracting(PlayerBook.Player::name).contains("N. Oakes", "J. Quillby");
        assertThat(part(book, "S-234").club()).contains("OAKES-DR");
        assertThat(part(book, "H-245").promises()).containsExactly("E. Ashcutter");
        assertThat(part(book, "H-106").standing()).as("the cracked head sits in its club and is no stock").isEqualTo("retired");
        isClean(book);
    }

    @Test
    void clubsOnRecordTakeNoSleeveOutOfTheTin() throws BadInput {
        assertThat(part(book, "lock-2-335").count()).as("sleeves.csv says 4, and OAKES-DR has one on").hasValue(4);
        assertThat(ClubViews.show(book, "OAKES-DR", ClubViews.When.NOW).fact("sleeve")).contains("lock-2-335");
    }

    @Test
    void theSameFilesAgainLeaveNoTraceAtAll() throws BadInput {
        var before = everything(book);
        StockImport.Imported again = take(book, BenchBooks.SAMPLES);
        assertThat(again.added()).isZero();
        assertThat(again.changed()).isZero();
        assertThat(again.same()).isEqualTo(726);
        assertThat(again.changes()).isEmpty();
        assertThat(everything(book)).isEqualTo(before);
    }

    @Test
    void aHeadMeasuredAnewGetsNewReadingsBesideTheOld() throws BadInput {
        UnaryOperator<List<String>> anew = lines -> cell("H-110", "loft_deg", "9.6").apply(
            cell("H-110", "mass_g", "191.2").apply(lines));
        StockImport.Imported imported = take(book, changed(folder, "heads.csv", anew));
        assertThat(imported.changed()).isEqualTo(1);
        assertThat(imported.changes()).containsExactly("head H-110: loft 9.40° → 9.60°, mass 190.6 g → 191.2 g");
        assertThat(reading(book, "H-110", "loft_deg")).isEqualTo(9.6);
        assertThat(part(book, "H-110").readings()).extracting(StockViews.PartReading::quantity).doesNotHaveDuplicates();
        assertThat(StockViews.show(book, "H-110").history()).hasSize(2).last().asString()
            .contains("measured: loft 9.60° (reading", "mass 191.2 g (reading");
        assertThat(everything(book).get("reading").stream().filter(row -> row.contains(Optional.of("190.6")))).as("the old one is kept")
            .isNotEmpty();
        isClean(book);
    }

    @Test
    void aPlaceThatChangedIsAMove() throws BadInput {
        StockImport.Imported imported = take(book, changed(folder, "heads.csv", cell("H-110", "place", "van")));
        assertThat(imported.changes()).containsExactly("head H-110: place driver drawer 1 → van");
        assertThat(part(book, "H-110").place()).contains("van");
        assertThat(StockViews.show(book, "H-110").history()).anyMatch(line -> line.contains("moved to van"));
    }

    @Test
    void whatWasMovedByHandIsNotMovedBackByTheSameOldFile() throws BadInput {
        StockBook.move(book, List.of("H-110"), "van, drawer 3");
        take(book, BenchBooks.SAMPLES);
        assertThat(part(book, "H-110").place()).contains("van, drawer 3");
        take(book, changed(folder, "heads.csv", cell("H-110", "mass_g", "191.2")));
        assertThat(part(book, "H-110").place()).as("nor by a file that says something else anew").contains("van, drawer 3");
        take(book, changed(folder, "heads.csv", cell("H-110", "place", "bench")));
        assertThat(part(book, "H-110").place()).as("but by one that says so").contains("bench");
    }

    @Test
    void aCellThatWasEmptiedTakesAFactBackButNoReading() throws BadInput {
        StockImport.Imported imported = take(book, changed(folder, "heads.csv", lines -> cell("H-110", "made_loft_deg", "").apply(
            cell("H-110", "volume_cm3", "").apply(lines))));
        assertThat(imported.changes()).containsExactly("head H-110: made loft no longer recorded");
        assertThat(imported.remarks()).anyMatch(remark -> remark.startsWith("head H-110: its file no longer gives its volume; what "
            + "was read stays"));
        assertThat(part(book, "H-110").fact("made_loft_deg")).isEmpty();
        assertThat(reading(book, "H-110", "volume_cm3")).isEqualTo(456);
    }

    @Test
    void aColumnThatIsNotThereAtAllTakesNothingBack() throws BadInput {
        StockImport.Imported imported = take(book, folder, "heads.csv", "tag,model,category,hand,adjust,sleeve_fit,mass_g,weighed_with",
            "H-110,Alder 2,driver,right,sleeve,lock-2,191.2,weights");
        assertThat(imported.changes()).containsExactly("head H-110: mass 190.6 g → 191.2 g");
        assertThat(part(book, "H-110").place()).contains("driver drawer 1");
        assertThat(part(book, "H-110").fact("port_g")).contains("3+7");
    }

    @Test
    void readingsThatWereTakenEarlierThanTheBooksStayHistory() throws BadInput {
        String header = "tag,model,category,hand,adjust,sleeve_fit,loft_deg,reading,measured_on";
        take(book, folder, "heads.csv", header, "H-900,Alder 2,driver,right,sleeve,lock-2,9.3,soled,2026-05-02");
        StockImport.Imported older = take(book, folder, "heads.csv", header, "H-900,Alder 2,driver,right,sleeve,lock-2,9.1,soled,2026-05-01");
        assertThat(older.changes()).containsExactly("head H-900: loft 9.10°, read on 2026-05-01; the later 9.30° stays");
        assertThat(reading(book, "H-900", "loft_deg")).isEqualTo(9.3);
    }

    @Test
    void aPlaceInAFileWhoseReadingsAreOldTakesThePlaceOfAMoveSince() throws BadInput {
        String header = "tag,model,category,hand,adjust,sleeve_fit,loft_deg,reading,measured_on,place";
        take(book, folder, "heads.csv", header, "H-900,Alder 2,driver,right,sleeve,lock-2,9.3,soled,2026-05-02,drawer 1");
        StockBook.move(book, List.of("H-900"), "bench");
        take(book, folder, "heads.csv", header, "H-900,Alder 2,driver,right,sleeve,lock-2,9.3,soled,2026-05-02,drawer 2");
        assertThat(part(book, "H-900").place()).contains("drawer 2");
    }

    @Test
    void aClubsDayThatSaysOtherwiseIsCorrectedAndTheOldWordKept() throws BadInput {
        StockImport.Imported imported = take(book, changed(folder, "clubs.csv", day("SANDROW-DR", "2026-05-05",
            cell("SANDROW-DR", "loft_deg", "9.8"))));
        assertThat(imported.changes()).containsExactly("club SANDROW-DR on 2026-05-05: loft 9.90° → 9.80°");
        ClubViews.Club club = ClubViews.show(book, "SANDROW-DR", ClubViews.When.NOW);
        assertThat(club.values().get(benchtwin.club.Quantity.LOFT).value()).isEqualTo(9.8);
        assertThat(ClubHistory.of(book, "SANDROW-DR").entries()).anySatisfy(entry ->
            assertThat(entry.corrections()).singleElement().satisfies(old -> assertThat(old.was()).isEqualTo(9.9)));
        isClean(book);
    }

    /** Changes cells of only one day's row of a club. */
    private static UnaryOperator<List<String>> day(String tag, String day, UnaryOperator<List<String>> change) {
        return lines -> {
            List<String> all = new ArrayList<>(lines);
            for (int k = 1; k < lines.size(); k++) {
                if (lines.get(k).startsWith(tag + ",") && lines.get(k).contains("," + day + ",")) {
                    all.set(k, change.apply(new ArrayList<>(List.of(lines.get(0), lines.get(k)))).get(1));
                }
            }
            assertThat(all).isNotEqualTo(lines);
            return all;
        };
    }

    @Test
    void aReadingPutRightByHandIsNotPutWrongAgainByARowThatChangesElsewhere() throws BadInput {
        long loft = ClubViews.show(book, "SANDROW-DR", ClubViews.When.NOW).values().get(benchtwin.club.Quantity.LOFT).readings().get(0);
        Corrections.ofClub(book, "SANDROW-DR", loft, Optional.of("9.7"), "gauge slipped");
        take(book, changed(folder, "clubs.csv", day("SANDROW-DR", "2026-05-05", cell("SANDROW-DR", "note", "after the pro-am"))));
        assertThat(ClubViews.show(book, "SANDROW-DR", ClubViews.When.NOW).values().get(benchtwin.club.Quantity.LOFT).value())
            .isEqualTo(9.7);
    }

    @Test
    void anEmptiedCellOfAClubsDayIsTakenBack() throws BadInput {
        StockImport.Imported imported = take(book, changed(folder, "clubs.csv", day("SANDROW-DR", "2026-05-05",
            cell("SANDROW-DR", "total_mass_g", ""))));
        assertThat(imported.changes()).containsExactly("club SANDROW-DR on 2026-05-05: total mass 292.7 g taken back");
        isClean(book);
    }

    @Test
    void aNewDayOfAClubIsRecorded() throws BadInput {
        StockImport.Imported imported = take(book, changed(folder, "clubs.csv", lines -> {
            String last = lines.stream().filter(line -> line.startsWith("SANDROW-DR,")).reduce((a, b) -> b).orElseThrow();
            List<String> more = cell("SANDROW-DR", "loft_deg", "10.1").apply(new ArrayList<>(List.of(lines.get(0),
                last.replace("2026-05-05", "2026-05-30"))));
            lines.add(more.get(1));
            return lines;
        }));
        assertThat(imported.changes()).containsExactly("club SANDROW-DR: recorded on 2026-05-30");
        assertThat(ClubViews.show(book, "SANDROW-DR", ClubViews.When.NOW).values().get(benchtwin.club.Quantity.LOFT).value())
            .isEqualTo(10.1);
        assertThat(part(book, "lock-1-335").count()).hasValue(2);
        isClean(book);
    }

    @Test
    void aCrackedHeadStaysCrackedWhateverAFileSays() throws BadInput {
        StockBook.retire(book, List.of("H-110"), true, "");
        StockImport.Imported imported = take(book, changed(folder, "heads.csv", cell("H-110", "condition", "new")));
        assertThat(imported.remarks()).contains("head H-110 is cracked in the book and stays so; its file says new");
        assertThat(part(book, "H-110").standing()).isEqualTo("retired");
        assertThat(part(book, "H-110").fact("condition")).contains("cracked");
        isClean(book);
    }

    @Test
    void aFileWithFaultsLeavesTheBookAsItWas() throws BadInput {
        var before = everything(book);
        Path faulty = changed(folder, "heads.csv", lines -> cell("H-110", "loft_deg", "nine").apply(
            cell("H-014", "mass_g", "200.1").apply(lines)));
        assertThatThrownBy(() -> take(book, faulty)).isInstanceOf(BadInput.class)
            .hasMessageContaining("column loft_deg: \"nine\"").hasMessageContaining("Nothing was read.");
        assertThat(everything(book)).isEqualTo(before);
    }

    @Test
    void onRequestTheGoodRowsOfAFileWithFaultsAreTaken() throws BadInput {
        Path faulty = changed(folder, "heads.csv", lines -> cell("H-110", "loft_deg", "nine").apply(
            cell("H-014", "mass_g", "200.1").apply(lines)));
        StockImport.Imported imported = StockImport.enter(book, StockImport.read(StockFiles.inFolder(faulty), true));
        assertThat(imported.changes()).containsExactly("head H-014: mass 183.5 g → 200.1 g");
        assertThat(imported.remarks()).anyMatch(remark -> remark.startsWith("left out: heads.csv line"));
        assertThat(reading(book, "H-110", "loft_deg")).isEqualTo(9.4);
    }

    @Test
    void aPromiseOfAFileComesChangesAndGoesAndLeavesPromisesToJobsAlone() throws BadInput {
        take(book, changed(folder, "heads.csv", cell("H-110", "reserved_for", "K. Larkfield")));
        assertThat(part(book, "H-110").promises()).containsExactly("K. Larkfield");
        take(book, changed(folder, "heads.csv", cell("H-110", "reserved_for", "M. Sandrow")));
        assertThat(part(book, "H-110").promises()).containsExactly("M. Sandrow");
        StockImport.Imported free = take(book, changed(folder, "heads.csv", lines -> lines));
        assertThat(free.changes()).containsExactly("head H-110: no longer promised to M. Sandrow");
        assertThat(part(book, "H-110").promises()).isEmpty();

        String job = JobBook.add(book, new JobBook.Order(JobBook.What.REPAIR, Optional.of("T. Tolver"), Optional.empty(),
            Optional.empty(), ""));
        StockBook.reserve(book, List.of("H-110"), Optional.of(job), "", 1);
        StockImport.Imported late = take(book, changed(folder, "heads.csv", cell("H-110", "reserved_for", "M. Sandrow")));
        assertThat(late.remarks()).contains(
            "head H-110 is promised to job 1; it has to be released first; its file says it is promised to M. Sandrow");
        take(book, BenchBooks.SAMPLES);
        assertThat(part(book, "H-110").promises()).containsExactly("job 1");
        isClean(book);
    }

    @Test
    void sleevesComeWithTheirCountAndMeasuredSettings() throws BadInput {
        assertThat(part(book, "notch-335").readings()).extracting(StockViews.PartReading::quantity)
            .contains("dloft_deg", "dlie_deg", "dface_deg");
        StockImport.Imported imported = take(book, changed(folder, "sleeves.csv", cell("lock-2-335", "count", "7")));
        assertThat(imported.changes()).containsExactly("sleeve lock-2-335: count 4 → 7");
        assertThat(part(book, "lock-2-335").count()).hasValue(7);
    }

    @Test
    void columnsOfTheFilesOwnAreKept() throws BadInput {
        Path extra = changed(folder, "grips.csv", lines -> {
            lines.set(0, lines.get(0) + ",Bought From");
            lines.replaceAll(line -> line.startsWith("G-004,") ? line + ",the market" : line.equals(lines.get(0)) ? line : line + ",");
            return lines;
        });
        StockImport.Imported imported = take(book, extra);
        assertThat(imported.changes()).containsExactly("grip G-004: Bought From the market");
        assertThat(part(book, "G-004").facts()).containsEntry("x:Bought From", "the market");
    }

    @Test
    void semicolonsDecimalCommasAndMillimetresSayTheSame() throws BadInput, IOException {
        var before = everything(book);
        List<String> lines = Files.readAllLines(BenchBooks.SAMPLES.resolve("shafts.csv"));
        int raw = List.of(lines.get(0).split(",", -1)).indexOf("raw_length_in");
        List<String> other = new ArrayList<>(List.of(lines.get(0).replace("raw_length_in", "raw_length_mm").replace(',', ';')));
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
            cells[raw] = benchtwin.measure.LengthText.parseInches(cells[raw]).stream().mapToObj(inches ->
                String.format(java.util.Locale.ROOT, "%.2f", inches * 25.4)).findFirst().orElseThrow();
            for (int k = 0; k < cells.length; k++) {
                cells[k] = cells[k].matches("-?\\d+\\.\\d+") ? cells[k].replace('.', ',') : cells[k];
            }
            other.add(String.join(";", cells));
        }
        StockImport.Imported imported = take(book, folder, "shafts.csv", other.toArray(String[]::new));
        assertThat(imported.changes()).isEmpty();
        assertThat(imported.same()).isEqualTo(lines.size() - 1);
        assertThat(everything(book)).isEqualTo(before);
    }

    @Test
    void aPartThatLeftTheStockStaysOut() throws BadInput {
        StockBook.retire(book, List.of("H-110"), false, "sold");
        StockImport.Imported imported = take(book, changed(folder, "heads.csv", cell("H-110", "mass_g", "191.2")));
        assertThat(imported.remarks()).contains("head H-110 left the stock (sold) and stays out of it; its file still lists it");
        assertThat(part(book, "H-110").standing()).isEqualTo("retired");
    }

    @Test
    void aClubThatChangedHandsIsDescribedAnew() throws BadInput {
        StockImport.Imported imported = take(book, changed(folder, "clubs.csv", lines -> {
            lines.replaceAll(line -> line.startsWith("SANDROW-DR,") ? line.replace("M. Sandrow", "T. Tolver") : line);
            return lines;
        }));
        assertThat(imported.changes()).first().asString().contains("SANDROW-DR", "player M. Sandrow → T. Tolver");
        assertThat(ClubViews.show(book, "SANDROW-DR", ClubViews.When.NOW).fact("player")).contains("T. Tolver");
        isClean(book);
    }
}
