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

/** Simulated comparisons of two gauges that scatter normally, 0.2 and 0.1, over eight parts. */
class OffsetPropertyTest {

    private static final int STUDIES = 10_000;
    private static final int PARTS = 8;
    private static final double TRUE = 0.37;
    private static final Gauge A = new Gauge("A", 0.2, OptionalDouble.empty());
    private static final Gauge R = new Gauge("R", 0.1, OptionalDouble.empty());
    private static final double INTERNAL = Math.sqrt((0.2 * 0.2 / 2 + 0.1 * 0.1) / PARTS);
    /** Four relative standard deviations of a standard deviation from so many values. */
    private static final double SCATTER = 4 / Math.sqrt(2.0 * STUDIES);

    static LongStream seeds() {
        return LongStream.of(20310505, 20310506);
    }

    /** What repeated studies find: the error's mean and scatter, the root mean square of what they state. */
    private record Outcome(double bias, double scatter, double stated, double inconsistent) {

        /** @param perPart what each part adds that repeatability does not know, standard deviation */
        static Outcome of(long seed, double perPart) {
            SplittableRandom random = new SplittableRandom(seed);
            double sum = 0;
            double squares = 0;
            double stated = 0;
            double inconsistent = 0;
            for (int i = 0; i < STUDIES; i++) {
                Offset offset = Offset.of(A, R, Readings.LOFT, study(random, perPart)).found().orElseThrow();
                double error = offset.value() - TRUE;
                sum += error;
                squares += error * error;
                stated += offset.standardUncertainty() * offset.standardUncertainty();
                inconsistent += offset.agreement().consistent() ? 0 : 1;
            }
            return new Outcome(sum / STUDIES, Math.sqrt(squares / STUDIES), Math.sqrt(stated / STUDIES), inconsistent / STUDIES);
        }

        private static List<GaugeReading> study(SplittableRandom random, double perPart) {
            List<GaugeReading> readings = new ArrayList<>();
            for (int part = 0; part < PARTS; part++) {
                double loft = random.nextDouble(8, 60);
                double offset = TRUE + perPart * random.nextGaussian();
                for (int i = 0; i < 2; i++) {
                    readings.add(Readings.reading("P-" + part, "A", loft + offset + 0.2 * random.nextGaussian(), 0.2));
                }
                readings.add(Readings.reading("P-" + part, "R", loft + 0.1 * random.nextGaussian(), 0.1));
            }
            return readings;
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void withRightRepeatabilityTheOffsetIsUnbiasedAndItsInternalUncertaintyTrue(long seed) {
        Outcome outcome = Outcome.of(seed, 0);
        assertThat(outcome.bias()).isCloseTo(0, within(4 * INTERNAL / Math.sqrt(STUDIES)));
        assertThat(outcome.scatter() / INTERNAL).isCloseTo(1, within(SCATTER));
        assertThat(outcome.inconsistent()).isCloseTo(0.05, within(4 * Math.sqrt(0.05 * 0.95 / STUDIES)));
        // the larger of two, squared: max(1, χ²/7) has the mean 1.2082 and the standard deviation 0.3724, integrated with SciPy
        assertThat(outcome.stated() * outcome.stated() / (INTERNAL * INTERNAL))
            .isCloseTo(1.2082, within(4 * 0.3724 / Math.sqrt(STUDIES)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatPartsAddShowsInTheExternalUncertainty(long seed) {
        Outcome outcome = Outcome.of(seed, 0.5);
        double real = Math.hypot(INTERNAL, 0.5 / Math.sqrt(PARTS));
        assertThat(outcome.bias()).isCloseTo(0, within(4 * real / Math.sqrt(STUDIES)));
        assertThat(outcome.scatter() / real).isCloseTo(1, within(SCATTER));
        // the external variance has a relative standard deviation of √(2/7) in one study
        assertThat(outcome.stated() * outcome.stated() / (real * real)).isCloseTo(1, within(4 * Math.sqrt(2.0 / 7 / STUDIES)));
        assertThat(outcome.inconsistent()).isGreaterThan(0.95);
    }
}
