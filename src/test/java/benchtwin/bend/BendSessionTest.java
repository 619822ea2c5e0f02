package benchtwin.bend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AngleReading;
import benchtwin.club.HeadMaterial;
import benchtwin.club.Quantity;
import benchtwin.mechanics.HoselTilt;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** One head on its way to its target. Angles of clubs are examples of our own. */
class BendSessionTest {

    private static final HoselLimits THREE = new HoselLimits(3, 3, 3, 3, false);

    private static BendSession session(AngleReading reading, Map<Quantity, Double> target, Map<Quantity, Double> now, HoselLimits left) {
        Map<Quantity, Double> tolerance = new EnumMap<>(Quantity.class);
        target.keySet().forEach(quantity -> tolerance.put(quantity, 0.25));
        Map<Quantity, Double> uncertainty = new EnumMap<>(Quantity.class);
        BendGoal.steered(reading).forEach(quantity -> uncertainty.put(quantity, 0.05));
        Map<BendDirection, Springback> known = new EnumMap<>(BendDirection.class);
        for (BendDirection direction : BendDirection.values()) {
            known.put(direction, Springback.of(SpringbackPrior.of(HeadMaterial.CARBON_STEEL)));
        }
        return new BendSession(new BendGoal(reading, target, tolerance), Working.LIVE, uncertainty, 0.05, known, left, now, List.of());
    }

    private static BendSession iron(double loft, double lie, HoselLimits left) {
        return session(AngleReading.EDGE, Map.of(Quantity.LOFT, 34.0, Quantity.LIE, 62.0), Map.of(Quantity.LOFT, loft, Quantity.LIE, lie,
            Quantity.BOUNCE, 5.0), left);
    }

    @Test
    void theAngleFurthestOffInItsToleranceComesFirst() {
        BendAdvice.Ask lie = (BendAdvice.Ask) iron(33.6, 63.0, THREE).advice();
        assertThat(lie.direction()).isEqualTo(BendDirection.FLAT);
        BendAdvice.Ask loft = (BendAdvice.Ask) iron(35.2, 61.6, THREE).advice();
        assertThat(loft.direction()).isEqualTo(BendDirection.BACK);
        assertThat(loft.direction().benchWord(false)).isEqualTo("strong");
        assertThat(loft.foreseenDeg().get(Quantity.BOUNCE)).isCloseTo(5 - loft.expectedDeg(), within(0.02));
    }

    /** What is typed to a hundredth and ends on the limit is within it, whatever binary fractions make of it. */
    @Test
    void onTheToleranceIsWithinItAndAHundredthMoreIsNot() {
        assertThat(iron(34.25, 61.75, THREE).advice()).isInstanceOf(BendAdvice.Reached.class);
        assertThat(iron(34.26, 62, THREE).advice()).isNotInstanceOf(BendAdvice.Reached.class);
        assertThat(iron(34, 61.74, THREE).advice()).isNotInstanceOf(BendAdvice.Reached.class);
    }

    /** 1° of face on a 58° driver is about 0.53° of tilt: the ask is in degrees of face, the metal counts in tilt. */
    @Test
    void aWoodsFaceIsAskedInFaceAndCountedInTilt() {
        BendSession wood = session(AngleReading.SOLED, Map.of(Quantity.LIE, 58.0, Quantity.FACE, -1.0),
            Map.of(Quantity.LIE, 58.0, Quantity.FACE, 1.0, Quantity.LOFT, 9.5), THREE);
        BendAdvice.Ask ask = (BendAdvice.Ask) wood.advice();
        assertThat(ask.direction()).isEqualTo(BendDirection.FORWARD);
        assertThat(ask.direction().benchWord(true)).isEqualTo("closed");
        assertThat(ask.askedDeg() / ask.tilt().askedDeg()).isCloseTo(1 / Math.cos(Math.toRadians(58)), within(0.001));
        assertThat(ask.foreseenDeg().get(Quantity.LOFT)).as("soled loft stays").isEqualTo(9.5);
        BendSession after = wood.after(BendDirection.FORWARD, 3, Map.of(Quantity.FACE, -0.9));
        assertThat(after.bends().get(0).used().forwardDeg()).isCloseTo(1.9 * Math.cos(Math.toRadians(58)), within(0.002));
        assertThat(after.left().forwardDeg()).isCloseTo(3 - 1.9 * Math.cos(Math.toRadians(58)), within(0.002));
        assertThat(after.left().backDeg()).isEqualTo(3);
    }

    /** Square readings move loft along with the face: about 0.6° for each degree of a driver, the handbook says. */
    @Test
    void squareLoftGoesAlongWithTheFace() {
        BendSession wood = session(AngleReading.SQUARE, Map.of(Quantity.FACE, -1.0),
            Map.of(Quantity.LIE, 58.0, Quantity.FACE, 0.0, Quantity.LOFT, 9.5), THREE);
        BendSession after = wood.after(BendDirection.FORWARD, 1.5, Map.of(Quantity.FACE, -1.0));
        assertThat(after.nowDeg().get(Quantity.LOFT)).isCloseTo(9.5 + 0.62, within(0.03));
        assertThat(after.advice()).isInstanceOf(BendAdvice.Reached.class);
    }

