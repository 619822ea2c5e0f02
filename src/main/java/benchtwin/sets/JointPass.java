package benchtwin.sets;

import benchtwin.club.Quantity;
import benchtwin.club.Wanted;
import benchtwin.match.SlotPlan;
import benchtwin.match.SlotPlans;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Plans the clubs of a group together once their parts are chosen: trims, cuts and masses give way a little where that makes
 * the group more alike. Club after club is planned exactly with the others held, until none can do better. The spread seen
 * from one club is (n − 1)/n times the square of its distance from the mean of the others.
 */
final class JointPass {

    private static final int MOST_ROUNDS = 8;
    /** Gains below this are rounding, squared tolerances. */
    private static final double ROUNDING = 1e-9;

    private final Alikeness alikeness;
    private final SlotGroup group;
    private final List<WantedSlot> slots;
    private final List<SlotPlan> plans;

    /**
     * A group with its parts chosen.
     * @param alikeness what unlike clubs cost
     * @param group     the group
     * @param slots     its clubs that are built
     * @param plans     their plans, in the same order
     */
    JointPass(Alikeness alikeness, SlotGroup group, List<WantedSlot> slots, List<SlotPlan> plans) {
        this.alikeness = alikeness;
        this.group = group;
        this.slots = slots;
        this.plans = new ArrayList<>(plans);
    }

    /**
     * What came of it.
     * @param plans the better plans, in the order of the clubs
     * @param gain  how much less they cost together, squared tolerances, 0 or more
     */
    record Better(List<SlotPlan> plans, double gain) {
    }

    /**
     * Plans them.
     * @return plans that cost the same or less together
     */
    Better run() {
        double before = cost();
        for (int i = 0; i < plans.size(); i++) {
            plans.set(i, slots.get(i).plans().exact(plans.get(i)));
        }
        boolean moved = plans.size() > 1 && (counts(Residual.FREQUENCY) || counts(Residual.SWING));
        for (int round = 0; round < MOST_ROUNDS && moved; round++) {
            moved = false;
            for (int i = 0; i < plans.size(); i++) {
                SlotPlan old = plans.get(i);
                double now = cost();
                plans.set(i, slots.get(i).plans().pulled(old, pulls(i)));
                if (cost() < now - ROUNDING) {
                    moved = true;
                } else {
                    plans.set(i, old);
                }
            }
        }
        return new Better(List.copyOf(plans), Math.max(0, before - cost()));
    }

    private boolean counts(Residual residual) {
        return group.weights()[residual.ordinal()] > 0;
    }

    /** Plans and spreads, squared tolerances. */
    private double cost() {
        double cost = plans.stream().mapToDouble(SlotPlan::cost).sum();
        for (Residual residual : Residual.values()) {
            if (counts(residual)) {
                cost += alikeness.of(residual) * Spread.squares(IntStream.range(0, plans.size())
                    .mapToDouble(i -> slots.get(i).tolerancesOff(residual, plans.get(i))).toArray());
            }
        }
        return cost;
    }

    private List<SlotPlans.Pull> pulls(int club) {
        List<SlotPlans.Pull> pulls = new ArrayList<>();
        pull(Residual.FREQUENCY, Optional.of(Quantity.FREQUENCY), club).ifPresent(pulls::add);
        pull(Residual.SWING, slots.get(club).swing(), club).ifPresent(pulls::add);
        return pulls;
    }

    private Optional<SlotPlans.Pull> pull(Residual residual, Optional<Quantity> quantity, int club) {
        if (!counts(residual) || quantity.isEmpty()) {
            return Optional.empty();
        }
        int others = plans.size() - 1;
        double mean = 0;
        for (int i = 0; i < plans.size(); i++) {
            mean += i == club ? 0 : slots.get(i).tolerancesOff(residual, plans.get(i)) / others;
        }
        Wanted wanted = slots.get(club).target().of(quantity.get()).orElseThrow();
        return Optional.of(new SlotPlans.Pull(quantity.get(), wanted.value() + mean * wanted.tolerance(), wanted.tolerance(),
            alikeness.of(residual) * others / plans.size()));
    }
}
