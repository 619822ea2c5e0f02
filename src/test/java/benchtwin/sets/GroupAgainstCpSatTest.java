package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The best plan of a group against the one that CP-SAT proves: two ways to it that share no step. */
class GroupAgainstCpSatTest {

    private static final int MOST_BOXES = 5000;

    static LongStream seeds() {
        return LongStream.range(1, 21);
    }

    static LongStream fewerSeeds() {
        return LongStream.range(1, 9);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aGroupThatMustShareItsModelsIsFilledBest(long seed) {
        SetModel model = oneGroup(seed, true, 0);
        GroupBound.Proven proven = prove(model);
        long best = CpSatOracle.of(model).value();
        assertThat(proven.value()).isEqualTo(best);
        assertThat(proven.bound()).isLessThanOrEqualTo(best);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("fewerSeeds")
    void aGroupThatMayMixItsModelsFreelyIsFilledBest(long seed) {
        SetModel model = oneGroup(seed, false, 0);
        assertThat(prove(model).value()).isEqualTo(CpSatOracle.of(model).value());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("fewerSeeds")
    void whereSharingIsOnlyPreferredTheBestLiesBetweenBoundAndPlan(long seed) {
        SetModel model = oneGroup(seed, false, 2_000_000);
        GroupBound.Proven proven = prove(model);
        assertThat(CpSatOracle.of(model).value()).isBetween((long) Math.floor(proven.bound()), (long) proven.value());
    }

    /**
     * Two to four slots, at most three where models may mix, because then far more plans are open; every fourth stock is so
     * scarce that slots stay empty; shaft mass counts in every second.
     */
    private static SetModel oneGroup(long seed, boolean must, long modelCost) {
        int size = must ? 2 + (int) (seed % 3) : 2 + (int) (seed % 2);
        SetModel random = RandomModel.of(seed, new int[] {size}, must ? 10 : 8, must ? 9 : 7, seed % 4 == 0 ? 0.06 : 0.3);
        List<Integer> slots = IntStream.range(0, size).boxed().toList();
        List<List<Option>> options = new ArrayList<>();
        slots.forEach(slot -> options.add(random.options(slot)));
        return new SetModel(List.of(new SlotGroup(slots, must, new long[] {1, 2, seed % 2}, modelCost)),
            slots.stream().mapToLong(random::emptyCost).toArray(),
            IntStream.range(0, random.heads()).map(random::headModel).toArray(),
            IntStream.range(0, random.shafts()).map(random::shaftModel).toArray(), options);
    }

    private static GroupBound.Proven prove(SetModel model) {
        return new GroupBound(model, new GroupSolver(model, model.groups().get(0))).prove(Prices.none(model), MOST_BOXES);
    }
}
