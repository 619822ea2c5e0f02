package benchtwin.stock;

import static benchtwin.stock.StockKind.HEADS;
import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.AngleReading;
import benchtwin.club.Head;
import benchtwin.club.HeadMaterial;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rules of heads.csv. Row 0 is a sleeved driver on line 2, row 1 a bored 7-iron on line 3. */
class HeadRowsTest {

    @TempDir
    Path folder;

    private Workshop heads() {
        return Workshop.in(folder).onlyKinds(HEADS);
    }

    private List<String> faults(int row, String column, String cell) {
        return heads().set(HEADS, row, column, cell).faults();
    }

    private List<String> warnings(int row, String column, String cell) {
        return heads().set(HEADS, row, column, cell).warnings();
    }

    private Head head(int row, String column, String cell) {
        InventoryRead read = heads().set(HEADS, row, column, cell).read();
        assertThat(read.faults()).extracting(Fault::text).isEmpty();
        return read.inventory().orElseThrow().heads().get(row);
    }

    @Test
    void anImpossibleLieIsAFaultAnUnusualOneAWarning() {
        assertThat(faults(0, "lie_deg", "95")).containsExactly(
            "heads.csv line 2, column lie_deg: 95 is not possible; expected degrees from 30 to 90");
        assertThat(warnings(0, "lie_deg", "68")).containsExactly(
            "heads.csv line 2, column lie_deg: 68 is unusual for a driver; expected 54 to 62 as a rule");
        assertThat(warnings(1, "lie_deg", "70")).containsExactly(
            "heads.csv line 3, column lie_deg: 70 is unusual for an iron; expected 56 to 68 as a rule");
    }

    @Test
    void theEndsOfARangeBelongToIt() {
        assertThat(warnings(0, "lie_deg", "62")).isEmpty();
        assertThat(warnings(0, "lie_deg", "62.1")).hasSize(1);
        assertThat(warnings(0, "lie_deg", "90")).hasSize(1);
        assertThat(faults(0, "lie_deg", "90.1")).hasSize(1);
        assertThat(faults(0, "loft_deg", "-20.1")).containsExactly(
            "heads.csv line 2, column loft_deg: -20.1 is not possible; expected degrees from -20 to 90");
    }

    @Test
    void unusualLoftAndMassAreWarnings() {
        assertThat(warnings(0, "loft_deg", "17")).containsExactly(
            "heads.csv line 2, column loft_deg: 17 is unusual for a driver; expected 6 to 16 as a rule");
        assertThat(warnings(1, "mass_g", "198")).containsExactly(
            "heads.csv line 3, column mass_g: 198 is unusual for an iron; expected 220 to 315 as a rule");
        assertThat(faults(1, "mass_g", "-3")).containsExactly(
            "heads.csv line 3, column mass_g: -3 is not possible; expected grams from 20 to 2000");
    }

    @Test
    void everyFaultOfARowIsReportedAtOnce() {
        assertThat(heads().set(HEADS, 0, "tag", "").set(HEADS, 0, "hand", "rihgt").set(HEADS, 0, "loft_deg", "nine")
            .set(HEADS, 1, "category", "irn").faults()).containsExactly(
                "heads.csv line 2, column tag: is blank; expected a value, such as H-014",
                "heads.csv line 2, column hand: \"rihgt\" is not a word of this column; expected one of right, left "
                    + "(did you mean right?)",
                "heads.csv line 2, column loft_deg: \"nine\" is not a number; expected degrees, such as 9.3",
                "heads.csv line 3, column category: \"irn\" is not a word of this column; expected one of driver, fairway, "
                    + "hybrid, iron, wedge, putter (did you mean iron?)");
    }

    @Test
    void requiredCellsMustBeFilled() {
        assertThat(heads().set(HEADS, 1, "model", "").set(HEADS, 1, "category", "").set(HEADS, 1, "hand", "")
            .set(HEADS, 1, "adjust", "").faults()).containsExactly(
                "heads.csv line 3, column model: is blank; expected a value, such as Alder 2",
                "heads.csv line 3, column category: is blank; expected one of driver, fairway, hybrid, iron, wedge, putter",
                "heads.csv line 3, column hand: is blank; expected one of right, left",
                "heads.csv line 3, column adjust: is blank; expected one of bend, sleeve, fixed");
    }

