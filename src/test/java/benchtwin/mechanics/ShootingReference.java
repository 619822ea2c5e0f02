package benchtwin.mechanics;

import java.util.function.DoubleUnaryOperator;

/**
 * An independent solution of the same beam for tests: the fourth-order equation integrated from the clamp by classical
 * Runge–Kutta, the frequency found where moment and shear at the end balance the body's inertia. Source of the method:
 * textbook shooting; shares no code with {@link Beam}.
 */
final class ShootingReference {

    private static final int STEPS = 4000;

    private ShootingReference() {
    }

    /** First frequency, cpm. Stiffness N·m², density g/mm (= kg/m), both of metres from the clamp. */
    static double cpm(double lengthM, DoubleUnaryOperator stiffness, DoubleUnaryOperator density, TipBody tip) {
        double low = 1;
        double high = low;
        double before = determinant(low, lengthM, stiffness, density, tip);
        double step = 2;
        while (true) {
            high = low + step;
            double after = determinant(high, lengthM, stiffness, density, tip);
            if (before * after <= 0) {
                break;
            }
            low = high;
            before = after;
        }
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            double value = determinant(middle, lengthM, stiffness, density, tip);
            if (before * value <= 0) {
                high = middle;
            } else {
                low = middle;
                before = value;
            }
        }
        return (low + high) / 2 * 60 / (2 * Math.PI);
    }

    private static double determinant(double omega, double length, DoubleUnaryOperator stiffness,
                                      DoubleUnaryOperator density, TipBody tip) {
        double[] a = march(new double[] {0, 0, 1, 0}, omega, length, stiffness, density);
        double[] b = march(new double[] {0, 0, 0, 1}, omega, length, stiffness, density);
        double w2 = omega * omega;
        double m = tip.massG() * 1e-3;
        double s = tip.momentGMm() * 1e-6;
        double i = tip.secondMomentGMm2() * 1e-9;
        return residualMoment(a, w2, s, i) * residualShear(b, w2, m, s)
            - residualMoment(b, w2, s, i) * residualShear(a, w2, m, s);
    }

    /** State: deflection, slope, moment EI·y'', its derivative. */
    private static double residualMoment(double[] y, double w2, double s, double i) {
        return y[2] - w2 * (s * y[0] + i * y[1]);
    }

    private static double residualShear(double[] y, double w2, double m, double s) {
        return y[3] + w2 * (m * y[0] + s * y[1]);
    }

    private static double[] march(double[] start, double omega, double length, DoubleUnaryOperator stiffness,
                                  DoubleUnaryOperator density) {
        double h = length / STEPS;
        double[] y = start;
        for (int k = 0; k < STEPS; k++) {
            double x = k * h;
            double[] k1 = slope(x, y, omega, stiffness, density);
            double[] k2 = slope(x + h / 2, plus(y, k1, h / 2), omega, stiffness, density);
            double[] k3 = slope(x + h / 2, plus(y, k2, h / 2), omega, stiffness, density);
            double[] k4 = slope(x + h, plus(y, k3, h), omega, stiffness, density);
            double[] next = new double[4];
            for (int n = 0; n < 4; n++) {
                next[n] = y[n] + h / 6 * (k1[n] + 2 * k2[n] + 2 * k3[n] + k4[n]);
            }
            y = next;
        }
        return y;
    }

    private static double[] slope(double x, double[] y, double omega, DoubleUnaryOperator stiffness,
                                  DoubleUnaryOperator density) {
        return new double[] {y[1], y[2] / stiffness.applyAsDouble(x), y[3],
            omega * omega * density.applyAsDouble(x) * y[0]};
    }

    private static double[] plus(double[] y, double[] dy, double h) {
        return new double[] {y[0] + h * dy[0], y[1] + h * dy[1], y[2] + h * dy[2], y[3] + h * dy[3]};
    }
}
