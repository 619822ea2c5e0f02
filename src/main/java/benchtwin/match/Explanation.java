package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.mechanics.Origin;
import benchtwin.rules.EquipmentRules;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns found plans into options a person can judge: predictions, differences, chances, defaults, ties. */
final class Explanation {

    /** A default is named when one sigma of it moves a targeted quantity by this share of its tolerance. */
    private static final double FELT = 0.05;

    private final Target target;
    private final Target judged;
    private final TwinModel twin;
    private final PlanWords words;
    private final Propagation propagation;
    private final Keep keep;

    Explanation(Target target, TwinModel twin, ShopSettings shop, Keep keep) {
        this(target, target, twin, shop, keep);
    }

    /**
     * @param target what plans are held against
     * @param judged what has to read inside tolerance to be right the first time
     * @param twin   predicts new builds
     * @param shop   what a person can set and what it costs
     * @param keep   what the new builds keep of the old club
     */
    Explanation(Target target, Target judged, TwinModel twin, ShopSettings shop, Keep keep) {
        this.target = target;
        this.judged = judged;
        this.twin = twin;
        this.words = new PlanWords(shop);
        this.propagation = new Propagation(twin);
        this.keep = keep;
    }

    private record Judged(FoundPlan plan, double[] predicted, List<Contribution> contributions) {
    }

    private Judged judge(FoundPlan plan) {
        double[] predicted = twin.predict(plan.candidate().assembly(), plan.setup());
        return new Judged(plan, predicted, propagation.of(plan, predicted));
    }

    /**
     * Plans in order, ties with the leader marked.
     * @param plans least cost first
     * @return options, ranked from 1
     */
    List<Ranked> ranked(List<FoundPlan> plans) {
        List<Judged> judged = plans.stream().map(this::judge).toList();
        List<List<String>> ties = new ArrayList<>();
        judged.forEach(j -> ties.add(new ArrayList<>()));
        for (int k = 1; k < judged.size(); k++) {
            if (Ties.tie(target, judged.get(0).predicted(), judged.get(0).contributions(), judged.get(k).predicted(),
                judged.get(k).contributions())) {
                ties.get(0).add(name(judged.get(k).plan()));
                ties.get(k).add(name(judged.get(0).plan()));
            }
        }
        List<Ranked> ranked = new ArrayList<>();
        for (int k = 0; k < judged.size(); k++) {
            ranked.add(option(judged.get(k), k + 1, ties.get(k)));
        }
        return List.copyOf(ranked);
    }

    /** One plan on its own, for below the line. */
    Ranked alone(FoundPlan plan) {
        return option(judge(plan), 0, List.of());
    }

    private String name(FoundPlan plan) {
        return switch (keep) {
            case SHAFT -> plan.candidate().head().tag();
            case HEAD, BOTH -> plan.candidate().shaft().tag();
            case NONE -> plan.candidate().head().tag() + " with " + plan.candidate().shaft().tag();
        };
    }

    private Ranked option(Judged judged, int rank, List<String> ties) {
        FoundPlan plan = judged.plan();
        double missSquared = CostTerms.missSquared(target, judged.predicted());
        Map<Quantity, Double> predicted = TwinModel.known(judged.predicted());
        Map<Quantity, Double> uncertainty = new EnumMap<>(Quantity.class);
        predicted.keySet().forEach(quantity -> uncertainty.put(quantity, Propagation.u(judged.contributions(), quantity, false)));
        Comparison comparison = Comparison.of(target, predicted);
        return new Ranked(rank, plan.candidate().head(), plan.candidate().shaft(), plan.candidate().sleeve(),
            Optional.ofNullable(plan.angle().setting()), words.of(plan), predicted, uncertainty,
            comparison.difference(), comparison.terms(),
            plan.cost(), Math.sqrt(missSquared), plan.cost() - missSquared,
            FirstTimeRightOdds.of(this.judged, judged.predicted(), judged.contributions()), comparison.outOfTolerance(),
            defaults(judged), List.copyOf(ties),
            EquipmentRules.warnings(plan.candidate().head(), predicted, uncertainty),
            new Workings(twin, plan, judged.predicted(), judged.contributions()));
    }

    private List<String> defaults(Judged judged) {
        List<String> used = new ArrayList<>();
        for (Contribution contribution : judged.contributions()) {
            boolean standsIn = contribution.factor().filter(f -> f.origin() != Origin.MEASURED).isPresent();
            if (standsIn && isFelt(contribution)) {
                used.add(contribution.label());
            }
        }
        boolean bent = judged.plan().angle().lieSteps() != 0 || judged.plan().angle().turnSteps() != 0;
        if (bent && judged.plan().candidate().limits().historyAssumed()) {
            used.add("bend history of head " + judged.plan().candidate().head().tag());
        }
        judged.plan().candidate().head().seat().filter(seat -> seat.readAtSetting().isEmpty()).ifPresent(seat ->
            used.add("setting at which head " + judged.plan().candidate().head().tag() + " was read"));
        return List.copyOf(used);
    }

    private boolean isFelt(Contribution contribution) {
        for (Map.Entry<Quantity, Wanted> entry : target.wanted().entrySet()) {
            double moved = contribution.perSigma()[entry.getKey().ordinal()];
            if (entry.getValue().weight() > 0 && Math.abs(moved) >= FELT * entry.getValue().tolerance()) {
                return true;
            }
        }
        return false;
    }
}
