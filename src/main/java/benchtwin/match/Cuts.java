package benchtwin.match;

import benchtwin.club.ShaftMaterial;
import benchtwin.club.StepKind;
import benchtwin.club.Weight;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.MechanicsDefaults;
import benchtwin.measure.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every way to cut, extend and tip-weight a candidate's shaft, on the grid a person can set. */
final class Cuts {

    /** Longest extension of a graphite shaft, mm (½ in). Memory. */
    static final double GRAPHITE_EXTENSION_MAX_MM = 0.5 * Units.MM_PER_INCH;
    /** Longest extension of a steel shaft, mm (1 in). Memory. */
    static final double STEEL_EXTENSION_MAX_MM = 1.0 * Units.MM_PER_INCH;
    /** No extension is shorter: there would be nothing to hold and bond. Memory. */
    private static final double SHORTEST_EXTENSION_MM = 3;
    private static final double ROUNDING = 1e-9;
    /** More than the steps of length a shaft can have, for keys. */
    private static final int KEYS_A_TRIM = 1 << 16;

    /** Nothing done. */
    static final Cut NONE = new Cut(0, 0, 0, 0, 0, null, false, 0);

    private final ShopSettings shop;
    private final boolean butt;
    private final List<Weight> tipWeights;
    private final double tipTrimEffort;
    private final double tipWeightEffort;
    private final double buttCutEffort;
    private final double extensionEffort;
    private final double regripEffort;

    /**
     * @param shop   what a person can set and what it costs
     * @param drawer weights in stock
     * @param butt   whether the butt may be cut or extended
     */
    Cuts(ShopSettings shop, List<Weight> drawer, boolean butt) {
        this.shop = shop;
        this.butt = butt;
        this.tipTrimEffort = shop.effort(StepKind.TIP_TRIM);
        this.tipWeightEffort = shop.effort(StepKind.TIP_WEIGHT);
        this.buttCutEffort = shop.effort(StepKind.BUTT_CUT);
        this.extensionEffort = shop.effort(StepKind.EXTENSION) + shop.extensionMassG() * shop.effortPerGram();
        this.regripEffort = shop.effort(StepKind.REGRIP);
        this.tipWeights = drawer.stream()
            .filter(w -> w.port().equals(Weight.TIP) && w.massG() > 0 && w.count() > 0)
            .sorted(Comparator.comparingDouble(Weight::massG).thenComparing(Weight::tag))
            .toList();
    }

    /**
     * How many tip trims there are besides none.
     * @param candidate whose shaft
     * @return 0 or more
     */
    int trims(Candidate candidate) {
        return candidate.trimmable() ? (int) Math.floor(mostTipTrimMm(candidate) / shop.tipTrimStepMm() + ROUNDING) : 0;
    }

    /**
     * How many tip weights there are besides none.
     * @param candidate whose shaft
     * @return 0 or more
     */
    int tipWeights(Candidate candidate) {
        return candidate.tipFree() ? tipWeights.size() : 0;
    }

    /**
     * What a tip weight costs.
     * @param weight 0 for none, else which
     * @return squared tolerances
     */
    double tipWeightEffort(int weight) {
        return weight == 0 ? 0 : tipWeightEffort + tipWeights.get(weight - 1).massG() * shop.effortPerGram();
    }

    /**
     * Every butt cut and extension with one tip trim and one tip weight, that costs less than what is left.
     * @param candidate  whose shaft
     * @param trim       steps of tip trim
     * @param weight     0 for none, else which tip weight
     * @param lengthFrom least change of playing length worth having, mm
     * @param lengthTo   most, mm
     * @param room       ways that cost this much or more are left out; may be infinite
     * @return the uncut butt among them when its length is inside
     */
    List<Cut> row(Candidate candidate, int trim, int weight, double lengthFrom, double lengthTo, double room) {
        List<Cut> cuts = new ArrayList<>();
        double tip = (trim > 0 ? tipTrimEffort : 0) + tipWeightEffort(weight);
        if (tip < room) {
            butts(candidate, trim, weight, lengthFrom, lengthTo, room - tip, cuts);
        }
        return cuts;
    }

