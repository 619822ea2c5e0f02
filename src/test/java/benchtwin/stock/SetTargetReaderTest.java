package benchtwin.stock;

import static benchtwin.stock.StockKind.LINES;
import static benchtwin.stock.StockKind.SET_TARGETS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.GroupRule;
import benchtwin.club.Hand;
import benchtwin.club.Line;
import benchtwin.club.LinePer;
import benchtwin.club.Margin;
import benchtwin.club.Quantity;
import benchtwin.club.SetTargets;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.club.WantedClub;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of set-targets.csv. Rows 0 to 2, on lines 2 to 4: a driver, a 7-iron, an 8-iron. 1 in = 25.4 mm (NIST SP 811). */
class SetTargetReaderTest {

    private static final double ARITHMETIC = 1e-9;

    @TempDir
    Path folder;

    private Workshop sets() {
        return Workshop.in(folder).onlyKinds(SET_TARGETS, LINES);
    }

    private static List<String> texts(List<Fault> faults) {
        return faults.stream().map(Fault::text).toList();
    }

    private static SetTargets clean(Workshop workshop) {
        SetTargetRead read = workshop.readSets(false);
        assertThat(texts(read.faults())).isEmpty();
        return read.targets().orElseThrow();
    }

    private static List<String> faults(Workshop workshop) {
        SetTargetRead read = workshop.readSets(false);
        assertThat(read.targets().isEmpty()).isEqualTo(!read.faults().isEmpty());
        return texts(read.faults());
    }

    private List<String> faults(int row, String column, String cell) {
        return faults(sets().set(SET_TARGETS, row, column, cell));
    }

    private List<String> warnings(int row, String column, String cell) {
        SetTargetRead read = sets().set(SET_TARGETS, row, column, cell).readSets(false);
        assertThat(texts(read.faults())).isEmpty();
        return texts(read.warnings());
    }

    @Test
    void undamagedItIsClean() {
        SetTargetRead read = sets().readSets(false);
        assertThat(read.isClean()).isTrue();
        assertThat(read.warnings()).isEmpty();
        assertThat(read.rowsRead()).isEqualTo(Map.of("set-targets.csv", 3, "lines.csv", 2));
        assertThat(read.unknownColumns()).isEmpty();
    }

    @Test
    void aDriverWithItsOwnValues() {
        WantedClub driver = clean(sets()).clubs().get(0);
        assertThat(driver.player()).isEqualTo("Ansel Brook");
        assertThat(driver.club()).isEqualTo("driver");
        assertThat(driver.category()).isEqualTo(Category.DRIVER);
        assertThat(driver.number()).isEmpty();
        assertThat(driver.hand()).isEqualTo(Hand.RIGHT);
        assertThat(driver.group()).isEmpty();
        assertThat(driver.priority()).isEqualTo(1);
        assertThat(driver.neededBy()).contains(LocalDate.of(2026, 5, 21));
        assertThat(driver.keeping().note()).contains("a second one");
        Target target = driver.target().orElseThrow();
        assertThat(target.reading()).isEqualTo(AngleReading.SOLED);
        assertThat(target.wanted()).containsOnlyKeys(Quantity.LOFT, Quantity.LIE, Quantity.FACE, Quantity.LENGTH,
            Quantity.SWING_WEIGHT, Quantity.TOTAL_MASS);
        assertThat(target.of(Quantity.LOFT)).as("its own tolerance").contains(new Wanted(9.3, 0.2, 1));
        assertThat(target.of(Quantity.FACE)).as("defaults").contains(new Wanted(-0.5, 0.5, 1));
        assertThat(target.of(Quantity.TOTAL_MASS)).contains(new Wanted(318, 3, 0.5));
        assertThat(target.of(Quantity.SWING_WEIGHT).orElseThrow().value()).isCloseTo(32.4, within(ARITHMETIC));
        assertThat(target.of(Quantity.LENGTH).orElseThrow().value()).isCloseTo(45.25 * 25.4, within(ARITHMETIC));
        assertThat(target.of(Quantity.LENGTH).orElseThrow().tolerance()).isCloseTo(25.4 / 16, within(ARITHMETIC));
    }

