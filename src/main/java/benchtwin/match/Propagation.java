package benchtwin.match;

import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import benchtwin.measure.DefaultUncertainty;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.Factor;
import benchtwin.mechanics.MechanicsDefaults;
import benchtwin.mechanics.Setup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Carries the uncertainty of what goes in through the model to what comes out, to first order. A factor that the new build
 * and the old club share is moved in both at once, so that it cancels as it does on the bench.
 *
 * <p>Source: published, JCGM 100:2008, 5.1 (and 5.2 for shared inputs). Derivatives are central differences over one
 * standard deviation.
 */
final class Propagation {

    /** A bend is brought to the asked reading within 0.1°: rectangular, so 0.1/√3. */
    private static final double BEND_U_DEG = 0.1 / Math.sqrt(3);
    /** Share of a change in modelled frequency that the model may be wrong by, once it is scaled to the club. Memory. */
    private static final double MODEL_SHARE = 0.1;

    private final TwinModel twin;

    Propagation(TwinModel twin) {
        this.twin = twin;
    }

    /**
     * Everything uncertain about a plan's prediction against its target.
     * @param plan      the plan
     * @param predicted what it is predicted to measure
     * @return contributions, each independent of the others
     */
    List<Contribution> of(FoundPlan plan, double[] predicted) {
        List<Contribution> all = ofInputs(plan.candidate().assembly(), plan.setup(), predicted);
        bends(plan, all);
        judging(plan, predicted, all);
        return all;
    }

    /**
     * What the inputs, the old club's readings and the model itself are uncertain by.
     * @param fresh     the new build's parts
     * @param setup     its plan
     * @param predicted what it is predicted to measure
     * @return contributions, each independent of the others
     */
    List<Contribution> ofInputs(Assembly fresh, Setup setup, double[] predicted) {
        List<Contribution> all = new ArrayList<>();
        factors(fresh).forEach((key, factor) -> moved(factor, fresh, setup).ifPresent(all::add));
        oldReadings(predicted, all);
        model(predicted, all);
        return all;
    }

    private Map<String, Factor> factors(Assembly fresh) {
        Map<String, Factor> byKey = new LinkedHashMap<>();
        for (Factor factor : fresh.factors()) {
            byKey.put(factor.key(), factor);
        }
        twin.old().ifPresent(old -> old.assembly().factors().forEach(f -> byKey.putIfAbsent(f.key(), f)));
        return byKey;
    }

    private Optional<Contribution> moved(Factor factor, Assembly fresh, Setup setup) {
        if (factor.u() == 0) {
            return Optional.empty();
        }
        double[] up = at(factor, factor.u(), fresh, setup);
        double[] down = at(factor, -factor.u(), fresh, setup);
        double[] change = new double[up.length];
        boolean any = false;
        for (int q = 0; q < change.length; q++) {
            change[q] = (up[q] - down[q]) / 2;
            any |= change[q] != 0 && !Double.isNaN(change[q]);
        }
        return any ? Optional.of(new Contribution(factor.key(), factor.label(), change, Optional.of(factor), false))
            : Optional.empty();
    }

    private double[] at(Factor factor, double by, Assembly fresh, Setup setup) {
        Assembly movedFresh = hasKey(fresh, factor.key()) ? fresh.moved(factor, by) : fresh;
        Optional<OldClub> movedOld = twin.old().map(old ->
            hasKey(old.assembly(), factor.key()) ? old.withAssembly(old.assembly().moved(factor, by)) : old);
        return twin.predict(movedFresh, setup, movedOld);
    }

    private static boolean hasKey(Assembly assembly, String key) {
        return assembly.factors().stream().anyMatch(f -> f.key().equals(key));
    }

    /** What is carried over is as uncertain as the old club's own readings. */
    private void oldReadings(double[] predicted, List<Contribution> all) {
        if (twin.old().isEmpty()) {
            return;
        }
        double[] carried = twin.carried();
        twin.old().get().measured().forEach((quantity, reading) -> {
            boolean scales = quantity == Quantity.FREQUENCY && twin.isScaledByOldClub();
            if (carried[quantity.ordinal()] != 0 || scales) {
                double u = reading.standardUncertainty();
                double share = scales ? predicted[quantity.ordinal()] / reading.value() : 1;
                double[] change = new double[Quantity.values().length];
                change[quantity.ordinal()] = u * share;
                if (quantity == Quantity.LENGTH) {
                    change[Quantity.RULES_LENGTH.ordinal()] = u;
                }
                all.add(new Contribution("old:" + quantity.word(), "the old club's " + quantity.word().replace('-', ' '), change,
                    Optional.empty(), false));
            }
        });
    }

