package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Quantity;
import benchtwin.match.SlotPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class JointPassTest {

    private static final Alikeness STRICT = new Alikeness(2, 1, 0.02, 0.1);

    private static double groupCost(Alikeness alikeness, List<WantedSlot> slots, List<SlotPlan> plans) {
        double cost = 0;
        for (Residual residual : Residual.values()) {
            double mean = 0;
            for (int i = 0; i < plans.size(); i++) {
                mean += slots.get(i).tolerancesOff(residual, plans.get(i)) / plans.size();
            }
            for (int i = 0; i < plans.size(); i++) {
                cost += alikeness.of(residual) * Math.pow(slots.get(i).tolerancesOff(residual, plans.get(i)) - mean, 2);
            }
        }
        return cost + plans.stream().mapToDouble(SlotPlan::cost).sum();
    }

    /** The gain is what the plans, costed anew, cost less; and no club can do better alone. */
    @Test
    void theGroupCostsLessByTheGainAndNoClubAloneCanDoBetter() {
        SetTables tables = new SetTables(SampleSets.request(SampleSets.group("J. Quillby", "irons"), List.of(), Set.of()));
        SetModel model = tables.model();
        List<WantedSlot> slots = tables.slots().subList(0, 3);
        List<SlotPlan> plans = new ArrayList<>();
        for (WantedSlot slot : slots) {
            plans.add(tables.plan(model.options(slot.index()).get(model.options(slot.index()).size() / 3)));
        }
        SlotGroup group = new SlotGroup(List.of(0, 1, 2), true, new long[] {1, 1, 1}, 0);
        JointPass.Better better = new JointPass(STRICT, group, slots, plans).run();
        double before = groupCost(STRICT, slots, plans);
        double after = groupCost(STRICT, slots, better.plans());
        assertThat(before - after).isCloseTo(better.gain(), within(1e-9));
        assertThat(better.gain()).isPositive();
        assertThat(spread(slots, better.plans())).isLessThanOrEqualTo(spread(slots, plans) + 1e-9);
        assertThat(new JointPass(STRICT, group, slots, better.plans()).run().gain()).isCloseTo(0, within(1e-9));
    }

    private static double spread(List<WantedSlot> slots, List<SlotPlan> plans) {
        double[] off = new double[plans.size()];
        for (int i = 0; i < off.length; i++) {
            off[i] = plans.get(i).value(Quantity.FREQUENCY) - slots.get(i).target().of(Quantity.FREQUENCY).orElseThrow().value();
        }
        return Spread.of(off).orElseThrow();
    }

    @Test
    void spreadIsTheSampleStandardDeviation() {
        // NIST StRD, univariate summary statistics, NumAcc1 (memory): 10000001, 10000003, 10000002 have deviation 1
        assertThat(Spread.of(new double[] {10000001, 10000003, 10000002}).orElseThrow()).isEqualTo(1);
        assertThat(Spread.of(new double[] {4})).isEmpty();
    }
}
