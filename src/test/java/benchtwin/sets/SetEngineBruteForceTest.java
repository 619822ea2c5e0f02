package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The engine's best plan and its bound against every plan there is, stock so scarce that wishes meet. */
class SetEngineBruteForceTest {

    private static final int MOST_ROUNDS = 1_500;

    static LongStream seeds() {
        return LongStream.range(1, 61);
    }

    /** Two or three groups, the third only preferring to share; some seeds with slots that cannot all be filled. */
    static SetModel model(long seed) {
        int parts = seed % 5 == 0 ? 4 : 5;
        double share = seed % 4 == 0 ? 0.12 : 0.3;
        return RandomModel.of(seed, seed % 3 == 0 ? new int[] {3, 2} : new int[] {2, 1, 2}, parts, parts, share);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void findsAndProvesTheBestThereIs(long seed) {
        SetModel model = model(seed);
        EventPlan best = best(model);
        SetEngine engine = new SetEngine(model, seed);
        int rounds = 0;
        boolean more = true;
        while (more && rounds++ < MOST_ROUNDS) {
            more = engine.next(() -> false);
            assertThat(engine.plan()).isGreaterThanOrEqualTo(best);
            assertThat(engine.bound().emptyCost()).isLessThanOrEqualTo(best.emptyCost());
            if (engine.bound().emptyCost() == best.emptyCost()) {
                assertThat(engine.bound().soft()).isLessThanOrEqualTo(best.soft());
            }
        }
        assertThat(engine.plan().emptyCost()).isEqualTo(best.emptyCost());
        assertThat(engine.plan().soft()).isEqualTo(best.soft());
        assertThat(engine.gap()).hasValue(0);
        assertThat(EventPlan.of(model, engine.best())).isEqualByComparingTo(engine.plan());
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
