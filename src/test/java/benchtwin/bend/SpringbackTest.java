package benchtwin.bend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.HeadMaterial;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What bends teach, against the closed form and against random sampling. */
class SpringbackTest {

    private static final double ARITHMETIC = 1e-9;

    /** Bishop, Pattern Recognition and Machine Learning, (3.50) and (3.51), by a library's matrices; memory. */
    @ParameterizedTest
    @EnumSource(Working.class)
    void farFromNothingItIsTheBayesianRegression(Working working) {
        List<BendTrial> trials = List.of(new BendTrial(4.0, 3.6, 0.05, working), new BendTrial(5.2, 4.4, 0.07, working),
            new BendTrial(6.5, 5.9, 0.05, working));
        SpringbackPrior prior = SpringbackPrior.of(HeadMaterial.STAINLESS_431);
        Springback known = Springback.of(prior);
        RealMatrix precision = MatrixUtils.createRealDiagonalMatrix(new double[] {1 / square(prior.gainSpread()),
            1 / square(prior.lossSpreadDeg())});
        RealVector weighed = precision.operate(MatrixUtils.createRealVector(new double[] {prior.gain(), -prior.lossDeg()}));
        for (BendTrial trial : trials) {
            known = known.after(trial);
            RealVector x = MatrixUtils.createRealVector(new double[] {trial.askedDeg(), 1});
            double sigma = working == Working.LIVE ? 0.15 : 0.3 * trial.askedDeg();
            double noise = square(sigma) + 2 * square(trial.readingDeg());
            precision = precision.add(x.outerProduct(x).scalarMultiply(1 / noise));
            weighed = weighed.add(x.mapMultiply(trial.gotDeg() / noise));
        }
        RealMatrix covariance = MatrixUtils.inverse(precision);
        RealVector mean = covariance.operate(weighed);
        // at feel a bend of 4° scatters by 1.2°, so a part of it may have got nothing: the two answers then differ a little
        double close = working == Working.LIVE ? ARITHMETIC : 2e-3;
        assertThat(known.gain()).isCloseTo(mean.getEntry(0), within(close));
        assertThat(-known.lossDeg()).isCloseTo(mean.getEntry(1), within(close));
        assertThat(known.gainSpread()).isCloseTo(Math.sqrt(covariance.getEntry(0, 0)), within(close));
        assertThat(known.lossSpreadDeg()).isCloseTo(Math.sqrt(covariance.getEntry(1, 1)), within(close));
    }

    /** A bend that got hardly anything: the exact answer by weighing a million seeded samples of metal. */
    @ParameterizedTest
    @CsvSource({"TITANIUM, 0.5, 0.02", "TITANIUM, 1.5, 0.0", "TITANIUM, 1.5, 0.3", "UNKNOWN, 0.6, 0.25", "CARBON_STEEL, 0.3, -0.05",
        "STAINLESS_17_4, 1.2, -0.08"})
    void aBendThatGotNothingSaysOnlySoMuch(HeadMaterial material, double asked, double got) {
        SpringbackPrior prior = SpringbackPrior.of(material);
        Springback known = Springback.of(prior).after(new BendTrial(asked, got, 0.05, Working.LIVE));
        Random random = new Random(11);
        double sum = 0;
        double[] mean = new double[2];
        double[] square = new double[2];
        for (int k = 0; k < 1_000_000; k++) {
            double gain = prior.gain() + prior.gainSpread() * random.nextGaussian();
            double loss = prior.lossDeg() + prior.lossSpreadDeg() * random.nextGaussian();
            double left = Math.max(0, gain * asked - loss + 0.15 * random.nextGaussian());
            double weight = Math.exp(-square(got - left) / (4 * square(0.05)));
            sum += weight;
            mean[0] += weight * gain;
            mean[1] += weight * loss;
            square[0] += weight * gain * gain;
            square[1] += weight * loss * loss;
        }
        // a million samples, of which a tenth count or more: 0.7/√1e5 is 0.002; three of them
        double sampling = 0.007;
        assertThat(known.gain()).isCloseTo(mean[0] / sum, within(sampling));
        assertThat(known.lossDeg()).isCloseTo(mean[1] / sum, within(sampling));
        assertThat(known.gainSpread()).isCloseTo(Math.sqrt(square[0] / sum - square(mean[0] / sum)), within(sampling));
        assertThat(known.lossSpreadDeg()).isCloseTo(Math.sqrt(square[1] / sum - square(mean[1] / sum)), within(sampling));
    }

    /** The prior for unknown metal is the handbook's: 0.9 ± 0.12 of the ask, less 0.3° ± 0.25°. Memory. */
    @Test
    void everyMetalHasItsPrior() {
        Springback unknown = Springback.of(SpringbackPrior.of(HeadMaterial.UNKNOWN));
        assertThat(unknown.meanDeg(1)).isCloseTo(0.6, within(ARITHMETIC));
        assertThat(unknown.spreadDeg(1, Working.LIVE)).isCloseTo(Math.sqrt(0.12 * 0.12 + 0.25 * 0.25 + 0.15 * 0.15), within(ARITHMETIC));
        assertThat(unknown.spreadDeg(2, Working.FEEL)).isCloseTo(Math.sqrt(0.24 * 0.24 + 0.25 * 0.25 + 0.6 * 0.6), within(ARITHMETIC));
        assertThat(SpringbackPrior.of(HeadMaterial.TITANIUM).lossSpreadDeg()).isEqualTo(1.35 / 2);
        assertThat(SpringbackPrior.of(HeadMaterial.CARBON_STEEL).lossSpreadDeg()).isEqualTo(0.25);
    }

    @Test
    void whatCannotBeABendIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new BendTrial(0, 1, 0.05, Working.LIVE));
        assertThatIllegalArgumentException().isThrownBy(() -> new BendTrial(1, Double.NaN, 0.05, Working.LIVE));
        assertThatIllegalArgumentException().isThrownBy(() -> new BendTrial(1, 1, 0, Working.LIVE));
        assertThatIllegalArgumentException().isThrownBy(() -> new SpringbackPrior(1, 0, 0, 1));
    }

    /** Whatever is read, a bend never makes the metal less known, and nothing becomes no number. */
    @Test
    void noReadingBreaksIt() {
        for (double got : new double[] {-20, -1, 0, 0.001, 1, 8, 60}) {
            for (HeadMaterial material : HeadMaterial.values()) {
                Springback before = Springback.of(SpringbackPrior.of(material));
                Springback after = before;
                for (int k = 0; k < 4; k++) {
                    after = after.after(new BendTrial(0.05 + k, got, 0.01, Working.FEEL));
                }
                assertThat(after.gain()).isFinite();
                assertThat(after.lossDeg()).isFinite();
                assertThat(after.gainSpread()).isPositive().isLessThanOrEqualTo(before.gainSpread() * 1.5);
                assertThat(after.lossSpreadDeg()).isPositive().isLessThanOrEqualTo(before.lossSpreadDeg() * 1.5);
            }
        }
    }

    private static double square(double value) {
        return value * value;
    }
}
