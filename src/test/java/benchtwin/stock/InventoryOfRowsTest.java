package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import benchtwin.club.ClubRow;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Shaft;
import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import benchtwin.samples.EventWorkshop;
import benchtwin.samples.SampleFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Recorded rows make the inventory that the files they came from made. */
class InventoryOfRowsTest {

    private static final Taken LATER = new Taken(Optional.of(LocalDate.of(2026, 5, 3)), Optional.of("bench 2"), Optional.of("Jo"));

    @TempDir
    Path folder;

    private static void assertSameFromItsRows(SheetRead sheets) {
        assertThat(sheets.read().faults()).extracting(Fault::text).isEmpty();
        Inventory fromFiles = sheets.read().inventory().orElseThrow();
        assertSame(sheets.rows().stream().map(row -> new RecordedRow(row, Map.of())).toList(), fromFiles);
        assertSame(sheets.rows().stream().map(RecordedRow::of).toList(), fromFiles);
        assertSame(sheets.rows().stream().map(row -> RecordedRow.joined(row.kind(), row.naming(), row.facts(), row.readings(),
            row.extra())).toList(), fromFiles);
    }

    private static void assertSame(List<RecordedRow> rows, Inventory fromFiles) {
        InventoryRead read = InventoryOfRows.read(rows, false);
        assertThat(read.faults()).extracting(Fault::text).isEmpty();
        assertThat(read.warnings()).isEmpty();
        Inventory inventory = read.inventory().orElseThrow();
        assertThat(inventory.heads()).isEqualTo(fromFiles.heads());
        assertThat(inventory.shafts()).isEqualTo(fromFiles.shafts());
        assertThat(inventory).isEqualTo(fromFiles);
        assertThat(read.rowsRead()).containsEntry("the book", rows.size());
    }

    @Test
    void theSampleWorkshopComesBackFromItsRows() {
        SheetRead sheets = InventoryReader.readSheets(StockFiles.inFolder(SampleFolder.PATH), false);
        assertThat(sheets.rows()).hasSizeGreaterThan(700);
        assertSameFromItsRows(sheets);
    }

    @Test
    void aSmallWorkshopWithUnknownColumnsComesBackToo() {
        assertSameFromItsRows(Workshop.in(folder).set(StockKind.HEADS, 0, "Shelf", "3").set(StockKind.FREQUENCIES, 0, "Mood", "fair")
            .set(StockKind.SLEEVE_SETTINGS, 0, "Torque wrench", "yes").readSheets());
    }

    @ParameterizedTest(name = "event {0}, seed {1}")
    @CsvSource({"A, 1", "A, 2", "A, 3", "B, 1"})
    void generatedStockComesBackFromItsRows(char size, long seed) throws IOException {
        EventWorkshop.of(size, seed).write(folder);
        assertSameFromItsRows(InventoryReader.readSheets(StockFiles.inFolder(folder), false));
    }

    private List<RecordedRow> small() {
        return new ArrayList<>(Workshop.in(folder).readSheets().rows().stream().map(RecordedRow::of).toList());
    }

    private static Reading read(double value, double uncertainty) {
        return new Reading(value, uncertainty, LATER);
    }

    private static void rest(List<RecordedRow> rows, StockKind kind, Map<String, Reading> readings) {
        for (int i = 0; i < rows.size(); i++) {
            RecordedRow row = rows.get(i);
            if (row.row().kind() == kind) {
                Map<String, Reading> all = new LinkedHashMap<>(row.readings());
                all.putAll(readings);
                rows.set(i, new RecordedRow(row.row(), all));
                return;
            }
        }
    }