    @Test
    void anIronOnLinesWithItsOwnMargin() {
        SetTargets sets = clean(sets());
        WantedClub eight = sets.clubs().get(2);
        assertThat(eight.group()).contains("irons");
        assertThat(eight.groupRule()).isEqualTo(GroupRule.MUST);
        assertThat(eight.priority()).as("where nothing is said").isEqualTo(3);
        assertThat(eight.neededBy()).isEmpty();
        assertThat(eight.frequencyLine()).contains("irons");
        assertThat(eight.swingLine()).contains("even");
        assertThat(eight.lineMargins()).isEqualTo(Map.of(Quantity.FREQUENCY, new Margin(1, 0.5)));
        assertThat(eight.target().orElseThrow().reading()).isEqualTo(AngleReading.EDGE);
        assertThat(sets.lines()).containsExactly(new Line("irons", Quantity.FREQUENCY, "7-iron", 300, 8, LinePer.INCH),
            new Line("even", Quantity.SWING_WEIGHT, "7-iron", 32, 0, LinePer.CLUB));
        assertThat(sets.targetOf(eight).orElseThrow().of(Quantity.FREQUENCY).orElseThrow().value())
            .as("half an inch at 8 cpm").isCloseTo(304, within(ARITHMETIC));
    }

    @Test
    void lengthsAndTheirTolerancesMayBeMillimetres() {
        Workshop metric = sets().without(SET_TARGETS, "length_in").set(SET_TARGETS, 0, "length_mm", "1150")
            .set(SET_TARGETS, 0, "length_tol_mm", "2").set(SET_TARGETS, 1, "length_mm", "939.8")
            .set(SET_TARGETS, 2, "length_mm", "927.1").set(SET_TARGETS, 2, "length_tol_in", "1/8");
        SetTargets sets = clean(metric);
        assertThat(sets.clubs().get(0).target().orElseThrow().of(Quantity.LENGTH)).contains(new Wanted(1150, 2, 1));
        assertThat(sets.clubs().get(2).target().orElseThrow().of(Quantity.LENGTH).orElseThrow().tolerance())
            .isCloseTo(3.175, within(ARITHMETIC));
    }

    @Test
    void aNamedInertiaGetsWeightOneAndTenByDefault() {
        SetTargets sets = clean(sets().set(SET_TARGETS, 0, "butt_inertia_kg_cm2", "2900"));
        assertThat(sets.clubs().get(0).target().orElseThrow().of(Quantity.BUTT_INERTIA)).contains(new Wanted(2900, 10, 1));
        assertThat(clean(sets().set(SET_TARGETS, 0, "butt_inertia_kg_cm2", "2900")
            .set(SET_TARGETS, 0, "butt_inertia_weight", "0").set(SET_TARGETS, 0, "butt_inertia_tol_kg_cm2", "25"))
            .clubs().get(0).target().orElseThrow().of(Quantity.BUTT_INERTIA)).contains(new Wanted(2900, 25, 0));
    }

    @Test
    void aRowMayRestOnLinesAlone() {
        Workshop bare = sets().set(LINES, 0, "per", "club");
        for (String column : List.of("loft_deg", "lie_deg", "length_in")) {
            bare.set(SET_TARGETS, 2, column, "");
        }
        SetTargets sets = clean(bare);
        assertThat(sets.clubs().get(2).target()).isEmpty();
        assertThat(sets.targetOf(sets.clubs().get(2)).orElseThrow().of(Quantity.FREQUENCY)).contains(new Wanted(308, 1, 0.5));
    }

