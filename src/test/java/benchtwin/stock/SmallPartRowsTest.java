package benchtwin.stock;

import static benchtwin.stock.StockKind.GRIPS;
import static benchtwin.stock.StockKind.SLEEVES;
import static benchtwin.stock.StockKind.SLEEVE_SETTINGS;
import static benchtwin.stock.StockKind.WEIGHTS;
import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Ring;
import benchtwin.club.Sleeve;
import benchtwin.club.Weight;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rules of grips.csv, weights.csv, sleeves.csv and sleeve-settings.csv. */
class SmallPartRowsTest {

    @TempDir
    Path folder;

    private List<String> faults(StockKind kind, String column, String cell) {
        return Workshop.in(folder).set(kind, 0, column, cell).faults();
    }

    private Sleeve sleeve(Workshop workshop) {
        InventoryRead read = workshop.read();
        assertThat(read.faults()).extracting(Fault::text).isEmpty();
        return read.inventory().orElseThrow().sleeves().get(0);
    }

    @Test
    void aGripsRibIsYesOrNoOrItsOwnWord() {
        for (String rib : List.of("yes", "Ribbed", "TRUE", "1")) {
            assertThat(Workshop.in(folder).set(GRIPS, 0, "rib", rib).read().inventory().orElseThrow().grips().get(0).ribbed())
                .as(rib).isTrue();
        }
        for (String rib : List.of("no", "round", "False", "0", "")) {
            assertThat(Workshop.in(folder).set(GRIPS, 0, "rib", rib).read().inventory().orElseThrow().grips().get(0).ribbed())
                .as(rib).isFalse();
        }
    }

    @Test
    void aGripsCentreOfGravityLiesInIt() {
        assertThat(faults(GRIPS, "cg_in", "11")).containsExactly("grips.csv line 2, column cg_in: 11 is past the end of the "
            + "grip; expected inches from the butt end, above 0 and below 10.5");
    }

    @Test
    void weightsAreWeighedAndCounted() {
        assertThat(faults(WEIGHTS, "mass_g", "")).containsExactly(
            "weights.csv line 2, column mass_g: is blank; expected grams, such as 7");
        assertThat(faults(WEIGHTS, "count", "")).containsExactly(
            "weights.csv line 2, column count: is blank; expected how many are in the drawer, such as 3");
        assertThat(faults(WEIGHTS, "count", "-2")).containsExactly(
            "weights.csv line 2, column count: -2 is not possible; expected a number from 0 to 100000");
        assertThat(Workshop.in(folder).set(WEIGHTS, 0, "port", "TIP").read().inventory().orElseThrow().weights().get(0)
            .port()).isEqualTo(Weight.TIP);
    }

    @Test
    void aSleeveForBothHands() {
        assertThat(sleeve(Workshop.in(folder).set(SLEEVES, 0, "hand", "Both")).hand()).isEmpty();
        assertThat(sleeve(Workshop.in(folder).set(SLEEVES, 0, "hand", "")).hand()).isEmpty();
        assertThat(faults(SLEEVES, "hand", "bth")).containsExactly("sleeves.csv line 2, column hand: \"bth\" is not a word "
            + "of this column; expected one of right, left, both (did you mean both?)");
    }

    @Test
    void twoRingsAreReadInOrder() {
        assertThat(sleeve(Workshop.in(folder).onlyKinds(SLEEVES).set(SLEEVES, 0, "ring2_tilt_deg", "0.75").set(SLEEVES, 0, "ring2_settings", "5")
            .set(SLEEVES, 0, "ring2_offset_deg", "90")).rings()).containsExactly(new Ring(1, 12, 0), new Ring(0.75, 5, 90));
    }

    @Test
    void aRingIsWholeOrNotThere() {
        assertThat(faults(SLEEVES, "ring1_settings", "")).containsExactly("sleeves.csv line 2, column ring1_settings: is "
            + "blank; expected how many settings this ring has, such as 12");
        assertThat(faults(SLEEVES, "ring1_tilt_deg", "")).containsExactly(
            "sleeves.csv line 2, column ring1_tilt_deg: is blank; expected degrees of tilt of this ring, such as 1");
        assertThat(Workshop.in(folder).without(SLEEVES, "ring1_tilt_deg").without(SLEEVES, "ring1_settings")
            .without(SLEEVES, "ring1_offset_deg").set(SLEEVES, 0, "ring2_tilt_deg", "1")
            .set(SLEEVES, 0, "ring2_settings", "5").faults()).containsExactly("sleeves.csv line 2, column ring1_tilt_deg: is "
                + "blank; expected the outer ring first: a sleeve with one ring has it as ring1");
        assertThat(faults(SLEEVES, "ring1_settings", "4.5")).containsExactly(
            "sleeves.csv line 2, column ring1_settings: 4.5 is not a whole number; expected a whole number, such as 12");
    }

    @Test
    void aSleeveThatCannotBeSetIsAWarning() {
        assertThat(Workshop.in(folder).onlyKinds(SLEEVES).without(SLEEVES, "ring1_tilt_deg")
            .without(SLEEVES, "ring1_settings").without(SLEEVES, "ring1_offset_deg").warnings()).containsExactly(
                "sleeves.csv line 2, column sleeve: \"Q2-335\" has no rings and no measured settings, so it cannot be set; "
                    + "expected ring1_tilt_deg and ring1_settings, or its rows in sleeve-settings.csv");
    }

    @Test
    void aSleeveSaysWhetherItTurnsTheShaft() {
        assertThat(faults(SLEEVES, "turns_shaft", "")).containsExactly("sleeves.csv line 2, column turns_shaft: is blank; "
            + "expected yes when turning the sleeve turns shaft and grip, else no");
        assertThat(faults(SLEEVES, "fits", "")).containsExactly("sleeves.csv line 2, column fits: is blank; expected the "
            + "seats it fits, as heads name them in sleeve_fit, such as Q2+Q3");
    }

    @Test
    void aMeasuredSettingSaysHowItWasRead() {
        assertThat(faults(SLEEVE_SETTINGS, "reading", "")).containsExactly(
            "sleeve-settings.csv line 2, column reading: is blank; expected one of soled, square, edge");
        assertThat(faults(SLEEVE_SETTINGS, "dlie_deg", "")).containsExactly(
            "sleeve-settings.csv line 2, column dlie_deg: is blank; expected degrees, such as -0.4");
        assertThat(sleeve(Workshop.in(folder).set(SLEEVE_SETTINGS, 0, "dface_deg", "")).measured().get(0).dFaceDeg())
            .isEmpty();
    }

    @Test
    void aSettingIsMeasuredOnce() {
        assertThat(Workshop.in(folder).set(SLEEVE_SETTINGS, 0, "setting", "3/5").row(SLEEVE_SETTINGS, "sleeve=Q2-335",
            "setting=3+5", "dloft_deg=0", "dlie_deg=0", "reading=square").faults()).containsExactly("sleeve-settings.csv line "
                + "3, column setting: \"3+5\" is already on line 2 for sleeve Q2-335; expected every setting of a sleeve once");
    }
}
