package benchtwin.club;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Wanted clubs and the lines through them. Values along a line are worked by hand; 1 in = 25.4 mm (NIST SP 811). */
class SetTargetsTest {

    private static final double ARITHMETIC = 1e-9;
    private static final Line IRONS = new Line("irons", Quantity.FREQUENCY, "7", 300, 8, LinePer.INCH);
    private static final Line STEPS = new Line("steps", Quantity.FREQUENCY, "7", 300, 4, LinePer.CLUB);
    private static final Line EVEN = new Line("even", Quantity.SWING_WEIGHT, "7", 32, 0, LinePer.CLUB);
    private static final Line HEFT = new Line("heft", Quantity.BUTT_INERTIA, "7", 2650, 0, LinePer.CLUB);

    private static WantedClub club(String player, String name, double lengthIn, String frequencyLine, String swingLine) {
        Optional<Target> target = Double.isNaN(lengthIn) ? Optional.empty() : Optional.of(new Target(AngleReading.EDGE,
            Map.of(Quantity.LENGTH, new Wanted(lengthIn * 25.4, 1.5875, 1))));
        return new WantedClub(player, name, Category.IRON, Optional.of(name), Hand.RIGHT, Optional.of("irons"),
            GroupRule.MUST, target, Optional.ofNullable(frequencyLine), Optional.ofNullable(swingLine), 3,
            Optional.empty(), Keeping.UNRECORDED);
    }

    private static SetTargets targets(WantedClub... clubs) {
        return new SetTargets(List.of(clubs), List.of(IRONS, STEPS, EVEN, HEFT));
    }

    @Test
    void playersAndTheirClubsStandInFileOrder() {
        SetTargets sets = targets(club("B", "7", 37, null, null), club("A", "7", 37, null, null),
            club("B", "6", 37.5, null, null));
        assertThat(sets.players()).containsExactly("B", "A");
        assertThat(sets.of("B")).extracting(WantedClub::club).containsExactly("7", "6");
        assertThat(sets.of("C")).isEmpty();
    }

    @Test
    void aLinePerInchRisesWithEveryInchShorter() {
        WantedClub shorter = club("A", "9", 36.25, "irons", null);
        WantedClub longer = club("A", "5", 38, "irons", null);
        SetTargets sets = targets(longer, club("A", "7", 37, "irons", null), shorter);
        assertThat(sets.valueAt(IRONS, shorter).getAsDouble()).isCloseTo(306, within(ARITHMETIC));
        assertThat(sets.valueAt(IRONS, longer).getAsDouble()).isCloseTo(292, within(ARITHMETIC));
        assertThat(sets.valueAt(IRONS, sets.of("A").get(1)).getAsDouble()).isCloseTo(300, within(ARITHMETIC));
    }

    @Test
    void aLinePerClubCountsPlacesInThePlayersSet() {
        WantedClub last = club("A", "9", Double.NaN, "steps", null);
        WantedClub first = club("A", "6", Double.NaN, "steps", null);
        SetTargets sets = targets(first, club("B", "8", 36.5, null, null), club("A", "7", 37, null, null),
            club("A", "8", 36.5, null, null), last);
        assertThat(sets.valueAt(STEPS, last)).hasValue(308);
        assertThat(sets.valueAt(STEPS, first)).hasValue(296);
    }

    @Test
    void aConstantNeedsNoAnchorAndASlopeDoes() {
        WantedClub alone = club("A", "PW", 35, "irons", "even");
        SetTargets sets = targets(alone);
        assertThat(sets.valueAt(EVEN, alone)).hasValue(32);
        assertThat(sets.valueAt(IRONS, alone)).isEqualTo(OptionalDouble.empty());
        assertThat(sets.targetOf(alone).orElseThrow().wanted()).containsOnlyKeys(Quantity.LENGTH, Quantity.SWING_WEIGHT);
    }

    @Test
    void aLinePerInchNeedsBothLengths() {
        WantedClub unknown = club("A", "8", Double.NaN, "irons", null);
        WantedClub known = club("B", "8", 36.5, "irons", null);
        SetTargets sets = targets(club("A", "7", 37, null, null), unknown, club("B", "7", Double.NaN, "steps", null), known);
        assertThat(sets.valueAt(IRONS, unknown)).isEmpty();
        assertThat(sets.valueAt(IRONS, known)).isEmpty();
    }

    @Test
    void theWholeTargetTakesLinesWithTheMarginsOfTheRow() {
        WantedClub plain = club("A", "7", 37, "irons", "heft");
        WantedClub close = new WantedClub("A", "8", Category.IRON, Optional.of("8"), Hand.RIGHT, Optional.empty(),
            GroupRule.PREFER, Optional.of(new Target(AngleReading.EDGE, Map.of(Quantity.LENGTH, new Wanted(36.5 * 25.4, 2, 1),
                Quantity.SWING_WEIGHT, new Wanted(33, 0.3, 1)))), Optional.of("irons"), Optional.of("even"),
            Optional.empty(), 1, Optional.empty(), Keeping.UNRECORDED, Map.of(Quantity.FREQUENCY, new Margin(1, 0.5)));
        SetTargets sets = targets(plain, close);
        Target ofPlain = sets.targetOf(plain).orElseThrow();
        assertThat(ofPlain.of(Quantity.FREQUENCY)).contains(new Wanted(300, 2, 1));
        assertThat(ofPlain.of(Quantity.BUTT_INERTIA)).as("weighted because it was asked for")
            .contains(new Wanted(2650, 10, 1));
        Target ofClose = sets.targetOf(close).orElseThrow();
        assertThat(ofClose.of(Quantity.FREQUENCY).orElseThrow().value()).isCloseTo(304, within(ARITHMETIC));
        assertThat(ofClose.of(Quantity.FREQUENCY).orElseThrow().tolerance()).isEqualTo(1);
        assertThat(ofClose.of(Quantity.FREQUENCY).orElseThrow().weight()).isEqualTo(0.5);
        assertThat(ofClose.of(Quantity.SWING_WEIGHT)).as("the row's own value").contains(new Wanted(33, 0.3, 1));
    }

