package benchtwin.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What fills every slot of every group, and its score on two levels that are never added up: what the empty slots weigh comes
 * first, the rest decides between plans that leave equally much empty.
 * @param groups    one plan a group, in the model's order
 * @param emptyCost weight of the empty slots
 * @param soft      plans, spreads and models, millionths of a squared tolerance
 */
record EventPlan(List<GroupPlan> groups, long emptyCost, long soft) implements Comparable<EventPlan> {

    /**
     * Adds up.
     * @param model  the problem
     * @param groups one plan a group
     * @throws IllegalArgumentException when a part is used twice, or a slot is filled from another slot's options
     */
    static EventPlan of(SetModel model, List<GroupPlan> groups) {
        Set<Integer> heads = new HashSet<>();
        Set<Integer> shafts = new HashSet<>();
        long emptyCost = 0;
        long soft = 0;
        for (GroupPlan plan : groups) {
            for (int i = 0; i < plan.options().length; i++) {
                Option option = plan.options()[i];
                if (option != null && option.slot() != plan.group().slots().get(i)) {
                    throw new IllegalArgumentException("slot %d is filled from the options of slot %d"
                        .formatted(plan.group().slots().get(i), option.slot()));
                }
                if (option != null && !heads.add(option.head())) {
                    throw new IllegalArgumentException("head %d is used twice".formatted(option.head()));
                }
                if (option != null && !shafts.add(option.shaft())) {
                    throw new IllegalArgumentException("shaft %d is used twice".formatted(option.shaft()));
                }
            }
            if (!plan.sharesModels(model)) {
                throw new IllegalArgumentException("group of slots %s is of more than one model"
                    .formatted(plan.group().slots()));
            }
            emptyCost += plan.emptyCost(model);
            soft += plan.softCost() + plan.modelCost(model);
        }
        return new EventPlan(List.copyOf(groups), emptyCost, soft);
    }

    /** From the options by slot; null for an empty slot. */
    static EventPlan of(SetModel model, Option[] bySlot) {
        List<GroupPlan> plans = new ArrayList<>();
        for (SlotGroup group : model.groups()) {
            plans.add(new GroupPlan(group, group.slots().stream().map(slot -> bySlot[slot]).toArray(Option[]::new)));
        }
        return of(model, plans);
    }

    /** Nothing filled. */
    static EventPlan empty(SetModel model) {
        return of(model, new Option[model.slots()]);
    }

    /** The options by slot; null for an empty slot. */
    Option[] bySlot() {
        Option[] bySlot = new Option[groups.stream().mapToInt(plan -> plan.options().length).sum()];
        for (GroupPlan plan : groups) {
            for (int i = 0; i < plan.options().length; i++) {
                bySlot[plan.group().slots().get(i)] = plan.options()[i];
            }
        }
        return bySlot;
    }

    /** Which slots are empty. */
    int[] emptySlots() {
        Option[] bySlot = bySlot();
        return IntStream.range(0, bySlot.length).filter(slot -> bySlot[slot] == null).toArray();
    }

    boolean isBetterThan(EventPlan other) {
        return compareTo(other) < 0;
    }

    /** The better plan first. */
    @Override
    public int compareTo(EventPlan other) {
        int byEmpty = Long.compare(emptyCost, other.emptyCost);
        return byEmpty != 0 ? byEmpty : Long.compare(soft, other.soft);
    }

    @Override
    public String toString() {
        return "empty %d, soft %d, %s".formatted(emptyCost, soft, Arrays.toString(bySlot()));
    }
}