    @Test
    void unknownColumnsStayWithTheirRowsAndAreListed() {
        SetTargetRead read = sets().set(SET_TARGETS, 1, "Locker", "12").set(LINES, 0, "colour", "red").readSets(false);
        assertThat(read.targets().orElseThrow().clubs().get(1).keeping().extra()).isEqualTo(Map.of("Locker", "12"));
        assertThat(read.unknownColumns()).isEqualTo(Map.of("set-targets.csv", List.of("Locker"), "lines.csv",
            List.of("colour")));
    }

    @ParameterizedTest
    @CsvSource({"player, 'a value, such as R. Fenn'", "club, 'a value, such as 7-iron'",
        "number, 'an iron''s number, such as 7 or PW'", "hand, 'one of right, left'", "category, 'one of driver, fairway, hybrid, iron, wedge, putter'"})
    void blankWhereSomethingMustStand(String column, String expected) {
        assertThat(faults(1, column, "")).contains("set-targets.csv line 3, column %s: is blank; expected %s"
            .formatted(column, expected));
    }

    @ParameterizedTest
    @CsvSource({
        "group_rule, shall, '\"shall\" is not a word of this column; expected one of must, prefer'",
        "loft_deg, weak, '\"weak\" is not a number; expected degrees, such as 34'",
        "loft_deg, 95, '95 is not possible; expected degrees from -20 to 90'",
        "loft_tol_deg, 0, '0 is not possible; expected degrees from 0.01 to 20'",
        "loft_weight, -1, '-1 is not possible; expected a number from 0 to 1000'",
        "length_in, long, '\"long\" is not a number; expected inches, such as 37'",
        "length_tol_in, 20, '20 is not possible; expected inches from 0.01 to 7.87'",
        "butt_inertia_kg_cm2, heavy, '\"heavy\" is not a number; expected kg·cm², such as 2650'",
        "frequency_tol_cpm, x, '\"x\" is not a number; expected cycles per minute, such as 2'",
        "total_mass_g, 5000, '5000 is not possible; expected grams from 50 to 3000'",
        "priority, 0, '0 is not possible; expected a number from 1 to 9'",
        "priority, 2.5, '\"2.5\" is not a whole number; expected a whole number, such as 3'",
        "needed_by, 21.5.2026, '\"21.5.2026\" is not a date; expected year-month-day, such as 2026-05-03'"})
    void wrongCells(String column, String cell, String message) {
        assertThat(faults(1, column, cell)).containsExactly("set-targets.csv line 3, column %s: %s".formatted(column,
            message.replace("\"2.5\"", "2.5")));
    }

    @Test
    void swingWeightsToleratePoints() {
        assertThat(faults(0, "swing_weight_tol_points", "D")).containsExactly("set-targets.csv line 2, column "
            + "swing_weight_tol_points: \"D\" is not a number; expected points, such as 0.5");
        assertThat(faults(0, "swing_weight", "32")).containsExactly("set-targets.csv line 2, column swing_weight: 32 is not a "
            + "swing weight; expected a letter A to G and points, such as D2.4; plain points go under swing_weight_points");
    }

    @Test
    void unusualValuesAreWarnings() {
        assertThat(warnings(1, "loft_deg", "55")).containsExactly(
            "set-targets.csv line 3, column loft_deg: 55 is unusual for an iron; expected 14 to 52 as a rule");
        assertThat(warnings(0, "length_in", "49")).containsExactly(
            "set-targets.csv line 2, column length_in: 49 is unusual for a driver; expected 41.93 to 47.05 as a rule");
        assertThat(warnings(1, "butt_inertia_kg_cm2", "265")).containsExactly(
            "set-targets.csv line 3, column butt_inertia_kg_cm2: 265 is unusual for an iron; expected 2000 to 3500 as a rule");
    }

