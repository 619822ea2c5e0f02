package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.match.CutCosts.Live;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The cuts and masses of least cost for one candidate whose angles are set.
 *
 * <p>First a guess: the trim is searched by halves for the wanted frequency, each trim with the butt cut that makes the
 * length right and the mass that makes the swing weight right. Its cost bounds the rest. Then trims are taken outward from
 * the guess, as long as their stiffest or softest build can come near enough to the wanted frequency to pay.
 */
final class CutSearch {

    /**
     * At one length a longer tip trim is stiffer: the beam moves toward the thicker end. A beam that also moves into denser
     * shaft gives a little of it back; this many cpm cover that (see TrimPropertyTest).
     */
    static final double TRIM_SLACK_CPM = 0.3;

    /** What a guessed mass may cost before all masses are looked at instead. */
    private static final double GUESS_ROOM = 1;

    private final PlanSearch plans;
    private final CostTerms terms;
    private final Candidate candidate;
    private final CutCosts costs;
    private final boolean frequencyCounts;
    private final int trims;
    private double bound;
    private FoundPlan found;

    /**
     * @param plans     what is wanted and what can be set
     * @param candidate parts that fit
     * @param below     plans that cost this much or more are of no interest; may be infinite
     */
    CutSearch(PlanSearch plans, Candidate candidate, double below) {
        this.plans = plans;
        this.terms = plans.terms;
        this.candidate = candidate;
        this.bound = below;
        this.costs = new CutCosts(plans, candidate);
        this.frequencyCounts = terms.counts(Quantity.FREQUENCY);
        this.trims = plans.cuts.trims(candidate);
    }

    /** The best plan so far; null when none cost less than the bound. */
    FoundPlan found() {
        return found;
    }

    /** Angles that cost this much or more cannot be part of a better plan. */
    double roomForAngles() {
        return bound - costs.least();
    }

    /**
     * Looks for a better plan with these angles.
     * @param option how the angles are set
     */
    void tryAngle(AngleOption option) {
        double length = costs.straightLengthMm(option);
        boolean lengthCounts = terms.counts(Quantity.LENGTH);
        double change = lengthCounts ? terms.want(Quantity.LENGTH) - length : 0;
        int middle = 0;
        if (found == null) {
            middle = guess(option, length, change);
        } else {
            middle = trimOf(found.cut());
        }
        double room = roomForAngles() - option.cost();
        if (!(room > 0)) {
            return;
        }
        double half = lengthCounts && !Double.isInfinite(room) ? terms.reach(Quantity.LENGTH, room)
            : Double.POSITIVE_INFINITY;
        for (int weight = 0; weight <= plans.cuts.tipWeights(candidate); weight++) {
            if (plans.cuts.tipWeightEffort(weight) >= roomForAngles() - option.cost()) {
                continue;
            }
            Rows rows = new Rows(option, length, weight, lengthCounts ? change - half : Double.NEGATIVE_INFINITY,
                lengthCounts ? change + half : Double.POSITIVE_INFINITY);
            rows.tryOutward(Math.min(middle, trims));
        }
    }

    private int trimOf(Cut cut) {
        return (int) Math.round(cut.tipTrimMm() / plans.shop.tipTrimStepMm());
    }

    /** Looks for one good plan with these angles. */
    void guess(AngleOption option) {
        double length = costs.straightLengthMm(option);
        guess(option, length, terms.counts(Quantity.LENGTH) ? terms.want(Quantity.LENGTH) - length : 0);
    }

    /** Tries the trims beside the wanted frequency, each at the right length; gives the first that is stiff enough. */
    private int guess(AngleOption option, double length, double change) {
        if (!frequencyCounts) {
            Cut plain = plans.cuts.nearest(candidate, 0, change);
            Live one = costs.masses(option, plain, costs.partial(option, plain, length), bound);
            if (one != null) {
                tryFrequenciesOrKeep(option, one);
            }
            return 0;
        }
        double want = terms.want(Quantity.FREQUENCY);
        double low = nominal(option, length, change, 0);
        int from = 0;
        int to = trims;
        if (low < want && trims > 0) {
            double high = nominal(option, length, change, trims);
            while (to - from > 1 && high > low) {
                int step = (int) Math.round((want - low) / (high - low) * (to - from));
                int middle = from + Math.max(1, Math.min(to - from - 1, step));
                double cpm = nominal(option, length, change, middle);
                if (cpm >= want) {
                    to = middle;
                    high = cpm;
                } else {
                    from = middle;
                    low = cpm;
                }
            }
            return to;
        }
        return 0;
    }