    @Test
    void wordsTakeAnyCaseAndSpacing() {
        assertThat(head(1, "material", " Carbon Steel ").material()).isEqualTo(HeadMaterial.CARBON_STEEL);
        assertThat(head(1, "material", "17-4").material()).isEqualTo(HeadMaterial.STAINLESS_17_4);
        assertThat(head(1, "material", "").material()).isEqualTo(HeadMaterial.UNKNOWN);
        assertThat(faults(1, "material", "titanum")).containsExactly("heads.csv line 3, column material: \"titanum\" is not "
            + "a word of this column; expected one of carbon-steel, 431, soft-stainless, 17-4, titanium, hollow, aluminium, "
            + "zinc, unknown (did you mean titanium?)");
    }

    @Test
    void aWoodMustSayHowItWasRead() {
        assertThat(faults(0, "reading", "")).containsExactly(
            "heads.csv line 2, column reading: is blank; expected how its angles were read: soled or square");
        assertThat(faults(0, "reading", "edge")).containsExactly("heads.csv line 2, column reading: \"edge\" does not go "
            + "with a driver or fairway wood; expected soled or square");
        assertThat(faults(1, "reading", "soled")).containsExactly("heads.csv line 3, column reading: \"soled\" does not go "
            + "with an iron, wedge or putter; expected edge");
    }

    @Test
    void aWoodWithoutAnglesNeedsNoReading() {
        InventoryRead read = heads().set(HEADS, 0, "reading", "").set(HEADS, 0, "loft_deg", "").set(HEADS, 0, "lie_deg", "")
            .set(HEADS, 0, "face_deg", "").read();
        assertThat(read.inventory().orElseThrow().heads().get(0).angles().loftDeg()).isEmpty();
    }

    @Test
    void aHybridIsWhatItsReadingSays() {
        Workshop hybrid = heads().set(HEADS, 0, "category", "hybrid").set(HEADS, 0, "mass_g", "230")
            .set(HEADS, 0, "loft_deg", "19");
        assertThat(hybrid.set(HEADS, 0, "reading", "edge").read().inventory().orElseThrow().heads().get(0).isWood()).isFalse();
        Head square = hybrid.set(HEADS, 0, "reading", "SQUARE").read().inventory().orElseThrow().heads().get(0);
        assertThat(square.angles().reading()).isEqualTo(AngleReading.SQUARE);
        assertThat(square.angles().loftDeg().orElseThrow().standardUncertainty()).isEqualTo(0.3);
        assertThat(hybrid.set(HEADS, 0, "reading", "").faults()).containsExactly(
            "heads.csv line 2, column reading: is blank; expected how its angles were read: soled, square or edge");
    }

    @Test
    void anIronNeedsItsNumber() {
        assertThat(faults(1, "number", "")).containsExactly(
            "heads.csv line 3, column number: is blank; expected an iron's number, such as 7 or PW");
        assertThat(head(0, "number", "").number()).isEmpty();
    }

    @Test
    void aSleevedHeadHasASeatAndNoBore() {
        assertThat(heads().set(HEADS, 0, "sleeve_fit", "").set(HEADS, 0, "bore_in", "0.335")
            .set(HEADS, 0, "bore_depth_mm", "30").faults()).containsExactly(
                "heads.csv line 2, column bore_in: 0.335 does not go with adjust sleeve; expected a blank cell: the bore is "
                    + "the sleeve's",
                "heads.csv line 2, column bore_depth_mm: 30 does not go with adjust sleeve; expected a blank cell: the bore "
                    + "is the sleeve's",
                "heads.csv line 2, column sleeve_fit: is blank; expected a value, such as Q2");
    }

