package benchtwin.bend;

import org.hipparchus.special.Erf;

/** The normal distribution, as far as bends need it. */
final class Normal {

    private static final double SQRT2 = Math.sqrt(2);
    private static final double DENSITY = 1 / Math.sqrt(2 * Math.PI);

    private Normal() {
    }

    /** Chance of a standard normal value below z. */
    static double below(double z) {
        return 0.5 * Erf.erfc(-z / SQRT2);
    }

    /** The standard normal value that is passed with this chance. */
    static double above(double chance) {
        return SQRT2 * Erf.erfcInv(2 * chance);
    }

    /** Density of a value. */
    static double density(double value, double mean, double variance) {
        double z = (value - mean) / Math.sqrt(variance);
        return DENSITY * Math.exp(-0.5 * z * z) / Math.sqrt(variance);
    }

    /** Ratio of density to upper tail at z, that is φ(z)/(1 − Φ(z)); far out by its asymptote. */
    static double hazard(double z) {
        double tail = below(-z);
        if (tail < 1e-300) {
            return z + 1 / z;
        }
        return DENSITY * Math.exp(-0.5 * z * z) / tail;
    }
}
