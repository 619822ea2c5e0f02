package benchtwin.sets;

import java.util.Arrays;

/** Which club has which part, as a step of the local search finds it. */
final class Board {

    private final SetModel model;
    private final Option[] plan;
    private final int[] slotOfHead;
    private final int[] slotOfShaft;

    Board(SetModel model, Option[] plan) {
        this.model = model;
        this.plan = plan;
        slotOfHead = new int[model.heads()];
        slotOfShaft = new int[model.shafts()];
        Arrays.fill(slotOfHead, -1);
        Arrays.fill(slotOfShaft, -1);
        for (Option option : plan) {
            if (option != null) {
                slotOfHead[option.head()] = option.slot();
                slotOfShaft[option.shaft()] = option.slot();
            }
        }
    }

    SetModel model() {
        return model;
    }

    /** What a slot has, null for nothing. */
    Option at(int slot) {
        return plan[slot];
    }

    /** Whether no other slot has one of its parts. */
    boolean isFree(Option option) {
        return isFree(slotOfHead[option.head()], option) && isFree(slotOfShaft[option.shaft()], option);
    }

    private static boolean isFree(int holder, Option option) {
        return holder == -1 || holder == option.slot();
    }

    /** Whether its models are those of the other clubs of its group, where they must be. */
    boolean suits(Option option) {
        SlotGroup group = model.groups().get(model.groupOf(option.slot()));
        if (!group.sameModels()) {
            return true;
        }
        for (int slot : group.slots()) {
            Option mate = plan[slot];
            if (slot != option.slot() && mate != null) {
                return model.headModel(mate.head()) == model.headModel(option.head())
                    && model.shaftModel(mate.shaft()) == model.shaftModel(option.shaft());
            }
        }
        return true;
    }

    /** What the slots of a group have. */
    GroupPlan of(SlotGroup group) {
        return new GroupPlan(group, group.slots().stream().map(slot -> plan[slot]).toArray(Option[]::new));
    }
}
