package benchtwin.match;

import benchtwin.club.AngleReading;
import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.Sleeve;
import benchtwin.club.StepKind;
import benchtwin.mechanics.ClubAngles;
import benchtwin.mechanics.HoselTilt;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.Setup;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The ways to set one candidate's angles, with what each costs: every sleeve setting, or every bend on the grid of angles a
 * person can bend to that stays inside the hosel's limits, or the head as it is.
 *
 * <p>A bend's two readings are bounded apart: the lie term alone, and the turn term alone (face of a wood, loft and bounce
 * of an iron). Any bend that is left out has one of the two, or their sum, at or above the bound asked for; so what is
 * returned is everything below it.
 */
final class AngleOptions {

    private static final double GRID_MARGIN_DEG = 0.3;

    private final CostTerms terms;
    private final AngleReading loftIn;
    private final ShopSettings shop;
    private final SettingTable table;
    private final Levers levers;
    private final Map<Key, AngleOption> cheapest = new HashMap<>();
    private Known lastKnown;

    AngleOptions(CostTerms terms, AngleReading loftIn, ShopSettings shop, SettingTable table, Levers levers) {
        this.terms = terms;
        this.loftIn = loftIn;
        this.shop = shop;
        this.table = table;
        this.levers = levers;
    }

    /**
     * Everything cheaper than a bound, and perhaps more, cheapest first.
     * @param candidate whose head
     * @param below     costs at or above this are left out; may be infinite for a sleeved or unbendable head
     * @return options; empty when none is below
     */
    List<AngleOption> below(Candidate candidate, double below) {
        Known known = lastKnown;
        if (known != null && known.below() >= below && known.isOf(candidate)) {
            return known.options();
        }
        List<AngleOption> options = compute(candidate, below);
        lastKnown = new Known(candidate.head(), candidate.sleeve(), candidate.settingNow(), below, options);
        return options;
    }

    /** Options worked out last: pairs of one head with many shafts ask for the same ones again and again. */
    private record Known(Head head, Optional<Sleeve> sleeve, Optional<String> settingNow, double below,
                         List<AngleOption> options) {

        boolean isOf(Candidate candidate) {
            return head == candidate.head() && sleeve.equals(candidate.sleeve())
                && settingNow.equals(candidate.settingNow());
        }
    }

    /**
     * The way that costs least; the head as it is among equals.
     * @param candidate whose head
     * @return one option
     */
    AngleOption cheapest(Candidate candidate) {
        return cheapest.computeIfAbsent(new Key(candidate.head().tag(), candidate.sleeve().map(Sleeve::name), candidate.settingNow()),
            key -> {
                AngleOption guess = guess(candidate);
                double below = guess == null ? Double.POSITIVE_INFINITY : Math.nextUp(guess.cost());
                return compute(candidate, below).get(0);
            });
    }

    private record Key(String head, Optional<String> sleeve, Optional<String> settingNow) {
    }

    private List<AngleOption> compute(Candidate candidate, double below) {
        List<AngleOption> options = new ArrayList<>();
        if (candidate.sleeve().isPresent()) {
            settings(candidate, below, options);
        } else {
            AngleOption asRead = asRead(candidate);
            if (asRead.cost() < below) {
                options.add(asRead);
            }
            if (isBendable(candidate)) {
                bends(candidate, below, options);
            }
        }
        Collections.sort(options);
        return options;
    }

    private boolean isBendable(Candidate candidate) {
        var limits = candidate.limits();
        return levers.bends() && limits.uprightDeg() + limits.flatDeg() + limits.forwardDeg() + limits.backDeg() > 0
            && !Double.isNaN(candidate.assembly().get(Input.HEAD_LIE_DEG));
    }

    /**
     * A bound no option's cost is below, quickly.
     * @param candidate whose head
     * @return 0 or more
     */
    double lowerBound(Candidate candidate) {
        if (candidate.sleeve().isPresent() && staysUnknown(candidate)) {
            return asRead(candidate).cost();
        }
        if (candidate.sleeve().isPresent()) {
            double least = Double.POSITIVE_INFINITY;
            for (SettingTable.Entry entry : table.of(candidate.sleeve().get(), candidate.head())) {
                least = Math.min(least, cost(ClubAngles.of(candidate.assembly(), entry.aim())));
            }
            return least;
        }
        ClubAngles now = ClubAngles.of(candidate.assembly(), Setup.AS_READ);
        double asRead = cost(now);
        if (!isBendable(candidate)) {
            return asRead;
        }
        double bent = candidate.head().isWood()
            ? shop.effort(StepKind.BEND_WOOD) + (loftIn == AngleReading.SQUARE ? 0 : terms.of(Quantity.LOFT, now.loftDeg()))
            : shop.effort(StepKind.BEND_IRON);
        return Math.min(asRead, bent + leastAlong(Quantity.LIE, now.lieDeg(), candidate.limits().uprightDeg(),
            candidate.limits().flatDeg()) + leastTurn(candidate, now));
    }