    @Test
    void oneClubOfAPlayerStandsOnce() {
        assertThat(faults(2, "club", "7-iron")).containsExactly("set-targets.csv line 4, column club: \"7-iron\" is already "
            + "on line 3 for player Ansel Brook; expected every club of a player once");
        assertThat(faults(sets().set(SET_TARGETS, 0, "player", "R. Fenn").set(SET_TARGETS, 0, "club", "7-iron"))).isEmpty();
    }

    @Test
    void aWoodSaysHowItIsReadAndAnIronHasNoFace() {
        assertThat(faults(0, "reading", "")).containsExactly(
            "set-targets.csv line 2, column reading: is blank; expected how its angles were read: soled or square");
        assertThat(faults(1, "face_deg", "0.5")).containsExactly("set-targets.csv line 3, column face_deg: 0.5 does not go "
            + "with a club read by the edge; expected a blank cell; only a wood has a face angle");
        assertThat(faults(0, "bounce_deg", "5")).containsExactly("set-targets.csv line 2, column bounce_deg: 5 does not go "
            + "with a club read as a wood; expected a blank cell; bounce is read by the edge");
    }

    @Test
    void aWoodOnALoftLineSaysHowThatLoftIsRead() {
        Workshop line = sets().row(LINES, "line=gaps", "quantity=loft", "anchor_club=driver", "anchor_value=9.3", "slope=0",
            "per=club").set(SET_TARGETS, 0, "loft_deg", "").set(SET_TARGETS, 0, "loft_line", "gaps");
        SetTargets sets = clean(line.set(SET_TARGETS, 0, "reading", "square"));
        assertThat(sets.targetOf(sets.clubs().get(0)).orElseThrow()).satisfies(target -> {
            assertThat(target.reading()).isEqualTo(AngleReading.SQUARE);
            assertThat(target.of(Quantity.LOFT)).contains(new Wanted(9.3, 0.2, 1));
        });
        for (String angle : List.of("lie_deg", "face_deg", "reading")) {
            line.set(SET_TARGETS, 0, angle, "");
        }
        assertThat(faults(line)).containsExactly("set-targets.csv line 2, column reading: is blank; expected how the loft of "
            + "its line is read: soled or square");
        for (String column : List.of("length_in", "swing_weight", "total_mass_g")) {
            line.set(SET_TARGETS, 0, column, "");
        }
        assertThat(faults(line.set(SET_TARGETS, 0, "reading", "square"))).containsExactly("set-targets.csv line 2, column "
            + "reading: \"square\" stands beside a loft line and no value of the row's own; expected a value besides, such as "
            + "lie_deg or length_in");
        SetTargets soled = clean(line.set(SET_TARGETS, 0, "reading", "soled"));
        assertThat(soled.targetOf(soled.clubs().get(0)).orElseThrow().reading()).isEqualTo(AngleReading.SOLED);
    }

    @Test
    void aToleranceOrWeightNeedsItsValue() {
        assertThat(faults(0, "frequency_tol_cpm", "2")).containsExactly("set-targets.csv line 2, column frequency_tol_cpm: "
            + "2 stands beside no frequency_cpm; expected a blank cell, or the value it is for");
        assertThat(faults(1, "total_mass_weight", "1")).containsExactly("set-targets.csv line 3, column total_mass_weight: "
            + "1 stands beside no total_mass_g; expected a blank cell, or the value it is for");
    }

    @Test
    void aClubWantsSomething() {
        Workshop empty = sets().row(SET_TARGETS, "player=Ansel Brook", "club=9-iron", "category=iron", "number=9",
            "hand=right");
        assertThat(faults(empty)).containsExactly("set-targets.csv line 5: wants nothing of this club; expected a value, such "
            + "as loft_deg or length_in, or a line");
        assertThat(faults(empty.set(SET_TARGETS, 3, "loft_deg", "42").set(SET_TARGETS, 3, "loft_weight", "0")))
            .containsExactly("set-targets.csv line 5: gives every value it names a weight of 0; expected at least one weight "
                + "above 0");
    }