    @Test
    void loftFromAGapTableGivesWayToTheRowsOwn() {
        Line gaps = new Line("gaps", Quantity.LOFT, "7", 34, 4, LinePer.CLUB);
        WantedClub seven = onGaps("7", Map.of(), Map.of());
        WantedClub eight = onGaps("8", Map.of(), Map.of(Quantity.LOFT, new Margin(0.5, 2)));
        WantedClub nine = onGaps("9", Map.of(Quantity.LOFT, new Wanted(41, 0.25, 1)), Map.of());
        SetTargets sets = new SetTargets(List.of(seven, eight, nine), List.of(gaps));
        assertThat(eight.lineNames()).containsExactly("gaps");
        assertThat(sets.linesOf(eight)).containsExactly(gaps);
        assertThat(sets.targetOf(seven).orElseThrow().of(Quantity.LOFT)).contains(new Wanted(34, 0.25, 1));
        assertThat(sets.targetOf(eight).orElseThrow().of(Quantity.LOFT)).contains(new Wanted(38, 0.5, 2));
        assertThat(sets.targetOf(nine).orElseThrow().of(Quantity.LOFT)).contains(new Wanted(41, 0.25, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new SetTargets(List.of(seven), List.of()))
            .withMessage("7 of A: there is no line gaps");
    }

    private static WantedClub onGaps(String name, Map<Quantity, Wanted> own, Map<Quantity, Margin> margins) {
        return new WantedClub("A", name, Category.IRON, Optional.of(name), Hand.RIGHT, Optional.empty(), GroupRule.PREFER,
            own.isEmpty() ? Optional.empty() : Optional.of(new Target(AngleReading.EDGE, own)), Optional.empty(),
            Optional.empty(), Optional.of("gaps"), 3, Optional.empty(), Keeping.UNRECORDED, margins);
    }

    @Test
    void aClubWithLinesAloneReadsItsAnglesAsItsKindDoes() {
        WantedClub iron = club("A", "7", Double.NaN, null, "even");
        WantedClub wood = new WantedClub("A", "driver", Category.DRIVER, Optional.empty(), Hand.RIGHT, Optional.empty(),
            GroupRule.PREFER, Optional.empty(), Optional.empty(), Optional.of("even"), 3, Optional.empty(),
            Keeping.UNRECORDED);
        SetTargets sets = targets(iron, wood);
        assertThat(sets.targetOf(iron).orElseThrow().reading()).isEqualTo(AngleReading.EDGE);
        assertThat(sets.targetOf(wood).orElseThrow().reading()).isEqualTo(AngleReading.SOLED);
    }

    @Test
    void everyClubStandsOnceAndEveryLineIsThere() {
        WantedClub club = club("A", "7", 37, "irons", null);
        assertThatIllegalArgumentException().isThrownBy(() -> targets(club, club)).withMessage("7 of A is wanted twice");
        assertThatIllegalArgumentException().isThrownBy(() -> targets(club("A", "7", 37, "gone", null)))
            .withMessage("7 of A: there is no line gone");
        assertThatIllegalArgumentException().isThrownBy(() -> new SetTargets(List.of(), List.of(EVEN, EVEN)))
            .withMessage("line even is there twice");
    }

    @Test
    void aClubOfWhichNothingIsWantedIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> club("A", "7", Double.NaN, null, null))
            .withMessage("7 of A: nothing is wanted of it");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 10, -1})
    void prioritiesRunFromOneToNine(int priority) {
        assertThatIllegalArgumentException().isThrownBy(() -> new WantedClub("A", "7", Category.IRON, Optional.of("7"),
            Hand.RIGHT, Optional.empty(), GroupRule.MUST, Optional.empty(), Optional.of("irons"), Optional.empty(), priority,
            Optional.empty(), Keeping.UNRECORDED)).withMessage("7 of A: priority %d is not from 1 to 9".formatted(priority));
    }

    @Test
    void linesAndMarginsCheckThemselves() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Line("x", Quantity.LIE, "7", 62, 0.5, LinePer.CLUB))
            .withMessage("line x: no line runs through lie");
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> new Line("x", Quantity.LOFT, "7", bad, 4, LinePer.CLUB));
            assertThatIllegalArgumentException().isThrownBy(() -> new Line("x", Quantity.LOFT, "7", 34, bad, LinePer.CLUB));
            assertThatIllegalArgumentException().isThrownBy(() -> new Margin(bad, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> new Margin(1, bad));
        }
        Stream.of("", " ").forEach(blank -> {
            assertThatIllegalArgumentException().isThrownBy(() -> new Line(blank, Quantity.LOFT, "7", 34, 4, LinePer.CLUB));
            assertThatIllegalArgumentException().isThrownBy(() -> new Line("x", Quantity.LOFT, blank, 34, 4, LinePer.CLUB));
        });
        assertThatIllegalArgumentException().isThrownBy(() -> new Margin(0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Margin(1, -0.1));
    }
}
