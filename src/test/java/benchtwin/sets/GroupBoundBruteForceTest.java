package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The best plan of a group against every plan there is, and its bound against the best. */
class GroupBoundBruteForceTest {

    /** Spreads are rounded down, one unit each. */
    private static final double ROUNDING = Residual.COUNT;

    static LongStream seeds() {
        return LongStream.range(1, 61);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noPlanCostsLess(long seed) {
        SetModel model = RandomModel.of(seed, new int[] {1 + (int) (seed % 3), 3, 2}, 5, 5, seed % 4 == 0 ? 0.15 : 0.5);
        Prices prices = RandomModel.prices(model, seed);
        for (SlotGroup group : model.groups()) {
            GroupBound.Proven proven = new GroupBound(model, new GroupSolver(model, group)).prove(prices, 5000);
            double best = best(model, group, prices, new Option[group.slots().size()], 0);
            assertThat(proven.bound()).isLessThanOrEqualTo(best + ROUNDING);
            assertThat(proven.value()).isGreaterThanOrEqualTo(best - 1e-6);
            assertThat(proven.value()).isCloseTo(best, within(ROUNDING));
            assertThat(proven.bound()).isCloseTo(best, within(ROUNDING));
            assertThat(proven.plan().value(model, prices)).isEqualTo(proven.value());
        }
    }

    /** Banned parts stay out, even where a slot then stays empty. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void bannedPartsStayOut(long seed) {
        SetModel model = RandomModel.of(seed, new int[] {3, 2, 3}, 5, 5, 0.5);
        Prices prices = RandomModel.prices(model, seed);
        for (int part = (int) (seed % 2); part < 5; part += 2) {
            prices.head()[part] = Prices.BANNED;
            prices.shaft()[4 - part] = Prices.BANNED;
        }
        long[] dear = new long[model.slots()];
        Arrays.fill(dear, (long) Prices.BANNED * 100);
        SetModel mustBeFull = new SetModel(model.groups(), dear, new int[5], new int[5],
            IntStream.range(0, model.slots()).mapToObj(model::options).toList());
        for (SlotGroup group : mustBeFull.groups()) {
            GroupBound.Proven proven = new GroupBound(mustBeFull, new GroupSolver(mustBeFull, group)).prove(prices, 100);
            assertThat(proven.plan().used()).noneMatch(prices::bans);
        }
    }

    private static double best(SetModel model, SlotGroup group, Prices prices, Option[] chosen, int place) {
        if (place == chosen.length) {
            GroupPlan plan = new GroupPlan(group, chosen.clone());
            return isAllowed(model, plan) ? plan.value(model, prices) : Double.POSITIVE_INFINITY;
        }
        chosen[place] = null;
        double best = best(model, group, prices, chosen, place + 1);
        for (Option option : model.options(group.slots().get(place))) {
            chosen[place] = option;
            best = Math.min(best, best(model, group, prices, chosen, place + 1));
        }
        chosen[place] = null;
        return best;
    }

    /** No part twice, and one model of each kind where that is a must. */
    static boolean isAllowed(SetModel model, GroupPlan plan) {
        Set<Integer> heads = new HashSet<>();
        Set<Integer> shafts = new HashSet<>();
        Set<Integer> headModels = new HashSet<>();
        Set<Integer> shaftModels = new HashSet<>();
        for (Option option : plan.used()) {
            if (!heads.add(option.head()) || !shafts.add(option.shaft())) {
                return false;
            }
            headModels.add(model.headModel(option.head()));
            shaftModels.add(model.shaftModel(option.shaft()));
        }
        return !plan.group().sameModels() || headModels.size() <= 1 && shaftModels.size() <= 1;
    }
}
