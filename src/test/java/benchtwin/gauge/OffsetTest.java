package benchtwin.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class OffsetTest {

    private static final double ARITHMETIC = 1e-12;
    private static final Gauge A = gauge("A", 0.2);
    private static final Gauge R = gauge("R", 0.3);

    private static Gauge gauge(String name, double repeatability) {
        return new Gauge(name, repeatability, OptionalDouble.empty());
    }

    private static Offset found(Gauge gauge, Gauge reference, List<GaugeReading> readings) {
        return Offset.of(gauge, reference, Readings.LOFT, readings).found().orElseThrow();
    }

    @Test
    void aGaugeThatReadsMoreHasAPositiveOffset() {
        List<GaugeReading> readings = Readings.all(Readings.of("H", "A", 10.4), Readings.of("H", "R", 10.0));
        assertThat(found(A, R, readings).value()).isCloseTo(0.4, within(ARITHMETIC));
        assertThat(found(R, A, readings).value()).isCloseTo(-0.4, within(ARITHMETIC));
        assertThat(found(R, A, readings).standardUncertainty()).isEqualTo(found(A, R, readings).standardUncertainty());
    }

    @Test
    void onePartIsEnoughAndLeansOnRepeatability() {
        Offset offset = found(A, R, Readings.all(Readings.of("H", "A", 10.3, 10.5, 10.4, 10.4),
            Readings.of("H", "R", 10.0, 10.1, 9.9, 10.0, 10.0, 10.0, 10.2, 9.8, 10.0)));
        assertThat(offset.value()).isCloseTo(0.4, within(ARITHMETIC));
        assertThat(offset.standardUncertainty()).isCloseTo(Math.sqrt(0.2 * 0.2 / 4 + 0.3 * 0.3 / 9), within(ARITHMETIC));
        assertThat(offset.parts()).isEqualTo(1);
        assertThat(offset.agreement().degreesOfFreedom()).isZero();
        assertThat(offset.agreement().birgeRatio()).isEmpty();
        assertThat(offset.agreement().consistent()).isTrue();
    }

    @Test
    void aMeanIsNoBetterThanAThirdOfTheScaleMark() {
        Gauge coarse = new Gauge("A", 0.2, OptionalDouble.of(0.5));
        List<GaugeReading> readings = Readings.all(Readings.of("H", "A", new double[100]), Readings.of("H", "R", new double[9]));
        assertThat(found(coarse, R, readings).standardUncertainty()).isCloseTo(Math.hypot(0.5 / 3, 0.1), within(ARITHMETIC));
    }

    /** By hand: differences 0 and 1, each ± 0.1. Internal 0.1/√2, χ² 50 with one degree of freedom, external 0.5. */
    @Test
    void partsThatContradictWidenTheUncertainty() {
        Offset offset = found(gauge("A", 0.06), gauge("R", 0.08), Readings.all(Readings.of("H-1", "A", 10),
            Readings.of("H-1", "R", 10), Readings.of("H-2", "A", 31), Readings.of("H-2", "R", 30)));
        assertThat(offset.value()).isCloseTo(0.5, within(ARITHMETIC));
        assertThat(offset.internal()).isCloseTo(0.1 / Math.sqrt(2), within(ARITHMETIC));
        assertThat(offset.agreement().chiSquared()).isCloseTo(50, within(1e-9));
        assertThat(offset.agreement().birgeRatio().orElseThrow()).isCloseTo(Math.sqrt(50), within(1e-9));
        assertThat(offset.standardUncertainty()).isCloseTo(0.5, within(ARITHMETIC));
        assertThat(offset.agreement().consistent()).isFalse();
    }

    @Test
    void partsThatAgreeTooWellDoNotNarrowIt() {
        Offset offset = found(A, R, Readings.all(Readings.of("H-1", "A", 10.4), Readings.of("H-1", "R", 10.0),
            Readings.of("H-2", "A", 30.4), Readings.of("H-2", "R", 30.0)));
        assertThat(offset.standardUncertainty()).isCloseTo(Math.sqrt((0.04 + 0.09) / 2), within(ARITHMETIC));
    }

    /** χ² of one degree of freedom passes 3.841 one time in twenty (any table; memory). */
    @Test
    void consistentEndsWhereRightUncertaintiesRarelyReach() {
        assertThat(new Agreement(3.84, 1).consistent()).isTrue();
        assertThat(new Agreement(3.85, 1).consistent()).isFalse();
    }

    /** By hand: differences 0.4 ± 0.36 and 1.0 ± 0.18 weigh as 1 to 4. */
    @Test
    void aPartReadOftenerWeighsMore() {
        Gauge equal = gauge("A", 0.36 / Math.sqrt(2));
        Offset offset = found(equal, gauge("R", 0.36 / Math.sqrt(2)), Readings.all(Readings.of("H-1", "A", 10.4),
            Readings.of("H-1", "R", 10.0), Readings.of("H-2", "A", 21, 21, 21, 21), Readings.of("H-2", "R", 20, 20, 20, 20)));
        assertThat(offset.value()).isCloseTo((0.4 + 4 * 1.0) / 5, within(ARITHMETIC));
    }

    @Test
    void readingsOfAnyDayAreComparedButOnlyInOneCondition() {
        GaugeReading later = new GaugeReading("H", "loft", "soled", "R", Readings.DAY.plusDays(9), 10.0, 0.1);
        assertThat(found(A, R, Readings.all(Readings.of("H", "A", 10.4), List.of(later))).value())
            .isCloseTo(0.4, within(ARITHMETIC));
        GaugeReading square = new GaugeReading("H", "loft", "square", "R", Readings.DAY, 10.0, 0.1);
        assertThat(Offset.of(A, R, "loft", Readings.all(Readings.of("H", "A", 10.4), List.of(square))).whyNot()).isEqualTo(
            "no part's loft was read on both A and R in the same condition: read one on both");
    }

    @Test
    void twoConditionsOfOnePartAreTwoDifferences() {
        List<GaugeReading> readings = new ArrayList<>(Readings.all(Readings.of("H", "A", 10.4), Readings.of("H", "R", 10.0)));
        for (String gauge : List.of("A", "R")) {
            readings.add(new GaugeReading("H", "loft", "square", gauge, Readings.DAY, 12, 0.1));
        }
        Offset offset = found(A, R, readings);
        assertThat(offset.differences()).extracting(PartDifference::condition).containsExactly("soled", "square");
        assertThat(offset.parts()).isEqualTo(1);
        assertThat(offset.agreement().degreesOfFreedom()).isEqualTo(1);
        List<GaugeReading> turned = new ArrayList<>(readings);
        Collections.reverse(turned);
        assertThat(found(A, R, turned)).isEqualTo(offset);
    }

    @Test
    void partsReadOnOneGaugeOnlyAreLeftOut() {
        Offset offset = found(A, R, Readings.all(Readings.of("H-1", "A", 10.4), Readings.of("H-1", "R", 10.0),
            Readings.of("H-2", "A", 30), Readings.of("H-3", "R", 40), Readings.of("H-1", "other", 99)));
        assertThat(offset.differences()).hasSize(1);
        assertThat(offset.accepted()).isEqualTo(new Link("loft", "A", "R", offset.value(), offset.standardUncertainty()));
    }

    @Test
    void wrongRecordsCannotBeMade() {
        assertThatThrownBy(() -> found(A, A, Readings.of("H", "A", 10))).hasMessage("A has no offset relative to itself");
        assertThatThrownBy(() -> new Link("loft", "A", "A", 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Link("loft", "A", "R", 0.4, 0)).hasMessage(
            "the offset of A relative to R cannot be 0.4 ± 0.0");
        assertThatThrownBy(() -> new Link("loft", "A", "R", Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Agreement(-1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Agreement(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PartDifference("H", "", 1, 0, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Offset("A", "R", "loft", 1, 1, new Agreement(0, 0), List.of()))
            .isInstanceOf(IllegalArgumentException.class);
    }
}
