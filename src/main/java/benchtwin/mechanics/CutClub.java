package benchtwin.mechanics;

import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.toRadians;

import benchtwin.club.Category;

/**
 * An assembly with its cuts made and its tip weight in: what is left open is the lie and the mass at the head. Everything
 * that does not depend on those two is worked out once.
 *
 * <p>Origin x is the butt end of the grip cap; the shaft's butt is at the cap, behind an extension if there is one.
 * Tape and hot melt count at the head's centre of gravity, adhesive, sleeve and tip weight at half the insertion, the
 * ferrule at the hosel top, tape under the grip at half the grip. Source: statics; the places are this handbook's.
 */
public final class CutClub {

    private static final double G_MM2_PER_KG_CM2 = 1000 * 100.0;
    private static final double MM2_PER_CM2 = 100;

    private final Assembly assembly;
    private final double clampMm;
    private final Setup cuts;
    private final ShaftMass density;
    private final double insertionMm;
    /** Playing length before any lie change, mm. */
    private final double straightLengthMm;
    private final double hoselTopMm;
    private final double shaftFromU;
    private final double shaftToU;
    private final double otherMassG;
    private final double otherMomentGMm;
    private final double otherSecondGMm2;
    private final TipBody tipWithoutHead;
    private final double cosLie;
    private final double sinLie;
    private Beam beam;

    /**
     * Makes the cuts.
     * @param assembly the parts
     * @param cuts     cuts, extension, tape layers and tip weight; its angles and head mass are not used here
     * @param clampMm  butt in the clamp when the frequency is read, mm
     */
    public CutClub(Assembly assembly, Setup cuts, double clampMm) {
        this.assembly = assembly;
        this.clampMm = clampMm;
        this.cuts = cuts;
        double length = assembly.get(Input.SHAFT_LENGTH_MM);
        double lift = cuts.tipWeightG() > 0 ? MechanicsDefaults.TIP_WEIGHT_LIFT_MM : 0;
        double cutLength = length - cuts.tipTrimMm() - cuts.buttCutMm();
        double start = assembly.get(Input.CAP_MM) + cuts.extensionMm();
        insertionMm = assembly.get(Input.INSERTION_MM) - lift;
        straightLengthMm = start + cutLength + lift + assembly.get(Input.BORE_TO_GROUND_MM);
        hoselTopMm = start + cutLength - insertionMm;
        shaftFromU = cuts.buttCutMm();
        shaftToU = length - cuts.tipTrimMm();
        density = ShaftMass.of(length, assembly.get(Input.SHAFT_MASS_G), assembly.get(Input.SHAFT_BALANCE_MM));
        cosLie = cos(toRadians(assembly.get(Input.HEAD_LIE_DEG)));
        sinLie = sin(toRadians(assembly.get(Input.HEAD_LIE_DEG)));

        double shaftStart = start - shaftFromU;
        Tally tally = new Tally();
        tally.massG = density.massG(shaftFromU, shaftToU);
        tally.momentGMm = density.momentGMm(shaftFromU, shaftToU, -shaftStart);
        tally.secondGMm2 = density.secondMomentGMm2(shaftFromU, shaftToU, -shaftStart);
        tally.add(assembly.get(Input.GRIP_MASS_G), assembly.get(Input.GRIP_CG_MM));
        tally.add(assembly.get(Input.TAPE_LAYER_G) * cuts.tapeLayers(), assembly.get(Input.GRIP_MIDDLE_MM));
        tally.add(cuts.extensionMassG(), start - cuts.extensionMm() / 2);
        double inHosel = hoselTopMm + insertionMm / 2;
        double atHalf = assembly.get(Input.ADHESIVE_G) + assembly.get(Input.SLEEVE_MASS_G) + cuts.tipWeightG();
        tally.add(atHalf, inHosel);
        tally.add(assembly.get(Input.FERRULE_G), hoselTopMm);
        otherMassG = tally.massG;
        otherMomentGMm = tally.momentGMm;
        otherSecondGMm2 = tally.secondGMm2;

        double topU = shaftToU - insertionMm;
        tipWithoutHead = new TipBody(density.massG(topU, shaftToU), density.momentGMm(topU, shaftToU, topU),
            density.secondMomentGMm2(topU, shaftToU, topU))
            .with(atHalf, insertionMm / 2).with(assembly.get(Input.FERRULE_G), 0);
    }

