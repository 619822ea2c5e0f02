package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Probabilities of a normal vector in a box: closed forms, tables and sampling. */
class FirstTimeRightTest {

    static LongStream seeds() {
        return LongStream.range(1, 6);
    }

    /** Two-sided normal table, four decimals: memory. */
    @ParameterizedTest
    @CsvSource({"1, 0.6827", "1.96, 0.9500", "3, 0.9973"})
    void oneDimensionIsTheNormalTable(double z, double printed) {
        assertThat(NormalBox.probability(new double[][] {{1}}, new double[] {-z}, new double[] {z}))
            .isCloseTo(printed, within(1e-4));
    }

    /** The handbook's example: a perfect iron loft, read at 0.2° before and after, tolerance 0.25°, scores 0.62. */
    @Test
    void aPerfectIronLoftReadTwiceScoresSixtyTwoInAHundred() {
        double variance = (0.2 * 0.2 + 0.2 * 0.2) / (0.25 * 0.25);
        assertThat(NormalBox.probability(new double[][] {{variance}}, new double[] {-1}, new double[] {1}))
            .isCloseTo(0.62, within(0.005));
    }

    @Test
    void independentDimensionsMultiply() {
        double[][] unit = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        double one = NormalBox.phi(1) - NormalBox.phi(-1);
        assertThat(NormalBox.probability(unit, new double[] {-1, -1, -1}, new double[] {1, 1, 1}))
            .isCloseTo(one * one * one, within(1e-3));
    }

    /** Closed form for the positive quadrant: 1/4 + asin(ρ)/(2π). Source: textbook (Sheppard 1899). */
    @ParameterizedTest
    @CsvSource({"-0.8", "0", "0.5", "0.95"})
    void aCorrelatedQuadrantHasItsClosedForm(double rho) {
        assertThat(NormalBox.probability(new double[][] {{1, rho}, {rho, 1}}, new double[] {0, 0},
            new double[] {40, 40})).isCloseTo(0.25 + Math.asin(rho) / (2 * Math.PI), within(2e-3));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void agreesWithSampling(long seed) {
        Random random = new Random(seed);
        int n = 5;
        double[][] root = new double[n][n + 2];
        double[][] covariance = new double[n][n];
        for (double[] row : root) {
            for (int k = 0; k < row.length; k++) {
                row[k] = 0.5 * random.nextGaussian();
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int k = 0; k < n + 2; k++) {
                    covariance[i][j] += root[i][k] * root[j][k];
                }
            }
        }
        double[] low = {-1.2, -1, -0.8, -1, -1.5};
        double[] high = {0.8, 1, 1.2, 1, 1.5};
        int inside = 0;
        int samples = 200_000;
        for (int s = 0; s < samples; s++) {
            double[] draw = new double[n + 2];
            for (int k = 0; k < draw.length; k++) {
                draw[k] = random.nextGaussian();
            }
            boolean in = true;
            for (int i = 0; i < n && in; i++) {
                double x = 0;
                for (int k = 0; k < draw.length; k++) {
                    x += root[i][k] * draw[k];
                }
                in = x >= low[i] && x <= high[i];
            }
            inside += in ? 1 : 0;
        }
        // three standard deviations of the sample and what the sequence is good for
        assertThat(NormalBox.probability(covariance, low, high))
            .isCloseTo(inside / (double) samples, within(3 * Math.sqrt(0.25 / samples) + 2e-3));
    }
}
