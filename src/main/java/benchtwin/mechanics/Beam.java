package benchtwin.mechanics;

import java.util.Arrays;

/**
 * A slender cantilever whose stiffness and density vary along it, clamped at one end and carrying a rigid body at the
 * other: the free part of a shaft.
 *
 * <p>Euler–Bernoulli, small deflection, rigid clamp. The first mode is found by inverse iteration in integral form: the
 * inertia of a shape is integrated to shear and moment from the end, moment over stiffness to slope and deflection from the
 * clamp; the Rayleigh quotient of the result is λ. Nothing is differentiated and no large matrix is solved, so rounding
 * does not grow with refinement.
 * <p>Source: published, Thomson, Theory of Vibration with Applications, app. D (uniform), and the further exact solutions
 * in BeamPublishedTest.
 */
final class Beam {

    private static final int N = PanelRule.NODES;
    /** Relative change of λ between rounds at which to stop; the error left is its square or less. */
    private static final double CONVERGED = 1e-7;
    private static final int MOST_ROUNDS = 60;
    /** A corner this near an end, as a share of the length, is the end. */
    private static final double SAME_PLACE = 1e-6;
    /** g·mm³/(N·m²) to s². */
    private static final double TO_SECONDS_SQUARED = 1e-12;

    private final double freeLengthMm;
    private final double[] halfLengthMm;
    /** Position from the clamp, per node, mm. */
    private final double[] s;
    private final double[] densityGPerMm;
    /** 1/(N·m²), per node. */
    private final double[] compliance;

    private Beam(double freeLengthMm, double[] halfLengthMm, double[] s, double[] densityGPerMm, double[] compliance) {
        this.freeLengthMm = freeLengthMm;
        this.halfLengthMm = halfLengthMm;
        this.s = s;
        this.densityGPerMm = densityGPerMm;
        this.compliance = compliance;
    }

    /** A function of the distance from the clamp, mm. */
    interface Along {
        double at(double fromClampMm);
    }

    /**
     * A beam of unit scale.
     * @param freeLengthMm clamp face to the end, mm, above 0
     * @param stiffness    bending stiffness along it, N·m², above 0
     * @param density      linear density along it, g/mm, 0 or more
     * @param cornersMm    where either has a corner, mm from the clamp, in any order; those outside are ignored
     * @return the beam
     * @throws IllegalArgumentException when the free length is not above 0
     */
    static Beam of(double freeLengthMm, Along stiffness, Along density, double... cornersMm) {
        if (!(freeLengthMm > 0)) {
            throw new IllegalArgumentException("a free length of %s mm is not above 0".formatted(freeLengthMm));
        }
        double[] edges = edges(freeLengthMm, cornersMm);
        int panels = edges.length - 1;
        double[] half = new double[panels];
        double[] s = new double[panels * N];
        double[] mu = new double[panels * N];
        double[] inverse = new double[panels * N];
        for (int p = 0; p < panels; p++) {
            half[p] = (edges[p + 1] - edges[p]) / 2;
            double middle = (edges[p + 1] + edges[p]) / 2;
            for (int i = 0; i < N; i++) {
                int k = p * N + i;
                s[k] = middle + half[p] * PanelRule.X[i];
                mu[k] = density.at(s[k]);
                inverse[k] = 1 / stiffness.at(s[k]);
            }
        }
        return new Beam(freeLengthMm, half, s, mu, inverse);
    }

    private static double[] edges(double end, double[] corners) {
        double[] inside = Arrays.stream(corners).filter(c -> c > end * SAME_PLACE && c < end * (1 - SAME_PLACE))
            .sorted().toArray();
        double[] edges = new double[inside.length + 2];
        System.arraycopy(inside, 0, edges, 1, inside.length);
        edges[inside.length + 1] = end;
        return edges;
    }

    /**
     * A first mode and where it bends the beam.
     * @param mode         the mode
     * @param fromClampMm  places, mm from the clamp
     * @param energyShares share of the strain energy at each place; they add up to 1. By Rayleigh's principle a stiffness
     *                     greater by a small share p at one of them raises the frequency by half of p times its entry
     */
    record Bending(Mode mode, double[] fromClampMm, double[] energyShares) {
    }

    /**
     * The first mode with a body at the end.
     * @param tip what is fixed to the end
     * @return the mode, for the stiffness given (a scale of k on the stiffness divides λ by k)
     */
    Mode firstMode(TipBody tip) {
        return solve(tip, null);
    }

    /**
     * The first mode with a body at the end, and where it bends the beam.
     * @param tip what is fixed to the end
     * @return the mode with its strain energy
     */
    Bending bending(TipBody tip) {
        double[] moment = new double[s.length];
        Mode mode = solve(tip, moment);
        double[] shares = new double[s.length];
        double sum = 0;
        for (int k = 0; k < s.length; k++) {
            shares[k] = moment[k] * moment[k] * compliance[k] * PanelRule.WHOLE[k % N] * halfLengthMm[k / N];
            sum += shares[k];
        }
        scale(shares, 1 / sum);
        return new Bending(mode, s, shares);
    }

