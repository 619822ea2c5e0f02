package benchtwin.match;

import benchtwin.club.StepKind;
import benchtwin.club.Weight;
import benchtwin.mechanics.MechanicsDefaults;
import java.util.ArrayList;
import java.util.List;

/**
 * What is done to a shaft before it is measured: trims at either end, or an extension, and a tip weight.
 * @param key            tells it from the other cuts of its candidate
 * @param tipTrimMm      off the tip, mm
 * @param buttCutMm      off the butt, mm
 * @param extensionMm    added at the butt, mm
 * @param extensionMassG mass of the extension, g
 * @param tipWeight      weight in the tip; null for none
 * @param regrip         whether a grip has to come off and on again for it
 * @param effort         cost in squared tolerances
 */
record Cut(int key, double tipTrimMm, double buttCutMm, double extensionMm, double extensionMassG, Weight tipWeight,
           boolean regrip, double effort) {

    double tipWeightG() {
        return tipWeight == null ? 0 : tipWeight.massG();
    }

    /** Change of playing length it makes, without the lie, mm. */
    double lengthMm() {
        return extensionMm - tipTrimMm - buttCutMm
            + (tipWeight != null ? MechanicsDefaults.TIP_WEIGHT_LIFT_MM : 0);
    }

    List<StepKind> steps() {
        List<StepKind> steps = new ArrayList<>();
        if (tipTrimMm > 0) {
            steps.add(StepKind.TIP_TRIM);
        }
        if (tipWeight != null) {
            steps.add(StepKind.TIP_WEIGHT);
        }
        if (buttCutMm > 0) {
            steps.add(StepKind.BUTT_CUT);
        }
        if (extensionMm > 0) {
            steps.add(StepKind.EXTENSION);
        }
        if (regrip) {
            steps.add(StepKind.REGRIP);
        }
        return steps;
    }

    double minutes(ShopSettings shop) {
        return steps().stream().mapToDouble(kind -> shop.minutes().get(kind)).sum();
    }

    /** Longest wait for cure or drying, minutes. */
    double waitMinutes(ShopSettings shop) {
        return steps().stream().mapToDouble(shop::waitMinutes).max().orElse(0);
    }
}
