package benchtwin.bend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.HeadMaterial;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Which ask is chosen. */
class AskPolicyTest {

    /** The standard normal value passed with a chance of 5 %, to four decimals: any table of the normal distribution. */
    private static final double ONE_IN_TWENTY = 1.6449;
    private static final double STEP = 0.01;
    private static final AskPolicy POLICY = new AskPolicy(STEP, 0.05);
    private static final double NO_LIMIT = Double.MAX_VALUE;

    private static Springback known(double gain, double loss) {
        return Springback.of(new SpringbackPrior(gain, 1e-6, loss, 1e-6));
    }

    /**
     * Metal that is known wholly: the best ask ends on the target, unless more than the risk would then pass the far end; then
     * it is the ask whose mean lies 1.6449 deviations short of it.
     */
    @ParameterizedTest
    @CsvSource({"0.8, 0, 1.5, 0.5, 0.05", "1, 0.4, 1.5, 0.5, 0.05", "0.9, 0.3, 1, 0.25, 0.05", "0.9, 0.3, 1, 0.25, 0.15",
        "0.7, 1.1, 0.6, 0.25, 0.2"})
    void inKnownMetalTheAskIsWorkedByHand(double gain, double loss, double need, double tolerance, double reading) {
        NextBend ask = POLICY.next(known(gain, loss), Working.LIVE, need, tolerance, reading, NO_LIMIT).orElseThrow();
        double deviation = Math.hypot(0.15, reading);
        double mean = Math.min(need, need + tolerance - ONE_IN_TWENTY * deviation);
        assertThat(ask.askedDeg()).isCloseTo((mean + loss) / gain, within(STEP));
        assertThat(ask.expectedDeg()).isCloseTo(mean, within(STEP));
        assertThat(ask.beyondChance()).isLessThanOrEqualTo(0.05);
    }

    /** The example worked in the handbook: carbon steel on a fixture, read to 0.05°, 1.0° needed, tolerance 0.25°. */
    @Test
    void theHandbooksExample() {
        AskPolicy bench = new AskPolicy(AskPolicy.STEP_DEG, AskPolicy.DEFAULT_RISK);
        Springback steel = Springback.of(SpringbackPrior.of(HeadMaterial.CARBON_STEEL));
        NextBend first = bench.next(steel, Working.LIVE, 1, 0.25, 0.05, NO_LIMIT).orElseThrow();
        assertThat(first.askedDeg()).isCloseTo(1.15, within(1e-9));
        assertThat(first.expectedDeg()).isCloseTo(0.685, within(1e-9));
        Springback wiser = steel.after(new BendTrial(1.15, 0.55, 0.05, Working.LIVE));
        assertThat(wiser.gain()).isCloseTo(0.88, within(0.005));
        assertThat(wiser.lossDeg()).isCloseTo(0.43, within(0.005));
        assertThat(bench.next(wiser, Working.LIVE, 0.45, 0.25, 0.05, NO_LIMIT).orElseThrow().askedDeg()).isCloseTo(0.85, within(1e-9));
    }

    static Stream<Arguments> anyMetal() {
        Random random = new Random(5);
        return IntStream.range(0, 40).mapToObj(k -> {
            Springback known = Springback.of(SpringbackPrior.of(HeadMaterial.values()[random.nextInt(HeadMaterial.values().length)]));
            for (int bend = random.nextInt(4); bend > 0; bend--) {
                double asked = 0.5 + 2 * random.nextDouble();
                known = known.after(new BendTrial(asked, asked * random.nextDouble(), 0.1, Working.LIVE));
            }
            return Arguments.of("case %d of seed 5".formatted(k), known, Working.values()[k % 2], 0.3 + 2 * random.nextDouble(),
                0.15 + 0.3 * random.nextDouble(), 0.03 + 0.1 * random.nextDouble(), 0.5 + 2 * random.nextDouble());
        });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("anyMetal")
    void noAskOfTheGridIsBetterAmongThoseAllowed(String name, Springback known, Working working, double need, double tolerance,
                                                 double reading, double left) {
        Optional<NextBend> chosen = POLICY.next(known, working, need, tolerance, reading, left);
        double best = -1;
        for (double asked = STEP; asked < 8; asked += STEP) {
            double mean = known.meanDeg(asked);
            double spread = known.spreadDeg(asked, working);
            double over = 1 - cdf((left - mean) / spread);
            double beyond = 1 - cdf((need + tolerance - mean) / Math.hypot(spread, reading));
            if (mean > 0 && over <= 0.05 && beyond <= 0.05) {
                best = Math.max(best, cdf((need + tolerance - mean) / Math.hypot(spread, reading))
                    - cdf((need - tolerance - mean) / Math.hypot(spread, reading)));
            }
        }
        assertThat(chosen.map(NextBend::withinChance).orElse(-1.0)).isCloseTo(best, within(1e-6));
    }

    /** The chances, against a million seeded bends; 0.5/√1e6 is 0.0005, four of them. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("anyMetal")
    void theChancesAreThoseOfManyBends(String name, Springback known, Working working, double need, double tolerance,
                                       double reading, double left) {
        double asked = 1.4;
        NextBend ask = AskPolicy.of(known, working, asked, need, tolerance, reading);
        Random random = new Random(3);
        double spread = known.spreadDeg(asked, working);
        int within = 0;
        int beyond = 0;
        int bends = 1_000_000;
        for (int k = 0; k < bends; k++) {
            double left0 = need + reading * random.nextGaussian();   // the reading it started from was off
            double got = known.meanDeg(asked) + spread * random.nextGaussian();
            within += Math.abs(left0 - got) <= tolerance ? 1 : 0;
            beyond += got - left0 > tolerance ? 1 : 0;
        }
        assertThat(ask.withinChance()).isCloseTo((double) within / bends, within(0.002));
        assertThat(ask.beyondChance()).isCloseTo((double) beyond / bends, within(0.002));
    }

    private static double cdf(double z) {
        return 0.5 * org.hipparchus.special.Erf.erfc(-z / Math.sqrt(2));
    }

    @Test
    void aRiskThatNoAskKeepsGivesNone() {
        assertThat(POLICY.next(known(1, 0), Working.LIVE, 0.1, 0.05, 0.4, NO_LIMIT)).isEmpty();
        assertThat(new AskPolicy(STEP, 0.5).next(known(1, 0), Working.LIVE, 0.1, 0.05, 0.4, NO_LIMIT)).isPresent();
    }

    @Test
    void nearTheLimitItAsksForLess() {
        NextBend free = POLICY.next(known(1, 0.3), Working.LIVE, 1, 0.5, 0.05, NO_LIMIT).orElseThrow();
        NextBend near = POLICY.next(known(1, 0.3), Working.LIVE, 1, 0.5, 0.05, 1).orElseThrow();
        assertThat(near.askedDeg()).isLessThan(free.askedDeg());
        assertThat(near.expectedDeg() + ONE_IN_TWENTY * 0.15).isLessThanOrEqualTo(1 + 1e-4);
        assertThat(POLICY.next(known(1, 0.3), Working.LIVE, 1, 0.5, 0.05, 0.2)).isEmpty();
    }

    @Test
    void stepsAndRisksThatCannotBeAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new AskPolicy(0, 0.05));
        assertThatIllegalArgumentException().isThrownBy(() -> new AskPolicy(0.05, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new AskPolicy(0.05, 0.6));
    }
}
