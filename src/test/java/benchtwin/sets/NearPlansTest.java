package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The list of all plans up to a limit against the list of all plans. */
class NearPlansTest {

    static LongStream seeds() {
        return LongStream.range(1, 31);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void listsEveryPlanUpToTheLimit(long seed) {
        SetModel model = RandomModel.of(seed, new int[] {3, 2, 3}, 5, 5, 0.4);
        Prices prices = RandomModel.prices(model, seed);
        for (SlotGroup group : model.groups()) {
            GroupBound bound = new GroupBound(model, new GroupSolver(model, group));
            double least = bound.prove(prices, 2000).bound();
            double limit = least + 500_000 * (seed % 5);
            List<List<Option>> near = EveryPlan.all(model, group).stream()
                .filter(plan -> plan.value(model, prices) <= limit).map(plan -> Arrays.asList(plan.options())).toList();
            assertThat(new NearPlans(model, bound, 100_000, 50).between(prices, least, limit)).hasValueSatisfying(
                plans -> assertThat(plans).extracting(plan -> Arrays.asList(plan.options())).containsAll(near)
                    .doesNotHaveDuplicates());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void saysWhenThereAreTooMany(long seed) {
        SetModel model = RandomModel.of(seed, new int[] {3}, 5, 5, 0.6);
        GroupBound bound = new GroupBound(model, new GroupSolver(model, model.groups().get(0)));
        assertThat(new NearPlans(model, bound, 10, 1).between(Prices.none(model), 0, 1e13)).isEmpty();
    }
}
