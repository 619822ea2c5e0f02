package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.mechanics.Factor;
import benchtwin.mechanics.Origin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Works out {@link FirstTimeRight} from contributions of uncertainty. */
final class FirstTimeRightOdds {

    static final String ALL = "all";
    private static final Map<String, Set<Quantity>> GROUPS = new LinkedHashMap<>();
    /** A reading taken four times and averaged is half as uncertain. */
    private static final double MEAN_OF_FOUR = 0.5;
    private static final double WORTH_SAYING = 0.005;
    /** How many measurements are worked out in full: those that take away most variance. */
    private static final int IDEAS_TRIED = 4;

    static {
        GROUPS.put("angles", EnumSet.of(Quantity.LOFT, Quantity.LIE, Quantity.FACE, Quantity.BOUNCE));
        GROUPS.put("length", EnumSet.of(Quantity.LENGTH));
        GROUPS.put("balance", EnumSet.of(Quantity.SWING_WEIGHT, Quantity.TOTAL_MASS));
        GROUPS.put("stiffness", EnumSet.of(Quantity.FREQUENCY));
    }

    private FirstTimeRightOdds() {
    }

    /**
     * The chances for one plan.
     * @param target        what is wanted
     * @param predicted     what is predicted
     * @param contributions what is uncertain, the judging readings included
     * @return the chances
     */
    static FirstTimeRight of(Target target, double[] predicted, List<Contribution> contributions) {
        List<Quantity> judged = judged(target, predicted);
        List<Quantity> lasting = judged.stream().filter(q -> q != Quantity.SWING_WEIGHT).toList();
        double all = chance(lasting, target, predicted, contributions);
        List<Contribution> measured = contributions.stream().map(FirstTimeRightOdds::onceMeasured).toList();
        Map<String, Double> byGroup = new LinkedHashMap<>();
        Map<String, Double> best = new LinkedHashMap<>();
        best.put(ALL, chance(lasting, target, null, measured));
        GROUPS.forEach((name, members) -> {
            List<Quantity> group = judged.stream().filter(members::contains).toList();
            if (!group.isEmpty()) {
                byGroup.put(name, chance(group, target, predicted, contributions));
                best.put(name, chance(group, target, null, measured));
            }
        });
        return new FirstTimeRight(all, byGroup, best, measureNext(lasting, target, predicted, contributions, all));
    }

    /** What the finished club is read for; a shaft's own mass, balance and torque are read before it is built in. */
    private static List<Quantity> judged(Target target, double[] predicted) {
        List<Quantity> judged = new ArrayList<>();
        target.wanted().forEach((quantity, wanted) -> {
            boolean isInAGroup = GROUPS.values().stream().anyMatch(group -> group.contains(quantity));
            if (isInAGroup && wanted.weight() > 0 && !Double.isNaN(predicted[quantity.ordinal()])) {
                judged.add(quantity);
            }
        });
        return judged;
    }

    /** Chance that all of them read inside tolerance; without a prediction, as if every one were predicted spot on. */
    private static double chance(List<Quantity> quantities, Target target, double[] predicted,
                                 List<Contribution> contributions) {
        return chance(quantities, target, predicted, contributions, NormalBox.FINE);
    }

    private static double chance(List<Quantity> quantities, Target target, double[] predicted,
                                 List<Contribution> contributions, int points) {
        int n = quantities.size();
        double[][] covariance = new double[n][n];
        double[] low = new double[n];
        double[] high = new double[n];
        for (int i = 0; i < n; i++) {
            Quantity quantity = quantities.get(i);
            Wanted wanted = target.of(quantity).orElseThrow();
            double off = predicted == null ? 0 : predicted[quantity.ordinal()] - wanted.value();
            low[i] = -1 - off / wanted.tolerance();
            high[i] = 1 - off / wanted.tolerance();
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (Contribution c : contributions) {
                    sum += c.perSigma()[quantity.ordinal()] * c.perSigma()[quantities.get(j).ordinal()];
                }
                double scaled = sum / (wanted.tolerance() * target.of(quantities.get(j)).orElseThrow().tolerance());
                covariance[i][j] = scaled;
                covariance[j][i] = scaled;
            }
        }
        return NormalBox.probability(covariance, low, high, points);
    }

    private static Contribution onceMeasured(Contribution contribution) {
        return contribution.factor()
            .filter(factor -> factor.u() > 0)
            .map(factor -> contribution.scaled(factor.uMeasured() / factor.u()))
            .orElse(contribution);
    }

    private static Optional<FirstTimeRight.MeasureNext> measureNext(List<Quantity> lasting, Target target,
                                                                    double[] predicted,
                                                                    List<Contribution> contributions, double now) {
        double[] variance = new double[Quantity.values().length];
        for (Quantity quantity : lasting) {
            double u = Propagation.u(contributions, quantity, true);
            variance[quantity.ordinal()] = u * u;
        }
        List<Idea> ideas = new ArrayList<>();
        for (int k = 0; k < contributions.size(); k++) {
            Contribution contribution = contributions.get(k);
            int place = k;
            improvement(contribution).ifPresent(improvement ->
                ideas.add(new Idea(place, improvement, removed(contribution, improvement, lasting, variance))));
        }
        ideas.sort(Comparator.comparingDouble(idea -> -idea.removed()));
        Idea best = null;
        double bestRaised = 0;
        for (Idea idea : ideas.subList(0, Math.min(ideas.size(), IDEAS_TRIED))) {
            double raised = chance(lasting, target, predicted, with(contributions, idea), NormalBox.COARSE);
            if (raised > bestRaised) {
                best = idea;
                bestRaised = raised;
            }
        }
        if (best == null) {
            return Optional.empty();
        }
        double raised = chance(lasting, target, predicted, with(contributions, best));
        return raised > now + WORTH_SAYING
            ? Optional.of(new FirstTimeRight.MeasureNext(best.improvement().words(), raised)) : Optional.empty();
    }

    private static List<Contribution> with(List<Contribution> contributions, Idea idea) {
        List<Contribution> improved = new ArrayList<>(contributions);
        improved.set(idea.place(), contributions.get(idea.place()).scaled(idea.improvement().scale()));
        return improved;
    }

    /** Share of variance an improvement takes away, added up over the quantities. */
    private static double removed(Contribution contribution, Improvement improvement, List<Quantity> lasting,
                                  double[] variance) {
        double sum = 0;
        for (Quantity quantity : lasting) {
            double change = contribution.perSigma()[quantity.ordinal()];
            sum += change * change * (1 - improvement.scale() * improvement.scale()) / variance[quantity.ordinal()];
        }
        return sum;
    }

    private record Idea(int place, Improvement improvement, double removed) {
    }

    private record Improvement(String words, double scale) {
    }

    private static Optional<Improvement> improvement(Contribution contribution) {
        if (contribution.factor().isPresent()) {
            Factor factor = contribution.factor().get();
            if (factor.origin() != Origin.MEASURED) {
                return factor.uMeasured() < factor.u()
                    ? Optional.of(new Improvement("measure the " + factor.label(), factor.uMeasured() / factor.u()))
                    : Optional.empty();
            }
            return Optional.of(new Improvement("read the " + factor.label() + " four times and take the mean",
                MEAN_OF_FOUR));
        }
        return contribution.judging() ? Optional.of(new Improvement(
            "take " + contribution.label() + " four times and use the mean", MEAN_OF_FOUR)) : Optional.empty();
    }
}
