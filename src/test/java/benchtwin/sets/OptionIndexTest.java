package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against looking at every option. */
class OptionIndexTest {

    private static final int DRAWS = 200;

    static LongStream seeds() {
        return LongStream.range(1, 11);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void findsWhatThereIs(long seed) {
        SetModel model = RandomModel.of(seed, new int[] {2, 1}, 6, 6, seed % 2 == 0 ? 0.02 : 0.4);
        OptionIndex index = new OptionIndex(model);
        Random random = new Random(seed);
        for (int slot = 0; slot < model.slots(); slot++) {
            int at = slot;
            assertDraws(model, slot, option -> true, () -> index.any(at, random));
            for (int part = 0; part < 6; part++) {
                int wanted = part;
                assertDraws(model, slot, option -> option.head() == wanted, () -> index.withHead(at, wanted, random));
                assertDraws(model, slot, option -> option.shaft() == wanted, () -> index.withShaft(at, wanted, random));
                for (int shaft = 0; shaft < 6; shaft++) {
                    int and = shaft;
                    assertThat(index.find(slot, part, shaft)).isEqualTo(model.options(slot).stream()
                        .filter(option -> option.head() == wanted && option.shaft() == and).findFirst().orElse(null));
                }
            }
        }
    }

    /** Every option that is wanted comes, and no other. */
    private static void assertDraws(SetModel model, int slot, Predicate<Option> wanted, Supplier<Option> draw) {
        List<Option> expected = model.options(slot).stream().filter(wanted).toList();
        Set<Option> drawn = new HashSet<>();
        for (int i = 0; i < DRAWS; i++) {
            Option option = draw.get();
            if (option != null) {
                drawn.add(option);
            }
        }
        assertThat(drawn).containsExactlyInAnyOrderElementsOf(expected);
    }
}
