package benchtwin.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.FrequencyReading;
import benchtwin.club.Shaft;
import benchtwin.measure.Reading;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Which of a shaft's readings are used, how they are joined, and what they become in another condition. */
class ShaftStiffnessTest {

    private static final double FREE = ReadShafts.LENGTH_MM - 127;
    private static final double ARITHMETIC = 1e-9;

    static LongStream seeds() {
        return LongStream.range(1, 41);
    }

    private static ShaftStiffness of(FrequencyReading... readings) {
        return ShaftStiffness.of(ReadShafts.driverShaft(readings), GripFactor.DEFAULT);
    }

    private static FrequencyReading inPlane(double cpm, double planeDeg) {
        return ReadShafts.reading(cpm, FREE, 205, false, OptionalDouble.of(planeDeg), "bench 1");
    }

    private static FrequencyReading withoutCondition(double cpm) {
        return new FrequencyReading(Reading.of(cpm, 0.5), OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.of(205), false, OptionalDouble.empty());
    }

    private static FrequencyReading inClamp(double cpm, OptionalDouble tipMassG) {
        return new FrequencyReading(Reading.of(cpm, 0.5), OptionalDouble.of(127), OptionalDouble.empty(), tipMassG, false,
            OptionalDouble.empty());
    }

    @Test
    void oneReadingStandsForItself() {
        ShaftStiffness found = of(inClamp(255, OptionalDouble.of(205)));
        CombinedReading anchor = found.anchor().orElseThrow();
        assertThat(anchor.cpm()).isEqualTo(255);
        assertThat(anchor.standardUncertaintyCpm()).isEqualTo(0.5);
        assertThat(found.carriedCpm(127, 205)).hasValue(255);
        assertThat(found.carriedUncertaintyCpm(127, 205).orElseThrow()).isCloseTo(0.5, within(1e-6));
        assertThat(found.profile()).isEmpty();
        assertThat(found.notes()).isEmpty();
        assertThat(found.readings()).singleElement().satisfies(r -> assertThat(r.residualCpm()).isZero());
    }

    /** By hand: 255 and 256 in one plane, half a cpm each, are 255.5 with 0.5/√2. */
    @Test
    void repeatsInOnePlaneCountAsTheirMeanAndAreSurer() {
        CombinedReading joint = of(inPlane(255, 10), inPlane(256, 190)).anchor().orElseThrow();
        assertThat(joint.cpm()).isCloseTo(255.5, within(ARITHMETIC));
        assertThat(joint.standardUncertaintyCpm()).isCloseTo(0.5 / Math.sqrt(2), within(ARITHMETIC));
        assertThat(joint.count()).isEqualTo(2);
    }

    /** By hand: planes at 254 and 258 are 256; the planes lie 2 from it, so √(0.5² + 2²). */
    @Test
    void severalPlanesCountAsTheirMeanAndAreLessSure() {
        ShaftStiffness found = of(inPlane(254, 0), inPlane(258, 90));
        CombinedReading joint = found.anchor().orElseThrow();
        assertThat(joint.cpm()).isCloseTo(256, within(ARITHMETIC));
        assertThat(joint.standardUncertaintyCpm()).isCloseTo(Math.sqrt(0.25 + 4), within(ARITHMETIC));
        assertThat(found.notes()).containsExactly(
            "shaft P: its readings in 2 planes at 1041 mm lie 4.0 cpm apart; their mean is used");
        assertThat(of(inPlane(255, 0), inPlane(255, 90)).anchor().orElseThrow().standardUncertaintyCpm())
            .as("planes that agree are no surer than one").isCloseTo(0.5, within(ARITHMETIC));
    }