    /**
     * The butt cut or extension that brings the length nearest, with one tip trim and no tip weight.
     * @param candidate whose shaft
     * @param trim      steps of tip trim
     * @param change    wanted change of playing length, mm
     * @return one cut
     */
    Cut nearest(Candidate candidate, int trim, double change) {
        double step = shop.lengthStepMm();
        int b = butt ? (int) Math.round((-trim * shop.tipTrimStepMm() - change) / step) : 0;
        int last = (int) Math.floor(mostButtCutMm(candidate) / step + ROUNDING);
        int first = -(int) Math.floor(mostExtensionMm(candidate) / step + ROUNDING);
        b = Math.max(first, Math.min(last, b));
        return cut(candidate, trim, 0, b < 0 && -b * step < SHORTEST_EXTENSION_MM - ROUNDING ? 0 : b);
    }

    private static double mostExtensionMm(Candidate candidate) {
        return candidate.shaft().material() == ShaftMaterial.STEEL ? STEEL_EXTENSION_MAX_MM : GRAPHITE_EXTENSION_MAX_MM;
    }

    /** At least as much as all cuts together take off, g: no place of a shaft is more than twice as dense as its mean. */
    double mostCutG(Candidate candidate) {
        double tip = candidate.trimmable() ? mostTipTrimMm(candidate) : 0;
        double most = tip + (butt ? mostButtCutMm(candidate) : 0);
        return 2 * candidate.assembly().get(Input.SHAFT_MASS_G) * most / candidate.shaft().lengthMm();
    }

    /** As much as an extension and a tip weight add, g. */
    double mostAddedG(Candidate candidate) {
        double tip = candidate.tipFree() ? tipWeights.stream().mapToDouble(Weight::massG).max().orElse(0) : 0;
        return tip + (butt ? shop.extensionMassG() : 0);
    }

    private double mostButtCutMm(Candidate candidate) {
        return candidate.gripOff() ? candidate.shaft().lengthMm() / 2 : shop.buttCutMaxMm();
    }

    /** Parallel tip left less the insertion, so that the bore still holds parallel tip. */
    static double mostTipTrimMm(Candidate candidate) {
        return Math.max(0, candidate.shaft().parallelTipLeftMm() - candidate.assembly().get(Input.INSERTION_MM));
    }

    private void butts(Candidate candidate, int t, int w, double lengthFrom, double lengthTo, double room,
                       List<Cut> cuts) {
        double step = shop.lengthStepMm();
        double unbutted = -t * shop.tipTrimStepMm() + (w > 0 ? MechanicsDefaults.TIP_WEIGHT_LIFT_MM : 0);
        double mostCut = mostButtCutMm(candidate);
        double mostExtension = mostExtensionMm(candidate);
        int first = (int) Math.max(-Math.floor(mostExtension / step + ROUNDING),
            Math.floor((unbutted - lengthTo) / step));
        int last = (int) Math.min(Math.floor(mostCut / step + ROUNDING), Math.ceil((unbutted - lengthFrom) / step));
        double regrip = candidate.gripOff() ? 0 : regripEffort;
        boolean cutPays = buttCutEffort + regrip < room;
        boolean extensionPays = extensionEffort + regrip < room;
        for (int b = first; b <= last; b++) {
            boolean tooShort = b < 0 && -b * step < SHORTEST_EXTENSION_MM - ROUNDING;
            if (b == 0 || butt && !tooShort && (b > 0 ? cutPays : extensionPays)) {
                cuts.add(cut(candidate, t, w, b));
            }
        }
    }

    private Cut cut(Candidate candidate, int t, int w, int b) {
        Weight weight = w == 0 ? null : tipWeights.get(w - 1);
        boolean regrip = b != 0 && !candidate.gripOff();
        double extensionMass = b < 0 ? shop.extensionMassG() : 0;
        double effort = (t > 0 ? tipTrimEffort : 0)
            + (w > 0 ? tipWeightEffort + weight.massG() * shop.effortPerGram() : 0)
            + (b > 0 ? buttCutEffort : b < 0 ? extensionEffort : 0) + (regrip ? regripEffort : 0);
        double step = shop.lengthStepMm();
        int key = (t * (tipWeights.size() + 1) + w) * KEYS_A_TRIM + b + KEYS_A_TRIM / 2;
        return new Cut(key, t * shop.tipTrimStepMm(), Math.max(0, b * step), Math.max(0, -b * step), extensionMass, weight,
            regrip, effort);
    }
}