    @Test
    void bendingBackUsesMetalOfItsOwn() {
        BendSession over = iron(34, 61, THREE).after(BendDirection.UPRIGHT, 2, Map.of(Quantity.LIE, 62.6));
        assertThat(over.left().uprightDeg()).isCloseTo(1.4, within(1e-9));
        BendSession back = over.after(BendDirection.FLAT, 1, Map.of(Quantity.LIE, 62.1));
        assertThat(back.left().uprightDeg()).isCloseTo(1.4, within(1e-9));
        assertThat(back.left().flatDeg()).isCloseTo(2.5, within(1e-9));
        assertThat(back.advice()).isInstanceOf(BendAdvice.Reached.class);
        assertThat(back.known().get(BendDirection.UPRIGHT).trials()).isEqualTo(1);
        assertThat(back.known().get(BendDirection.FLAT).trials()).isEqualTo(1);
    }

    @Test
    void itStopsWhereTheHoselsLimitStandsInTheWay() {
        BendAdvice.PastLimit limit = (BendAdvice.PastLimit) iron(34, 61, new HoselLimits(0.7, 3, 3, 3, false)).advice();
        assertThat(limit.direction()).isEqualTo(BendDirection.UPRIGHT);
        assertThat(limit.leftDeg()).isEqualTo(0.7);
        assertThat(iron(34, 61, new HoselLimits(0.76, 3, 3, 3, false)).advice()).as("within tolerance of what is left")
            .isNotInstanceOf(BendAdvice.PastLimit.class);
        BendAdvice none = iron(34, 61.7, new HoselLimits(0.06, 3, 3, 3, false)).advice();
        assertThat(none).isInstanceOf(BendAdvice.TooRisky.class);
        assertThat(((BendAdvice.TooRisky) none).atLimit()).isTrue();
    }

    /** A bend that readings say went the wrong way used no metal that way; sideways tilt counts once it is sure. */
    @Test
    void onlyWhatIsSureCountsSideways() {
        BendSession wrong = iron(34, 61, THREE).after(BendDirection.UPRIGHT, 0.5, Map.of(Quantity.LIE, 60.95));
        assertThat(wrong.left()).isEqualTo(THREE);
        BendSession hardly = iron(34, 61, THREE).after(BendDirection.UPRIGHT, 1.5, Map.of(Quantity.LIE, 62.0, Quantity.LOFT, 34.15));
        assertThat(hardly.left().forwardDeg()).isEqualTo(3);
        BendSession sideways = iron(34, 61, THREE).after(BendDirection.UPRIGHT, 1.5, Map.of(Quantity.LIE, 62.0, Quantity.LOFT, 34.6));
        assertThat(sideways.left().forwardDeg()).isCloseTo(3 - 0.6 * Math.sin(Math.toRadians(62)), within(0.01));
    }

    static Stream<Arguments> heads() {
        Random random = new Random(17);
        return IntStream.range(0, 60).mapToObj(k -> Arguments.of("case %d of seed 17".formatted(k), AngleReading.values()[k % 3],
            9 + 40 * random.nextDouble(), 54 + 12 * random.nextDouble(), -3 + 6 * random.nextDouble(), 4 * random.nextDouble() - 2,
            4 * random.nextDouble() - 2));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("heads")
    void theTiltThatIsNeededLeadsToTheTarget(String name, AngleReading reading, double loft, double lie, double face, double more,
                                             double turn) {
        Quantity other = reading.isWood() ? Quantity.FACE : Quantity.LOFT;
        Map<Quantity, Double> now = Map.of(Quantity.LOFT, loft, Quantity.LIE, lie, Quantity.FACE, face);
        Map<Quantity, Double> target = Map.of(Quantity.LIE, lie + more, other, now.get(other) + turn);
        BendGoal goal = new BendGoal(reading, target, Map.of(Quantity.LIE, 0.25, other, 0.25));
        HoselTilt needed = goal.needed(now);
        Map<Quantity, Double> after = goal.after(now, needed);
        target.forEach((quantity, value) -> assertThat(after.get(quantity)).as(quantity.word()).isCloseTo(value, within(1e-9)));
        HoselTilt told = goal.between(now, after);
        assertThat(told.uprightDeg()).isCloseTo(needed.uprightDeg(), within(1e-9));
        assertThat(told.forwardDeg()).isCloseTo(needed.forwardDeg(), within(1e-9));
    }

    @Test
    void aGoalThatBendsCannotSteerIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new BendGoal(AngleReading.SOLED, Map.of(Quantity.LOFT, 9.0),
            Map.of(Quantity.LOFT, 0.25)));
        assertThatIllegalArgumentException().isThrownBy(() -> new BendGoal(AngleReading.EDGE, Map.of(), Map.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new BendGoal(AngleReading.EDGE, Map.of(Quantity.LIE, 62.0),
            Map.of(Quantity.LIE, 0.0)));
        assertThatIllegalArgumentException().isThrownBy(() -> session(AngleReading.EDGE, Map.of(Quantity.LOFT, 34.0),
            Map.of(Quantity.LIE, 62.0), THREE));
    }
}