    /** The frequency of a trim at the right length and swing weight; the plan is kept when it is the best so far. */
    private double nominal(AngleOption option, double length, double change, int trim) {
        Cut cut = plans.cuts.nearest(candidate, trim, change);
        double partial = costs.partial(option, cut, length);
        Live live = costs.masses(option, cut, partial, partial + GUESS_ROOM);
        if (live == null) {
            live = costs.masses(option, cut, partial, Double.POSITIVE_INFINITY);
        }
        int best = 0;
        for (int n = 1; live != null && n < live.count(); n++) {
            best = live.cost()[n] < live.cost()[best] ? n : best;
        }
        double cpm = costs.cpm(option, cut, live == null ? 0 : live.masses()[best]);
        if (live != null) {
            keep(option, live, best, live.cost()[best] + terms.of(Quantity.FREQUENCY, cpm));
        }
        return cpm;
    }

    /** The trims with one tip weight, for a range of lengths. */
    private final class Rows {
        private final AngleOption option;
        private final double length;
        private final int weight;
        private final double lengthFrom;
        private final double lengthTo;

        Rows(AngleOption option, double length, int weight, double lengthFrom, double lengthTo) {
            this.option = option;
            this.length = length;
            this.weight = weight;
            this.lengthFrom = lengthFrom;
            this.lengthTo = lengthTo;
        }

        void tryOutward(int middle) {
            boolean ordered = frequencyCounts && trims > 0 && candidate.assembly().stiffensTowardButt();
            for (int trim = middle; trim >= 0; trim--) {
                if (!tryRow(trim, ordered, true)) {
                    break;
                }
            }
            for (int trim = middle + 1; trim <= trims; trim++) {
                if (!tryRow(trim, ordered, false)) {
                    break;
                }
            }
        }

        /** Whether the next trim is worth a look. */
        private boolean tryRow(int trim, boolean ordered, boolean towardSofter) {
            double room = roomForAngles() - option.cost();
            List<Cut> row = plans.cuts.row(candidate, trim, weight, lengthFrom, lengthTo, room);
            if (row.isEmpty()) {
                return true;
            }
            List<Live> live = new ArrayList<>();
            for (Cut cut : row) {
                double partial = costs.partial(option, cut, length);
                if (partial + costs.leastMassCost() < bound) {
                    Live one = costs.masses(option, cut, partial, bound);
                    if (one != null) {
                        live.add(one);
                    }
                }
            }
            live.sort(Comparator.comparingDouble(Live::least));
            for (Live one : live) {
                if (one.least() < bound) {
                    tryFrequenciesOrKeep(option, one);
                }
            }
            if (!ordered) {
                return true;
            }
            double reach = terms.reach(Quantity.FREQUENCY, Math.max(0, roomForAngles() - option.cost())) + TRIM_SLACK_CPM;
            double want = terms.want(Quantity.FREQUENCY);
            return towardSofter ? stiffest(row, live) >= want - reach : softest(row, live) <= want + reach;
        }

        private double stiffest(List<Cut> row, List<Live> live) {
            Cut shortest = row.get(0);
            for (Cut cut : row) {
                shortest = cut.lengthMm() < shortest.lengthMm() ? cut : shortest;
            }
            int lightest = live.isEmpty() ? 0 : costs.headMasses().size() - 1;
            for (Live one : live) {
                lightest = Math.min(lightest, one.masses()[0]);
            }
            return costs.cpm(option, shortest, lightest);
        }

        private double softest(List<Cut> row, List<Live> live) {
            Cut longest = row.get(0);
            for (Cut cut : row) {
                longest = cut.lengthMm() > longest.lengthMm() ? cut : longest;
            }
            int heaviest = live.isEmpty() ? costs.headMasses().size() - 1 : 0;
            for (Live one : live) {
                heaviest = Math.max(heaviest, one.masses()[one.count() - 1]);
            }
            return costs.cpm(option, longest, heaviest);
        }
    }

    private void tryFrequenciesOrKeep(AngleOption option, Live live) {
        if (frequencyCounts) {
            tryFrequencies(option, live);
            return;
        }
        for (int n = 0; n < live.count(); n++) {
            keep(option, live, n, live.cost()[n]);
        }
    }

    private void tryFrequencies(AngleOption option, Live live) {
        double[] atLeast = costs.atLeast(live);
        Integer[] order = new Integer[atLeast.length];
        for (int n = 0; n < order.length; n++) {
            order[n] = n;
        }
        Arrays.sort(order, Comparator.comparingDouble(n -> atLeast[n]));
        for (int n : order) {
            if (atLeast[n] >= bound) {
                return;
            }
            keep(option, live, n, CutCosts.isExact(live, n) ? atLeast[n] : costs.exact(live, n));
        }
    }

    private void keep(AngleOption option, Live live, int n, double cost) {
        if (cost < bound) {
            HeadMass.Option mass = costs.headMasses().get(live.masses()[n]);
            double minutes = costs.minutes(option, live.cut()) + mass.minutes();
            bound = cost;
            found = new FoundPlan(candidate, plans.start, option, live.cut(), mass, cost, minutes);
        }
    }
}
