package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** The solver on small stock against every plan there is. Fixed seeds, steps counted and not timed. */
class PlanSolverBruteForceTest {

    private static final int STEPS = 500;

    static LongStream seeds() {
        return LongStream.range(1, 11);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void findsTheBestPlan(long seed) {
        SetModel model = model(seed);
        BestPlan best = BestPlan.of(model);
        SetProblem found = solve(model, Pins.none(), 10, STEPS, seed);
        assertThat(found.score()).isEqualTo(HardMediumSoftLongScore.of(0, -best.unbuilt(), -best.cost()));
        assertThat(best.plans()).contains(found.plan());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void findsTheBestPlanAroundPins(long seed) {
        SetModel model = model(seed);
        Pins pins = RandomPlan.pins(model, new Random(seed));
        BestPlan best = BestPlan.of(pins.within(model));
        SetProblem found = solve(model, pins, 10, STEPS, seed);
        assertThat(found.score()).isEqualTo(HardMediumSoftLongScore.of(-missing(pins, found.plan()), -best.unbuilt(),
            -best.cost()));
        assertThat(best.plans()).contains(found.plan());
    }

    /** Parts pinned to slots that stay empty. */
    private static long missing(Pins pins, Option[] plan) {
        return Stream.of(pins.head(), pins.shaft())
            .flatMap(pinned -> pinned.keySet().stream()).filter(slot -> plan[slot] == null).count();
    }

    /** One group after the other is not enough here: what the first takes is missing in the second. */
    @Test
    void theLocalSearchImprovesOnTheRounds() {
        SetModel model = model(3);
        BestPlan best = BestPlan.of(model);
        SetProblem rounds = solve(model, Pins.none(), 10, 0, 1);
        SetProblem both = solve(model, Pins.none(), 10, STEPS, 1);
        assertThat(best.plans()).hasSize(1);
        assertThat(rounds.score().isFeasible()).isTrue();
        assertThat(rounds.score()).isLessThan(both.score());
        assertThat(both.plan()).isEqualTo(best.plans().get(0));
    }

    @Test
    void theLocalSearchAloneStartsFromNothing() {
        SetModel model = model(3);
        assertThat(solve(model, Pins.none(), 0, STEPS, 1).plan()).isEqualTo(BestPlan.of(model).plans().get(0));
    }

    private static SetModel model(long seed) {
        return RandomModel.of(seed, new int[] {2, 2, 2}, 6, 6, 0.4);
    }

    private static SetProblem solve(SetModel model, Pins pins, int rounds, int steps, long seed) {
        return new PlanSolver(model, pins, new SequenceRounds(pins.within(model)), seed, rounds, steps)
            .solve(better -> { }, () -> false);
    }
}
