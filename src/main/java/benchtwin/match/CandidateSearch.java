package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.StepKind;
import benchtwin.club.Weight;
import benchtwin.mechanics.CutClub;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.Mode;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SwingWeight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The search for one candidate's plan of least cost; see {@link PlanSearch} for why nothing better is passed over. */
final class CandidateSearch {

    /** Frequency brackets are opened by this much, relative, so that rounding cannot close them on the wrong side. */
    private static final double BRACKET_SLACK = 1e-9;
    /**
     * At one length a longer tip trim is stiffer: the beam moves toward the thicker end. A beam that also moves into denser
     * shaft gives a little of it back; this many cpm cover that (see TrimPropertyTest).
     */
    static final double TRIM_SLACK_CPM = 0.3;

    private final PlanSearch plans;
    private final CostTerms terms;
    private final Candidate candidate;
    private final double joining;
    private final double joiningMinutes;
    private final double joiningWait;
    private final List<HeadMass.Option> headMasses;
    private final double frequencyFactor;
    private final CutClub uncut;
    /** What the total mass costs at the least, whatever the angles: mass does not hang on them. */
    private final double leastMassTerm;
    private final Map<Integer, CutClub> cutClubs = new HashMap<>();
    private double bound;
    private FoundPlan found;

    CandidateSearch(PlanSearch plans, Candidate candidate, double below) {
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
        double root = terms.counts(Quantity.FREQUENCY) ? plans.twin.stiffnessRoot(candidate.assembly()) : Double.NaN;
        this.frequencyFactor = plans.twin.condition().overGrip()
            ? root * candidate.assembly().get(Input.GRIP_FACTOR) : root;
        this.uncut = new CutClub(candidate.assembly(), FoundPlan.setup(Cuts.NONE, plans.start, 0, Setup.AS_READ),
            plans.twin.condition().clampMm());
        this.leastMassTerm = leastMassTerm();
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

    FoundPlan run() {
        AngleOption guess = plans.angles.guess(candidate);
        if (guess != null) {
            tryAngle(guess);
        }
        for (AngleOption option : plans.angles.below(candidate, bound - joining - leastMassTerm)) {
            if (joining + option.cost() + leastMassTerm >= bound) {
                break;
            }
            tryAngle(option);
        }
        return found;
    }

    private void tryAngle(AngleOption option) {
        double length = uncut.lengthMm(option.lieDeg());
        if (!terms.counts(Quantity.LENGTH)) {
            tryCuts(option, length, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
            return;
        }
        double change = terms.want(Quantity.LENGTH) - length;
        if (Double.isInfinite(bound)) {
            // no limit yet: the shaft as it is and the cuts beside the wanted length set one
            tryCuts(option, length, 0, 0);
            tryCuts(option, length, change - plans.shop.lengthStepMm(), change + plans.shop.lengthStepMm());
        }
        double room = bound - joining - option.cost() - leastMassTerm;
        if (room > 0) {
            double half = Double.isInfinite(room) ? room : terms.reach(Quantity.LENGTH, room);
            tryCuts(option, length, change - half, change + half);
        }
    }

    /** A cut with the masses that can still pay. */
    private record Live(Cut cut, CutClub club, double cg, int[] masses, double[] cost, int count, double minutes) {

        double least() {
            double least = cost[0];
            for (int k = 1; k < count; k++) {
                least = Math.min(least, cost[k]);
            }
            return least;
        }
    }

    private void tryCuts(AngleOption option, double straightLength, double lengthFrom, double lengthTo) {
        double base = joining + option.cost();
        double room = bound - base - leastMassTerm;
        List<Live> live = new ArrayList<>();
        for (Cut cut : plans.cuts.all(candidate, lengthFrom, lengthTo, room)) {
            double partial = base + cut.effort() + terms.of(Quantity.LENGTH, straightLength + cut.lengthMm());
            if (partial + leastMassTerm < bound) {
                Live one = masses(option, cut, partial);
                if (one != null) {
                    live.add(one);
                }
            }
        }
        if (!terms.counts(Quantity.FREQUENCY)) {
            for (Live one : live) {
                for (int n = 0; n < one.count(); n++) {
                    keep(option, one, n, one.cost()[n]);
                }
            }
            return;
        }
        List<Live> near = candidate.trimmable() && candidate.assembly().stiffensTowardButt() ? nearInFrequency(live) : live;
        near.sort(Comparator.comparingDouble(Live::least));
        for (Live one : near) {
            if (one.least() < bound) {
                tryFrequencies(option, one);
            }
        }
    }

    /** The masses whose swing weight and total mass leave room below the bound; null when none does. */
    private Live masses(AngleOption option, Cut cut, double partial) {
        CutClub club = cutClubs.computeIfAbsent(cut.key(), key -> new CutClub(candidate.assembly(),
            FoundPlan.setup(cut, plans.start, 0, Setup.AS_READ), plans.twin.condition().clampMm()));
        double before = terms.counts(Quantity.TORQUE) ? partial + terms.ofReadOrNot(Quantity.TORQUE, club.torqueDeg())
            : partial;
        double cg = club.headCgMm(option.lieDeg());
        double mass = club.massG(0);
        double moment = club.momentGMm(cg, 0);
        double wait = Math.max(joiningWait, cut.waitMinutes(plans.shop));
        double minutes = joiningMinutes + cut.minutes(plans.shop) + angleMinutes(option) + wait;
        int[] left = new int[headMasses.size()];
        double[] cost = new double[headMasses.size()];
        int count = 0;
        for (int k = 0; k < headMasses.size(); k++) {
            HeadMass.Option added = headMasses.get(k);
            double grams = added.addedG();
            double sum = before + added.effort() + terms.of(Quantity.TOTAL_MASS, mass + grams)
                + terms.of(Quantity.SWING_WEIGHT, SwingWeight.points(mass + grams, moment + grams * cg));
            if (sum < bound && minutes + added.minutes() <= plans.mostReadyMinutes) {
                left[count] = k;
                cost[count++] = sum;
            }
        }
        return count == 0 ? null : new Live(cut, club, cg, left, cost, count, minutes);
    }

    /**
     * Leaves out tip trims whose frequency cannot come near enough. For each tip weight the trims are searched by halves:
     * the stiffest a trim can be is its shortest cut with its lightest mass, the softest its longest with its heaviest.
     */
    private List<Live> nearInFrequency(List<Live> live) {
        Map<Weight, TreeMap<Double, List<Live>>> byWeight = new LinkedHashMap<>();
        for (Live one : live) {
            byWeight.computeIfAbsent(one.cut().tipWeight(), w -> new TreeMap<>())
                .computeIfAbsent(one.cut().tipTrimMm(), t -> new ArrayList<>()).add(one);
        }
        List<Live> near = new ArrayList<>();
        for (TreeMap<Double, List<Live>> trims : byWeight.values()) {
            List<List<Live>> order = new ArrayList<>(trims.values());
            double least = live.stream().mapToDouble(Live::least).min().orElseThrow();
            double reach = Double.isInfinite(bound) ? Double.POSITIVE_INFINITY
                : terms.reach(Quantity.FREQUENCY, bound - least) + TRIM_SLACK_CPM;
            double want = terms.want(Quantity.FREQUENCY);
            int from = 0;
            int to = order.size();
            int high = order.size();
            while (from < high) {                       // first trim whose stiffest is stiff enough
                int middle = (from + high) / 2;
                if (stiffest(order.get(middle)) >= want - reach) {
                    high = middle;
                } else {
                    from = middle + 1;
                }
            }
            int low = from;
            while (low < to) {                          // first trim whose softest is too stiff
                int middle = (low + to) / 2;
                if (softest(order.get(middle)) > want + reach) {
                    to = middle;
                } else {
                    low = middle + 1;
                }
            }
            for (int k = from; k < to; k++) {
                near.addAll(order.get(k));
            }
        }
        return near;
    }

    private double stiffest(List<Live> ofOneTrim) {
        Live shortest = ofOneTrim.get(0);
        int lightest = Integer.MAX_VALUE;
        for (Live one : ofOneTrim) {
            shortest = one.cut().lengthMm() < shortest.cut().lengthMm() ? one : shortest;
            lightest = Math.min(lightest, one.masses()[0]);
        }
        return shortest.club().unitMode(shortest.cg(), headMasses.get(lightest).addedG()).cpm() * frequencyFactor;
    }

    private double softest(List<Live> ofOneTrim) {
        Live longest = ofOneTrim.get(0);
        int heaviest = 0;
        for (Live one : ofOneTrim) {
            longest = one.cut().lengthMm() > longest.cut().lengthMm() ? one : longest;
            heaviest = Math.max(heaviest, one.masses()[one.count() - 1]);
        }
        return longest.club().unitMode(longest.cg(), headMasses.get(heaviest).addedG()).cpm() * frequencyFactor;
    }

    private void tryFrequencies(AngleOption option, Live live) {
        CutClub club = live.club();
        double cg = live.cg();
        if (live.count() == 1) {
            exact(option, live, 0);
            return;
        }
        double lightest = headMasses.get(live.masses()[0]).addedG();
        double heaviest = headMasses.get(live.masses()[live.count() - 1]).addedG();
        Mode light = club.unitMode(cg, lightest);
        Mode heavy = club.unitMode(cg, heaviest);
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
            exact(option, live, n);
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
            bound = cost;
            found = new FoundPlan(candidate, plans.start, option, live.cut(), mass, cost, live.minutes() + mass.minutes());
        }
    }
}
