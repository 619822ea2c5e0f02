package benchtwin.stock;

import static benchtwin.stock.StockKind.LINES;
import static benchtwin.stock.StockKind.SET_TARGETS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Line;
import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of lines.csv and of what lies on a line. Rows 0 and 1, on lines 2 and 3: a frequency by the inch, a constant. */
class LineRowsTest {

    @TempDir
    Path folder;

    private Workshop sets() {
        return Workshop.in(folder).onlyKinds(SET_TARGETS, LINES);
    }

    private static List<String> texts(List<Fault> faults) {
        return faults.stream().map(Fault::text).toList();
    }

    private static List<String> faults(Workshop workshop) {
        SetTargetRead read = workshop.readSets(false);
        assertThat(read.targets().isEmpty()).isEqualTo(!read.faults().isEmpty());
        return texts(read.faults());
    }

    private static List<String> warnings(Workshop workshop) {
        SetTargetRead read = workshop.readSets(false);
        assertThat(texts(read.faults())).isEmpty();
        return texts(read.warnings());
    }

    @ParameterizedTest
    @CsvSource({
        "quantity, lie, '\"lie\" is not a word of this column; expected one of frequency, swing-weight, butt-inertia, loft'",
        "quantity, frequncy, '\"frequncy\" is not a word of this column; expected one of frequency, swing-weight, "
            + "butt-inertia, loft (did you mean frequency?)'",
        "quantity, '', 'is blank; expected one of frequency, swing-weight, butt-inertia, loft'",
        "anchor_value, D2, '\"D2\" is not a number; expected cycles per minute, such as 300'",
        "anchor_value, 5, '5 is not possible; expected cycles per minute from 20 to 2000'",
        "anchor_value, '', 'is blank; expected a value, such as 300'",
        "slope, steep, '\"steep\" is not a number; expected cycles per minute a step, such as 8, or 0 for the same at every "
            + "club'",
        "slope, 1e4, '\"1e4\" is not possible; expected cycles per minute a step from -500 to 500'",
        "per, mile, '\"mile\" is not a word of this column; expected one of inch, club'",
        "anchor_club, '', 'is blank; expected a value, such as 7-iron'"})
    void wrongCells(String column, String cell, String message) {
        assertThat(faults(sets().set(LINES, 0, column, cell))).containsExactly("lines.csv line 2, column %s: %s"
            .formatted(column, message));
    }

    @Test
    void unusualValuesAreWarnings() {
        assertThat(warnings(sets().set(LINES, 0, "anchor_value", "500").set(LINES, 0, "slope", "-8"))).containsExactly(
            "lines.csv line 2, column anchor_value: 500 is unusual; expected cycles per minute from 150 to 400 as a rule",
            "lines.csv line 2, column slope: -8 is unusual; expected cycles per minute a step from 0 to 15 as a rule");
    }

    @Test
    void aSwingWeightIsLetterAndPointsOrPlainPoints() {
        for (String same : List.of("D2", "d 2.0", "32")) {
            SetTargetRead read = sets().set(LINES, 1, "anchor_value", same).readSets(false);
            assertThat(read.targets().orElseThrow().line("even").map(Line::anchorValue)).contains(32.0);
        }
        assertThat(faults(sets().set(LINES, 1, "anchor_value", "D12"))).containsExactly("lines.csv line 3, column "
            + "anchor_value: \"D12\" is not a number; expected points, such as D2.4 or 32.4");
    }

    @Test
    void aLineStandsOnce() {
        assertThat(faults(sets().set(LINES, 1, "line", "irons"))).contains(
            "lines.csv line 3, column line: \"irons\" is already on line 2; expected every line once");
    }

    @Test
    void aLineThatIsNotThereGetsASuggestion() {
        assertThat(faults(sets().set(SET_TARGETS, 1, "frequency_line", "iron").set(SET_TARGETS, 2, "swing_line", "flat")))
            .containsExactly("set-targets.csv line 3, column frequency_line: \"iron\" is not in lines.csv; expected something "
                + "that file has (did you mean irons?)", "set-targets.csv line 4, column swing_line: \"flat\" is not in "
                + "lines.csv; expected something that file has");
    }

    @Test
    void withoutAFileOfLinesNoClubMayNameOne() {
        assertThat(faults(sets().onlyKinds(SET_TARGETS))).hasSize(4).startsWith("set-targets.csv line 3, column "
            + "frequency_line: \"irons\" names a line, and no lines were given; expected lines.csv with that line");
    }

