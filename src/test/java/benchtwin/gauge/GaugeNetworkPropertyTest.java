package benchtwin.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Simulated workshops, and what must hold in any network. */
class GaugeNetworkPropertyTest {

    private static final int STUDIES = 10_000;
    private static final double LINK = 0.1;

    static LongStream seeds() {
        return LongStream.of(20310507, 20310508, 20310509);
    }

    private static Link link(String gauge, String reference, double offset, double uncertainty) {
        return new Link(Readings.LOFT, gauge, reference, offset, uncertainty);
    }

    /** Three gauges, each pair linked by parts of its own: every offset ends up better than any one link. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void threeGaugesReconciledAreSurerThanAnyLink(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double sum = 0;
        double squares = 0;
        double quiet = 1;
        for (int i = 0; i < STUDIES; i++) {
            GaugeNetwork network = GaugeNetwork.of(Readings.LOFT, "R", List.of(), List.of(
                link("A", "R", 0.4 + LINK * random.nextGaussian(), LINK),
                link("B", "A", 0.3 + LINK * random.nextGaussian(), LINK),
                link("B", "R", 0.7 + LINK * random.nextGaussian(), LINK)));
            Estimate offset = network.offset("B").found().orElseThrow();
            double error = offset.value() - 0.7;
            sum += error;
            squares += error * error;
            quiet = Math.min(quiet, offset.standardUncertainty());
        }
        double expected = LINK * Math.sqrt(2.0 / 3);
        assertThat(sum / STUDIES).isCloseTo(0, within(4 * expected / Math.sqrt(STUDIES)));
        assertThat(Math.sqrt(squares / STUDIES) / expected).isCloseTo(1, within(4 / Math.sqrt(2.0 * STUDIES)));
        assertThat(Math.sqrt(squares / STUDIES)).isLessThan(LINK);
        assertThat(quiet).isCloseTo(expected, within(1e-12));
    }

    /**
     * The whole way: repeatability found, offsets found, network, two readings of one head on two gauges. Two standard
     * uncertainties should hold the truth about 95 times in 100, give or take two for chance (four standard deviations of
     * a share among so many) and a half for a repeatability that is itself known from 12 degrees of freedom only.
     */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void twoStandardUncertaintiesHoldTheTruthOfADifference(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Shop shop = new Shop(random);
        int held = 0;
        int studies = 2_000;
        double sum = 0;
        for (int i = 0; i < studies; i++) {
            Gauge a = shop.studied("A");
            Gauge b = shop.studied("B");
            Gauge reference = shop.studied("R");
            GaugeNetwork network = GaugeNetwork.of(Readings.LOFT, "R", List.of(),
                List.of(shop.compared(a, reference), shop.compared(b, reference), shop.compared(a, b)));
            double change = random.nextDouble(-1, 1);
            Difference difference = network.difference(shop.read("H", a, 10), shop.read("H", b, 10 + change)).found()
                .orElseThrow();
            held += new Difference(difference.value() - change, difference.standardUncertainty(), List.of())
                .beyondUncertainty() ? 0 : 1;
            sum += difference.value() - change;
        }
        assertThat(held / (double) studies).isCloseTo(0.95, within(0.025));
        assertThat(sum / studies).isCloseTo(0, within(4 * 0.35 / Math.sqrt(studies)));
    }

    /** Gauges of known offset (0, 0.4, −0.3) and repeatability (0.1, 0.2, 0.15). */
    private record Shop(SplittableRandom random) {

        private static final List<String> NAMES = List.of("R", "A", "B");
        private static final double[] OFFSETS = {0, 0.4, -0.3};
        private static final double[] REPEATABILITY = {0.1, 0.2, 0.15};

        private double value(String gauge, double truth) {
            int i = NAMES.indexOf(gauge);
            return truth + OFFSETS[i] + REPEATABILITY[i] * random.nextGaussian();
        }

        /** Four parts read four times each. */
        Gauge studied(String gauge) {
            List<GaugeReading> readings = new ArrayList<>();
            for (int i = 0; i < 16; i++) {
                readings.add(Readings.reading("P-" + i / 4, gauge, value(gauge, 20 + i / 4), 0));
            }
            return Repeatability.of(gauge, Readings.LOFT, OptionalDouble.empty(), readings).found().orElseThrow().accepted();
        }

        /** Five parts of their own, read once on each. */
        Link compared(Gauge gauge, Gauge reference) {
            List<GaugeReading> readings = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                readings.add(Readings.reading("Q-" + i, gauge.name(), value(gauge.name(), 30 + i), 0));
                readings.add(Readings.reading("Q-" + i, reference.name(), value(reference.name(), 30 + i), 0));
            }
            return Offset.of(gauge, reference, Readings.LOFT, readings).found().orElseThrow().accepted();
        }

        GaugeReading read(String part, Gauge gauge, double truth) {
            return Readings.reading(part, gauge.name(), value(gauge.name(), truth), gauge.repeatability());
        }
    }

    /** Which gauge is the reference is a matter of taste: differences do not hang on it. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void anotherReferenceGivesTheSameDifferences(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Link> links = new ArrayList<>();
        for (int gauge = 1; gauge < 8; gauge++) {
            links.add(randomLink(random, gauge, random.nextInt(gauge)));
        }
        for (int i = 0; i < 6; i++) {
            int gauge = random.nextInt(1, 8);
            links.add(randomLink(random, gauge, random.nextInt(gauge)));
        }
        GaugeReading first = Readings.reading("H", "G5", 10, 0.1);
        GaugeReading second = Readings.reading("H", "G7", 10.5, 0.2);
        Difference one = GaugeNetwork.of(Readings.LOFT, "G0", List.of(), links).difference(first, second).found().orElseThrow();
        Difference other = GaugeNetwork.of(Readings.LOFT, "G7", List.of(), links).difference(first, second).found().orElseThrow();
        assertThat(other.value()).isCloseTo(one.value(), within(1e-9));
        assertThat(other.standardUncertainty()).isCloseTo(one.standardUncertainty(), within(1e-9));
        assertThat(other.gauges()).isEqualTo(one.gauges());
    }

    private static Link randomLink(SplittableRandom random, int gauge, int reference) {
        return link("G" + gauge, "G" + reference, random.nextDouble(-1, 1), random.nextDouble(0.02, 0.3));
    }
}