    @Test
    void aReadingGoesInAsItIs() {
        List<RecordedRow> rows = small();
        rest(rows, StockKind.HEADS, Map.of("loft_deg", read(9.1234567891, 0.05), "mass_g", read(198.4, 0.01),
            "cg_up_mm", read(30, 0.4), "offset_mm", read(1.25, 0.1)));
        rest(rows, StockKind.SHAFTS, Map.of("balance_mm", read(590.12345678, 0.3), "frequency_cpm", read(256.5, 0.2)));
        rest(rows, StockKind.GRIPS, Map.of("cg_mm", read(106, 0.5)));
        rest(rows, StockKind.CLUBS, Map.of("swing_weight_points", read(33, 0.1), "length_mm", read(1150, 0.2)));
        rest(rows, StockKind.FREQUENCIES, Map.of("frequency_cpm", read(311, 0.3)));
        InventoryRead made = InventoryOfRows.read(rows, false);
        assertThat(made.faults()).extracting(Fault::text).isEmpty();
        Inventory inventory = made.inventory().orElseThrow();
        Head head = inventory.heads().get(0);
        assertThat(head.angles().loftDeg()).contains(read(9.1234567891, 0.05));
        assertThat(head.angles().lieDeg()).contains(Reading.of(58.5, 0.2));
        assertThat(head.massG()).contains(read(198.4, 0.01));
        assertThat(head.mass().cgUpMm()).as("its cell is in no row").contains(read(30, 0.4));
        assertThat(head.offsetMm()).hasValue(1.25);
        Shaft shaft = inventory.shafts().get(0);
        assertThat(shaft.balanceMm()).contains(read(590.12345678, 0.3));
        assertThat(shaft.frequencies()).extracting(frequency -> frequency.cpm())
            .containsExactly(read(256.5, 0.2), read(311, 0.3));
        Grip grip = inventory.grips().get(0);
        assertThat(grip.cgMm()).contains(read(106, 0.5));
        ClubRow day = inventory.clubs().get(0).rows().get(0);
        assertThat(day.swingWeightPoints()).contains(read(33, 0.1));
        assertThat(day.lengthMm()).contains(read(1150, 0.2));
    }

    @Test
    void faultsNameThePart() {
        List<RecordedRow> rows = small();
        rest(rows, StockKind.HEADS, Map.of("mass_g", read(2000.5, 0.1)));
        rest(rows, StockKind.SHAFTS, Map.of("balance_mm", read(1150, 0.8)));
        rest(rows, StockKind.CLUBS, Map.of("lie_deg", read(95, 0.2)));
        assertThat(InventoryOfRows.read(rows, false).inventory()).isEmpty();
        InventoryRead good = InventoryOfRows.read(rows, true);
        assertThat(good.faults()).extracting(Fault::text).containsExactly(
            "shaft S-1 in the book, column balance_mm: 1150 is past the tip of a 1143 mm shaft; expected millimetres from the "
                + "butt, above 0 and below 1143",
            "head H-1 in the book, column mass_g: 2000.5 is not possible; expected grams from 20 to 2000",
            "club C-1 of 2026-05-03 in the book, column lie_deg: 95 is not possible; expected degrees from 30 to 90");
        assertThat(good.inventory().orElseThrow().heads()).extracting(Head::tag).containsExactly("H-2");
    }

    @Test
    void rowsThatDoNotGoTogetherAreFaults() {
        List<RecordedRow> rows = small();
        rows.add(rows.get(0));
        rows.add(new RecordedRow(new SheetRow(StockKind.CLUBS, Map.of("tag", "C-1", "measured_on", "2026-06-01", "player", "Ansel Brook",
            "category", "fairway", "hand", "right", "state", "in play", "number", "1"), Map.of()), Map.of()));
        rows.add(new RecordedRow(new SheetRow(StockKind.FREQUENCIES, Map.of("tag", "S-11", "frequency_cpm", "300"), Map.of()),
            Map.of()));
        rows.add(new RecordedRow(new SheetRow(StockKind.WEIGHTS, Map.of("tag", "W-2", "port", "P8", "mass_g", "7"), Map.of()),
            Map.of()));
        assertThat(InventoryOfRows.read(rows, false).faults()).extracting(Fault::text).containsExactly(
            "head H-1 in the book, column tag: \"H-1\" is there twice; expected every tag once",
            "weight W-2 in the book, column count: is blank; expected how many are in the drawer, such as 3",
            "club C-1 of 2026-06-01 in the book, column category: \"fairway\" is not what its row of 2026-05-03 says of club C-1; "
                + "expected driver, or another tag",
            "a frequency of shaft S-11 in the book, column tag: \"S-11\" is not in the book; expected something the book has "
                + "(did you mean S-1?)");
    }

    @Test
    void whatIsUnusualWasSaidBefore() {
        List<RecordedRow> rows = small();
        rest(rows, StockKind.HEADS, Map.of("lie_deg", read(70, 0.2)));
        rows.removeIf(row -> row.row().kind() == StockKind.GRIPS);
        InventoryRead read = InventoryOfRows.read(rows, false);
        assertThat(read.inventory()).isPresent();
        assertThat(read.warningCount()).isZero();
    }

    @Test
    void onlyMeasuredCellsRestOnReadings() {
        RecordedRow head = small().get(0);
        assertThatIllegalArgumentException().isThrownBy(() -> new RecordedRow(head.row(), Map.of("hot_melt_max_g", read(6, 1))))
            .withMessage("heads.csv has no measured column hot_melt_max_g");
        assertThat(InventoryOfRows.read(List.of(), false).inventory()).contains(Inventory.EMPTY);
    }
}