    private double leastTurn(Candidate candidate, ClubAngles now) {
        double forward = candidate.limits().forwardDeg();
        double back = candidate.limits().backDeg();
        if (candidate.head().isWood()) {
            double perDeg = turnPerTilt(candidate);
            return leastAlong(Quantity.FACE, now.faceDeg(), back * perDeg, forward * perDeg);
        }
        return leastAlong(Quantity.LOFT, now.loftDeg(), forward * turnPerTilt(candidate), back * turnPerTilt(candidate));
    }

    /** The least a term can be when its angle may rise and fall by so much and a margin. */
    private double leastAlong(Quantity quantity, double from, double rise, double fall) {
        if (!terms.counts(quantity) || Double.isNaN(from)) {
            return 0;
        }
        double wanted = terms.want(quantity);
        double nearest = Math.max(from - fall - GRID_MARGIN_DEG, Math.min(from + rise + GRID_MARGIN_DEG, wanted));
        return terms.of(quantity, nearest);
    }

    /** A generous bound on degrees of face (woods) or loft (irons) that a degree of tilt turns. */
    private static double turnPerTilt(Candidate candidate) {
        double lie = candidate.assembly().get(Input.HEAD_LIE_DEG);
        if (candidate.head().isWood()) {
            double steepest = Math.min(80, lie + candidate.limits().uprightDeg() + GRID_MARGIN_DEG);
            return 1.02 / Math.cos(Math.toRadians(steepest));
        }
        double flattest = Math.max(10, lie - candidate.limits().flatDeg() - GRID_MARGIN_DEG);
        return 1.02 / Math.sin(Math.toRadians(flattest));
    }

    private AngleOption asRead(Candidate candidate) {
        ClubAngles angles = ClubAngles.of(candidate.assembly(), Setup.AS_READ);
        return new AngleOption(Setup.AS_READ, null, 0, 0, angles.lieDeg(), cost(angles));
    }

    /** Whether the sleeve has to stay where it is, and nobody wrote down where that is: the head stays as it was read. */
    private boolean staysUnknown(Candidate candidate) {
        return !levers.settings() && candidate.settingNow().isEmpty();
    }

    private void settings(Candidate candidate, double below, List<AngleOption> options) {
        if (staysUnknown(candidate)) {
            AngleOption asRead = asRead(candidate);
            if (asRead.cost() < below) {
                options.add(asRead);
            }
            return;
        }
        for (SettingTable.Entry entry : table.of(candidate.sleeve().get(), candidate.head())) {
            ClubAngles angles = ClubAngles.of(candidate.assembly(), entry.aim());
            boolean turned = !candidate.settingNow().equals(Optional.of(entry.label()));
            if (turned && !levers.settings()) {
                continue;
            }
            double cost = cost(angles) + (turned ? shop.effort(StepKind.SLEEVE_SETTING) : 0);
            if (cost < below) {
                options.add(new AngleOption(entry.aim(), entry.label(), 0, 0, angles.lieDeg(), cost));
            }
        }
    }

