package benchtwin.mechanics;

import java.util.Arrays;

/**
 * A stiffness shape multiplied by straight pieces between knots. Toward the butt of the last knot the factor stays what it
 * is there: no reading bent the shaft beyond its longest free length. The same holds past the first knot, at the tip.
 * @param base     the shape multiplied
 * @param tipCutMm where the shaft as it lies starts on the raw shaft, mm from the raw tip
 * @param knotMm   places of the knots from the tip of the shaft as it lies, mm, ascending
 * @param factor   the factor at each knot, above 0
 */
record ProfiledShape(StiffnessShape base, double tipCutMm, double[] knotMm, double[] factor) implements StiffnessShape {

    @Override
    public double at(double z) {
        return base.at(z) * factorAt(z - tipCutMm);
    }

    /**
     * The factor at a place.
     * @param fromTipMm from the tip of the shaft as it lies, mm
     * @return above 0
     */
    double factorAt(double fromTipMm) {
        int last = knotMm.length - 1;
        if (fromTipMm <= knotMm[0]) {
            return factor[0];
        }
        for (int k = 1; k <= last; k++) {
            if (fromTipMm < knotMm[k]) {
                double share = (fromTipMm - knotMm[k - 1]) / (knotMm[k] - knotMm[k - 1]);
                return factor[k - 1] + share * (factor[k] - factor[k - 1]);
            }
        }
        return factor[last];
    }

    /**
     * How much of the factor at a place each knot carries: the change of its logarithm with each knot's logarithm.
     * @param fromTipMm from the tip of the shaft as it lies, mm
     * @param by        multiplies what is added
     * @param into      added to, one entry a knot; later entries are left alone
     */
    void addShares(double fromTipMm, double by, double[] into) {
        int last = knotMm.length - 1;
        if (fromTipMm <= knotMm[0]) {
            into[0] += by;
            return;
        }
        for (int k = 1; k <= last; k++) {
            if (fromTipMm < knotMm[k]) {
                double share = (fromTipMm - knotMm[k - 1]) / (knotMm[k] - knotMm[k - 1]);
                double near = (1 - share) * factor[k - 1];
                double far = share * factor[k];
                into[k - 1] += by * near / (near + far);
                into[k] += by * far / (near + far);
                return;
            }
        }
        into[last] += by;
    }

    @Override
    public double[] cornersMm() {
        double[] corners = base.cornersMm();
        double[] all = Arrays.copyOf(corners, corners.length + knotMm.length - 1);
        for (int k = 1; k < knotMm.length; k++) {
            all[corners.length + k - 1] = tipCutMm + knotMm[k];
        }
        Arrays.sort(all);
        return all;
    }
}
