package benchtwin.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The choice of parts as whole numbers: slots, groups, what can fill each slot and what it costs. Everything that searches or
 * proves reads this; the constraint model adds up the same numbers.
 */
final class SetModel {

    private final List<SlotGroup> groups;
    private final int[] groupOf;
    private final long[] emptyCost;
    private final int[] headModel;
    private final int[] shaftModel;
    private final List<List<Option>> options;

    /**
     * @param groups     the groups; every slot in exactly one
     * @param emptyCost  by slot: what leaving it empty weighs, by its priority, above 0
     * @param headModel  model of each head
     * @param shaftModel model of each shaft
     * @param options    by slot: what can fill it
     */
    SetModel(List<SlotGroup> groups, long[] emptyCost, int[] headModel, int[] shaftModel, List<List<Option>> options) {
        this.groups = List.copyOf(groups);
        this.emptyCost = emptyCost.clone();
        this.headModel = headModel.clone();
        this.shaftModel = shaftModel.clone();
        List<List<Option>> copy = new ArrayList<>();
        options.forEach(list -> copy.add(List.copyOf(list)));
        this.options = List.copyOf(copy);
        this.groupOf = new int[emptyCost.length];
        Arrays.fill(groupOf, -1);
        for (int g = 0; g < groups.size(); g++) {
            for (int slot : groups.get(g).slots()) {
                if (groupOf[slot] != -1) {
                    throw new IllegalArgumentException("slot %d is in two groups".formatted(slot));
                }
                groupOf[slot] = g;
            }
        }
        for (int slot = 0; slot < groupOf.length; slot++) {
            if (groupOf[slot] == -1) {
                throw new IllegalArgumentException("slot %d is in no group".formatted(slot));
            }
        }
    }

    /** The same problem with other options. */
    SetModel withOptions(List<List<Option>> others) {
        return new SetModel(groups, emptyCost, headModel, shaftModel, others);
    }

    /** The same problem with other weights of empty slots. */
    SetModel withEmptyCost(long[] others) {
        return new SetModel(groups, others, headModel, shaftModel, options);
    }

    int slots() {
        return emptyCost.length;
    }

    int heads() {
        return headModel.length;
    }

    int shafts() {
        return shaftModel.length;
    }

    List<SlotGroup> groups() {
        return groups;
    }

    int groupOf(int slot) {
        return groupOf[slot];
    }

    long emptyCost(int slot) {
        return emptyCost[slot];
    }

    int headModel(int head) {
        return headModel[head];
    }

    int shaftModel(int shaft) {
        return shaftModel[shaft];
    }

    /** The smallest unit that all weights of empty slots are whole multiples of. */
    long emptyUnit() {
        return Arrays.stream(emptyCost).reduce(0, SetModel::commonDivisor);
    }

    private static long commonDivisor(long a, long b) {
        return b == 0 ? a : commonDivisor(b, a % b);
    }

    /** More than the soft cost of any plan. */
    double mostSoft() {
        double most = 0;
        for (SlotGroup group : groups) {
            most += 2.0 * group.modelCost() * group.slots().size();
            double[] low = new double[Residual.COUNT];
            double[] high = new double[Residual.COUNT];
            Arrays.fill(low, Double.POSITIVE_INFINITY);
            Arrays.fill(high, Double.NEGATIVE_INFINITY);
            for (int slot : group.slots()) {
                most += options.get(slot).stream().mapToLong(Option::cost).max().orElse(0);
                for (Option option : options.get(slot)) {
                    for (int k = 0; k < Residual.COUNT; k++) {
                        low[k] = Math.min(low[k], option.residual(k));
                        high[k] = Math.max(high[k], option.residual(k));
                    }
                }
            }
            for (int k : group.spreadKinds()) {
                double half = Math.max(0, high[k] - low[k]) / 2;
                most += group.slots().size() * group.weights()[k] * half * half;
            }
        }
        return most + 1;
    }

    List<Option> options(int slot) {
        return options.get(slot);
    }

    int optionCount() {
        return options.stream().mapToInt(List::size).sum();
    }

    /** Whether another model has the same slots, groups and parts, whatever its options. */
    boolean isLike(SetModel other) {
        return Arrays.equals(emptyCost, other.emptyCost) && Arrays.equals(headModel, other.headModel)
            && Arrays.equals(shaftModel, other.shaftModel)
            && groups.stream().map(SlotGroup::slots).toList().equals(other.groups.stream().map(SlotGroup::slots).toList());
    }
}
