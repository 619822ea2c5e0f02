package benchtwin.samples;

import benchtwin.measure.Units;

/**
 * The bench that the sample shafts were read on: the first mode of a shaft clamped at its butt with a mass on its tip,
 * found by Stodola's method (inertia to moment, moment to curvature, curvature to shape, again) on a fixed grid. Written apart
 * from the program's own beam, so that the sample readings do not come from what they will be used with.
 */
final class ShaftGauge {

    private static final int PANELS = 300;
    private static final int ROUNDS = 12;

    private final ShaftLine line;
    private final double rawMm;
    private final double rawMassG;
    private final double rawBalanceMm;

    ShaftGauge(ShaftLine line, double rawMm, double rawMassG, double rawBalanceMm) {
        this.line = line;
        this.rawMm = rawMm;
        this.rawMassG = rawMassG;
        this.rawBalanceMm = rawBalanceMm;
    }

    /** Linear density at a place from the raw butt, g/mm: straight, from mass and balance point. */
    private double density(double fromButtMm) {
        double share = rawBalanceMm / rawMm;
        return rawMassG / rawMm * (4 - 6 * share + (12 * share - 6) * fromButtMm / rawMm);
    }

    /** Mass of a stretch of the raw shaft, g. */
    double massG(double fromMm, double toMm) {
        return (density(fromMm) + density(toMm)) / 2 * (toMm - fromMm);
    }

    /** Balance point of a stretch of the raw shaft from its own butt, mm. */
    double balanceMm(double fromMm, double toMm) {
        double start = density(fromMm);
        double end = density(toMm);
        return (toMm - fromMm) * (start + 2 * end) / (3 * (start + end));
    }

    /** Stiffness at a place from the raw butt, up to one scale: a tapered tube's times the model's profile. */
    private double stiffness(double fromButtMm) {
        double fromTip = rawMm - fromButtMm;
        double parallel = Units.mm(line.tip().parallelIn());
        double ratio = line.tip().diameterIn() / line.buttIn();
        double diameter = ratio + (1 - ratio) * Math.max(0, fromTip - parallel) / (rawMm - parallel);
        return diameter * diameter * diameter * line.profile().at(fromTip / rawMm);
    }

    /** Twist of a stretch under unit torque, up to one scale. */
    double twist(double fromMm, double toMm) {
        double sum = 0;
        double step = (toMm - fromMm) / PANELS;
        for (int i = 0; i < PANELS; i++) {
            sum += step / stiffness(fromMm + (i + 0.5) * step);
        }
        return sum;
    }

    /**
     * Frequency up to one scale.
     * @param clampFaceMm clamp face from the raw butt, mm
     * @param tipMm       tip from the raw butt, mm
     * @param tipMassG    mass on the tip, g
     */
    double frequency(double clampFaceMm, double tipMm, double tipMassG) {
        double step = (tipMm - clampFaceMm) / PANELS;
        double[] shape = new double[PANELS + 1];
        for (int i = 0; i <= PANELS; i++) {
            shape[i] = (double) i * i / (PANELS * PANELS);
        }
        double square = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double[] bent = bentBy(shape, clampFaceMm, step, tipMassG);
            square = shape[PANELS] / bent[PANELS];
            for (int i = 0; i <= PANELS; i++) {
                shape[i] = bent[i] / bent[PANELS];
            }
        }
        return Math.sqrt(square);
    }

    /** The shape that the inertia of another bends the shaft to. */
    private double[] bentBy(double[] shape, double clampFaceMm, double step, double tipMassG) {
        double[] curvature = new double[PANELS + 1];
        double shear = tipMassG * shape[PANELS];
        double moment = 0;
        for (int i = PANELS - 1; i >= 0; i--) {
            double load = (density(clampFaceMm + i * step) * shape[i]
                + density(clampFaceMm + (i + 1) * step) * shape[i + 1]) / 2 * step;
            moment += (shear + load / 2) * step;
            shear += load;
            curvature[i] = moment / stiffness(clampFaceMm + i * step);
        }
        double[] bent = new double[PANELS + 1];
        double slope = 0;
        for (int i = 1; i <= PANELS; i++) {
            double turn = (curvature[i - 1] + curvature[i]) / 2 * step;
            bent[i] = bent[i - 1] + (slope + turn / 2) * step;
            slope += turn;
        }
        return bent;
    }
}
