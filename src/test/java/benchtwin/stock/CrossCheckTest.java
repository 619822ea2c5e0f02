package benchtwin.stock;

import static benchtwin.stock.StockKind.CLUBS;
import static benchtwin.stock.StockKind.GRIPS;
import static benchtwin.stock.StockKind.HEADS;
import static benchtwin.stock.StockKind.SHAFTS;
import static benchtwin.stock.StockKind.SLEEVES;
import static benchtwin.stock.StockKind.SLEEVE_SETTINGS;
import static benchtwin.stock.StockKind.WEIGHTS;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files read together know each other's tags; a file that is not there is not missed. */
class CrossCheckTest {

    @TempDir
    Path folder;

    @Test
    void aClubOfUnknownParts() {
        assertThat(Workshop.in(folder).set(CLUBS, 0, "head", "H-9").set(CLUBS, 0, "shaft", "long one")
            .set(CLUBS, 0, "grip", "g-1").set(CLUBS, 0, "sleeve", "none").warnings()).containsExactly(
                "clubs.csv line 2, column head: \"H-9\" is not in heads.csv; expected something that file has (did you mean "
                    + "H-1?)",
                "clubs.csv line 2, column shaft: \"long one\" is not in shafts.csv; expected something that file has",
                "clubs.csv line 2, column grip: \"g-1\" is not in grips.csv; expected something that file has (did you mean "
                    + "G-1?)",
                "clubs.csv line 2, column sleeve: \"none\" is not in sleeves.csv; expected something that file has");
    }

    @Test
    void aShaftWithAnUnknownSleeveOrGripOn() {
        assertThat(Workshop.in(folder).set(SHAFTS, 0, "sleeve_on", "Q2-336").set(SHAFTS, 1, "grip_on", "G-2").warnings())
            .containsExactly(
                "shafts.csv line 2, column sleeve_on: \"Q2-336\" is not in sleeves.csv; expected something that file has "
                    + "(did you mean Q2-335?)",
                "shafts.csv line 3, column grip_on: \"G-2\" is not in grips.csv; expected something that file has (did you "
                    + "mean G-1?)");
    }

    @Test
    void aSettingOfAnUnknownSleeve() {
        assertThat(Workshop.in(folder).set(SLEEVE_SETTINGS, 0, "sleeve", "Q9").warnings()).containsExactly(
            "sleeve-settings.csv line 2, column sleeve: \"Q9\" is not in sleeves.csv; expected something that file has");
    }

    @Test
    void aSeatThatNoSleeveFits() {
        assertThat(Workshop.in(folder).set(HEADS, 0, "sleeve_fit", "Q4").warnings()).containsExactly("heads.csv line 2, "
            + "column sleeve_fit: \"Q4\" is not under fits of any sleeve in sleeves.csv; expected a seat that some sleeve "
            + "fits (did you mean Q2?)");
    }

    @Test
    void aSettingTheSleeveDoesNotHave() {
        Workshop rings = Workshop.in(folder).onlyKinds(CLUBS, SLEEVES);
        assertThat(rings.set(CLUBS, 0, "setting", "12").warnings()).isEmpty();
        assertThat(rings.set(CLUBS, 0, "setting", "13").warnings()).containsExactly(
            "clubs.csv line 2, column setting: 13 is not a setting of sleeve Q2-335; expected 1 to 12");
        rings.set(SLEEVES, 0, "ring2_tilt_deg", "1").set(SLEEVES, 0, "ring2_settings", "5");
        assertThat(rings.set(CLUBS, 0, "setting", "12/5").warnings()).isEmpty();
        assertThat(rings.set(CLUBS, 0, "setting", "12/6").warnings()).containsExactly("clubs.csv line 2, column setting: "
            + "\"12/6\" is not a setting of sleeve Q2-335; expected outer/inner, 1/1 to 12/5");
        assertThat(rings.set(CLUBS, 0, "setting", "5").warnings()).hasSize(1);
        assertThat(Workshop.in(folder).set(CLUBS, 0, "setting", "2").warnings()).containsExactly("clubs.csv line 2, column "
            + "setting: 2 is not a setting of sleeve Q2-335; expected one of its measured settings");
    }

    @Test
    void aFileThatIsNotThereIsNotMissed() {
        assertThat(Workshop.in(folder).onlyKinds(CLUBS).set(CLUBS, 0, "head", "H-9").warnings()).isEmpty();
    }

    @Test
    void measuredSettingsWithoutTheirSleevesAreAWarning() {
        assertThat(Workshop.in(folder).onlyKinds(SLEEVE_SETTINGS).warnings()).containsExactly(
            "sleeve-settings.csv: was read without the sleeves it speaks of; expected sleeves.csv beside it");
    }

    @Test
    void aPartWithAFaultIsStillKnown() {
        InventoryRead read = Workshop.in(folder).set(GRIPS, 0, "mass_g", "x").set(WEIGHTS, 0, "mass_g", "x").read();
        assertThat(read.warnings()).isEmpty();
        assertThat(read.faults()).hasSize(2);
    }
}
