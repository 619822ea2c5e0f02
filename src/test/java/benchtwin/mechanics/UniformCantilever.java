package benchtwin.mechanics;

/**
 * Exact first frequency of a uniform cantilever with a rigid body at its end, for tests: the shape is
 * a (cosh βx − cos βx) + b (sinh βx − sin βx), and moment and shear at the end balance the body's inertia. For a point mass that
 * is 1 + cos β cosh β + α β (cos β sinh β − sin β cosh β) = 0, α the end mass over the beam's, which at α = 1 gives the printed
 * 1.557298 (Mathematical Problems in Engineering 2017, art. 1568019, table 1). Source: textbook. Shares no code with {@link Beam}.
 */
final class UniformCantilever {

    private static final double STEP = 0.01;

    private UniformCantilever() {
    }

    /** Cycles per minute; stiffness N·m², density g/mm, free length mm. */
    static double cpm(double stiffnessNm2, double densityGPerMm, double freeMm, TipBody body) {
        double metres = freeMm / 1000;
        double beta = beta(densityGPerMm, freeMm, body);
        return beta * beta / (metres * metres) * Math.sqrt(stiffnessNm2 / densityGPerMm) * 60 / (2 * Math.PI);
    }

    /** βL of the first mode: the first change of sign, halved down. */
    static double beta(double densityGPerMm, double freeMm, TipBody body) {
        double mass = densityGPerMm * freeMm;
        double m = body.massG() / mass;
        double s = body.momentGMm() / (mass * freeMm);
        double i = body.secondMomentGMm2() / (mass * freeMm * freeMm);
        double low = STEP;
        while (determinant(low, m, s, i) * determinant(low + STEP, m, s, i) > 0) {
            low += STEP;
        }
        double high = low + STEP;
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            if (determinant(low, m, s, i) * determinant(middle, m, s, i) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** With lengths in L and masses in the beam's: y'' = β⁴ (s y + i y') and y''' = −β⁴ (m y + s y') at the end. */
    private static double determinant(double b, double m, double s, double i) {
        double w = b * b * b * b;
        double[] even = {Math.cosh(b) - Math.cos(b), b * (Math.sinh(b) + Math.sin(b)),
            b * b * (Math.cosh(b) + Math.cos(b)), b * b * b * (Math.sinh(b) - Math.sin(b))};
        double[] odd = {Math.sinh(b) - Math.sin(b), b * (Math.cosh(b) - Math.cos(b)),
            b * b * (Math.sinh(b) + Math.sin(b)), b * b * b * (Math.cosh(b) + Math.cos(b))};
        return moment(even, w, s, i) * shear(odd, w, m, s) - moment(odd, w, s, i) * shear(even, w, m, s);
    }

    private static double moment(double[] y, double w, double s, double i) {
        return y[2] - w * (s * y[0] + i * y[1]);
    }

    private static double shear(double[] y, double w, double m, double s) {
        return y[3] + w * (m * y[0] + s * y[1]);
    }
}
