package benchtwin.sets;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Who has which part: the plans of groups so far, and which group holds each head and shaft. */
final class Allotment {

    private static final int NOBODY = -1;

    private final SetModel model;
    private final GroupPlan[] plans;
    private final int[] headHolder;
    private final int[] shaftHolder;

    Allotment(SetModel model) {
        this.model = model;
        plans = new GroupPlan[model.groups().size()];
        headHolder = new int[model.heads()];
        shaftHolder = new int[model.shafts()];
        Arrays.fill(headHolder, NOBODY);
        Arrays.fill(shaftHolder, NOBODY);
    }

    /** Starts from a whole plan. */
    static Allotment of(SetModel model, EventPlan plan) {
        Allotment allotment = new Allotment(model);
        for (int g = 0; g < plan.groups().size(); g++) {
            allotment.give(g, plan.groups().get(g));
        }
        return allotment;
    }

    GroupPlan plan(int g) {
        return plans[g];
    }

    void give(int g, GroupPlan plan) {
        plans[g] = plan;
        for (Option option : plan.used()) {
            if (headHolder[option.head()] != NOBODY || shaftHolder[option.shaft()] != NOBODY) {
                throw new IllegalStateException("a part of %s is taken".formatted(option));
            }
            headHolder[option.head()] = g;
            shaftHolder[option.shaft()] = g;
        }
    }

    void release(int g) {
        if (plans[g] != null) {
            for (Option option : plans[g].used()) {
                headHolder[option.head()] = NOBODY;
                shaftHolder[option.shaft()] = NOBODY;
            }
            plans[g] = null;
        }
    }

    /** The groups that hold the head or the shaft of an option: none, one or two. */
    int[] holders(Option option) {
        return IntStream.of(headHolder[option.head()], shaftHolder[option.shaft()]).filter(g -> g != NOBODY).distinct()
            .toArray();
    }

    /** The prices, with what the given groups hold banned. */
    Prices without(Prices prices, Iterable<Integer> holders) {
        Prices rest = prices.copy();
        for (int holder : holders) {
            if (plans[holder] != null) {
                plans[holder].used().forEach(rest::ban);
            }
        }
        return rest;
    }

    /** The prices, with everything that is held banned. */
    Prices withoutHeld(Prices prices) {
        Prices rest = prices.copy();
        for (GroupPlan plan : plans) {
            if (plan != null) {
                plan.used().forEach(rest::ban);
            }
        }
        return rest;
    }

    /** The whole plan; a group without one is empty. */
    EventPlan whole() {
        return EventPlan.of(model, IntStream.range(0, plans.length)
            .mapToObj(g -> plans[g] != null ? plans[g]
                : new GroupPlan(model.groups().get(g), new Option[model.groups().get(g).slots().size()])).toList());
    }
}
