package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Choosing one plan a group, by the library and by our own search, against every choice there is. */
class ColumnChoiceTest {

    static LongStream seeds() {
        return LongStream.range(1, 31);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void choosesTheBestOfTheLists(long seed) {
        SetModel model = RandomModel.of(seed, new int[] {2, 2, 2, 1}, 6, 6, 0.3);
        EventPlan incumbent = EventPlan.empty(model);
        List<List<GroupPlan>> lists = lists(model, incumbent, seed);
        EventPlan best = EveryPlan.best(model, lists);
        assertThat(best).isLessThan(incumbent);

        EventPlan ours = packed(model, lists, incumbent);
        assertThat(ours).isEqualByComparingTo(best);

        // the library minimises the soft level among what leaves no more empty than the incumbent: give it the best's level
        EventPlan known = worstAtLevel(model, lists, best.emptyCost());
        List<List<GroupPlan>> withKnown = new ArrayList<>();
        for (int g = 0; g < lists.size(); g++) {
            List<GroupPlan> list = new ArrayList<>(List.of(known.groups().get(g)));
            list.addAll(lists.get(g));
            withKnown.add(list);
        }
        EventPlan chosen = new ColumnChoice(model, withKnown, known).choose(() -> false);
        assertThat(chosen).isEqualByComparingTo(best);
        assertThat(new ColumnChoice(model, withKnown, known).choose(() -> true)).isEqualTo(known);
    }

    /** Fifteen plans a group, the incumbent's among them. */
    private static List<List<GroupPlan>> lists(SetModel model, EventPlan incumbent, long seed) {
        List<List<GroupPlan>> lists = new ArrayList<>();
        for (int g = 0; g < model.groups().size(); g++) {
            List<GroupPlan> all = new ArrayList<>(EveryPlan.all(model, model.groups().get(g)));
            Collections.shuffle(all, new Random(seed + g));
            List<GroupPlan> some = new ArrayList<>(all.subList(0, Math.min(14, all.size())));
            some.add(incumbent.groups().get(g));
            lists.add(some);
        }
        return lists;
    }

    private static EventPlan packed(SetModel model, List<List<GroupPlan>> lists, EventPlan incumbent) {
        Prices none = Prices.none(model);
        List<double[]> excess = new ArrayList<>();
        double bounds = 0;
        for (List<GroupPlan> list : lists) {
            double least = list.stream().mapToDouble(plan -> plan.value(model, none)).min().orElseThrow();
            excess.add(list.stream().mapToDouble(plan -> plan.value(model, none) - least).toArray());
            bounds += least;
        }
        Packing packing = new Packing(model, lists, excess, incumbent.soft() + incumbent.emptyCost() - bounds, 1,
            incumbent, 1, () -> false);
        assertThat(packing.search()).isTrue();
        return packing.best();
    }

    /** Some choice that leaves as little empty as the best, the dearest there is. */
    private static EventPlan worstAtLevel(SetModel model, List<List<GroupPlan>> lists, long emptyCost) {
        EventPlan[] worst = new EventPlan[1];
        choose(model, lists, 0, new ArrayList<>(), emptyCost, worst);
        return worst[0];
    }

    private static void choose(SetModel model, List<List<GroupPlan>> lists, int g, List<GroupPlan> chosen, long emptyCost,
            EventPlan[] worst) {
        if (g == lists.size()) {
            EventPlan plan = EventPlan.of(model, chosen);
            if (plan.emptyCost() == emptyCost && (worst[0] == null || plan.soft() > worst[0].soft())) {
                worst[0] = plan;
            }
            return;
        }
        for (GroupPlan plan : lists.get(g)) {
            chosen.add(plan);
            List<Option> used = chosen.stream().flatMap(each -> each.used().stream()).toList();
            if (used.stream().map(Option::head).distinct().count() == used.size()
                && used.stream().map(Option::shaft).distinct().count() == used.size()) {
                choose(model, lists, g + 1, chosen, emptyCost, worst);
            }
            chosen.remove(chosen.size() - 1);
        }
    }
}