    @Test
    void aFileOfLinesThatCannotBeReadIsOneFault() {
        assertThat(faults(sets().without(LINES, "slope"))).singleElement().asString()
            .startsWith("lines.csv line 1, column slope: is missing from the header");
    }

    @Test
    void aLineGoesWithItsColumn() {
        assertThat(faults(sets().set(SET_TARGETS, 1, "swing_line", "irons").set(SET_TARGETS, 2, "frequency_line", "even")))
            .containsExactly("set-targets.csv line 3, column swing_line: \"irons\" is a line of frequency; expected a line of "
                + "swing-weight or butt-inertia", "set-targets.csv line 4, column frequency_line: \"even\" is a line of "
                + "swing-weight; expected a line of frequency");
    }

    @Test
    void aSlopeNeedsItsAnchorInEverySetAndAConstantOnlyShould() {
        assertThat(faults(sets().set(LINES, 0, "anchor_club", "7 irn"))).containsExactly("lines.csv line 2, column "
            + "anchor_club: \"7 irn\" is in no set that uses this line; expected a club of theirs (did you mean 7-iron?)");
        assertThat(warnings(sets().set(LINES, 1, "anchor_club", "mid"))).containsExactly("lines.csv line 3, column "
            + "anchor_club: \"mid\" is in no set that uses this line; expected a club of theirs");
        assertThat(faults(sets().row(SET_TARGETS, "player=R. Fenn", "club=8-iron", "category=iron", "number=8", "hand=right",
            "length_in=36.5", "frequency_line=irons", "swing_line=even"))).containsExactly("set-targets.csv line 5, column "
            + "frequency_line: \"irons\" goes from club 7-iron, which R. Fenn does not have; expected that club in the set, or "
            + "a line from another");
    }

    @Test
    void aLineByTheInchNeedsBothLengths() {
        String itself = "set-targets.csv line %d, column frequency_line: \"irons\" goes by the inch, and this club has no "
            + "length; expected its length, or a line per club";
        assertThat(faults(sets().set(SET_TARGETS, 2, "length_in", ""))).containsExactly(itself.formatted(4));
        assertThat(faults(sets().set(SET_TARGETS, 1, "length_in", ""))).containsExactly(itself.formatted(3),
            "set-targets.csv line 4, column frequency_line: \"irons\" goes by the inch, and its anchor club on line 3 has no "
                + "length; expected that length, or a line per club");
        assertThat(faults(sets().set(SET_TARGETS, 2, "length_in", "").set(LINES, 0, "per", "club"))).isEmpty();
        assertThat(faults(sets().set(SET_TARGETS, 2, "length_in", "").set(LINES, 0, "slope", "0"))).isEmpty();
    }

    @Test
    void aValueComesFromTheRowOrFromTheLine() {
        assertThat(faults(sets().set(SET_TARGETS, 1, "frequency_cpm", "300"))).containsExactly("set-targets.csv line 3, "
            + "column frequency_cpm: 300 stands beside line irons, which gives the same; expected the value or the line, one "
            + "of the two");
        assertThat(faults(sets().set(SET_TARGETS, 1, "swing_weight", "D2"))).containsExactly("set-targets.csv line 3, column "
            + "swing_weight: \"D2\" stands beside line even, which gives the same; expected the value or the line, one of the "
            + "two");
        assertThat(faults(sets().set(SET_TARGETS, 1, "butt_inertia_kg_cm2", "2650"))).as("another quantity").isEmpty();
        assertThat(faults(sets().set(SET_TARGETS, 1, "butt_inertia_weight", "1"))).containsExactly("set-targets.csv line 3, "
            + "column butt_inertia_weight: 1 stands beside no butt_inertia_kg_cm2, and line even is of swing-weight; expected "
            + "a blank cell, or the value it is for");
    }