    /** Mass, first and second moment about the butt, while they are added up. */
    private static final class Tally {
        private double massG;
        private double momentGMm;
        private double secondGMm2;

        void add(double grams, double x) {
            massG += grams;
            momentGMm += grams * x;
            secondGMm2 += grams * x * x;
        }
    }

    /**
     * Playing length: along the axis from the end of the cap to the ground, the head soled at its own lie.
     * @param lieDeg lie after any bend or setting, degrees; NaN when unknown, and then no bend is taken into account
     * @return mm
     */
    public double lengthMm(double lieDeg) {
        if (Double.isNaN(lieDeg) || lieDeg == assembly.get(Input.HEAD_LIE_DEG)) {
            return straightLengthMm;
        }
        double bendPoint = assembly.get(Input.BEND_POINT_MM);
        return straightLengthMm - bendPoint + bendPoint * sinLie / sin(toRadians(lieDeg));
    }

    /**
     * Length by the published 60-degree procedure; a putter's is its playing length.
     * @param lieDeg lie after any bend or setting, degrees
     * @return mm; NaN when the lie is
     */
    public double rulesLengthMm(double lieDeg) {
        if (assembly.shape().category() == Category.PUTTER) {
            return lengthMm(lieDeg);
        }
        double centre = RulesLength.soleCentreMm(assembly.reading().isWood());
        double moved = RulesLength.soleCentreAfterMm(centre, assembly.get(Input.BEND_POINT_MM),
            assembly.get(Input.HEAD_LIE_DEG), lieDeg);
        return RulesLength.mm(lengthMm(lieDeg), lieDeg, moved, RulesLength.SOLE_RADIUS_MM);
    }

    /**
     * Where the head's centre of gravity lies along the axis.
     * @param lieDeg lie after any bend or setting, degrees; NaN when unknown, and then the ground point stands in
     * @return mm from the butt end of the cap
     */
    public double headCgMm(double lieDeg) {
        if (Double.isNaN(lieDeg) || assembly.shape().cgAtGround()) {
            return lengthMm(lieDeg) + assembly.get(Input.CG_ALONG_MM);
        }
        double bendPoint = assembly.get(Input.BEND_POINT_MM);
        double lie = toRadians(lieDeg);
        return straightLengthMm - bendPoint + (bendPoint * cosLie + assembly.get(Input.CG_TOE_MM)) * cos(lie)
            + (bendPoint * sinLie - assembly.get(Input.CG_UP_MM)) * sin(lie) + assembly.get(Input.CG_ALONG_MM);
    }

    /**
     * Total mass.
     * @param headAddedG mass added at the head, g
     * @return g
     */
    public double massG(double headAddedG) {
        return otherMassG + assembly.get(Input.HEAD_MASS_G) + headAddedG;
    }

    /**
     * First moment about the butt end of the cap.
     * @param headCgMm   place of the head's centre of gravity, mm
     * @param headAddedG mass added at the head, g
     * @return g·mm
     */
    public double momentGMm(double headCgMm, double headAddedG) {
        return otherMomentGMm + (assembly.get(Input.HEAD_MASS_G) + headAddedG) * headCgMm;
    }

