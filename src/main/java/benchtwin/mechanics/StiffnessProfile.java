package benchtwin.mechanics;

import java.util.ArrayList;
import java.util.List;

/**
 * A shaft's own bending stiffness along it, fitted to its readings at three or more free lengths. Places are mm from the tip
 * of the shaft as it lies. Between the longest free length and the butt no reading bent the shaft: there the factor is
 * carried on as it stands at the last knot.
 */
public final class StiffnessProfile {

    private final ProfileFit fit;
    private final ProfiledShape shape;
    private final double lengthMm;
    private final double tipCutMm;

    StiffnessProfile(ProfileFit fit, LyingShaft shaft) {
        this.fit = fit;
        this.shape = fit.shape();
        this.lengthMm = shaft.lengthMm();
        this.tipCutMm = shaft.tipCutMm();
    }

    /**
     * A place where the factor on the default shape may turn.
     * @param fromTipMm           place, mm from the tip of the shaft as it lies
     * @param factor              factor on the default shape there
     * @param standardUncertainty of the factor
     */
    public record Knot(double fromTipMm, double factor, double standardUncertainty) {
    }

    /**
     * Where the factor turns.
     * @return from the tip to the longest free length
     */
    public List<Knot> knots() {
        List<Knot> knots = new ArrayList<>();
        for (double place : fit.knotMm()) {
            double factor = shape.factorAt(place);
            knots.add(new Knot(place, factor, factor * fit.relativeUncertainty(place)));
        }
        return List.copyOf(knots);
    }

    /**
     * How long the shaft is as it lies.
     * @return mm
     */
    public double lengthMm() {
        return lengthMm;
    }

    /**
     * The longest free length it was read at: beyond it the profile is carried on.
     * @return mm from the tip
     */
    public double longestFreeLengthMm() {
        double[] knots = fit.knotMm();
        return knots[knots.length - 1];
    }

    /**
     * Bending stiffness.
     * @param fromTipMm place, mm from the tip of the shaft as it lies
     * @return EI, N·m²
     * @throws IllegalArgumentException when the place is not on the shaft
     */
    public double stiffnessNm2(double fromTipMm) {
        return fit.root() * fit.root() * shape.at(onShaft(fromTipMm) + tipCutMm);
    }

    /**
     * Standard uncertainty of the bending stiffness.
     * @param fromTipMm place, mm from the tip of the shaft as it lies
     * @return N·m²
     * @throws IllegalArgumentException when the place is not on the shaft
     */
    public double standardUncertaintyNm2(double fromTipMm) {
        return stiffnessNm2(fromTipMm) * fit.relativeUncertainty(fromTipMm);
    }

    /**
     * Bending stiffness that the default shape alone would have, scaled to the same readings.
     * @param fromTipMm place, mm from the tip of the shaft as it lies
     * @return EI, N·m²
     * @throws IllegalArgumentException when the place is not on the shaft
     */
    public double defaultStiffnessNm2(double fromTipMm) {
        return fit.root() * fit.root() * shape.base().at(onShaft(fromTipMm) + tipCutMm);
    }

    private double onShaft(double fromTipMm) {
        if (!(fromTipMm >= 0 && fromTipMm <= lengthMm)) {
            throw new IllegalArgumentException("%s mm from the tip is not on a shaft of %.1f mm"
                .formatted(fromTipMm, lengthMm));
        }
        return fromTipMm;
    }
}
