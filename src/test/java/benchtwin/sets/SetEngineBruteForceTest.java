package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

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
        EventPlan best = EveryPlan.best(model);
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
}
