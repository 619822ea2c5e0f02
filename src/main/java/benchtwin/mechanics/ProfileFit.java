package benchtwin.mechanics;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * A factor r on a shaft's default shape, found from readings at several free lengths: stiffness S · s(x) · r(x), r straight
 * between knots that are spread evenly from the tip to the longest free length. Unknown are ln r at every knot and the
 * logarithm of the grip factor. Least squares of: (computed − read) in units of the reading's uncertainty, at least 0.5 cpm;
 * each step of ln r from knot to knot in units of 0.15; the grip factor's logarithm against what it is taken to be. S is
 * that of the default shape and stays: the level of r is free, its steps are not, so the two cannot wander together.
 *
 * <p>Derivatives come from the mode's strain energy (Rayleigh's principle), so that one beam solution a reading and round is
 * enough. The same equations without a fit say how uncertain the default shape leaves what is carried elsewhere.
 * Source: method textbook (regularised nonlinear least squares); 0.15: memory; 0.5 cpm: memory.
 */
final class ProfileFit {

    /** How far ln r may be expected to step from knot to knot. Memory. */
    static final double STEP = 0.15;
    /** No reading counts as surer than this, cpm: a ruler's free length is worth as much. Memory. */
    static final double LEAST_U_CPM = 0.5;

    private static final double TOLERANCE = 1e-7;
    /** Real readings need four to eight rounds. Readings that no shaft can have may go on for ever: they are stopped. */
    private static final int ENOUGH_ROUNDS = 40;
    private static final int MOST_EVALUATIONS = 2000;
    /** Where ln r is held: a shaft twenty times stiffer or softer than its default shape is a mistake in a reading. Ours. */
    private static final double MOST_LOG = Math.log(20);

    private final LyingShaft base;
    private final List<CombinedReading> readings;
    private final double root;
    private final double[] knotMm;
    private final GripFactor grip;
    private final double leastUCpm;
    private double[] solution;
    private RealMatrix covariance;
    private double chiSquare;
    private double stretch = 1;

    /**
     * The equations, at r = 1 throughout.
     * @param base     the shaft with its default shape
     * @param readings at least one
     * @param root     √S of the default shape alone
     * @param knots    number of knots, 2 or more
     * @param grip     the grip factor
     * @param leastUCpm below which no reading's uncertainty counts, cpm
     */
    private ProfileFit(LyingShaft base, List<CombinedReading> readings, double root, int knots, GripFactor grip,
                       double leastUCpm) {
        this.base = base;
        this.readings = readings;
        this.root = root;
        this.grip = grip;
        this.leastUCpm = leastUCpm;
        double longest = readings.stream().mapToDouble(CombinedReading::freeLengthMm).max().orElseThrow();
        knotMm = new double[knots];
        for (int k = 0; k < knots; k++) {
            knotMm[k] = longest * k / (knots - 1);
        }
        solution = new double[knots + 1];
        solution[knots] = Math.log(grip.value());
    }

    /** The profile that fits the readings. */
    static ProfileFit fitted(LyingShaft base, List<CombinedReading> readings, double root, int knots, GripFactor grip) {
        ProfileFit fit = new ProfileFit(base, readings, root, knots, grip, LEAST_U_CPM);
        LeastSquaresProblem problem = LeastSquaresFactory.create(fit::evaluate, new ArrayRealVector(fit.rows()),
            new ArrayRealVector(fit.solution), null, (round, before, now) -> round >= ENOUGH_ROUNDS, MOST_EVALUATIONS,
            MOST_EVALUATIONS, false, ProfileFit::within);
        fit.solution = new LevenbergMarquardtOptimizer().withCostRelativeTolerance(TOLERANCE)
            .withParameterRelativeTolerance(TOLERANCE).optimize(problem).getPoint().toArray();
        fit.settle();
        // readings that scatter more than they say make everything that rests on them less sure
        fit.stretch = Math.sqrt(Math.max(1, fit.chiSquare / (readings.size() - 1)));
        return fit;
    }

    /** The default shape as it stands, with the uncertainty that a fit would start from. */
    static ProfileFit assumed(LyingShaft base, List<CombinedReading> readings, double root, int knots, GripFactor grip) {
        ProfileFit fit = new ProfileFit(base, readings, root, knots, grip, TOLERANCE);
        fit.settle();
        return fit;
    }

    private static RealVector within(RealVector point) {
        return point.map(value -> Math.max(-MOST_LOG, Math.min(MOST_LOG, value)));
    }

    private void settle() {
        Pair<RealVector, RealMatrix> at = evaluate(new ArrayRealVector(solution));
        RealMatrix jacobian = at.getSecond();
        covariance = new CholeskyDecomposition(jacobian.transposeMultiply(jacobian)).getSolver().getInverse();
        chiSquare = at.getFirst().dotProduct(at.getFirst());
    }

