package benchtwin.sets;

import benchtwin.club.AddedMasses;
import benchtwin.club.Grip;
import benchtwin.club.Inventory;
import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.club.WantedClub;
import benchtwin.match.Favourite;
import benchtwin.match.ShopSettings;
import benchtwin.match.SlotEstimates;
import benchtwin.match.SlotPlan;
import benchtwin.match.SlotPlans;
import benchtwin.mechanics.Assemblies;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.GripFactor;
import java.util.List;
import java.util.Optional;

/**
 * One wanted club with what it takes to plan it. Plans are worked out by one thread at a time.
 */
final class WantedSlot {

    /** One tolerance of a raw shaft's mass, g. */
    private static final double SHAFT_MASS_TOLERANCE_G = Quantity.SHAFT_MASS.defaultTolerance();

    private final int index;
    private final WantedClub club;
    private final Target target;
    private final SlotPlans plans;
    private final boolean pinned;
    private final boolean[] headAllowed;
    private final boolean[] shaftAllowed;
    private SlotEstimates estimates;

    WantedSlot(int index, WantedClub club, Target target, Optional<Grip> grip, Inventory inventory, ShopSettings shop,
               GripFactor factor, DecidedParts pins) {
        this.pinned = pins.of(club).isPresent();
        this.index = index;
        this.club = club;
        this.target = target;
        Favourite favourite = new Favourite(club.club(), Optional.of(club.player()), club.category(), club.number(),
            club.hand(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), grip,
            AddedMasses.ONE_LAYER, target, FrequencyCondition.BARE, target.reading(), Optional.empty(),
            new Assemblies(factor), List.of());
        this.plans = new SlotPlans(favourite, inventory, shop);
        this.headAllowed = new boolean[plans.heads().size()];
        for (int h = 0; h < headAllowed.length; h++) {
            headAllowed[h] = pins.allowHead(club, plans.heads().get(h).tag());
        }
        this.shaftAllowed = new boolean[plans.shafts().size()];
        for (int s = 0; s < shaftAllowed.length; s++) {
            shaftAllowed[s] = pins.allowShaft(club, plans.shafts().get(s).tag());
        }
    }

    int index() {
        return index;
    }

    WantedClub club() {
        return club;
    }

    Target target() {
        return target;
    }

    SlotPlans plans() {
        return plans;
    }

    /**
     * The rough cost of a pair.
     * @param head  place in the list of heads
     * @param shaft place in the list of shafts
     * @return squared tolerances; infinite when they do not go together, or a pin says otherwise
     */
    double roughCost(int head, int shaft) {
        if (estimates == null) {
            estimates = plans.estimates();
        }
        return headAllowed[head] && shaftAllowed[shaft] ? estimates.cost(head, shaft) : Double.POSITIVE_INFINITY;
    }

    boolean isPinned() {
        return pinned;
    }

    /** What its swing is held in: butt inertia where the target names one, else swing weight. */
    Optional<Quantity> swing() {
        return counts(Quantity.BUTT_INERTIA) ? Optional.of(Quantity.BUTT_INERTIA)
            : counts(Quantity.SWING_WEIGHT) ? Optional.of(Quantity.SWING_WEIGHT) : Optional.empty();
    }

    boolean counts(Quantity quantity) {
        return target.of(quantity).filter(wanted -> wanted.weight() > 0).isPresent();
    }

    /**
     * How far a plan is from the target in what its group is to be alike in.
     * @param residual which
     * @param plan     a plan for this club
     * @return tolerances; for the shaft's mass, tolerances above 0 g; 0 where nothing is wanted
     */
    double tolerancesOff(Residual residual, SlotPlan plan) {
        return switch (residual) {
            case FREQUENCY -> off(Quantity.FREQUENCY, plan);
            case SWING -> swing().map(quantity -> off(quantity, plan)).orElse(0.0);
            case SHAFT_MASS -> plan.shaft().massG().orElseThrow().value() / SHAFT_MASS_TOLERANCE_G;
        };
    }

    private double off(Quantity quantity, SlotPlan plan) {
        Optional<Wanted> wanted = target.of(quantity);
        return wanted.isEmpty() ? 0 : wanted.get().deviation(plan.value(quantity));
    }

    /** Whether a quantity that ranks is beyond its tolerance. */
    boolean isOut(SlotPlan plan) {
        return target.wanted().entrySet().stream().anyMatch(entry -> entry.getValue().weight() > 0
            && Math.abs(entry.getValue().deviation(plan.value(entry.getKey()))) > 1);
    }
}
