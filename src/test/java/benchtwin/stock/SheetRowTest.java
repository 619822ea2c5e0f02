package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import benchtwin.samples.SampleFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a row says, in one spelling. */
class SheetRowTest {

    @TempDir
    Path folder;

    private static SheetRow row(Workshop workshop, StockKind kind, int number) {
        SheetRead sheets = workshop.readSheets();
        assertThat(sheets.read().faults()).extracting(Fault::text).isEmpty();
        return sheets.rows().stream().filter(row -> row.kind() == kind).skip(number).findFirst().orElseThrow();
    }

    /** Inches by NIST SP 811, 25.4 mm each: 46 in, 23 1/2, 0.335, 0.6, 3, half an inch, 5, 40. */
    @Test
    void lengthsAreInMillimetresUnderTheirNamesInMillimetres() {
        SheetRow shaft = row(Workshop.in(folder), StockKind.SHAFTS, 0);
        assertThat(shaft.cells()).containsExactly(Map.entry("tag", "S-1"), Map.entry("model", "Brook"),
            Map.entry("material", "graphite"), Map.entry("meant_for", "driver+fairway"),
            Map.entry("raw_length_mm", "1168.4"), Map.entry("mass_g", "61.5"), Map.entry("balance_mm", "596.9"),
            Map.entry("torque_deg", "4.2"), Map.entry("tip_mm", "8.509"), Map.entry("tip_kind", "parallel"),
            Map.entry("butt_mm", "15.24"), Map.entry("parallel_tip_mm", "76.2"), Map.entry("tip_cut_mm", "12.7"),
            Map.entry("butt_cut_mm", "12.7"), Map.entry("frequency_cpm", "255"), Map.entry("clamp_mm", "127"),
            Map.entry("free_length_mm", "1016"), Map.entry("tip_mass_g", "205"), Map.entry("over_grip", "no"),
            Map.entry("sleeve_on", "Q2-335"), Map.entry("pulls", "1"), Map.entry("condition", "pulled"));
        assertThat(shaft.tag()).isEqualTo("S-1");
        assertThat(shaft.key()).containsExactly("S-1");
    }

    @Test
    void aSwingWeightIsInPointsAndAClubsKeyHasTheDay() {
        SheetRow club = row(Workshop.in(folder), StockKind.CLUBS, 0);
        assertThat(club.cell("swing_weight_points")).contains("32.4");
        assertThat(club.cell("swing_weight")).isEmpty();
        assertThat(club.key()).containsExactly("C-1", "2026-05-03");
        assertThat(row(Workshop.in(folder), StockKind.SLEEVE_SETTINGS, 0).key()).containsExactly("Q2-335", "1");
        SheetRow further = row(Workshop.in(folder), StockKind.FREQUENCIES, 0);
        assertThat(further.key()).isEmpty();
        assertThat(further.tag()).isEqualTo("S-1");
    }

    @Test
    void wordsListsAndSettingsHaveOneSpelling() {
        Workshop workshop = Workshop.in(folder).set(StockKind.HEADS, 0, "category", "Driver")
            .set(StockKind.HEADS, 0, "weighed_with", "Screw | weights").set(StockKind.HEADS, 0, "read_at_setting", "3 + 5")
            .set(StockKind.HEADS, 0, "port_g", "4.0 | 7.50").set(StockKind.HEADS, 0, "material", "TITANIUM")
            .set(StockKind.HEADS, 0, "mass_g", "+198.50").set(StockKind.HEADS, 0, "face_deg", "-0")
            .set(StockKind.HEADS, 0, "place", "  drawer\u00a03 ").set(StockKind.GRIPS, 0, "rib", "Ribbed")
            .set(StockKind.SLEEVES, 0, "fits", "Q3|Q2").set(StockKind.SLEEVES, 0, "hand", "BOTH")
            .set(StockKind.SLEEVES, 0, "turns_shaft", "1").set(StockKind.WEIGHTS, 0, "port", "TIP")
            .set(StockKind.CLUBS, 1, "state", "Damaged").set(StockKind.CLUBS, 0, "state", "In_Play")
            .set(StockKind.CLUBS, 0, "setting", "3|5");
        SheetRow head = row(workshop, StockKind.HEADS, 0);
        assertThat(head.cells()).containsEntry("category", "driver").containsEntry("weighed_with", "weights+screw")
            .containsEntry("read_at_setting", "3/5").containsEntry("port_g", "4+7.5").containsEntry("material", "titanium")
            .containsEntry("mass_g", "198.5").containsEntry("face_deg", "0").containsEntry("place", "drawer 3")
            .doesNotContainKey("bore_mm");
        assertThat(row(workshop, StockKind.GRIPS, 0).cell("rib")).contains("yes");
        assertThat(row(workshop, StockKind.SLEEVES, 0).cells()).containsEntry("fits", "Q2+Q3").containsEntry("hand", "both")
            .containsEntry("turns_shaft", "yes");
        assertThat(row(workshop, StockKind.WEIGHTS, 0).cell("port")).contains("tip");
        assertThat(row(workshop, StockKind.CLUBS, 0).cells()).containsEntry("state", "in play")
            .containsEntry("setting", "3/5");
        assertThat(row(workshop, StockKind.CLUBS, 1).cell("state")).contains("damaged");
    }

