package benchtwin.match;

import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.special.Erf;

/**
 * Probability that a normal vector falls inside a box, with its full covariance.
 *
 * <p>One dimension after the other is conditioned on those before it and integrated over a fixed low-discrepancy
 * sequence, so the same input always gives the same answer (to about 0.002). Source: published, Genz, Numerical
 * Computation of Multivariate Normal Probabilities, J. Comput. Graph. Stat. 1 (1992) 141. One dimension is closed form:
 * published, JCGM 106:2012, conformance probability of a normal density.
 */
final class NormalBox {

    /** Points of the sequence behind a figure that is shown. */
    static final int FINE = 511;
    /** Points behind a comparison that is not. */
    static final int COARSE = 63;
    private static final double TINY = 1e-12;
    private static final double SQRT2 = Math.sqrt(2);

    private NormalBox() {
    }

    /** Standard normal distribution function. */
    static double phi(double z) {
        return 0.5 * Erf.erfc(-z / SQRT2);
    }

    private static double inverse(double p) {
        double bounded = Math.max(TINY, Math.min(1 - TINY, p));
        return -SQRT2 * Erf.erfcInv(2 * bounded);
    }

    /**
     * Chance of all at once.
     * @param covariance symmetric, positive semi-definite
     * @param low        lower limits less the mean
     * @param high       upper limits less the mean
     * @return 0 to 1; 1 for no dimensions
     */
    static double probability(double[][] covariance, double[] low, double[] high) {
        return probability(covariance, low, high, FINE);
    }

    /** The same with a number of points of the caller's choice. */
    static double probability(double[][] covariance, double[] low, double[] high, int points) {
        int n = low.length;
        if (n == 0) {
            return 1;
        }
        double[][] root = cholesky(covariance);
        if (n == 1) {
            return phi(high[0] / root[0][0]) - phi(low[0] / root[0][0]);
        }
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(n - 1);
        sequence.nextVector();
        double sum = 0;
        double[] y = new double[n];
        for (int point = 0; point < points; point++) {
            double[] w = sequence.nextVector();
            double product = 1;
            for (int i = 0; i < n && product > 0; i++) {
                double shift = 0;
                for (int j = 0; j < i; j++) {
                    shift += root[i][j] * y[j];
                }
                double from = phi((low[i] - shift) / root[i][i]);
                double to = phi((high[i] - shift) / root[i][i]);
                product *= Math.max(0, to - from);
                if (i < n - 1) {
                    y[i] = inverse(from + w[i] * (to - from));
                }
            }
            sum += product;
        }
        return sum / points;
    }

    /** Lower triangle; a direction without variance is given a trace of one, so that a box still decides it. */
    private static double[][] cholesky(double[][] covariance) {
        int n = covariance.length;
        double[][] l = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = covariance[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                l[i][j] = i == j ? Math.sqrt(Math.max(sum, TINY)) : sum / l[j][j];
            }
        }
        return l;
    }
}
