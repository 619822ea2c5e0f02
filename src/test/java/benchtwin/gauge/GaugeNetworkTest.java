package benchtwin.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class GaugeNetworkTest {

    private static final double ARITHMETIC = 1e-12;

    private static Link link(String gauge, String reference, double offset, double uncertainty) {
        return new Link(Readings.LOFT, gauge, reference, offset, uncertainty);
    }

    private static GaugeNetwork network(Link... links) {
        return GaugeNetwork.of(Readings.LOFT, "R", List.of(), List.of(links));
    }

    private static Estimate offset(GaugeNetwork network, String gauge) {
        return network.offset(gauge).found().orElseThrow();
    }

    private static GaugeReading on(String gauge, double value, double uncertainty) {
        return Readings.reading("H", gauge, value, uncertainty);
    }

    private static void isEstimate(Estimate estimate, double value, double uncertainty) {
        assertThat(estimate.value()).isCloseTo(value, within(ARITHMETIC));
        assertThat(estimate.standardUncertainty()).isCloseTo(uncertainty, within(ARITHMETIC));
    }

    @Test
    void alongAChainOffsetsAddAndUncertaintiesAddInSquares() {
        GaugeNetwork network = network(link("A", "R", 0.4, 0.3), link("B", "A", 0.3, 0.4));
        isEstimate(offset(network, "R"), 0, 0);
        isEstimate(offset(network, "A"), 0.4, 0.3);
        isEstimate(offset(network, "B"), 0.7, 0.5);
        assertThat(network.agreement().degreesOfFreedom()).isZero();
    }

    @Test
    void aLinkMayBeWrittenEitherWayRound() {
        isEstimate(offset(network(link("R", "A", -0.4, 0.3)), "A"), 0.4, 0.3);
    }

    @Test
    void twoLinksBetweenTwoGaugesAreAveragedByWeight() {
        // weights 1 to 4: (0.2 + 4 · 0.3)/5, and 0.2 · 0.1 / √(0.2² + 0.1²); χ² = 0.1²/(0.2² + 0.1²), below its 1
        GaugeNetwork network = network(link("A", "R", 0.2, 0.2), link("A", "R", 0.3, 0.1));
        isEstimate(offset(network, "A"), 0.28, 0.2 * 0.1 / Math.sqrt(0.05));
        assertThat(network.agreement().chiSquared()).isCloseTo(0.2, within(ARITHMETIC));
    }

    /** By hand: 0.4 + 0.3 against 0.9 leaves 0.2, a third to each link; χ² = 4/3 with one degree of freedom. */
    @Test
    void threeLinksThatDoNotCloseShareWhatIsLeft() {
        GaugeNetwork network = network(link("A", "R", 0.4, 0.1), link("B", "A", 0.3, 0.1), link("B", "R", 0.9, 0.1));
        double third = 0.2 / 3;
        double uncertainty = 0.1 * Math.sqrt(2.0 / 3) * Math.sqrt(4.0 / 3);
        isEstimate(offset(network, "A"), 0.4 + third, uncertainty);
        isEstimate(offset(network, "B"), 0.9 - third, uncertainty);
        assertThat(network.agreement().chiSquared()).isCloseTo(4.0 / 3, within(1e-9));
        assertThat(network.agreement().consistent()).isTrue();
        assertThat(network.misfits()).extracting(Misfit::value)
            .satisfiesExactly(a -> assertThat(a).isCloseTo(-third, within(ARITHMETIC)),
                b -> assertThat(b).isCloseTo(-third, within(ARITHMETIC)),
                c -> assertThat(c).isCloseTo(third, within(ARITHMETIC)));
        assertThat(network.misfits().get(2).inUncertainties()).isCloseTo(third / 0.1, within(1e-9));
    }

    @Test
    void linksThatAgreeAreBetterThanEachAlone() {
        GaugeNetwork network = network(link("A", "R", 0.4, 0.1), link("B", "A", 0.3, 0.1), link("B", "R", 0.7, 0.1));
        isEstimate(offset(network, "A"), 0.4, 0.1 * Math.sqrt(2.0 / 3));
        isEstimate(offset(network, "B"), 0.7, 0.1 * Math.sqrt(2.0 / 3));
    }

    @Test
    void aGaugeThatNothingJoinsIsReported() {
        GaugeNetwork network = GaugeNetwork.of("loft", "R", List.of("A", "van", "R"),
            List.of(link("A", "R", 0.4, 0.1), link("C", "D", 0.2, 0.1)));
        assertThat(network.unconnected()).containsExactly("C", "D", "van");
        String why = "no accepted offsets of loft join van to the reference R: its readings can only be compared with its own";
        assertThat(network.offset("van").whyNot()).isEqualTo(why);
        assertThat(network.carry(on("van", 10, 0.1)).whyNot()).isEqualTo(why);
        assertThat(network.offset("never heard of").found()).isEmpty();
        assertThat(network.difference(on("van", 10, 0.1), on("A", 10, 0.1)).whyNot()).isEqualTo(
            "no accepted offsets of loft join van and A: readings on one cannot be compared with readings on the other");
        assertThat(network.difference(on("van", 10, 0.3), on("van", 11, 0.4)).found().orElseThrow())
            .isEqualTo(new Difference(1, 0.5, List.of("van")));
    }

    @Test
    void gaugesApartFromTheReferenceCompareWithEachOther() {
        GaugeNetwork network = network(link("A", "R", 0.4, 0.1), link("D", "C", 0.2, 0.3));
        Difference difference = network.difference(on("C", 10, 0), on("D", 10.2, 0.4)).found().orElseThrow();
        assertThat(difference.value()).isCloseTo(0, within(ARITHMETIC));
        assertThat(difference.standardUncertainty()).isCloseTo(0.5, within(ARITHMETIC));
        assertThat(difference.gauges()).containsExactly("C", "D");
    }

    @Test
    void aWorkshopWithOneGaugeNeedsNoLinks() {
        GaugeNetwork network = network();
        isEstimate(network.carry(on("R", 10, 0.2)).found().orElseThrow().value(), 10, 0.2);
        assertThat(network.unconnected()).isEmpty();
        assertThat(network.agreement().consistent()).isTrue();
        assertThat(network.misfits()).isEmpty();
    }

    @Test
    void carryingSubtractsTheOffsetAndAddsItsUncertainty() {
        Carried carried = network(link("A", "R", 0.4, 0.3)).carry(on("A", 10.4, 0.4)).found().orElseThrow();
        isEstimate(carried.value(), 10.0, 0.5);
        assertThat(carried.gauges()).containsExactly("A", "R");
    }

    @Test
    void onOneGaugeTheOffsetCancels() {
        Difference difference = network(link("A", "R", 0.4, 5)).difference(on("A", 10.4, 0.3), on("A", 10.1, 0.4)).found()
            .orElseThrow();
        assertThat(difference.value()).isCloseTo(-0.3, within(ARITHMETIC));
        assertThat(difference.standardUncertainty()).isCloseTo(0.5, within(ARITHMETIC));
        assertThat(difference.gauges()).containsExactly("A");
    }

    /** Carried to R each is ± 5; what R's link is off by is the same in both. */
    @Test
    void whatTwoOffsetsShareCountsOnceOnly() {
        GaugeNetwork network = network(link("C", "R", 1.0, 5), link("A", "C", 0.3, 0.3), link("B", "C", 0.1, 0.4));
        Difference difference = network.difference(on("A", 10.3, 0), on("B", 10.1, 0)).found().orElseThrow();
        assertThat(difference.value()).isCloseTo(0, within(ARITHMETIC));
        assertThat(difference.standardUncertainty()).isCloseTo(0.5, within(1e-9));
        assertThat(difference.gauges()).containsExactly("A", "B", "C");
        assertThat(network.carry(on("A", 10.3, 0)).found().orElseThrow().gauges()).containsExactly("A", "R", "C");
    }

    @Test
    void aDifferenceIsBeyondUncertaintyPastTwoStandardUncertainties() {
        Difference exactlyTwo = new Difference(-0.5, 0.25, List.of("A"));
        assertThat(exactlyTwo.ratio()).isEqualTo(2);
        assertThat(exactlyTwo.beyondUncertainty()).isFalse();
        assertThat(new Difference(-0.51, 0.25, List.of("A")).beyondUncertainty()).isTrue();
        assertThat(exactlyTwo.beyond(1.9)).isTrue();
        assertThat(new Difference(0, 0, List.of("A")).beyondUncertainty()).isFalse();
        assertThat(new Difference(0.1, 0, List.of("A")).beyondUncertainty()).isTrue();
        assertThatThrownBy(() -> exactlyTwo.beyond(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anotherQuantityIsAProgrammingMistake() {
        assertThatThrownBy(() -> network(new Link("lie", "A", "R", 0.4, 0.1))).hasMessage(
            "an offset of lie between A and R is none of loft");
        GaugeReading lie = new GaugeReading("H", "lie", "", "R", Readings.DAY, 58, 0.2);
        assertThatThrownBy(() -> network().carry(lie)).hasMessage("a reading of lie in a network of gauges for loft");
        assertThatThrownBy(() -> network().difference(on("R", 1, 0), lie)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Estimate(1, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Difference(Double.NaN, 1, List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
