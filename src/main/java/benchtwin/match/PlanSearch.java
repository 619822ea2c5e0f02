package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Step;
import benchtwin.club.StepKind;
import benchtwin.club.Target;
import benchtwin.club.Weight;
import benchtwin.mechanics.CutClub;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.Mode;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SwingWeight;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the plan of least cost for one candidate: exact over everything a person can set.
 *
 * <p>Angles depend on the setting or bend alone; length on the lie and the cuts; swing weight, mass and frequency on those
 * and on the mass at the head. So the ways to set the angles are taken in order of their own cost, for each the cuts whose
 * length can still pay, for each the masses whose swing weight and total mass can still pay, and only those left have
 * their frequency computed. Every part of the cost is 0 or more, so whatever is skipped costs at least as much as the best
 * plan kept.
 *
 * <p>Frequencies are bracketed before they are computed: λ = 1/ω² is convex in the mass at the head, so tangents at the
 * lightest and the heaviest mass lie below it and the chord between them above it (see {@link Mode}).
 */
final class PlanSearch {

    /** Frequency brackets are opened by this much, relative, so that rounding cannot close them on the wrong side. */
    private static final double BRACKET_SLACK = 1e-9;

    private final CostTerms terms;
    private final TwinModel twin;
    private final ShopSettings shop;
    private final double tapeLayers;
    private final double mostReadyMinutes;
    private final AngleOptions angles;
    private final HeadMass.Table masses;
    private final Cuts cuts;

    /**
     * @param target           what is wanted
     * @param twin             predicts new builds
     * @param shop             what a person can set and what it costs
     * @param drawer           weights in stock
     * @param tapeLayers       layers of tape under the grip
     * @param mostReadyMinutes plans that take longer are not considered; may be infinite
     */
    PlanSearch(Target target, TwinModel twin, ShopSettings shop, List<Weight> drawer, double tapeLayers,
               double mostReadyMinutes) {
        this.terms = new CostTerms(target, twin.carried());
        this.twin = twin;
        this.shop = shop;
        this.tapeLayers = tapeLayers;
        this.mostReadyMinutes = mostReadyMinutes;
        this.angles = new AngleOptions(terms, twin.loftIn(), shop, new SettingTable());
        this.masses = new HeadMass.Table(drawer, shop);
        this.cuts = new Cuts(shop, drawer);
    }

    double tapeLayers() {
        return tapeLayers;
    }

    /**
     * A bound that no plan of a candidate costs less than, quickly.
     * @param candidate parts that fit
     * @return 0 or more
     */
    double lowerBound(Candidate candidate) {
        return joiningEffort(candidate) + angles.lowerBound(candidate);
    }

    /**
     * The plan of least cost.
     * @param candidate parts that fit
     * @param below     plans that cost this much or more are of no interest; may be infinite
     * @return the plan; null when none costs less than {@code below}
     */
    FoundPlan best(Candidate candidate, double below) {
        return new Search(candidate, below).run();
    }

    private double joiningEffort(Candidate candidate) {
        double effort = 0;
        for (Step step : candidate.joining()) {
            effort += shop.effort(step.kind());
        }
        return effort;
    }

    /** One candidate's search. */
    private final class Search {

        private final Candidate candidate;
        private final double joining;
        private final double joiningMinutes;
        private final double joiningWait;
        private final List<HeadMass.Option> headMasses;
        private final double frequencyFactor;
        private final CutClub uncut;
        private final Map<Cut, CutClub> cutClubs = new HashMap<>();
        private double bound;
        private FoundPlan found;

        Search(Candidate candidate, double below) {
            this.candidate = candidate;
            this.bound = below;
            this.joining = joiningEffort(candidate);
            double minutes = 0;
            double wait = 0;
            for (Step step : candidate.joining()) {
                minutes += step.minutes();
                wait = Math.max(wait, shop.waitMinutes(step.kind()));
            }
            this.joiningMinutes = minutes;
            this.joiningWait = wait;
            this.headMasses = masses.of(candidate.head().ports(), candidate.head().hotMeltMaxG());
            double root = terms.counts(Quantity.FREQUENCY) ? twin.stiffnessRoot(candidate.assembly()) : Double.NaN;
            this.frequencyFactor = twin.condition().overGrip()
                ? root * candidate.assembly().get(Input.GRIP_FACTOR) : root;
            this.uncut = new CutClub(candidate.assembly(), Setup.plain(tapeLayers, 0), twin.condition().clampMm());
        }

        FoundPlan run() {
            AngleOption guess = angles.guess(candidate);
            if (guess != null) {
                tryAngle(guess);
            }
            for (AngleOption option : angles.below(candidate, bound - joining)) {
                if (joining + option.cost() >= bound) {
                    break;
                }
                tryAngle(option);
            }
            return found;
        }

