package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The engine on whole small events against the plan that CP-SAT proves best: bound below it, plan never below it. */
class EngineAgainstCpSatTest {

    private static final int ROUNDS = 180;

    static LongStream seeds() {
        return LongStream.range(1, 21);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void nothingIsBetterThanTheOracleAndTheBoundIsNotAboveIt(long seed) {
        SetModel model = RandomModel.of(seed, new int[] {1 + (int) (seed % 3), 3, 2, 1}, 7, 7, seed % 4 == 0 ? 0.12 : 0.3);
        CpSatOracle.Best best = CpSatOracle.of(model);
        EventPlan oracle = EventPlan.of(model, best.plans());
        SetEngine engine = new SetEngine(model, seed);
        while (engine.rounds() < ROUNDS && engine.gap().orElse(1) > 0 && engine.next(() -> false)) {
            assertThat(engine.plan().compareTo(oracle)).isGreaterThanOrEqualTo(0);
        }
        assertThat(engine.bound().emptyCost()).isLessThanOrEqualTo(oracle.emptyCost());
        if (engine.plan().emptyCost() == oracle.emptyCost()) {
            assertThat(engine.bound().soft()).isLessThanOrEqualTo(oracle.soft());
        }
        assertThat(engine.plan()).as("after %d rounds, gap %s", engine.rounds(), engine.gap()).isEqualByComparingTo(oracle);
    }
}
