package benchtwin.match;

import benchtwin.club.StepKind;
import benchtwin.club.Weight;
import benchtwin.mechanics.MechanicsDefaults;
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

    private static final List<StepKind> STEPS = List.of(StepKind.TIP_TRIM, StepKind.TIP_WEIGHT, StepKind.BUTT_CUT,
        StepKind.EXTENSION, StepKind.REGRIP);

    double tipWeightG() {
        return tipWeight == null ? 0 : tipWeight.massG();
    }

    /** Change of playing length it makes, without the lie, mm. */
    double lengthMm() {
        return extensionMm - tipTrimMm - buttCutMm
            + (tipWeight != null ? MechanicsDefaults.TIP_WEIGHT_LIFT_MM : 0);
    }

    double minutes(ShopSettings shop) {
        double minutes = 0;
        for (StepKind kind : STEPS) {
            minutes += has(kind) ? shop.minutes().get(kind) : 0;
        }
        return minutes;
    }

    /** Longest wait for cure or drying, minutes. */
    double waitMinutes(ShopSettings shop) {
        double wait = 0;
        for (StepKind kind : STEPS) {
            wait = Math.max(wait, has(kind) ? shop.waitMinutes(kind) : 0);
        }
        return wait;
    }

    private boolean has(StepKind kind) {
        return switch (kind) {
            case TIP_TRIM -> tipTrimMm > 0;
            case TIP_WEIGHT -> tipWeight != null;
            case BUTT_CUT -> buttCutMm > 0;
            case EXTENSION -> extensionMm > 0;
            default -> regrip;
        };
    }
}
