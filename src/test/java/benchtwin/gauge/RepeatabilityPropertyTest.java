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

/** Simulated studies: parts that differ, a gauge that scatters normally by a known amount. */
class RepeatabilityPropertyTest {

    private static final int STUDIES = 10_000;
    private static final double TRUE = 0.2;
    private static final String BENCH = "bench 1";

    static LongStream seeds() {
        return LongStream.of(20310503, 20310504);
    }

    private static List<GaugeReading> study(SplittableRandom random, int parts, int repeats) {
        List<GaugeReading> readings = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            double loft = random.nextDouble(8, 60);
            for (int i = 0; i < repeats; i++) {
                readings.add(Readings.reading("P-" + part, BENCH, loft + TRUE * random.nextGaussian(), TRUE));
            }
        }
        return readings;
    }

    private static Repeatability found(List<GaugeReading> readings) {
        return Repeatability.of(BENCH, Readings.LOFT, OptionalDouble.empty(), readings).found().orElseThrow();
    }

    /** Four standard deviations of a share that is counted in so many studies. */
    private static double chance(double share) {
        return 4 * Math.sqrt(share * (1 - share) / STUDIES);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theIntervalHoldsTheTruthNinetyFiveTimesInAHundred(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int held = 0;
        double variance = 0;
        for (int i = 0; i < STUDIES; i++) {
            Repeatability found = found(study(random, 4, 3));
            held += found.lowest() <= TRUE && TRUE <= found.highest() ? 1 : 0;
            variance += found.standardDeviation() * found.standardDeviation() / STUDIES;
        }
        assertThat(held / (double) STUDIES).isCloseTo(0.95, within(chance(0.95)));
        // relative standard deviation of s² with 8 degrees of freedom is √(2/8); four of them over the studies
        assertThat(variance / (TRUE * TRUE)).isCloseTo(1, within(4 * Math.sqrt(2.0 / 8 / STUDIES)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aFairStudyIsSuspectedOneTimeInAHundredAtMost(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int onePart = 0;
        int fourParts = 0;
        for (int i = 0; i < STUDIES; i++) {
            onePart += found(study(random, 1, 9)).largest().orElseThrow().looksLikeASlip() ? 1 : 0;
            fourParts += found(study(random, 4, 3)).largest().orElseThrow().looksLikeASlip() ? 1 : 0;
        }
        assertThat(onePart / (double) STUDIES).isCloseTo(0.01, within(chance(0.01)));
        assertThat(fourParts / (double) STUDIES).isLessThan(0.01 + chance(0.01)).isGreaterThan(0.005);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aSlipOfEightStandardDeviationsIsMostlyFound(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int found = 0;
        for (int i = 0; i < 1000; i++) {
            List<GaugeReading> readings = study(random, 4, 4);
            GaugeReading slip = readings.get(0);
            readings.set(0, Readings.reading(slip.part(), BENCH, slip.value() + 8 * TRUE, TRUE));
            LargestDeviation largest = found(readings).largest().orElseThrow();
            found += largest.looksLikeASlip() && largest.reading().equals(readings.get(0)) ? 1 : 0;
        }
        assertThat(found).isGreaterThan(900);
    }
}