    /** Inverse iteration; the last round's bending moment, up to one scale, goes into {@code moment} when it is asked for. */
    private Mode solve(TipBody tip, double[] moment) {
        int size = s.length;
        double[] y = new double[size];
        for (int k = 0; k < size; k++) {
            y[k] = s[k] * s[k] * (3 * freeLengthMm - s[k]);
        }
        double tipY = 2 * freeLengthMm * freeLengthMm * freeLengthMm;
        double tipSlope = 3 * freeLengthMm * freeLengthMm;
        double scale = 1 / tipY;
        scale(y, scale);
        tipY *= scale;
        tipSlope *= scale;

        double[] inertia = new double[size];
        double[] work = new double[size];
        double[] next = new double[size];
        double lambda = 0;
        double strain = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            for (int k = 0; k < size; k++) {
                inertia[k] = densityGPerMm[k] * y[k];
            }
            double shearTip = tip.massG() * tipY + tip.momentGMm() * tipSlope;
            double momentTip = tip.momentGMm() * tipY + tip.secondMomentGMm2() * tipSlope;
            integrateFromEnd(inertia, work, shearTip);
            integrateFromEnd(work, next, momentTip);
            if (moment != null) {
                System.arraycopy(next, 0, moment, 0, size);
            }
            for (int k = 0; k < size; k++) {
                work[k] = next[k] * compliance[k];
            }
            double nextSlope = integrateFromClamp(work, next);
            double nextY = integrateFromClamp(next, work);
            double energy = dot(inertia, work) + shearTip * nextY + momentTip * nextSlope;
            double kinetic = kinetic(work, nextY, nextSlope, tip);
            double quotient = kinetic / energy;
            strain = energy;
            boolean done = Math.abs(quotient - lambda) <= CONVERGED * quotient;
            lambda = quotient;
            double unit = 1 / nextY;
            for (int k = 0; k < size; k++) {
                y[k] = work[k] * unit;
            }
            tipY = 1;
            tipSlope = nextSlope * unit;
            strain *= unit * unit;
            if (done) {
                break;
            }
        }
        double toUnitStrain = 1 / Math.sqrt(strain);
        double root = Math.sqrt(TO_SECONDS_SQUARED);
        return new Mode(lambda * TO_SECONDS_SQUARED, tipY * toUnitStrain * root, tipSlope * toUnitStrain * root);
    }

    private double kinetic(double[] shape, double tipY, double tipSlope, TipBody tip) {
        double sum = 0;
        for (int p = 0; p < halfLengthMm.length; p++) {
            double part = 0;
            for (int j = 0; j < N; j++) {
                int k = p * N + j;
                part += PanelRule.WHOLE[j] * densityGPerMm[k] * shape[k] * shape[k];
            }
            sum += part * halfLengthMm[p];
        }
        return sum + (tip.massG() * tipY + 2 * tip.momentGMm() * tipSlope) * tipY
            + tip.secondMomentGMm2() * tipSlope * tipSlope;
    }

    private double dot(double[] a, double[] b) {
        double sum = 0;
        for (int p = 0; p < halfLengthMm.length; p++) {
            double part = 0;
            for (int j = 0; j < N; j++) {
                int k = p * N + j;
                part += PanelRule.WHOLE[j] * a[k] * b[k];
            }
            sum += part * halfLengthMm[p];
        }
        return sum;
    }

    /** Integral from the clamp to each node; returns the whole. */
    private double integrateFromClamp(double[] f, double[] out) {
        double before = 0;
        for (int p = 0; p < halfLengthMm.length; p++) {
            int base = p * N;
            double half = halfLengthMm[p];
            for (int i = 0; i < N; i++) {
                out[base + i] = before;
            }
            for (int j = 0; j < N; j++) {
                double weight = f[base + j] * half;
                int column = j * N;
                for (int i = 0; i < N; i++) {
                    out[base + i] += PanelRule.CUMULATIVE[column + i] * weight;
                }
            }
            before = out[base + N - 1];
        }
        return before;
    }

    /** Integral from each node to the end, plus what acts at the end. */
    private void integrateFromEnd(double[] f, double[] out, double atEnd) {
        double whole = integrateFromClamp(f, out);
        for (int k = 0; k < out.length; k++) {
            out[k] = whole - out[k] + atEnd;
        }
    }

    private static void scale(double[] values, double by) {
        for (int k = 0; k < values.length; k++) {
            values[k] *= by;
        }
    }

    /**
     * Integral of 1/stiffness over the free length: what twist is proportional to when torsional stiffness has the same
     * shape.
     * @return mm/(N·m²)
     */
    double complianceIntegral() {
        double[] out = new double[compliance.length];
        return integrateFromClamp(compliance, out);
    }
}
