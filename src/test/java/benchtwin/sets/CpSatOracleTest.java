package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The oracle itself, against every plan there is, several groups wanting the same parts. */
class CpSatOracleTest {

    static LongStream seeds() {
        return LongStream.range(1, 21);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noPlanOfTheWholeCostsLess(long seed) {
        SetModel model = RandomModel.of(seed, new int[] {1 + (int) (seed % 3), 2, 2}, 4, 4, seed % 5 == 0 ? 0.1 : 0.25);
        CpSatOracle.Best best = CpSatOracle.of(model);
        assertThat(best.value()).isEqualTo(least(model, new Option[model.slots()], 0));
        assertThat(isAllowed(model, best.plans())).isTrue();
        assertThat(best.plans().stream().mapToLong(plan -> plan.value(model)).sum()).isEqualTo(best.value());
    }

    /** Residuals 1, 2 and 4 about their mean: (3·21 − 49)/3 = 4 2/3, rounded down; a third club left out would cost more. */
    @Test
    void aSpreadIsRoundedDown() {
        SlotGroup group = new SlotGroup(List.of(0, 1, 2), true, new long[] {1, 0, 0}, 0);
        SetModel model = new SetModel(List.of(group), new long[] {100, 100, 100}, new int[3], new int[3], List.of(
            List.of(new Option(0, 0, 0, 10, 1, 9, 9)), List.of(new Option(1, 1, 1, 20, 2, 0, 0)),
            List.of(new Option(2, 2, 2, 30, 4, -9, -9))));
        assertThat(CpSatOracle.of(model).value()).isEqualTo(10 + 20 + 30 + 4);
    }

    private static long least(SetModel model, Option[] chosen, int slot) {
        if (slot == chosen.length) {
            List<GroupPlan> plans = plans(model, chosen);
            return isAllowed(model, plans) ? plans.stream().mapToLong(plan -> plan.value(model)).sum() : Long.MAX_VALUE;
        }
        chosen[slot] = null;
        long least = least(model, chosen, slot + 1);
        for (Option option : model.options(slot)) {
            chosen[slot] = option;
            least = Math.min(least, least(model, chosen, slot + 1));
        }
        chosen[slot] = null;
        return least;
    }

    private static List<GroupPlan> plans(SetModel model, Option[] chosen) {
        List<GroupPlan> plans = new ArrayList<>();
        for (SlotGroup group : model.groups()) {
            plans.add(new GroupPlan(group, group.slots().stream().map(slot -> chosen[slot]).toArray(Option[]::new)));
        }
        return plans;
    }

    private static boolean isAllowed(SetModel model, List<GroupPlan> plans) {
        Set<Integer> heads = new HashSet<>();
        Set<Integer> shafts = new HashSet<>();
        return plans.stream().allMatch(plan -> GroupBoundBruteForceTest.isAllowed(model, plan)
            && plan.used().stream().allMatch(option -> heads.add(option.head()) && shafts.add(option.shaft())));
    }
}