    private void bends(Candidate candidate, double below, List<AngleOption> options) {
        double step = shop.bendStepDeg();
        boolean wood = candidate.head().isWood();
        ClubAngles now = ClubAngles.of(candidate.assembly(), Setup.AS_READ);
        double lie = candidate.assembly().get(Input.HEAD_LIE_DEG);
        double turnRoom = turnPerTilt(candidate);
        double steady = wood && loftIn != AngleReading.SQUARE ? terms.of(Quantity.LOFT, now.loftDeg()) : 0;
        double room = below - steady - shop.effort(wood ? StepKind.BEND_WOOD : StepKind.BEND_IRON);
        int lieFrom = -(int) Math.ceil((candidate.limits().flatDeg() + GRID_MARGIN_DEG) / step);
        int lieTo = (int) Math.ceil((candidate.limits().uprightDeg() + GRID_MARGIN_DEG) / step);
        int turnFrom = -(int) Math.ceil((candidate.limits().backDeg() * turnRoom + GRID_MARGIN_DEG) / step);
        int turnTo = (int) Math.ceil((candidate.limits().forwardDeg() * turnRoom + GRID_MARGIN_DEG) / step);
        double[] turnTerm = new double[turnTo - turnFrom + 1];
        for (int j = turnFrom; j <= turnTo; j++) {
            turnTerm[j - turnFrom] = wood ? terms.of(Quantity.FACE, now.faceDeg() - step * j)
                : terms.of(Quantity.LOFT, now.loftDeg() + step * j) + terms.of(Quantity.BOUNCE, now.bounceDeg() + step * j);
        }
        for (int i = lieFrom; i <= lieTo; i++) {
            double lieTerm = terms.of(Quantity.LIE, lie + step * i);
            if (!(lieTerm < room)) {
                continue;
            }
            for (int j = turnFrom; j <= turnTo; j++) {
                if (lieTerm + turnTerm[j - turnFrom] < room && (i != 0 || j != 0)) {
                    bend(candidate, i, j, below, options);
                }
            }
        }
    }

    private void bend(Candidate candidate, int lieSteps, int turnSteps, double below, List<AngleOption> options) {
        AngleOption option = bend(candidate, lieSteps, turnSteps);
        if (option != null && option.cost() < below) {
            options.add(option);
        }
    }

    /** One bend; null where the hosel does not allow it. */
    private AngleOption bend(Candidate candidate, int lieSteps, int turnSteps) {
        double lie = candidate.assembly().get(Input.HEAD_LIE_DEG);
        double newLie = lie + shop.bendStepDeg() * lieSteps;
        double turn = shop.bendStepDeg() * turnSteps;
        boolean wood = candidate.head().isWood();
        HoselTilt tilt = wood ? HoselTilt.forWood(lie, newLie, turn) : HoselTilt.forIron(lie, newLie, turn);
        if (!candidate.limits().allow(tilt)) {
            return null;
        }
        int bends = wood ? 1 : (lieSteps != 0 ? 1 : 0) + (turnSteps != 0 ? 1 : 0);
        double effort = bends * shop.effort(wood ? StepKind.BEND_WOOD : StepKind.BEND_IRON)
            + shop.effortPerTiltDeg() * tilt.totalDeg();
        Setup.Aim aim = new Setup.Tilted(tilt);
        ClubAngles angles = ClubAngles.of(candidate.assembly(), aim);
        return new AngleOption(aim, null, lieSteps, turnSteps, angles.lieDeg(), cost(angles) + effort);
    }

    /** The bend nearest what is wanted, each reading rounded on its own and brought inside the limits; null if none. */
    AngleOption guess(Candidate candidate) {
        if (candidate.sleeve().isPresent() || !isBendable(candidate)) {
            return null;
        }
        ClubAngles now = ClubAngles.of(candidate.assembly(), Setup.AS_READ);
        int lieSteps = steps(Quantity.LIE, now.lieDeg());
        int turnSteps = candidate.head().isWood() ? -steps(Quantity.FACE, now.faceDeg())
            : steps(Quantity.LOFT, now.loftDeg());
        while (lieSteps != 0 || turnSteps != 0) {
            AngleOption option = bend(candidate, lieSteps, turnSteps);
            if (option != null) {
                return option;
            }
            lieSteps -= Integer.signum(lieSteps);
            turnSteps -= Integer.signum(turnSteps);
        }
        return null;
    }

    private int steps(Quantity quantity, double now) {
        return terms.counts(quantity) && !Double.isNaN(now)
            ? (int) Math.round((terms.want(quantity) - now) / shop.bendStepDeg()) : 0;
    }

    private double cost(ClubAngles angles) {
        double cost = terms.counts(Quantity.LOFT) ? terms.of(Quantity.LOFT, angles.loftDeg(loftIn)) : 0;
        cost += terms.of(Quantity.LIE, angles.lieDeg());
        cost += terms.of(Quantity.FACE, angles.faceDeg());
        return cost + terms.of(Quantity.BOUNCE, angles.bounceDeg());
    }
}
