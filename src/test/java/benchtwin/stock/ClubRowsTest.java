package benchtwin.stock;

import static benchtwin.stock.StockKind.CLUBS;
import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.ClubRow;
import benchtwin.club.RecordedClub;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rules of clubs.csv. Rows 0 and 1 are one driver on two days, on lines 2 and 3. */
class ClubRowsTest {

    @TempDir
    Path folder;

    private Workshop clubs() {
        return Workshop.in(folder).onlyKinds(CLUBS);
    }

    private List<String> faults(String column, String cell) {
        return clubs().set(CLUBS, 0, column, cell).faults();
    }

    private ClubRow first(Workshop workshop) {
        InventoryRead read = workshop.read();
        assertThat(read.faults()).extracting(Fault::text).isEmpty();
        return read.inventory().orElseThrow().clubs().get(0).rows().get(0);
    }

    @Test
    void theDayIsRequiredAndIso() {
        assertThat(faults("measured_on", "")).containsExactly(
            "clubs.csv line 2, column measured_on: is blank; expected the day it was measured, such as 2026-05-03");
        for (String day : List.of("3.5.2026", "2026-02-30", "2026-5-3", "0026-05-03", "05/03/2026")) {
            assertThat(faults("measured_on", day)).containsExactly("clubs.csv line 2, column measured_on: \"" + day
                + "\" is not a date; expected year-month-day, such as 2026-05-03");
        }
    }

    @Test
    void oneClubIsMeasuredOnceADay() {
        assertThat(clubs().set(CLUBS, 1, "measured_on", "2026-05-03").faults()).containsExactly("clubs.csv line 3, column "
            + "measured_on: \"2026-05-03\" is already on line 2 for tag C-1; expected every measured_on of a tag once");
    }

    @Test
    void rowsOfOneClubAgreeOnWhatItIs() {
        assertThat(clubs().set(CLUBS, 1, "hand", "left").set(CLUBS, 1, "player", "A. Brook").faults()).containsExactly(
            "clubs.csv line 3, column player: \"A. Brook\" is not what line 2 says of club C-1; expected Ansel Brook, or "
                + "another tag",
            "clubs.csv line 3, column hand: \"left\" is not what line 2 says of club C-1; expected right, or another tag");
    }

    @Test
    void rowsStandByDateWhateverTheirOrder() {
        RecordedClub club = clubs().set(CLUBS, 1, "measured_on", "2025-11-02").read().inventory().orElseThrow().clubs().get(0);
        assertThat(club.rows()).extracting(ClubRow::measuredOn)
            .containsExactly(LocalDate.of(2025, 11, 2), LocalDate.of(2026, 5, 3));
    }

    @Test
    void statesAreWords() {
        assertThat(faults("state", "demaged")).containsExactly("clubs.csv line 2, column state: \"demaged\" is not a word of "
            + "this column; expected one of in play, backup, test, damaged, stripped, retired (did you mean damaged?)");
        assertThat(faults("state", "In_Play")).isEmpty();
    }

    @Test
    void aLengthSaysHowItWasTaken() {
        assertThat(faults("length_method", "")).containsExactly("clubs.csv line 2, column length_method: is blank; expected "
            + "how the length was taken: axis, rules60, ruler");
        assertThat(clubs().set(CLUBS, 0, "length_in", "49").warnings()).containsExactly(
            "clubs.csv line 2, column length_in: 49 is unusual for a driver; expected 41.93 to 47.05 as a rule");
    }

    @Test
    void swingWeightIsALetterOrPlainPointsUnderTheirOwnName() {
        assertThat(first(clubs().set(CLUBS, 0, "swing_weight", "d 2")).swingWeightPoints().orElseThrow().value())
            .isEqualTo(32);
        assertThat(first(clubs().without(CLUBS, "swing_weight").set(CLUBS, 0, "swing_weight_points", "32.4"))
            .swingWeightPoints().orElseThrow().value()).isEqualTo(32.4);
        assertThat(faults("swing_weight", "32.4")).containsExactly("clubs.csv line 2, column swing_weight: 32.4 is not a "
            + "swing weight; expected a letter A to G and points, such as D2.4; plain points go under swing_weight_points");
        assertThat(clubs().set(CLUBS, 0, "swing_weight_points", "40").faults()).containsExactly("clubs.csv line 2, column "
            + "swing_weight_points: 40 does not agree with D2.4 in column swing_weight; expected one of the two, or both "
            + "alike");
        assertThat(faults("swing_weight", "D10")).hasSize(1);
        assertThat(clubs().set(CLUBS, 0, "swing_weight", "B0.5").warnings()).isEmpty();
        assertThat(clubs().set(CLUBS, 0, "swing_weight", "A0.5").warnings()).containsExactly(
            "clubs.csv line 2, column swing_weight: \"A0.5\" is unusual for a driver; expected 10 to 60 as a rule");
    }

    @Test
    void aFrequencyWithoutOverGripIsTakenOverTheGripAndSaid() {
        Workshop untold = clubs().set(CLUBS, 0, "over_grip", "");
        assertThat(first(untold).frequency().orElseThrow().overGrip()).isTrue();
        assertThat(untold.warnings()).containsExactly("clubs.csv line 2, column over_grip: is blank beside a frequency and "
            + "taken as yes; expected yes or no");
        assertThat(first(clubs().set(CLUBS, 0, "over_grip", "0")).frequency().orElseThrow().overGrip()).isFalse();
    }

    @Test
    void twoRingSettingsAreWrittenInAnyOfThreeWays() {
        for (String setting : List.of("3/5", "3+5", "3 | 5")) {
            assertThat(first(clubs().set(CLUBS, 0, "setting", setting)).setting()).contains("3/5");
        }
        assertThat(first(clubs().set(CLUBS, 0, "setting", "up")).setting()).contains("up");
    }

    @Test
    void formulasAreKeptAsTyped() {
        assertThat(first(clubs().set(CLUBS, 0, "note", "=HYPERLINK(1)")).note()).contains("=HYPERLINK(1)");
        assertThat(faults("total_mass_g", "=300+18")).containsExactly(
            "clubs.csv line 2, column total_mass_g: \"=300+18\" is not a number; expected grams, such as 318");
    }

    @Test
    void tapeLayersBlankAreOneAndZeroIsZero() {
        assertThat(first(clubs()).masses().tapeLayers()).isEqualTo(1);
        assertThat(first(clubs().set(CLUBS, 0, "tape_layers", "0")).masses().tapeLayers()).isZero();
        assertThat(faults("tape_layers", "-1")).containsExactly(
            "clubs.csv line 2, column tape_layers: -1 is not possible; expected a number from 0 to 60");
    }
}