    @Test
    void aReadingWithoutItsConditionIsLeftOutAndNamed() {
        ShaftStiffness none = of(withoutCondition(255));
        assertThat(none.isKnown()).isFalse();
        assertThat(none.readings()).isEmpty();
        assertThat(none.carriedCpm(127, 205)).isEmpty();
        assertThat(none.carriedUncertaintyCpm(127, 205)).isEmpty();
        assertThat(none.notes()).containsExactly(
            "shaft P: its frequency was recorded without clamp or free length and is not used");
        ShaftStiffness one = of(withoutCondition(300), inClamp(255, OptionalDouble.of(205)));
        assertThat(one.anchor().orElseThrow().cpm()).isEqualTo(255);
        assertThat(one.notes()).containsExactly(
            "shaft P: 1 of its 2 frequencies recorded without clamp or free length and not used");
    }

    @Test
    void aMissingTipMassAndAnImpossibleFreeLengthAreNamed() {
        ShaftStiffness found = of(inClamp(255, OptionalDouble.empty()), ReadShafts.bare(240, 1200));
        assertThat(found.notes()).containsExactly(
            "shaft P: a free length of 1200 mm does not fit its length of 1168 mm; that frequency is not used",
            "shaft P: its frequency is taken as read with 205 g on the tip (default)");
        assertThat(found.readings()).singleElement().satisfies(r -> assertThat(r.tipMassG()).isEqualTo(205));
    }

    /** The scale is the mean of the logarithms: as far above the one reading, in per cent, as below the other. */
    @Test
    void twoFreeLengthsAreMetInLeastSquaresOfRelativeFrequency() {
        ShaftStiffness found = of(ReadShafts.bare(250, FREE), ReadShafts.bare(300, 900));
        List<ReadingFit> fits = found.readings();
        double first = Math.log(fits.get(0).computedCpm() / 250);
        double second = Math.log(fits.get(1).computedCpm() / 300);
        assertThat(first * 250 * 250).isCloseTo(-second * 300 * 300, within(1e-6));   // weighed by (read/0.5)²
        assertThat(first).isNotZero();
        assertThat(found.profile()).isEmpty();
        assertThat(found.anchor().orElseThrow().freeLengthMm()).isEqualTo(FREE);
        assertThat(found.anchor().orElseThrow().standardUncertaintyCpm()).as("they disagree by more than they say")
            .isGreaterThan(0.5);
    }

    /** By hand: 245 over a grip is 250 ± 2.6 bare; joined with 255 ± 0.5 that is 254.8. */
    @Test
    void aBareReadingOutweighsOneOverAGrip() {
        CombinedReading joint = of(ReadShafts.gripped(245, FREE), ReadShafts.bare(255, FREE)).anchor().orElseThrow();
        assertThat(joint.overGrip()).isFalse();
        assertThat(joint.cpm()).isBetween(254.75, 254.9);
    }

    /** A grip factor that is 1 % uncertain is 2.6 cpm of 260. */
    @Test
    void readingsAllOverAGripStayOverTheGripAndCarryTheFactorsUncertainty() {
        ShaftStiffness found = of(ReadShafts.gripped(254.8, FREE), ReadShafts.gripped(255, FREE));
        assertThat(found.anchor().orElseThrow().overGrip()).isTrue();
        assertThat(found.anchor().orElseThrow().standardUncertaintyCpm()).isLessThan(0.5);
        assertThat(found.carriedCpm(127, 205).orElseThrow()).isCloseTo(254.9 / 0.98, within(1e-9));
        assertThat(found.carriedUncertaintyCpm(127, 205).orElseThrow()).isCloseTo(260.1 * 0.01 / 0.98, within(0.05));
    }

