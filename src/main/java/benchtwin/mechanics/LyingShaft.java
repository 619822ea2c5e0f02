package benchtwin.mechanics;

import benchtwin.club.Shaft;
import java.util.Arrays;

/**
 * A shaft as it lies, as the beam sees it: stiffness up to one scale, and density.
 * @param shape    relative stiffness along the raw shaft
 * @param tipCutMm where the shaft as it lies starts on the raw shaft, mm from the raw tip
 * @param lengthMm length as it lies, mm
 * @param density  how its mass lies along it
 */
record LyingShaft(StiffnessShape shape, double tipCutMm, double lengthMm, ShaftMass density) {

    /**
     * A recorded shaft with a stiffness shape.
     * @param shaft the shaft; without a mass every frequency of it is NaN
     * @param shape its shape
     * @return the shaft as it lies
     */
    static LyingShaft of(Shaft shaft, StiffnessShape shape) {
        return new LyingShaft(shape, shaft.tipCutMm(), shaft.lengthMm(), ShaftMass.of(shaft));
    }

    LyingShaft with(StiffnessShape other) {
        return new LyingShaft(other, tipCutMm, lengthMm, density);
    }

    /**
     * The unit-scale beam of a stretch of it.
     * @param fromU  clamp face, from the butt of the shaft as it lies, mm
     * @param freeMm free length, mm
     * @return the beam
     */
    Beam beam(double fromU, double freeMm) {
        double tipZ = tipCutMm + lengthMm;
        double[] corners = Arrays.stream(shape.cornersMm()).map(z -> tipZ - z - fromU).toArray();
        return Beam.of(freeMm, s -> shape.at(tipZ - fromU - s), s -> Math.max(0, density.at(fromU + s)), corners);
    }

    /**
     * The unit-scale beam of its last stretch, as a raw shaft is clamped.
     * @param freeMm clamp face to tip, mm
     * @return the beam
     */
    Beam free(double freeMm) {
        return beam(lengthMm - freeMm, freeMm);
    }

    /**
     * What it would read at unit scale with a mass on its tip.
     * @param freeMm   clamp face to tip, mm
     * @param tipMassG mass on the tip, g
     * @return cpm; NaN without the shaft's mass
     */
    double unitCpm(double freeMm, double tipMassG) {
        return Double.isNaN(density.startGPerMm()) ? Double.NaN : free(freeMm).firstMode(TipBody.point(tipMassG)).cpm();
    }
}
