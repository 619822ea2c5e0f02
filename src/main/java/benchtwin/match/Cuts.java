package benchtwin.match;

import benchtwin.club.ShaftMaterial;
import benchtwin.club.StepKind;
import benchtwin.club.Weight;
import benchtwin.mechanics.Input;
import benchtwin.measure.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every way to cut, extend and tip-weight a candidate's shaft, on the grid a person can set. */
final class Cuts {

    /** Longest extension of a graphite shaft, mm (½ in). Memory. */
    private static final double GRAPHITE_EXTENSION_MAX_MM = 0.5 * Units.MM_PER_INCH;
    /** Longest extension of a steel shaft, mm (1 in). Memory. */
    private static final double STEEL_EXTENSION_MAX_MM = 1.0 * Units.MM_PER_INCH;
    private static final double ROUNDING = 1e-9;

    private final ShopSettings shop;
    private final List<Weight> tipWeights;

    Cuts(ShopSettings shop, List<Weight> drawer) {
        this.shop = shop;
        this.tipWeights = drawer.stream()
            .filter(w -> w.port().equals(Weight.TIP) && w.massG() > 0 && w.count() > 0)
            .sorted(Comparator.comparingDouble(Weight::massG).thenComparing(Weight::tag))
            .toList();
    }

    /**
     * Every way.
     * @param candidate  whose shaft
     * @param lengthFrom least change of playing length worth having, mm
     * @param lengthTo   most, mm
     * @return the untouched shaft among them when its length is inside
     */
    List<Cut> all(Candidate candidate, double lengthFrom, double lengthTo) {
        List<Cut> cuts = new ArrayList<>();
        List<Weight> weights = new ArrayList<>();
        weights.add(null);
        if (candidate.tipFree()) {
            weights.addAll(tipWeights);
        }
        double mostTip = candidate.trimmable() ? mostTipTrimMm(candidate) : 0;
        for (int t = 0; t * shop.tipTrimStepMm() <= mostTip + ROUNDING; t++) {
            for (Weight weight : weights) {
                butts(candidate, t * shop.tipTrimStepMm(), weight, lengthFrom, lengthTo, cuts);
            }
        }
        return cuts;
    }

    /** Parallel tip left less the insertion, so that the bore still holds parallel tip. */
    private static double mostTipTrimMm(Candidate candidate) {
        return Math.max(0, candidate.shaft().parallelTipLeftMm() - candidate.assembly().get(Input.INSERTION_MM));
    }

    private void butts(Candidate candidate, double tipTrim, Weight weight, double lengthFrom, double lengthTo,
                       List<Cut> cuts) {
        Cut uncut = cut(candidate, tipTrim, 0, 0, weight);
        double step = shop.lengthStepMm();
        double mostCut = candidate.gripOff() ? candidate.shaft().lengthMm() / 2 : shop.buttCutMaxMm();
        double mostExtension = candidate.shaft().material() == ShaftMaterial.STEEL ? STEEL_EXTENSION_MAX_MM
            : GRAPHITE_EXTENSION_MAX_MM;
        int first = (int) Math.max(-Math.floor(mostExtension / step + ROUNDING),
            Math.floor((uncut.lengthMm() - lengthTo) / step));
        int last = (int) Math.min(Math.floor(mostCut / step + ROUNDING),
            Math.ceil((uncut.lengthMm() - lengthFrom) / step));
        for (int b = first; b <= last; b++) {
            cuts.add(b == 0 ? uncut : b > 0 ? cut(candidate, tipTrim, b * step, 0, weight)
                : cut(candidate, tipTrim, 0, -b * step, weight));
        }
    }

    private Cut cut(Candidate candidate, double tipTrim, double buttCut, double extension, Weight weight) {
        boolean regrip = (buttCut > 0 || extension > 0) && !candidate.gripOff();
        double mass = extension > 0 ? shop.extensionMassG() : 0;
        Cut draft = new Cut(tipTrim, buttCut, extension, mass, weight, regrip, 0, 0, 0);
        double effort = (mass + draft.tipWeightG()) * shop.effortPerGram();
        double minutes = 0;
        double wait = 0;
        for (StepKind kind : draft.steps()) {
            effort += shop.effort(kind);
            minutes += shop.minutes().get(kind);
            wait = Math.max(wait, shop.waitMinutes(kind));
        }
        return new Cut(tipTrim, buttCut, extension, mass, weight, regrip, effort, minutes, wait);
    }
}
