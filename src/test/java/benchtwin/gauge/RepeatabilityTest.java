package benchtwin.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RepeatabilityTest {

    private static final String BENCH = "bench 1";
    private static final double ARITHMETIC = 1e-12;

    /** By hand: 0.08 over 2 and 0.05 over 3 degrees of freedom. */
    private static final List<GaugeReading> TWO_PARTS = Readings.all(Readings.of("P-1", BENCH, 10.0, 10.2, 10.4),
        Readings.of("P-2", BENCH, 50.0, 50.1, 50.2, 50.3));

    private static Finding<Repeatability> find(OptionalDouble mark, List<GaugeReading> readings) {
        return Repeatability.of(BENCH, Readings.LOFT, mark, readings);
    }

    private static Repeatability found(List<GaugeReading> readings) {
        return find(OptionalDouble.empty(), readings).found().orElseThrow();
    }

    @Test
    void onlyTheScatterWithinAPartCounts() {
        Repeatability found = found(TWO_PARTS);
        assertThat(found.standardDeviation()).isCloseTo(Math.sqrt(0.13 / 5), within(ARITHMETIC));
        assertThat(found.degreesOfFreedom()).isEqualTo(5);
        assertThat(found.parts()).isEqualTo(2);
        assertThat(found.readings()).isEqualTo(7);
    }

    @Test
    void anotherDayOrConditionIsAnotherGroup() {
        List<GaugeReading> readings = new ArrayList<>(TWO_PARTS);
        for (double value : new double[] {11.0, 11.2}) {
            readings.add(new GaugeReading("P-1", Readings.LOFT, "soled", BENCH, Readings.DAY.plusDays(1), value, 0.1));
            readings.add(new GaugeReading("P-1", Readings.LOFT, "square", BENCH, Readings.DAY, value + 3, 0.1));
        }
        Repeatability found = found(readings);
        assertThat(found.degreesOfFreedom()).isEqualTo(7);
        assertThat(found.standardDeviation()).isCloseTo(Math.sqrt((0.13 + 2 * 0.02) / 7), within(ARITHMETIC));
        assertThat(found.parts()).isEqualTo(2);
    }

    @Test
    void readingsOfOtherGaugesAndQuantitiesArePassedOver() {
        List<GaugeReading> readings = Readings.all(TWO_PARTS, Readings.of("P-1", "bench 2", 9, 12, 15),
            List.of(new GaugeReading("P-1", "lie", "soled", BENCH, Readings.DAY, 58, 0.1)));
        assertThat(found(readings)).isEqualTo(found(TWO_PARTS));
    }

    @Test
    void aPartReadOnceAddsNothing() {
        assertThat(found(Readings.all(TWO_PARTS, Readings.of("P-3", BENCH, 12)))).isEqualTo(found(TWO_PARTS));
    }

    @Test
    void theOrderOfReadingsDoesNotMatter() {
        List<GaugeReading> turned = new ArrayList<>(TWO_PARTS);
        Collections.reverse(turned);
        assertThat(found(turned)).isEqualTo(found(TWO_PARTS));
    }

    @Test
    void fourDegreesOfFreedomAreTooFewToSay() {
        assertThat(find(OptionalDouble.empty(), TWO_PARTS.subList(0, 6)).found()).isEmpty();
        assertThat(find(OptionalDouble.empty(), TWO_PARTS.subList(0, 6)).whyNot()).isEqualTo("too few repeat readings of loft on"
            + " bench 1 to say: 4 beyond the first of a part, condition and day, at least 5 are needed");
        assertThat(find(OptionalDouble.empty(), List.of()).whyNot()).contains("0 beyond the first");
    }

    @Test
    void aThirdOfTheScaleMarkIsTheLeast() {
        double s = found(TWO_PARTS).standardDeviation();
        assertThat(found(TWO_PARTS).standardUncertainty()).isEqualTo(s);
        assertThat(find(OptionalDouble.of(0.25), TWO_PARTS).found().orElseThrow().standardUncertainty()).isEqualTo(s);
        assertThat(find(OptionalDouble.of(0.6), TWO_PARTS).found().orElseThrow().standardUncertainty())
            .isCloseTo(0.2, within(ARITHMETIC));
    }

    @Test
    void readingsThatAllAgreeNeedTheScaleMark() {
        List<GaugeReading> equal = Readings.of("P-1", BENCH, 10, 10, 10, 10, 10, 10);
        assertThat(find(OptionalDouble.empty(), equal).whyNot()).isEqualTo("all repeat readings of loft on bench 1 are equal: say"
            + " how far its marks are apart, the uncertainty is a third of that");
        Repeatability found = find(OptionalDouble.of(0.5), equal).found().orElseThrow();
        assertThat(found.standardDeviation()).isZero();
        assertThat(found.highest()).isZero();
        assertThat(found.largest()).isEmpty();
        assertThat(found.standardUncertainty()).isCloseTo(0.5 / 3, within(ARITHMETIC));
        assertThat(found.accepted()).isEqualTo(new Gauge(BENCH, found.standardUncertainty(), OptionalDouble.of(0.5)));
    }

    @Test
    void theReadingFarthestFromItsPartIsNamed() {
        LargestDeviation largest = found(TWO_PARTS).largest().orElseThrow();
        assertThat(largest.reading().value()).isEqualTo(10.0);
        assertThat(largest.deviation()).isCloseTo(-0.2, within(ARITHMETIC));
        // 0.2 / (0.1612 √(2/3)), a fair spread
        assertThat(largest.weighed()).isCloseTo(0.2 / Math.sqrt(0.026 * 2 / 3), within(ARITHMETIC));
        assertThat(largest.looksLikeASlip()).isFalse();
        assertThat(largest.oneOfTwo()).isFalse();
    }

    @Test
    void aSlipIsPointedAtAndStillCounted() {
        List<GaugeReading> readings = Readings.all(TWO_PARTS, Readings.of("P-3", BENCH, 20.0, 20.1, 20.2, 22.0),
            Readings.of("P-4", BENCH, 30.0, 30.1, 30.2, 30.1));
        LargestDeviation largest = found(readings).largest().orElseThrow();
        assertThat(largest.looksLikeASlip()).isTrue();
        assertThat(largest.reading().part()).isEqualTo("P-3");
        assertThat(largest.reading().value()).isEqualTo(22.0);
        assertThat(found(readings).readings()).isEqualTo(15);
    }

    @Test
    void inAPairEitherReadingMayBeTheSlip() {
        List<GaugeReading> readings = Readings.all(TWO_PARTS, Readings.of("P-3", BENCH, 20.0, 23.0),
            Readings.of("P-4", BENCH, 30.0, 30.1, 30.2, 30.1), Readings.of("P-5", BENCH, 40.0, 40.1, 40.2, 40.1));
        LargestDeviation largest = found(readings).largest().orElseThrow();
        assertThat(largest.oneOfTwo()).isTrue();
        assertThat(largest.looksLikeASlip()).isTrue();
    }

    @Test
    void wrongRecordsCannotBeMade() {
        assertThatThrownBy(() -> Readings.reading("P", BENCH, Double.NaN, 0.1)).hasMessage(
            "the reading of P on bench 1 must be a finite number, not NaN");
        assertThatThrownBy(() -> Readings.reading("P", BENCH, 1, -0.1)).hasMessageContaining("0 or more and finite, not -0.1");
        assertThatThrownBy(() -> Readings.reading("P", " ", 1, 0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new GaugeReading("P", "loft", null, BENCH, LocalDate.EPOCH, 1, 0)).isInstanceOf(
            IllegalArgumentException.class);
        assertThatThrownBy(() -> new Gauge(BENCH, Double.NaN, OptionalDouble.empty())).hasMessage(
            "the repeatability of bench 1 must be above 0 and finite, not NaN");
        assertThatThrownBy(() -> find(OptionalDouble.of(0), TWO_PARTS)).hasMessage(
            "the scale mark of bench 1 must be above 0 and finite, not 0.0");
        assertThatThrownBy(() -> new Repeatability(BENCH, "loft", 1, 4, 1, 5, 0.5, 2, Optional.empty(), OptionalDouble.empty()))
            .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Repeatability(BENCH, "loft", 1, 5, 1, 6, 1.5, 2, Optional.empty(), OptionalDouble.empty()))
            .hasMessage("a standard deviation of 1.0 does not lie between 1.5 and 2.0");
        assertThatThrownBy(() -> new Finding<>(Optional.of(1), "because")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Finding<>(Optional.empty(), "")).isInstanceOf(IllegalArgumentException.class);
    }
}