    @Test
    void aConstantInertiaTakesThePlaceOfASwingWeight() {
        SetTargetRead read = sets().set(LINES, 1, "quantity", "Butt Inertia").set(LINES, 1, "anchor_value", "2650")
            .set(SET_TARGETS, 1, "butt_inertia_tol_kg_cm2", "20").readSets(false);
        assertThat(texts(read.faults())).isEmpty();
        var sets = read.targets().orElseThrow();
        assertThat(sets.targetOf(sets.clubs().get(1)).orElseThrow().of(Quantity.BUTT_INERTIA).orElseThrow())
            .satisfies(wanted -> {
                assertThat(wanted.value()).isEqualTo(2650);
                assertThat(wanted.tolerance()).isEqualTo(20);
                assertThat(wanted.weight()).isEqualTo(1);
            });
    }

    /** A gap table by hand: 34° at the 7-iron and 4.25° a club, half an inch a club at 8.5° an inch. */
    @ParameterizedTest
    @CsvSource({"club, 4.25", "inch, 8.5"})
    void aLoftGapTableStepsFromItsAnchorClub(String per, String slope) {
        SetTargetRead read = gaps(per, slope).set(SET_TARGETS, 2, "loft_tol_deg", "0.4").set(SET_TARGETS, 2, "loft_weight", "2")
            .readSets(false);
        assertThat(texts(read.faults())).isEmpty();
        assertThat(texts(read.warnings())).isEmpty();
        var sets = read.targets().orElseThrow();
        assertThat(sets.clubs().get(2).loftLine()).contains("gaps");
        assertThat(sets.targetOf(sets.clubs().get(1)).orElseThrow().of(Quantity.LOFT)).as("the usual margin")
            .contains(new Wanted(34, 0.25, 1));
        assertThat(sets.targetOf(sets.clubs().get(2)).orElseThrow().of(Quantity.LOFT).orElseThrow())
            .satisfies(wanted -> {
                assertThat(wanted.value()).isCloseTo(38.25, within(1e-9));
                assertThat(wanted.tolerance()).as("the row's margin").isEqualTo(0.4);
                assertThat(wanted.weight()).isEqualTo(2);
            });
    }

    @Test
    void aLoftLineIsCheckedAsTheOtherLinesAre() {
        assertThat(faults(gaps("club", "4").set(SET_TARGETS, 2, "loft_deg", "38"))).containsExactly("set-targets.csv line 4, "
            + "column loft_deg: 38 stands beside line gaps, which gives the same; expected the value or the line, one of the two");
        assertThat(faults(gaps("club", "4").set(SET_TARGETS, 2, "loft_line", "gap"))).containsExactly("set-targets.csv line 4, "
            + "column loft_line: \"gap\" is not in lines.csv; expected something that file has (did you mean gaps?)");
        assertThat(faults(gaps("club", "4").set(SET_TARGETS, 2, "loft_line", "irons"))).containsExactly("set-targets.csv line "
            + "4, column loft_line: \"irons\" is a line of frequency; expected a line of loft");
        assertThat(faults(gaps("club", "4").set(LINES, 2, "anchor_club", "6-iron"))).containsExactly("lines.csv line 4, column "
            + "anchor_club: \"6-iron\" is in no set that uses this line; expected a club of theirs (did you mean 7-iron?)");
        assertThat(faults(sets().set(SET_TARGETS, 2, "loft_deg", "").set(SET_TARGETS, 2, "loft_tol_deg", "0.4")))
            .containsExactly("set-targets.csv line 4, column loft_tol_deg: 0.4 stands beside no loft_deg; expected a blank "
                + "cell, or the value it is for");
        assertThat(warnings(gaps("club", "13"))).containsExactly("lines.csv line 4, column slope: 13 is unusual; expected "
            + "degrees a step from 0 to 12 as a rule");
    }

    private Workshop gaps(String per, String slope) {
        return sets().row(LINES, "line=gaps", "quantity=loft", "anchor_club=7-iron", "anchor_value=34", "slope=" + slope,
            "per=" + per).set(SET_TARGETS, 1, "loft_deg", "").set(SET_TARGETS, 1, "loft_line", "gaps")
            .set(SET_TARGETS, 2, "loft_deg", "").set(SET_TARGETS, 2, "loft_line", "gaps");
    }

    @Test
    void aLineNobodyUsesIsAWarning() {
        assertThat(warnings(sets().row(LINES, "line=gaps", "quantity=loft", "anchor_club=7-iron", "anchor_value=34", "slope=4",
            "per=club"))).containsExactly("lines.csv line 4, column line: \"gaps\" is used by no club of set-targets.csv; "
            + "expected its name under frequency_line, swing_line or loft_line");
    }
}
