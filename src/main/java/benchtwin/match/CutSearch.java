package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.StepKind;
import benchtwin.mechanics.CutClub;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.Mode;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SwingWeight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cuts and masses of least cost for one candidate whose angles are set.
 *
 * <p>First a guess: the trim is searched by halves for the wanted frequency, each trim with the butt cut that makes the
 * length right and the mass that makes the swing weight right. Its cost bounds the rest. Then trims are taken outward from
 * the guess, as long as their stiffest or softest build can come near enough to the wanted frequency to pay.
 */
final class CutSearch {

    /** Frequency brackets are opened by this much, relative, so that rounding cannot close them on the wrong side. */
    private static final double BRACKET_SLACK = 1e-9;
    /**
     * At one length a longer tip trim is stiffer: the beam moves toward the thicker end. A beam that also moves into denser
     * shaft gives a little of it back; this many cpm cover that (see TrimPropertyTest).
     */
    static final double TRIM_SLACK_CPM = 0.3;

    /** What a guessed mass may cost before all masses are looked at instead. */
    private static final double GUESS_ROOM = 1;
    private static final double ROUNDING_G = 1e-6;

    private final PlanSearch plans;
    private final CostTerms terms;
    private final Candidate candidate;
    private final double joining;
    private final double joiningMinutes;
    private final double joiningWait;
    private final List<HeadMass.Option> headMasses;
    private final double frequencyFactor;
    private final boolean frequencyCounts;
    private final CutClub uncut;
    /** What the total mass costs at the least, whatever the angles: mass does not hang on them. */
    private final double leastMassTerm;
    private final int trims;
    private final Map<Integer, CutClub> cutClubs = new HashMap<>();
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
        this.joining = candidate.joiningEffort(plans.shop);
        double minutes = 0;
        double wait = 0;
        for (Work work : candidate.joining()) {
            minutes += plans.shop.minutes().get(work.kind());
            wait = Math.max(wait, plans.shop.waitMinutes(work.kind()));
        }
        this.joiningMinutes = minutes;
        this.joiningWait = wait;
        this.headMasses = plans.masses.of(candidate.head().ports(), candidate.head().hotMeltMaxG());
        this.frequencyCounts = terms.counts(Quantity.FREQUENCY);
        double root = frequencyCounts ? plans.twin.stiffnessRoot(candidate.assembly()) : Double.NaN;
        this.frequencyFactor = plans.twin.condition().overGrip()
            ? root * candidate.assembly().get(Input.GRIP_FACTOR) : root;
        this.uncut = new CutClub(candidate.assembly(), FoundPlan.setup(Cuts.NONE, plans.start, 0, Setup.AS_READ),
            plans.twin.condition().clampMm());
        this.leastMassTerm = leastMassTerm();
        this.trims = plans.cuts.trims(candidate);
    }

    /** Between everything cut off and nothing added, and everything added, no mass is out of the reckoning. */
    private double leastMassTerm() {
        if (!terms.counts(Quantity.TOTAL_MASS)) {
            return 0;
        }
        double lightest = uncut.massG(headMasses.get(0).addedG()) - plans.cuts.mostCutG(candidate);
        double heaviest = uncut.massG(headMasses.get(headMasses.size() - 1).addedG()) + plans.cuts.mostAddedG(candidate);
        return terms.of(Quantity.TOTAL_MASS,
            Math.max(lightest, Math.min(heaviest, terms.want(Quantity.TOTAL_MASS))));
    }

    /** The best plan so far; null when none cost less than the bound. */
    FoundPlan found() {
        return found;
    }

    /** Angles that cost this much or more cannot be part of a better plan. */
    double roomForAngles() {
        return bound - joining - leastMassTerm;
    }

    /**
     * Looks for a better plan with these angles.
     * @param option how the angles are set
     */
    void tryAngle(AngleOption option) {
        double length = uncut.lengthMm(option.lieDeg());
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

    private double partial(AngleOption option, Cut cut, double straightLength) {
        return joining + option.cost() + cut.effort() + terms.of(Quantity.LENGTH, straightLength + cut.lengthMm());
    }

    /** Looks for one good plan with these angles. */
    void guess(AngleOption option) {
        double length = uncut.lengthMm(option.lieDeg());
        guess(option, length, terms.counts(Quantity.LENGTH) ? terms.want(Quantity.LENGTH) - length : 0);
    }

    /** Tries the trims beside the wanted frequency, each at the right length; gives the first that is stiff enough. */
    private int guess(AngleOption option, double length, double change) {
        if (!frequencyCounts) {
            Cut plain = plans.cuts.nearest(candidate, 0, change);
            Live one = masses(option, plain, partial(option, plain, length));
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
        CutClub club = club(cut);
        double cg = club.headCgMm(option.lieDeg());
        double limit = bound;
        double partial = partial(option, cut, length);
        bound = partial + GUESS_ROOM;
        Live live = masses(option, cut, partial);
        if (live == null) {
            bound = Double.POSITIVE_INFINITY;
            live = masses(option, cut, partial);
        }
        bound = limit;
        int best = 0;
        for (int n = 1; live != null && n < live.count(); n++) {
            best = live.cost()[n] < live.cost()[best] ? n : best;
        }
        double grams = headMasses.get(live == null ? 0 : live.masses()[best]).addedG();
        double cpm = club.unitMode(cg, grams).cpm() * frequencyFactor;
        if (live != null) {
            keep(option, live, best, live.cost()[best] + terms.of(Quantity.FREQUENCY, cpm));
        }
        return cpm;
    }

    /** A cut with the masses that can still pay. */
    private record Live(Cut cut, CutClub club, double cg, int[] masses, double[] cost, int count) {

        double least() {
            double least = cost[0];
            for (int k = 1; k < count; k++) {
                least = Math.min(least, cost[k]);
            }
            return least;
        }
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
                double partial = partial(option, cut, length);
                if (partial + leastMassTerm < bound) {
                    Live one = masses(option, cut, partial);
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
            int lightest = live.isEmpty() ? 0 : headMasses.size() - 1;
            for (Live one : live) {
                lightest = Math.min(lightest, one.masses()[0]);
            }
            return cpm(shortest, lightest);
        }

        private double softest(List<Cut> row, List<Live> live) {
            Cut longest = row.get(0);
            for (Cut cut : row) {
                longest = cut.lengthMm() > longest.lengthMm() ? cut : longest;
            }
            int heaviest = live.isEmpty() ? headMasses.size() - 1 : 0;
            for (Live one : live) {
                heaviest = Math.max(heaviest, one.masses()[one.count() - 1]);
            }
            return cpm(longest, heaviest);
        }

        private double cpm(Cut cut, int mass) {
            CutClub club = club(cut);
            return club.unitMode(club.headCgMm(option.lieDeg()), headMasses.get(mass).addedG()).cpm() * frequencyFactor;
        }
    }

    private CutClub club(Cut cut) {
        return cutClubs.computeIfAbsent(cut.key(), key -> new CutClub(candidate.assembly(),
            FoundPlan.setup(cut, plans.start, 0, Setup.AS_READ), plans.twin.condition().clampMm()));
    }

    /** The masses whose swing weight, inertia and total mass leave room below the bound; null when none does. */
    private Live masses(AngleOption option, Cut cut, double partial) {
        CutClub club = club(cut);
        double before = terms.counts(Quantity.TORQUE) ? partial + terms.ofReadOrNot(Quantity.TORQUE, club.torqueDeg())
            : partial;
        double cg = club.headCgMm(option.lieDeg());
        double mass = club.massG(0);
        double moment = club.momentGMm(cg, 0);
        boolean inertiaCounts = terms.counts(Quantity.BUTT_INERTIA);
        boolean anyTime = Double.isInfinite(plans.mostReadyMinutes);
        double minutes = anyTime ? 0 : minutes(option, cut);
        int from = 0;
        int to = headMasses.size();
        if (terms.counts(Quantity.SWING_WEIGHT) && !Double.isInfinite(bound)) {
            // swing weight is linear in the mass at the head
            double points = SwingWeight.points(mass, moment);
            double perGram = SwingWeight.points(mass + 1, moment + cg) - points;
            double reach = terms.reach(Quantity.SWING_WEIGHT, Math.max(0, bound - before));
            double want = terms.want(Quantity.SWING_WEIGHT);
            from = firstNotBelow((want - reach - points) / perGram - ROUNDING_G);
            to = firstNotBelow((want + reach - points) / perGram + ROUNDING_G);
        }
        if (to <= from) {
            return null;
        }
        int[] left = new int[to - from];
        double[] cost = new double[to - from];
        int count = 0;
        for (int k = from; k < to; k++) {
            HeadMass.Option added = headMasses.get(k);
            double grams = added.addedG();
            double sum = before + added.effort() + terms.of(Quantity.TOTAL_MASS, mass + grams)
                + terms.of(Quantity.SWING_WEIGHT, SwingWeight.points(mass + grams, moment + grams * cg));
            if (inertiaCounts) {
                sum += terms.of(Quantity.BUTT_INERTIA, club.inertiaKgCm2(cg, grams));
            }
            if (sum < bound && (anyTime || minutes + added.minutes() <= plans.mostReadyMinutes)) {
                left[count] = k;
                cost[count++] = sum;
            }
        }
        return count == 0 ? null : new Live(cut, club, cg, left, cost, count);
    }

    /** The lightest mass at the head that is not below some grams; their count when all are. */
    private int firstNotBelow(double grams) {
        int from = 0;
        int to = headMasses.size();
        while (from < to) {
            int middle = (from + to) / 2;
            if (headMasses.get(middle).addedG() < grams) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
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
        CutClub club = live.club();
        double cg = live.cg();
        int last = live.count() - 1;
        if (last < 2) {
            for (int n = 0; n <= last; n++) {
                exact(option, live, n);
            }
            return;
        }
        double lightest = headMasses.get(live.masses()[0]).addedG();
        double heaviest = headMasses.get(live.masses()[last]).addedG();
        Mode light = club.unitMode(cg, lightest);
        Mode heavy = club.unitMode(cg, heaviest);
        keep(option, live, 0, live.cost()[0] + terms.of(Quantity.FREQUENCY, light.cpm() * frequencyFactor));
        keep(option, live, last, live.cost()[last] + terms.of(Quantity.FREQUENCY, heavy.cpm() * frequencyFactor));
        double beyond = club.beyondHoselMm(cg);
        Integer[] order = new Integer[live.count()];
        double[] atLeast = new double[live.count()];
        for (int n = 0; n < live.count(); n++) {
            double grams = headMasses.get(live.masses()[n]).addedG();
            atLeast[n] = live.cost()[n] + leastFrequencyTerm(light, heavy, grams - lightest, grams - heaviest, beyond);
            order[n] = n;
        }
        Arrays.sort(order, Comparator.comparingDouble(n -> atLeast[n]));
        for (int n : order) {
            if (atLeast[n] >= bound) {
                return;
            }
            if (n > 0 && n < last) {
                exact(option, live, n);
            }
        }
    }

    private void exact(AngleOption option, Live live, int n) {
        double grams = headMasses.get(live.masses()[n]).addedG();
        double cpm = live.club().unitMode(live.cg(), grams).cpm() * frequencyFactor;
        keep(option, live, n, live.cost()[n] + terms.of(Quantity.FREQUENCY, cpm));
    }

    private double leastFrequencyTerm(Mode light, Mode heavy, double overLightest, double overHeaviest, double beyond) {
        double least = Math.max(tangent(light, overLightest, beyond), tangent(heavy, overHeaviest, beyond));
        double span = overLightest - overHeaviest;
        double most = light.lambda() + (heavy.lambda() - light.lambda()) * overLightest / span;
        double highest = Mode.cpm(least * (1 - BRACKET_SLACK)) * frequencyFactor;
        double lowest = Mode.cpm(most * (1 + BRACKET_SLACK)) * frequencyFactor;
        double nearest = Math.max(lowest, Math.min(highest, terms.want(Quantity.FREQUENCY)));
        return terms.of(Quantity.FREQUENCY, nearest);
    }

    private static double tangent(Mode mode, double grams, double beyond) {
        return mode.lambdaTangent(grams, grams * beyond, grams * beyond * beyond);
    }

    /** Bench minutes and the longest wait, but for what goes on the head. */
    private double minutes(AngleOption option, Cut cut) {
        return joiningMinutes + cut.minutes(plans.shop) + angleMinutes(option)
            + Math.max(joiningWait, cut.waitMinutes(plans.shop));
    }

    private double angleMinutes(AngleOption option) {
        if (option.setting() != null) {
            return candidate.settingNow().equals(Optional.of(option.setting())) ? 0
                : plans.shop.minutes().get(StepKind.SLEEVE_SETTING);
        }
        if (option.lieSteps() == 0 && option.turnSteps() == 0) {
            return 0;
        }
        if (candidate.head().isWood()) {
            return plans.shop.minutes().get(StepKind.BEND_WOOD);
        }
        int bends = (option.lieSteps() != 0 ? 1 : 0) + (option.turnSteps() != 0 ? 1 : 0);
        return bends * plans.shop.minutes().get(StepKind.BEND_IRON);
    }

    private void keep(AngleOption option, Live live, int n, double cost) {
        if (cost < bound) {
            HeadMass.Option mass = headMasses.get(live.masses()[n]);
            double minutes = minutes(option, live.cut()) + mass.minutes();
            bound = cost;
            found = new FoundPlan(candidate, plans.start, option, live.cut(), mass, cost, minutes);
        }
    }
}
