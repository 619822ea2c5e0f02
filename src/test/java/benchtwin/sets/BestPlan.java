package benchtwin.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The best plan of a small problem, found by trying them all: fewest and least wanted clubs unbuilt, then least cost. */
final class BestPlan {

    private final SetModel model;
    private final List<Option[]> plans = new ArrayList<>();
    private long unbuilt = Long.MAX_VALUE;
    private long cost = Long.MAX_VALUE;

    private BestPlan(SetModel model) {
        this.model = model;
    }

    static BestPlan of(SetModel model) {
        BestPlan best = new BestPlan(model);
        best.fill(new Option[model.slots()], 0, 0);
        return best;
    }

    /** All plans that are best. */
    List<Option[]> plans() {
        return plans;
    }

    long unbuilt() {
        return unbuilt;
    }

    long cost() {
        return cost;
    }

    private void fill(Option[] plan, int slot, long unbuiltSoFar) {
        if (unbuiltSoFar > unbuilt) {
            return;
        }
        if (slot == plan.length) {
            offer(plan, unbuiltSoFar);
            return;
        }
        for (Option option : model.options(slot)) {
            if (Arrays.stream(plan, 0, slot).noneMatch(other -> other != null
                    && (other.head() == option.head() || other.shaft() == option.shaft()))) {
                plan[slot] = option;
                fill(plan, slot + 1, unbuiltSoFar);
            }
        }
        plan[slot] = null;
        fill(plan, slot + 1, unbuiltSoFar + model.emptyCost(slot));
    }

    private void offer(Option[] plan, long unbuiltHere) {
        long costHere = 0;
        for (SlotGroup group : model.groups()) {
            GroupPlan of = new GroupPlan(group, group.slots().stream().map(slot -> plan[slot]).toArray(Option[]::new));
            if (!GroupBoundBruteForceTest.isAllowed(model, of)) {
                return;
            }
            costHere += of.softCost() + of.modelCost(model);
        }
        if (unbuiltHere < unbuilt || costHere < cost) {
            plans.clear();
            unbuilt = unbuiltHere;
            cost = costHere;
        }
        if (costHere == cost) {
            plans.add(plan.clone());
        }
    }
}
