package benchtwin.stock;

import static benchtwin.stock.StockKind.FREQUENCIES;
import static benchtwin.stock.StockKind.SHAFTS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules of shafts.csv and frequencies.csv. Row 0 is a pulled 46 in shaft, 45 in as it lies, on line 2. */
class ShaftRowsTest {

    @TempDir
    Path folder;

    private Workshop shafts() {
        return Workshop.in(folder).onlyKinds(SHAFTS, FREQUENCIES);
    }

    private List<String> faults(int row, String column, String cell) {
        return shafts().set(SHAFTS, row, column, cell).faults();
    }

    private Shaft shaft(Workshop workshop, int row) {
        InventoryRead read = workshop.read();
        assertThat(read.faults()).extracting(Fault::text).isEmpty();
        return read.inventory().orElseThrow().shafts().get(row);
    }

    /** 45 1/4 in is 1149.35 mm; the last way of writing it is rounded to the millimetre. */
    @ParameterizedTest
    @ValueSource(strings = {"45 1/4", "45-1/4", "45.25", "45 1/4 in", "45.25\"", "1149 mm", "1149mm"})
    void lengthsInInchesTakeFractionsAndMillimetres(String cell) {
        assertThat(shaft(shafts().set(SHAFTS, 1, "raw_length_in", cell), 1).rawLengthMm()).isCloseTo(1149.35, within(0.36));
    }

    @Test
    void aColumnInMillimetresTakesNoFraction() {
        Workshop metric = shafts().without(SHAFTS, "tip_in").set(SHAFTS, 0, "tip_mm", "8.5").set(SHAFTS, 1, "tip_mm", "9 mm");
        assertThat(shaft(metric, 1).tipMm()).isEqualTo(9);
        assertThat(metric.set(SHAFTS, 1, "tip_mm", "9 1/4").faults()).containsExactly(
            "shafts.csv line 3, column tip_mm: \"9 1/4\" is not a number; expected millimetres, such as 8.5");
        assertThat(metric.set(SHAFTS, 1, "tip_mm", "").faults()).containsExactly(
            "shafts.csv line 3, column tip_mm: is blank; expected millimetres, such as 8.5");
    }

    @Test
    void aBalancePointPastTheTipIsAFault() {
        assertThat(faults(0, "balance_in", "47.5")).containsExactly("shafts.csv line 2, column balance_in: 47.5 is past the "
            + "tip of a 45 in shaft; expected inches from the butt, above 0 and below 45");
        assertThat(shafts().without(SHAFTS, "balance_in").set(SHAFTS, 0, "balance_mm", "1150").faults()).containsExactly(
            "shafts.csv line 2, column balance_mm: 1150 is past the tip of a 1143 mm shaft; expected millimetres from the "
                + "butt, above 0 and below 1143");
    }

    @Test
    void aBalancePointOutsideTheMiddleThirdIsAWarning() {
        assertThat(shafts().set(SHAFTS, 0, "balance_in", "31").warnings()).containsExactly("shafts.csv line 2, column "
            + "balance_in: 31 is outside the middle third of the shaft; expected 15 to 30 from the butt as a rule");
    }

    @Test
    void cutsMustLeaveAShaft() {
        assertThat(faults(0, "tip_cut_in", "45.5")).contains("shafts.csv line 2, column tip_cut_in: 45.5 with the other cut "
            + "leaves nothing of the shaft; expected inches, both cuts together below 46");
    }

    @Test
    void aPulledShaftHasToSayItsCuts() {
        assertThat(shafts().set(SHAFTS, 0, "tip_cut_in", "").set(SHAFTS, 0, "butt_cut_in", "").faults()).containsExactly(
            "shafts.csv line 2, column tip_cut_in: is blank; expected inches cut off a pulled shaft, 0 for none",
            "shafts.csv line 2, column butt_cut_in: is blank; expected inches cut off a pulled shaft, 0 for none");
    }

    @Test
    void conditionAndPullsAgree() {
        assertThat(faults(1, "condition", "new")).isEmpty();
        assertThat(shafts().set(SHAFTS, 1, "condition", "new").set(SHAFTS, 1, "pulls", "2").faults()).containsExactly(
            "shafts.csv line 3, column pulls: 2 does not go with condition new; expected 0 or a blank cell, or condition "
                + "pulled");
        Shaft untold = shaft(shafts().set(SHAFTS, 0, "condition", "").set(SHAFTS, 0, "pulls", ""), 0);
        assertThat(untold.condition()).as("it has a sleeve on").isEqualTo(ShaftCondition.PULLED);
        assertThat(untold.pulls()).isEqualTo(1);
        assertThat(faults(0, "pulls", "1.5")).containsExactly(
            "shafts.csv line 2, column pulls: 1.5 is not a whole number; expected a whole number, such as 1");
    }

    @Test
    void theParallelTipGoesWithTheTipKind() {
        assertThat(faults(0, "parallel_tip_in", "")).containsExactly(
            "shafts.csv line 2, column parallel_tip_in: is blank; expected inches of parallel tip as made");
        assertThat(faults(1, "parallel_tip_in", "3")).containsExactly(
            "shafts.csv line 3, column parallel_tip_in: 3 does not go with a taper tip; expected 0 or a blank cell");
        assertThat(faults(0, "parallel_tip_in", "46")).containsExactly("shafts.csv line 2, column parallel_tip_in: 46 is as "
            + "long as the shaft or longer; expected inches below 46, the raw length");
    }