    @Test
    void aGroupSharesHandAndRule() {
        assertThat(faults(2, "hand", "left")).containsExactly("set-targets.csv line 4, column hand: \"left\" is not the hand "
            + "of group irons on line 3; expected right, or another group");
        assertThat(faults(2, "group_rule", "")).containsExactly("set-targets.csv line 4, column group_rule: is not the rule "
            + "of group irons on line 3; expected must for the whole group, or another group");
        assertThat(faults(0, "group_rule", "must")).containsExactly("set-targets.csv line 2, column group_rule: \"must\" "
            + "stands beside no group; expected a blank cell, or the group it is for");
        assertThat(warnings(2, "category", "wedge")).containsExactly("set-targets.csv line 4, column loft_deg: 38 is unusual "
            + "for a wedge; expected 42 to 68 as a rule", "set-targets.csv line 4, column category: \"wedge\" is not the "
            + "category of group irons on line 3; expected clubs of one category, which can share a head model");
        assertThat(faults(sets().set(SET_TARGETS, 0, "group", "irons").set(SET_TARGETS, 0, "player", "R. Fenn")
            .set(SET_TARGETS, 0, "hand", "left"))).as("another player's group").isEmpty();
    }

    @Test
    void everyFaultAtOnceAndTheGoodRowsIfAsked() {
        Workshop workshop = sets().set(SET_TARGETS, 0, "loft_deg", "?").set(SET_TARGETS, 2, "priority", "12")
            .set(LINES, 1, "slope", "");
        SetTargetRead refused = workshop.readSets(false);
        assertThat(texts(refused.faults())).containsExactly(
            "set-targets.csv line 2, column loft_deg: \"?\" is not a number; expected degrees, such as 34",
            "set-targets.csv line 4, column priority: 12 is not possible; expected a number from 1 to 9",
            "lines.csv line 3, column slope: is blank; expected a value, such as 8");
        assertThat(refused.targets()).isEqualTo(Optional.empty());
        assertThat(refused.warnings()).as("what would be left out is said only when it is").isEmpty();
        SetTargetRead taken = workshop.readSets(true);
        assertThat(taken.faults()).isEqualTo(refused.faults());
        assertThat(taken.targets().orElseThrow().clubs()).isEmpty();
        assertThat(texts(taken.warnings())).containsExactly("set-targets.csv line 3, column swing_line: \"even\" is a line "
            + "with a fault; expected that put right; until then this club is left out");
    }

    @Test
    void whatRestsOnABadRowIsLeftOutOfTheGoodOnes() {
        SetTargetRead inches = sets().set(SET_TARGETS, 1, "loft_deg", "?").readSets(true);
        assertThat(texts(inches.warnings())).containsExactly("set-targets.csv line 4, column frequency_line: \"irons\" goes "
            + "from the club on line 3, which cannot be used; expected that put right; until then this club is left out");
        assertThat(inches.targets().orElseThrow().clubs()).extracting(WantedClub::club).containsExactly("driver");
        SetTargetRead places = sets().set(LINES, 0, "per", "club").set(SET_TARGETS, 0, "loft_deg", "?").readSets(true);
        assertThat(texts(places.warnings())).containsExactly("set-targets.csv line 3, column frequency_line: \"irons\" counts "
            + "clubs, and the one on line 2 cannot be used; expected that put right; until then this club is left out",
            "set-targets.csv line 4, column frequency_line: \"irons\" counts clubs, and the one on line 2 cannot be used; "
                + "expected that put right; until then this club is left out");
        assertThat(places.targets().orElseThrow().clubs()).isEmpty();
    }

    @Test
    void aFileThatIsNotThereIsAFault() {
        SetTargetRead read = SetTargetReader.read(folder.resolve("set-targets.csv"), Optional.empty(), true);
        assertThat(read.faults()).extracting(Fault::problem).containsExactly("is not there");
        assertThat(read.targets().orElseThrow().clubs()).isEmpty();
    }
}