    @Test
    void columnsItDoesNotKnowStayAsWritten() {
        Workshop workshop = Workshop.in(folder).set(StockKind.HEADS, 1, "Bag Colour", "  Moss ").without(StockKind.HEADS, "place");
        workshop.write();
        workshop.write(StockKind.HEADS, workshop.text(StockKind.HEADS).replace("  Moss ", "\"  Moss \""));
        SheetRead sheets = InventoryReader.readSheets(StockFiles.inFolder(folder), false);
        assertThat(sheets.rows().get(0).extra()).isEmpty();
        assertThat(sheets.rows().get(1).extra()).containsExactly(Map.entry("Bag Colour", "  Moss "));
    }

    @Test
    void theSampleWorkshopReadsTheSameWithItsRows() {
        SheetRead sheets = InventoryReader.readSheets(StockFiles.inFolder(SampleFolder.PATH), false);
        assertThat(sheets.read()).isEqualTo(SampleFolder.read());
        assertThat(sheets.rows()).hasSize(sheets.read().rowsRead().values().stream().mapToInt(Integer::intValue).sum());
    }

    @Test
    void aFaultLeavesNoRowsUnlessTheGoodOnesAreWanted() {
        Workshop workshop = Workshop.in(folder).set(StockKind.SHAFTS, 0, "mass_g", "heavy");
        workshop.write();
        assertThat(InventoryReader.readSheets(StockFiles.inFolder(folder), false).rows()).isEmpty();
        SheetRead good = InventoryReader.readSheets(StockFiles.inFolder(folder), true);
        assertThat(good.rows()).extracting(row -> row.kind() + " " + row.tag()).as("the shaft's further frequency goes along")
            .containsExactly("HEADS H-1", "HEADS H-2", "SHAFTS S-2", "GRIPS G-1", "SLEEVES Q2-335", "WEIGHTS W-1", "CLUBS C-1",
                "CLUBS C-1", "SLEEVE_SETTINGS Q2-335");
    }

    @Test
    void aRowThatNoFileCouldGiveIsRefused() {
        Map<String, String> weight = Map.of("tag", "W-1", "port", "P8", "mass_g", "7", "count", "3");
        assertThat(new SheetRow(StockKind.WEIGHTS, weight, Map.of()).cells().keySet())
            .containsExactly("tag", "port", "mass_g", "count");
        assertThatIllegalArgumentException().isThrownBy(() -> new SheetRow(StockKind.SHAFTS,
            Map.of("tag", "S-1", "raw_length_in", "46"), Map.of()))
            .withMessage("a row of shafts.csv has no column raw_length_in");
        assertThatIllegalArgumentException().isThrownBy(() -> new SheetRow(StockKind.WEIGHTS, Map.of("port", "P8"), Map.of()))
            .withMessage("a row of weights.csv lacks tag");
        assertThatIllegalArgumentException().isThrownBy(() -> new SheetRow(StockKind.WEIGHTS, weight, Map.of("Mass G", "7")))
            .withMessage("an extra column of weights.csv is called \"Mass G\"");
        assertThatIllegalArgumentException().isThrownBy(() -> new SheetRow(StockKind.WEIGHTS, weight, Map.of("Shelf", " ")))
            .withMessage("the cell of Shelf is blank; a blank one is left out");
        assertThatIllegalArgumentException().isThrownBy(() -> new SheetRow(StockKind.LINES, Map.of("line", "x"), Map.of()));
        assertThat(List.of(StockKind.values()).stream().filter(StockKind::isStock)).hasSize(8);
    }
}