    @Test
    void aBoredHeadHasABoreAndNoSeat() {
        assertThat(heads().set(HEADS, 1, "bore_in", "").set(HEADS, 1, "bore_kind", "").set(HEADS, 1, "sleeve_fit", "Q2")
            .faults()).containsExactly(
                "heads.csv line 3, column bore_in: is blank; expected inches, such as 0.335",
                "heads.csv line 3, column bore_kind: is blank; expected one of parallel, taper, over-hosel",
                "heads.csv line 3, column sleeve_fit: \"Q2\" does not go with adjust bend; expected a blank cell, or adjust "
                    + "sleeve");
    }

    @Test
    void zincIsNotBent() {
        assertThat(warnings(1, "material", "zinc")).containsExactly(
            "heads.csv line 3, column adjust: \"bend\" is never done with zinc; expected fixed");
    }

    @Test
    void portsAndTheirMassesGoInPairs() {
        assertThat(faults(0, "port_g", "4")).containsExactly("heads.csv line 2, column port_g: 4 gives 1 masses for 2 ports; "
            + "expected one mass for each port, such as 4+7");
        assertThat(faults(0, "port_g", "")).containsExactly("heads.csv line 2, column port_g: is blank; expected the mass "
            + "now in each port, 0 for an empty one, such as 4+0");
        assertThat(faults(0, "port_g", "4+x")).containsExactly(
            "heads.csv line 2, column port_g: \"x\" is not a number; expected grams, such as 4");
        assertThat(faults(0, "port", "P8+")).contains("heads.csv line 2, column port: \"P8+\" has an empty place in its "
            + "list; expected members joined by +, such as P8");
        assertThat(head(0, "port", "P8|P6").ports()).extracting(port -> port.type()).containsExactly("P8", "P6");
    }

    @Test
    void bareMeansNothingElseWasOnIt() {
        assertThat(faults(0, "weighed_with", "bare+screw")).containsExactly("heads.csv line 2, column weighed_with: "
            + "\"bare+screw\" says bare and something more; expected bare alone, or what was on it, such as weights+screw");
    }

    @Test
    void aLengthMayComeInEitherUnitOrBothAlike() {
        assertThat(heads().without(HEADS, "bore_in").set(HEADS, 1, "bore_mm", "9.4").read().inventory().orElseThrow().heads()
            .get(1).bore().orElseThrow().diameterMm()).isEqualTo(9.4);
        assertThat(heads().without(HEADS, "bore_depth_mm").set(HEADS, 1, "bore_depth_in", "1 1/4").read().inventory()
            .orElseThrow().heads().get(1).bore().orElseThrow().depthMm().orElseThrow().value()).isEqualTo(31.75);
        assertThat(heads().set(HEADS, 1, "bore_mm", "9.4").faults()).as("0.37 in is 9.398 mm").isEmpty();
        assertThat(heads().set(HEADS, 1, "bore_mm", "9").faults()).containsExactly("heads.csv line 3, column bore_mm: 9 does "
            + "not agree with 0.37 in column bore_in; expected one of the two, or both alike");
    }

    @Test
    void aFaultUnderTheOtherUnitSpeaksThatUnit() {
        assertThat(heads().without(HEADS, "bore_in").set(HEADS, 1, "bore_mm", "0.335 taper").faults()).containsExactly(
            "heads.csv line 3, column bore_mm: \"0.335 taper\" is not a number; expected millimetres, such as 8.5");
        assertThat(faults(1, "bore_in", "9.4")).containsExactly(
            "heads.csv line 3, column bore_in: 9.4 is not possible; expected inches from 0.08 to 1.18");
    }

    @Test
    void aTagTwiceIsRefusedWithBothLines() {
        Workshop twice = heads().set(HEADS, 1, "tag", "H-1");
        assertThat(twice.faults()).containsExactly(
            "heads.csv line 3, column tag: \"H-1\" is already on line 2; expected every tag once");
        assertThat(twice.readGoodRows().inventory().orElseThrow().heads()).as("nobody knows which is right").isEmpty();
    }

    @Test
    void aTagFitsOnALabel() {
        assertThat(faults(0, "tag", "H\n1")).containsExactly("heads.csv line 2, column tag: \"H 1\" is too long, or broken "
            + "over lines; expected at most 80 characters on one line");
    }
}
