package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PinsTest {

    private static final Pins PINS = new Pins(Map.of(0, 3), Map.of(0, 5, 1, 6), Set.of(8), Set.of(9));

    @Test
    void aPinnedSlotTakesOnlyWhatIsPinnedToIt() {
        assertThat(PINS.allow(option(0, 3, 5))).isTrue();
        assertThat(PINS.allow(option(0, 3, 4))).isFalse();
        assertThat(PINS.allow(option(0, 2, 5))).isFalse();
        assertThat(PINS.allow(option(1, 1, 6))).isTrue();
        assertThat(PINS.allow(option(1, 1, 7))).isFalse();
    }

    @Test
    void aPinnedPartGoesNowhereElse() {
        assertThat(PINS.allow(option(1, 3, 6))).isFalse();
        assertThat(PINS.allow(option(2, 1, 5))).isFalse();
        assertThat(PINS.allow(option(2, 5, 3))).isTrue();
    }

    @Test
    void aPartLeftOutGoesNowhere() {
        assertThat(PINS.allow(option(2, 8, 1))).isFalse();
        assertThat(PINS.allow(option(2, 1, 9))).isFalse();
        assertThat(PINS.allow(option(2, 9, 8))).isTrue();
    }

    @Test
    void theProblemOffersOnlyWhatIsAllowed() {
        SetModel model = RandomModel.of(1, new int[] {3, 3}, 9, 9, 0.8);
        Pins pins = new Pins(Map.of(0, 3), Map.of(0, 5, 1, 6), Set.of(8), Set.of(2));
        SetModel within = pins.within(model);
        for (int slot = 0; slot < model.slots(); slot++) {
            List<Option> allowed = model.options(slot).stream().filter(pins::allow).toList();
            assertThat(within.options(slot)).isEqualTo(allowed).hasSizeLessThan(model.options(slot).size());
            assertThat(within.groupOf(slot)).isEqualTo(model.groupOf(slot));
        }
        for (int part = 0; part < 9; part++) {
            assertThat(within.headModel(part)).isEqualTo(model.headModel(part));
            assertThat(within.shaftModel(part)).isEqualTo(model.shaftModel(part));
        }
    }

    /** Slots weigh 1, 2, 3, 1, 2, 3 times as much, 12 together; slot 0 has two pins, slot 1 has one. */
    @Test
    void leavingAPinnedSlotEmptyWeighsMoreThanAllTheOthers() {
        SetModel within = PINS.within(RandomModel.of(1, new int[] {3, 3}, 10, 10, 0.8));
        assertThat(IntStream.range(0, 6).mapToLong(slot -> within.emptyCost(slot) / RandomModel.EMPTY))
            .containsExactly(1L + 2 * 12, 2L + 12, 3L, 1L, 2L, 3L);
    }

    @Test
    void contradictionsAreRefused() {
        assertThatThrownBy(() -> new Pins(Map.of(0, 3, 4, 3), Map.of(), Set.of(), Set.of()))
            .hasMessage("head 3 is pinned to slots 0 and 4");
        assertThatThrownBy(() -> new Pins(Map.of(), Map.of(2, 7), Set.of(), Set.of(7)))
            .hasMessage("shaft 7 is pinned to slot 2 and left out");
    }

    private static Option option(int slot, int head, int shaft) {
        return new Option(slot, head, shaft, 0, 0, 0, 0);
    }
}
