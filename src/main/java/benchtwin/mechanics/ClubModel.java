package benchtwin.mechanics;

import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import java.util.Arrays;

/** Every quantity of a build, from its assembly and setup. */
public final class ClubModel {

    private ClubModel() {
    }

    /**
     * Predicts a build.
     * @param assembly      the parts
     * @param setup         what is done to them
     * @param condition     how its frequency will be read
     * @param stiffnessRoot √ of the scale on the shaft's stiffness; NaN when no reading sets it
     * @param loftIn        in which reading a wood's loft is wanted
     * @return values by {@link Quantity#ordinal()}, NaN where an input is missing
     */
    public static double[] predict(Assembly assembly, Setup setup, FrequencyCondition condition, double stiffnessRoot,
                                   AngleReading loftIn) {
        double[] out = new double[Quantity.values().length];
        Arrays.fill(out, Double.NaN);
        ClubAngles angles = ClubAngles.of(assembly, setup.aim());
        set(out, Quantity.LOFT, assembly.reading().isWood() ? angles.loftDeg(loftIn) : angles.loftDeg());
        set(out, Quantity.LIE, angles.lieDeg());
        set(out, Quantity.FACE, angles.faceDeg());
        set(out, Quantity.BOUNCE, angles.bounceDeg());
        set(out, Quantity.OFFSET, assembly.get(Input.HEAD_OFFSET_MM)
            - assembly.get(Input.BEND_POINT_MM) * Math.sin(Math.toRadians(angles.turnDeg())));

        CutClub club = new CutClub(assembly, setup, condition.clampMm());
        double cg = club.headCgMm(angles.lieDeg());
        double mass = club.massG(setup.headAddedG());
        double moment = club.momentGMm(cg, setup.headAddedG());
        set(out, Quantity.LENGTH, club.lengthMm(angles.lieDeg()));
        set(out, Quantity.RULES_LENGTH, club.rulesLengthMm(angles.lieDeg()));
        set(out, Quantity.TOTAL_MASS, mass);
        set(out, Quantity.BALANCE_POINT, moment / mass);
        set(out, Quantity.SWING_WEIGHT, SwingWeight.points(mass, moment));
        set(out, Quantity.MOMENT_12_INCH, SwingWeight.momentOzIn(mass, moment, SwingWeight.FULCRUM_12_MM));
        set(out, Quantity.BUTT_INERTIA, club.inertiaKgCm2(cg, setup.headAddedG()));
        set(out, Quantity.TORQUE, club.torqueDeg());
        set(out, Quantity.SHAFT_MASS, club.shaftMassG());
        set(out, Quantity.SHAFT_BALANCE, club.shaftBalanceMm());
        if (!Double.isNaN(stiffnessRoot) && !Double.isNaN(mass)) {
            double bare = club.unitMode(cg, setup.headAddedG()).cpm() * stiffnessRoot;
            set(out, Quantity.FREQUENCY, condition.overGrip() ? bare * assembly.get(Input.GRIP_FACTOR) : bare);
        }
        return out;
    }

    private static void set(double[] out, Quantity quantity, double value) {
        out[quantity.ordinal()] = value;
    }
}
