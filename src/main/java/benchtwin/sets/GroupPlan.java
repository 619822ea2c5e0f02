package benchtwin.sets;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What fills the slots of a group.
 * @param group   the group
 * @param options by place in the group; null for an empty slot
 */
record GroupPlan(SlotGroup group, Option[] options) {

    /**
     * What it costs, prices aside: plans, spreads, models where they only prefer to share.
     * @return millionths of a squared tolerance
     */
    long softCost() {
        long cost = 0;
        long count = 0;
        long[] sum = new long[Residual.COUNT];
        long[] square = new long[Residual.COUNT];
        for (Option option : options) {
            if (option != null) {
                cost += option.cost();
                count++;
                for (int k = 0; k < Residual.COUNT; k++) {
                    sum[k] += option.residual(k);
                    square[k] += (long) option.residual(k) * option.residual(k);
                }
            }
        }
        for (int k = 0; k < Residual.COUNT; k++) {
            cost += SlotGroup.spread(group.weights()[k], count, sum[k], square[k]);
        }
        return cost;
    }

    /** Whether it keeps to one head model and one shaft model, where it must. */
    boolean sharesModels(SetModel model) {
        return !group.sameModels() || used().stream().map(option -> model.headModel(option.head())).distinct().count() <= 1
            && used().stream().map(option -> model.shaftModel(option.shaft())).distinct().count() <= 1;
    }

    /** What its models beyond the first cost, for a group that prefers to share. */
    long modelCost(SetModel model) {
        if (group.sameModels() || group.modelCost() == 0) {
            return 0;
        }
        Set<Integer> heads = new HashSet<>();
        Set<Integer> shafts = new HashSet<>();
        for (Option option : options) {
            if (option != null) {
                heads.add(model.headModel(option.head()));
                shafts.add(model.shaftModel(option.shaft()));
            }
        }
        return group.modelCost() * (Math.max(0, heads.size() - 1) + Math.max(0, shafts.size() - 1));
    }

    /** What its empty slots weigh. */
    long emptyCost(SetModel model) {
        long cost = 0;
        for (int i = 0; i < options.length; i++) {
            if (options[i] == null) {
                cost += model.emptyCost(group.slots().get(i));
            }
        }
        return cost;
    }

    /** Everything together, prices aside. */
    long value(SetModel model) {
        return softCost() + modelCost(model) + emptyCost(model);
    }

    /** Everything together under prices. */
    double value(SetModel model, Prices prices) {
        double value = softCost() + modelCost(model) + prices.empty() * emptyCost(model);
        for (Option option : options) {
            if (option != null) {
                value += prices.of(option);
            }
        }
        return value;
    }

    List<Option> used() {
        return Arrays.stream(options).filter(Objects::nonNull).toList();
    }

    /** Means of the residuals; the given ones where no slot is filled. */
    double[] centres(double[] otherwise) {
        double[] centre = new double[Residual.COUNT];
        int count = 0;
        for (Option option : options) {
            if (option != null) {
                count++;
                for (int k = 0; k < Residual.COUNT; k++) {
                    centre[k] += option.residual(k);
                }
            }
        }
        if (count == 0) {
            return otherwise.clone();
        }
        for (int k = 0; k < Residual.COUNT; k++) {
            centre[k] /= count;
        }
        return centre;
    }
}