    /**
     * Moment of inertia about the butt end of the cap, the head's own transverse inertia included where it is known.
     * @param headCgMm   place of the head's centre of gravity, mm
     * @param headAddedG mass added at the head, g
     * @return kg·cm²
     */
    public double inertiaKgCm2(double headCgMm, double headAddedG) {
        double second = otherSecondGMm2 + (assembly.get(Input.HEAD_MASS_G) + headAddedG) * headCgMm * headCgMm
            + assembly.get(Input.TRANSVERSE_INERTIA_G_CM2) * MM2_PER_CM2;
        return second / G_MM2_PER_KG_CM2;
    }

    /**
     * What moves with the head at the end of the beam, about the hosel top.
     * @param headCgMm   place of the head's centre of gravity, mm
     * @param headAddedG mass added at the head, g
     * @return the rigid body
     */
    public TipBody tipBody(double headCgMm, double headAddedG) {
        double beyond = headCgMm - hoselTopMm;
        TipBody body = tipWithoutHead.with(assembly.get(Input.HEAD_MASS_G) + headAddedG, beyond);
        return new TipBody(body.massG(), body.momentGMm(),
            body.secondMomentGMm2() + assembly.get(Input.TRANSVERSE_INERTIA_G_CM2) * MM2_PER_CM2);
    }

    /**
     * How far the head's centre of gravity lies beyond the hosel top.
     * @param headCgMm place of the head's centre of gravity, mm
     * @return mm
     */
    public double beyondHoselMm(double headCgMm) {
        return headCgMm - hoselTopMm;
    }

    /**
     * Mass of the shaft once it is cut.
     * @return g; NaN when the shaft's mass is missing
     */
    public double shaftMassG() {
        return density.massG(shaftFromU, shaftToU);
    }

    /**
     * Balance point of the shaft once it is cut.
     * @return mm from its own butt; NaN when the shaft's mass is missing
     */
    public double shaftBalanceMm() {
        return density.momentGMm(shaftFromU, shaftToU, shaftFromU) / shaftMassG();
    }

    /**
     * The first mode of the club clamped at its butt, with the shaft's stiffness at unit scale.
     * @param headCgMm   place of the head's centre of gravity, mm
     * @param headAddedG mass added at the head, g
     * @return the mode; a scale of k on the stiffness multiplies its frequency by √k
     */
    public Mode unitMode(double headCgMm, double headAddedG) {
        return beam().firstMode(tipBody(headCgMm, headAddedG));
    }

    private Beam beam() {
        if (beam == null) {
            double fromU = shaftFromU + clampMm - cuts.extensionMm();
            beam = beam(assembly, density, fromU, shaftToU - insertionMm - fromU);
        }
        return beam;
    }

    /**
     * The unit-scale beam of a stretch of the shaft as it lies.
     * @param assembly whose shaft
     * @param density  its mass
     * @param fromU    clamp face, from the butt of the shaft as it lies, mm
     * @param freeMm   free length, mm
     * @return the beam
     */
    static Beam beam(Assembly assembly, ShaftMass density, double fromU, double freeMm) {
        return new LyingShaft(assembly.shape().stiffness(), assembly.shape().tipCutMm(),
            assembly.get(Input.SHAFT_LENGTH_MM), density).beam(fromU, freeMm);
    }

    /**
     * Torque after the tip trim: the shaft's own, in proportion to the twist of what is left from the clamp to the tip,
     * torsional stiffness taken to have the shape of the bending stiffness.
     * @return degrees under 1 ft·lbf; NaN when the shaft's torque is missing
     */
    public double torqueDeg() {
        double torque = assembly.get(Input.SHAFT_TORQUE_DEG);
        if (Double.isNaN(torque) || cuts.tipTrimMm() == 0 && cuts.buttCutMm() == 0) {
            return torque;
        }
        double clamp = MechanicsDefaults.CLAMP_MM;
        double whole = beam(assembly, density, clamp, assembly.get(Input.SHAFT_LENGTH_MM) - clamp).complianceIntegral();
        double fromU = shaftFromU + clamp;
        return torque * beam(assembly, density, fromU, shaftToU - fromU).complianceIntegral() / whole;
    }
}