    @Test
    void whatAShaftIsMeantForIsAListOfCategories() {
        assertThat(faults(0, "meant_for", "driver+farway")).containsExactly("shafts.csv line 2, column meant_for: \"farway\" "
            + "is not a word of this column; expected one of driver, fairway, hybrid, iron, wedge, putter (did you mean "
            + "fairway?)");
        assertThat(faults(0, "meant_for", "")).containsExactly("shafts.csv line 2, column meant_for: is blank; expected the "
            + "categories it is meant for, such as driver+fairway");
    }

    @Test
    void anUnusualFrequencyIsAWarningAnImpossibleOneAFault() {
        assertThat(shafts().set(SHAFTS, 0, "frequency_cpm", "449").warnings()).containsExactly(
            "shafts.csv line 2, column frequency_cpm: 449 is unusual; expected 150 to 400 as a rule");
        assertThat(faults(0, "frequency_cpm", "0")).containsExactly("shafts.csv line 2, column frequency_cpm: 0 is not "
            + "possible; expected cycles per minute from 20 to 2000");
    }

    @Test
    void clampAndFreeLengthAreTheShaftAsItLies() {
        Shaft fromClamp = shaft(shafts().set(SHAFTS, 0, "free_length_in", ""), 0);
        assertThat(fromClamp.frequencies().get(0).freeLengthMm().getAsDouble()).isCloseTo(40 * 25.4, within(1e-9));
        Shaft fromFree = shaft(shafts().set(SHAFTS, 0, "clamp_in", ""), 0);
        assertThat(fromFree.frequencies().get(0).clampMm().getAsDouble()).isCloseTo(5 * 25.4, within(1e-9));
        Shaft neither = shaft(shafts().set(SHAFTS, 0, "clamp_in", "").set(SHAFTS, 0, "free_length_in", ""), 0);
        assertThat(neither.frequencies().get(0).clampMm()).isEmpty();
        assertThat(neither.frequencies().get(0).freeLengthMm()).isEmpty();
    }

    @Test
    void clampAndFreeLengthMayMissTheLengthByThreeMillimetres() {
        assertThat(shafts().set(SHAFTS, 0, "free_length_in", "1018.9 mm").warnings()).as("1016 mm and 2.9").isEmpty();
        assertThat(shafts().set(SHAFTS, 0, "free_length_in", "41").warnings()).containsExactly("shafts.csv line 2, column "
            + "free_length_in: 41 and the clamp do not add up to the shaft as it lies; expected 40 for this clamp");
        assertThat(shafts().set(FREQUENCIES, 0, "clamp_in", "5").warnings()).containsExactly("frequencies.csv line 2, column "
            + "free_length_in: 36 and the clamp do not add up to the shaft as it lies; expected 40 for this clamp");
    }

    @Test
    void aReadingOverTheGripIsSoByDefaultWhereAGripIsOn() {
        Workshop gripped = shafts().set(SHAFTS, 0, "grip_on", "G-1").set(SHAFTS, 0, "over_grip", "")
            .set(FREQUENCIES, 0, "over_grip", "");
        assertThat(shaft(gripped, 0).frequencies()).extracting(reading -> reading.overGrip()).containsExactly(true, true);
        assertThat(shaft(shafts().set(SHAFTS, 0, "over_grip", "").set(FREQUENCIES, 0, "over_grip", "YES"), 0).frequencies())
            .extracting(reading -> reading.overGrip()).containsExactly(false, true);
        assertThat(faults(0, "over_grip", "perhaps")).containsExactly("shafts.csv line 2, column over_grip: \"perhaps\" is "
            + "neither yes nor no; expected yes, no, true, false, 1 or 0");
    }

    @Test
    void aFurtherReadingNeedsItsShaftAndItsFrequency() {
        assertThat(shafts().set(FREQUENCIES, 0, "tag", "S-9").faults()).containsExactly("frequencies.csv line 2, column tag: "
            + "\"S-9\" is not in shafts.csv; expected something that file has (did you mean S-1?)");
        assertThat(shafts().set(FREQUENCIES, 0, "frequency_cpm", "").faults()).containsExactly(
            "frequencies.csv line 2, column frequency_cpm: is blank; expected cycles per minute, such as 310");
    }

    @Test
    void furtherReadingsAreNotReadWithoutTheShafts() {
        assertThat(shafts().onlyKinds(FREQUENCIES).faults()).containsExactly(
            "frequencies.csv: was read without the shafts it speaks of; expected shafts.csv beside it");
    }

    @Test
    void aFurtherReadingKeepsItsDayAndGauge() {
        Shaft shaft = shaft(shafts().set(FREQUENCIES, 0, "measured_on", "2026-05-03").set(FREQUENCIES, 0, "gauge", "bench 1"), 0);
        assertThat(shaft.frequencies().get(1).cpm().taken().on()).isPresent();
        assertThat(shaft.frequencies().get(1).cpm().taken().gauge()).contains("bench 1");
    }
}
