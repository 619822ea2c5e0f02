package benchtwin.sets;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/** Every plan there is, one by one: what searches are checked against. */
final class EveryPlan {

    private EveryPlan() {
    }

    /** The best of all plans. */
    static EventPlan best(SetModel model) {
        return best(model, model.groups().stream().map(group -> all(model, group)).toList());
    }

    /** Every plan of a group. */
    static List<GroupPlan> all(SetModel model, SlotGroup group) {
        List<GroupPlan> all = new ArrayList<>();
        list(model, group, new Option[group.slots().size()], 0, all);
        return all;
    }

    /** The best choice of a plan for each group. */
    static EventPlan best(SetModel model, List<List<GroupPlan>> plans) {
        Search search = new Search(model, plans);
        search.choose(0, 0, 0);
        return EventPlan.of(model, search.best);
    }

    private static void list(SetModel model, SlotGroup group, Option[] chosen, int place, List<GroupPlan> all) {
        if (place == chosen.length) {
            GroupPlan plan = new GroupPlan(group, chosen.clone());
            if (GroupBoundBruteForceTest.isAllowed(model, plan)) {
                all.add(plan);
            }
            return;
        }
        chosen[place] = null;
        list(model, group, chosen, place + 1, all);
        for (Option option : model.options(group.slots().get(place))) {
            chosen[place] = option;
            list(model, group, chosen, place + 1, all);
        }
        chosen[place] = null;
    }

    private static final class Search {
        private final List<List<GroupPlan>> plans;
        private final List<BitSet[]> parts = new ArrayList<>();
        private final List<long[]> empty = new ArrayList<>();
        private final List<long[]> soft = new ArrayList<>();
        private final BitSet taken = new BitSet();
        private final GroupPlan[] chosen;
        private List<GroupPlan> best;
        private long bestEmpty = Long.MAX_VALUE;
        private long bestSoft;

        Search(SetModel model, List<List<GroupPlan>> plans) {
            this.plans = plans;
            chosen = new GroupPlan[plans.size()];
            for (List<GroupPlan> list : plans) {
                parts.add(list.stream().map(plan -> {
                    BitSet used = new BitSet();
                    plan.used().forEach(option -> {
                        used.set(option.head());
                        used.set(model.heads() + option.shaft());
                    });
                    return used;
                }).toArray(BitSet[]::new));
                empty.add(list.stream().mapToLong(plan -> plan.emptyCost(model)).toArray());
                soft.add(list.stream().mapToLong(plan -> plan.softCost() + plan.modelCost(model)).toArray());
            }
        }

        void choose(int g, long emptySoFar, long softSoFar) {
            if (g == chosen.length) {
                if (emptySoFar < bestEmpty || emptySoFar == bestEmpty && softSoFar < bestSoft) {
                    bestEmpty = emptySoFar;
                    bestSoft = softSoFar;
                    best = List.of(chosen);
                }
                return;
            }
            IntStream.range(0, plans.get(g).size()).forEach(p -> {
                if (emptySoFar + empty.get(g)[p] <= bestEmpty && !taken.intersects(parts.get(g)[p])) {
                    taken.or(parts.get(g)[p]);
                    chosen[g] = plans.get(g).get(p);
                    choose(g + 1, emptySoFar + empty.get(g)[p], softSoFar + soft.get(g)[p]);
                    taken.andNot(parts.get(g)[p]);
                }
            });
        }
    }
}
