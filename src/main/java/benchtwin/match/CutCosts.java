package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.StepKind;
import benchtwin.mechanics.CutClub;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.Mode;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SwingWeight;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the cuts and masses of one candidate cost: length first, then swing weight, inertia and mass, then bounds on what the
 * frequency adds, then the frequency itself.
 */
final class CutCosts {

    /** Frequency brackets are opened by this much, relative, so that rounding cannot close them on the wrong side. */
    private static final double BRACKET_SLACK = 1e-9;
    private static final double ROUNDING_G = 1e-6;

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

    CutCosts(PlanSearch plans, Candidate candidate) {
        this.plans = plans;
        this.terms = plans.terms;
        this.candidate = candidate;
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

    /** Joining and total mass cost at least this, whatever else is done. */
    double least() {
        return joining + leastMassTerm;
    }

    double leastMassCost() {
        return leastMassTerm;
    }

    List<HeadMass.Option> headMasses() {
        return headMasses;
    }

    /** Playing length before any cut, mm. */
    double straightLengthMm(AngleOption option) {
        return uncut.lengthMm(option.lieDeg());
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

    /** A cut with the masses that can still pay. */
    record Live(Cut cut, CutClub club, double cg, int[] masses, double[] cost, int count) {

        double least() {
            double least = cost[0];
            for (int k = 1; k < count; k++) {
                least = Math.min(least, cost[k]);
            }
            return least;
        }
    }

    /** Joining, angles, cut and length. */
    double partial(AngleOption option, Cut cut, double straightLength) {
        return joining + option.cost() + cut.effort() + terms.of(Quantity.LENGTH, straightLength + cut.lengthMm());
    }

    CutClub club(Cut cut) {
        return cutClubs.computeIfAbsent(cut.key(), key -> new CutClub(candidate.assembly(),
            FoundPlan.setup(cut, plans.start, 0, Setup.AS_READ), plans.twin.condition().clampMm()));
    }

    /** The masses whose swing weight, inertia and total mass leave room below the bound; null when none does. */
    Live masses(AngleOption option, Cut cut, double partial, double bound) {
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

    /** Frequency of a cut with a mass at the head, cpm. */
    double cpm(AngleOption option, Cut cut, int mass) {
        CutClub club = club(cut);
        return cpm(club, club.headCgMm(option.lieDeg()), mass);
    }

    private double cpm(CutClub club, double cg, int mass) {
        return club.unitMode(cg, headMasses.get(mass).addedG()).cpm() * frequencyFactor;
    }

    /**
     * What each mass of a cut costs at the least with its frequency: the lightest and the heaviest exactly, those between by
     * tangents and a chord.
     */
    double[] atLeast(Live live) {
        int last = live.count() - 1;
        double[] atLeast = new double[live.count()];
        if (last < 2) {
            for (int n = 0; n <= last; n++) {
                atLeast[n] = live.cost()[n] + terms.of(Quantity.FREQUENCY, cpm(live.club(), live.cg(), live.masses()[n]));
            }
            return atLeast;
        }
        double lightest = headMasses.get(live.masses()[0]).addedG();
        double heaviest = headMasses.get(live.masses()[last]).addedG();
        Mode light = live.club().unitMode(live.cg(), lightest);
        Mode heavy = live.club().unitMode(live.cg(), heaviest);
        double beyond = live.club().beyondHoselMm(live.cg());
        atLeast[0] = live.cost()[0] + terms.of(Quantity.FREQUENCY, light.cpm() * frequencyFactor);
        atLeast[last] = live.cost()[last] + terms.of(Quantity.FREQUENCY, heavy.cpm() * frequencyFactor);
        for (int n = 1; n < last; n++) {
            double grams = headMasses.get(live.masses()[n]).addedG();
            atLeast[n] = live.cost()[n] + leastFrequencyTerm(light, heavy, grams - lightest, grams - heaviest, beyond);
        }
        return atLeast;
    }

    /** Whether {@link #atLeast} says exactly what this mass costs. */
    static boolean isExact(Live live, int n) {
        return n == 0 || n == live.count() - 1 || live.count() < 3;
    }

    /** What one mass of a cut costs, frequency and all. */
    double exact(Live live, int n) {
        return live.cost()[n] + terms.of(Quantity.FREQUENCY, cpm(live.club(), live.cg(), live.masses()[n]));
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
    double minutes(AngleOption option, Cut cut) {
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
}