    @Test
    void withoutAMassOnlyTheLongestFreeLengthIsUsed() {
        Shaft weighed = ReadShafts.driverShaft(ReadShafts.bare(300, 900), ReadShafts.bare(255, FREE),
            ReadShafts.bare(360, 800));
        Shaft unweighed = new Shaft(weighed.tag(), weighed.model(), weighed.material(), weighed.meantFor(),
            weighed.madeForNumber(), weighed.rawLengthMm(), Optional.empty(), Optional.empty(), Optional.empty(),
            weighed.tipMm(), weighed.tipKind(), weighed.buttMm(), weighed.parallelTipMm(), 0, 0, weighed.frequencies(),
            Optional.empty(), Optional.empty(), Optional.empty(), 0, weighed.condition(), weighed.keeping());
        ShaftStiffness found = ShaftStiffness.of(unweighed, GripFactor.DEFAULT);
        assertThat(found.notes()).containsExactly(
            "shaft P: without its mass its readings cannot be joined; only the one at 1041 mm is used");
        assertThat(found.carriedCpm(ReadShafts.LENGTH_MM - FREE, 205)).hasValue(255);
        assertThat(found.carriedCpm(150, 205)).isEmpty();
        assertThat(found.profile()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, 205", "-5, 205", "1168.4, 205", "127, -1", "NaN, 205", "127, NaN"})
    void aConditionThatCannotBeIsRefused(double clampMm, double tipMassG) {
        ShaftStiffness found = of(ReadShafts.bare(255, FREE));
        assertThatThrownBy(() -> found.carriedCpm(clampMm, tipMassG)).isInstanceOf(IllegalArgumentException.class)
            .hasMessageContaining("shaft P of 1168 mm cannot be read in a clamp of");
        assertThatThrownBy(() -> found.carriedUncertaintyCpm(clampMm, tipMassG)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aLongerFreeLengthAndAHeavierTipMassAlwaysReadLower(long seed) {
        ShaftStiffness found = of(someReadings(new Random(seed)));
        double before = Double.POSITIVE_INFINITY;
        for (double clamp = 600; clamp >= 60; clamp -= 20) {
            double cpm = found.carriedCpm(clamp, 205).orElseThrow();
            assertThat(cpm).isLessThan(before);
            before = cpm;
        }
        before = Double.POSITIVE_INFINITY;
        for (double grams = 0; grams <= 400; grams += 20) {
            double cpm = found.carriedCpm(127, grams).orElseThrow();
            assertThat(cpm).isLessThan(before);
            before = cpm;
        }
    }

    /** Readings of one shaft that would make it a profile, or not, with a little of everything. */
    private static FrequencyReading[] someReadings(Random random) {
        int count = 1 + random.nextInt(5);
        FrequencyReading[] readings = new FrequencyReading[count];
        ShaftStiffness truth = of(ReadShafts.bare(225 + 60 * random.nextDouble(), FREE));
        for (int k = 0; k < count; k++) {
            double free = FREE - 80 * k;
            double grams = 195 + 20 * random.nextDouble();
            boolean over = random.nextInt(3) == 0;
            double cpm = truth.carriedCpm(ReadShafts.LENGTH_MM - free, grams).orElseThrow() * (over ? 0.98 : 1);
            readings[k] = ReadShafts.reading(cpm + 2 * random.nextGaussian(), free, grams, over, OptionalDouble.empty(), "b");
        }
        return readings;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void carriedToAnotherConditionAndBackItIsTheReading(long seed) {
        Random random = new Random(seed);
        double read = 225 + 60 * random.nextDouble();
        double clamp = 80 + 300 * random.nextDouble();
        double grams = 150 + 150 * random.nextDouble();
        double there = of(ReadShafts.bare(read, FREE)).carriedCpm(clamp, grams).orElseThrow();
        ShaftStiffness back = of(ReadShafts.reading(there, ReadShafts.LENGTH_MM - clamp, grams, false,
            OptionalDouble.empty(), "bench 1"));
        assertThat(back.carriedCpm(127, 205).orElseThrow()).isCloseTo(read, within(1e-6));
    }

    /** Farther from where it was read a shaft is less sure: the shape in between is only assumed. */
    @Test
    void uncertaintyGrowsWithTheDistanceCarried() {
        ShaftStiffness found = of(ReadShafts.bare(255, FREE));
        double before = 0;
        for (double clamp = 127; clamp <= 427; clamp += 50) {
            double relative = found.carriedUncertaintyCpm(clamp, 205).orElseThrow() / found.carriedCpm(clamp, 205).orElseThrow();
            assertThat(relative).isGreaterThan(before);
            before = relative;
        }
    }
}