    private void bends(FoundPlan plan, List<Contribution> all) {
        AngleOption angle = plan.angle();
        String head = plan.candidate().head().tag();
        if (angle.lieSteps() != 0) {
            all.add(single("bend:" + head + ":lie", "the bend of the lie", Quantity.LIE, BEND_U_DEG, false));
        }
        if (angle.turnSteps() != 0) {
            Quantity turned = plan.candidate().head().isWood() ? Quantity.FACE : Quantity.LOFT;
            double[] change = new double[Quantity.values().length];
            change[turned.ordinal()] = BEND_U_DEG;
            if (turned == Quantity.LOFT) {
                change[Quantity.BOUNCE.ordinal()] = BEND_U_DEG;
            }
            all.add(new Contribution("bend:" + head + ":turn", "the bend of the " + turned.word(), change,
                Optional.empty(), false));
        }
    }

    /**
     * The beam model's own error: 1 cpm on a prediction; where the scale comes from the built club it is shared by both
     * builds, and a tenth of the change in frequency is left of it, at most 1 cpm.
     */
    private void model(double[] predicted, List<Contribution> all) {
        double u = MechanicsDefaults.MODEL_CPM_U;
        if (twin.isScaledByOldClub()) {
            double change = predicted[Quantity.FREQUENCY.ordinal()]
                - twin.old().orElseThrow().measured().get(Quantity.FREQUENCY).value();
            u = Math.min(u, MODEL_SHARE * Math.abs(change));
        }
        if (u > 0) {
            all.add(single("model:frequency", "the beam model", Quantity.FREQUENCY, u, false));
        }
    }

    private void judging(FoundPlan plan, double[] predicted, List<Contribution> all) {
        boolean wood = twin.loftIn() != AngleReading.EDGE;
        for (Quantity quantity : Quantity.targetable()) {
            double u = judgingU(quantity, wood);
            if (!Double.isNaN(predicted[quantity.ordinal()])) {
                all.add(single("judge:" + plan.candidate().key() + quantity.word(),
                    "the final reading of " + quantity.word().replace('-', ' '), quantity, u, true));
            }
        }
    }

    /** Uncertainty of the reading that judges the finished club. Memory, per gauge changeable. */
    static double judgingU(Quantity quantity, boolean wood) {
        return switch (quantity) {
            case LOFT -> wood ? DefaultUncertainty.WOOD_LOFT_DEG : DefaultUncertainty.IRON_LOFT_DEG;
            case LIE -> wood ? DefaultUncertainty.WOOD_LIE_DEG : DefaultUncertainty.IRON_LIE_DEG;
            case FACE -> DefaultUncertainty.FACE_DEG;
            case BOUNCE -> DefaultUncertainty.BOUNCE_DEG;
            case LENGTH -> DefaultUncertainty.LENGTH_MM;
            case SWING_WEIGHT -> DefaultUncertainty.SWING_WEIGHT_POINTS;
            case FREQUENCY -> DefaultUncertainty.FREQUENCY_CPM;
            case TOTAL_MASS -> DefaultUncertainty.MASS_G;
            case TORQUE -> DefaultUncertainty.TORQUE_DEG;
            default -> 0;
        };
    }

    private static Contribution single(String key, String label, Quantity quantity, double u, boolean judging) {
        double[] change = new double[Quantity.values().length];
        change[quantity.ordinal()] = u;
        return new Contribution(key, label, change, Optional.empty(), judging);
    }

    /**
     * Standard uncertainty of one quantity.
     * @param contributions independent contributions
     * @param quantity      which
     * @param withJudging   whether the reading that will judge the club counts
     * @return in the quantity's unit
     */
    static double u(List<Contribution> contributions, Quantity quantity, boolean withJudging) {
        double sum = 0;
        for (Contribution c : contributions) {
            double change = c.perSigma()[quantity.ordinal()];
            if ((withJudging || !c.judging()) && !Double.isNaN(change)) {
                sum += change * change;
            }
        }
        return Math.sqrt(sum);
    }
}