        private void tryAngle(AngleOption option) {
            double length = uncut.lengthMm(option.lieDeg());
            if (!terms.counts(Quantity.LENGTH)) {
                tryCuts(option, length, cuts.all(candidate, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
                return;
            }
            double change = terms.want(Quantity.LENGTH) - length;
            if (Double.isInfinite(bound)) {
                // no limit yet: the shaft as it is and the cuts beside the wanted length set one
                tryCuts(option, length, cuts.all(candidate, 0, 0));
                tryCuts(option, length, cuts.all(candidate, change - shop.lengthStepMm(), change + shop.lengthStepMm()));
            }
            double room = bound - joining - option.cost();
            if (room > 0) {
                double half = Double.isInfinite(room) ? room : reach(room);
                tryCuts(option, length, cuts.all(candidate, change - half, change + half));
            }
        }

        /** How far length may be off before its term alone is worth so much, mm. */
        private double reach(double cost) {
            double oneMm = terms.of(Quantity.LENGTH, terms.want(Quantity.LENGTH) + 1);
            return Math.sqrt(cost / oneMm);
        }

        private void tryCuts(AngleOption option, double straightLength, List<Cut> ways) {
            double base = joining + option.cost();
            for (Cut cut : ways) {
                double partial = base + cut.effort() + terms.of(Quantity.LENGTH, straightLength + cut.lengthMm());
                if (partial < bound) {
                    tryMasses(option, cut, partial);
                }
            }
        }

        private void tryMasses(AngleOption option, Cut cut, double partial) {
            CutClub club = cutClubs.computeIfAbsent(cut, c -> new CutClub(candidate.assembly(),
                FoundPlan.setup(c, tapeLayers, 0, Setup.AS_READ), twin.condition().clampMm()));
            double cg = club.headCgMm(option.lieDeg());
            double mass = club.massG(0);
            double moment = club.momentGMm(cg, 0);
            double wait = Math.max(joiningWait, cut.waitMinutes());
            double minutes = joiningMinutes + cut.minutes() + angleMinutes(option) + wait;
            int size = headMasses.size();
            int[] left = new int[size];
            double[] cost = new double[size];
            int count = 0;
            for (int k = 0; k < size; k++) {
                HeadMass.Option added = headMasses.get(k);
                double grams = added.addedG();
                double sum = partial + added.effort() + terms.of(Quantity.TOTAL_MASS, mass + grams)
                    + terms.of(Quantity.SWING_WEIGHT, SwingWeight.points(mass + grams, moment + grams * cg));
                if (sum < bound && minutes + added.minutes() <= mostReadyMinutes) {
                    left[count] = k;
                    cost[count++] = sum;
                }
            }
            if (count == 0) {
                return;
            }
            if (!terms.counts(Quantity.FREQUENCY)) {
                for (int n = 0; n < count; n++) {
                    keep(option, cut, headMasses.get(left[n]), cost[n], minutes);
                }
                return;
            }
            tryFrequencies(option, cut, club, cg, left, cost, count, minutes);
        }

        private void tryFrequencies(AngleOption option, Cut cut, CutClub club, double cg, int[] left, double[] cost,
                                    int count, double minutes) {
            double lightest = headMasses.get(left[0]).addedG();
            double heaviest = headMasses.get(left[count - 1]).addedG();
            Mode light = club.unitMode(cg, lightest);
            Mode heavy = heaviest > lightest ? club.unitMode(cg, heaviest) : light;
            double beyond = club.beyondHoselMm(cg);
            Integer[] order = new Integer[count];
            double[] atLeast = new double[count];
            for (int n = 0; n < count; n++) {
                double grams = headMasses.get(left[n]).addedG();
                atLeast[n] = cost[n] + leastFrequencyTerm(light, heavy, grams - lightest, grams - heaviest, beyond);
                order[n] = n;
            }
            Arrays.sort(order, Comparator.comparingDouble(n -> atLeast[n]));
            for (int n : order) {
                if (atLeast[n] >= bound) {
                    return;
                }
                HeadMass.Option added = headMasses.get(left[n]);
                double cpm = club.unitMode(cg, added.addedG()).cpm() * frequencyFactor;
                keep(option, cut, added, cost[n] + terms.of(Quantity.FREQUENCY, cpm), minutes);
            }
        }

        private double leastFrequencyTerm(Mode light, Mode heavy, double overLightest, double overHeaviest,
                                          double beyond) {
            double least = Math.max(tangent(light, overLightest, beyond), tangent(heavy, overHeaviest, beyond));
            double span = overLightest - overHeaviest;
            double most = span > 0 ? light.lambda() + (heavy.lambda() - light.lambda()) * overLightest / span
                : light.lambda();
            double highest = Mode.cpm(least * (1 - BRACKET_SLACK)) * frequencyFactor;
            double lowest = Mode.cpm(most * (1 + BRACKET_SLACK)) * frequencyFactor;
            double nearest = Math.max(lowest, Math.min(highest, terms.want(Quantity.FREQUENCY)));
            return terms.of(Quantity.FREQUENCY, nearest);
        }

        private double tangent(Mode mode, double grams, double beyond) {
            return mode.lambdaTangent(grams, grams * beyond, grams * beyond * beyond);
        }

        private double angleMinutes(AngleOption option) {
            if (option.setting() != null) {
                return candidate.settingNow().equals(Optional.of(option.setting())) ? 0
                    : shop.minutes().get(StepKind.SLEEVE_SETTING);
            }
            if (option.lieSteps() == 0 && option.turnSteps() == 0) {
                return 0;
            }
            if (candidate.head().isWood()) {
                return shop.minutes().get(StepKind.BEND_WOOD);
            }
            int bends = (option.lieSteps() != 0 ? 1 : 0) + (option.turnSteps() != 0 ? 1 : 0);
            return bends * shop.minutes().get(StepKind.BEND_IRON);
        }

        private void keep(AngleOption option, Cut cut, HeadMass.Option mass, double cost, double minutes) {
            if (cost < bound) {
                bound = cost;
                found = new FoundPlan(candidate, option, cut, mass, cost, minutes + mass.minutes());
            }
        }
    }
}