    private int rows() {
        return readings.size() + knotMm.length;
    }

    private Pair<RealVector, RealMatrix> evaluate(RealVector point) {
        double[] at = point.toArray();
        int knots = knotMm.length;
        double[] residuals = new double[rows()];
        double[][] jacobian = new double[rows()][knots + 1];
        LyingShaft shaft = base.with(shape(at));
        int row = 0;
        for (CombinedReading reading : readings) {
            double u = Math.max(leastUCpm, reading.standardUncertaintyCpm());
            double cpm = cpm(shaft, at, reading.freeLengthMm(), reading.tipMassG(), reading.overGrip(), jacobian[row]);
            residuals[row] = (cpm - reading.cpm()) / u;
            for (int k = 0; k <= knots; k++) {
                jacobian[row][k] *= cpm / u;
            }
            row++;
        }
        for (int k = 1; k < knots; k++) {
            residuals[row] = (at[k] - at[k - 1]) / STEP;
            jacobian[row][k] = 1 / STEP;
            jacobian[row++][k - 1] = -1 / STEP;
        }
        double gripU = Math.max(TOLERANCE, grip.relativeUncertainty());
        residuals[row] = (at[knots] - Math.log(grip.value())) / gripU;
        jacobian[row][knots] = 1 / gripU;
        return new Pair<>(new ArrayRealVector(residuals, false), new Array2DRowRealMatrix(jacobian, false));
    }

    /** Frequency, and into {@code slopes} its relative change with every unknown. */
    private double cpm(LyingShaft shaft, double[] at, double freeMm, double tipMassG, boolean overGrip, double[] slopes) {
        Beam.Bending bending = shaft.free(freeMm).bending(TipBody.point(tipMassG));
        ProfiledShape shape = (ProfiledShape) shaft.shape();
        double[] places = bending.fromClampMm();
        for (int i = 0; i < places.length; i++) {
            shape.addShares(freeMm - places[i], bending.energyShares()[i] / 2, slopes);
        }
        slopes[knotMm.length] = overGrip ? 1 : 0;
        double bare = root * bending.mode().cpm();
        return overGrip ? bare * Math.exp(at[knotMm.length]) : bare;
    }

    private ProfiledShape shape(double[] at) {
        double[] factor = new double[knotMm.length];
        for (int k = 0; k < factor.length; k++) {
            factor[k] = Math.exp(at[k]);
        }
        return new ProfiledShape(base.shape(), base.tipCutMm(), knotMm, factor);
    }

    /** The shape found. */
    ProfiledShape shape() {
        return shape(solution);
    }

    /** √S. */
    double root() {
        return root;
    }

    /** Places of the knots from the tip of the shaft as it lies, mm. */
    double[] knotMm() {
        return knotMm.clone();
    }

    /** Frequency in a condition, cpm. */
    double cpm(double freeMm, double tipMassG, boolean overGrip) {
        return cpm(base.with(shape()), solution, freeMm, tipMassG, overGrip, new double[knotMm.length + 1]);
    }

    /** Standard uncertainty of the frequency in a condition, cpm. */
    double uncertaintyCpm(double freeMm, double tipMassG, boolean overGrip) {
        double[] slopes = new double[knotMm.length + 1];
        return cpm(base.with(shape()), solution, freeMm, tipMassG, overGrip, slopes) * spread(slopes);
    }

    /**
     * How far a reading lies from what the others would say of it, to first order: its residual over 1 − h, h the share of
     * itself in what was fitted to it. Source: textbook (deleted residual).
     * @param reading one of those fitted
     * @return the distance in cpm, and the same in standard deviations
     */
    double[] fromTheOthers(CombinedReading reading) {
        double u = Math.max(leastUCpm, reading.standardUncertaintyCpm());
        double own = uncertaintyCpm(reading.freeLengthMm(), reading.tipMassG(), reading.overGrip()) / stretch / u;
        double left = Math.max(TOLERANCE, 1 - own * own);
        double residual = cpm(reading.freeLengthMm(), reading.tipMassG(), reading.overGrip()) - reading.cpm();
        return new double[] {Math.abs(residual) / left, Math.abs(residual) / (u * Math.sqrt(left))};
    }

    /** Standard uncertainty of ln r at a place, from the tip of the shaft as it lies, mm. */
    double relativeUncertainty(double fromTipMm) {
        double[] slopes = new double[knotMm.length + 1];
        shape().addShares(fromTipMm, 1, slopes);
        return spread(slopes);
    }

    private double spread(double[] slopes) {
        RealVector vector = new ArrayRealVector(slopes, false);
        return stretch * Math.sqrt(vector.dotProduct(covariance.operate(vector)));
    }
}
