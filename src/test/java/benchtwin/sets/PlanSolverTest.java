package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.solver.EnvironmentMode;

/** How a run goes: what is reported, when it stops, and that pins are kept to on the way. */
class PlanSolverTest {

    private static final ScoreOf SCORE = new ScoreOf();
    private static final int[] GROUPS = {3, 2, 3, 1};

    static LongStream seeds() {
        return LongStream.range(1, 13);
    }

    private static SetModel model(long seed) {
        return RandomModel.of(seed, GROUPS, 10, 10, 0.3);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyPlanReportedIsBetterAndKeepsToThePins(long seed) {
        SetModel model = model(seed);
        Pins pins = RandomPlan.pins(model, new Random(seed));
        List<SetProblem> reported = new ArrayList<>();
        SetProblem best = new PlanSolver(model, pins, new SequenceRounds(pins.within(model)), seed, 10, 60)
            .solve(reported::add, () -> false);
        assertThat(reported).isNotEmpty();
        for (int i = 0; i < reported.size(); i++) {
            SetProblem plan = reported.get(i);
            assertThat(Arrays.stream(plan.plan()).filter(Objects::nonNull)).allMatch(pins::allow);
            assertThat(plan.score()).isEqualTo(SCORE.score(SetProblem.of(model, pins).take(plan.plan())));
            assertThat(i == 0 || plan.score().compareTo(reported.get(i - 1).score()) > 0).isTrue();
        }
        SetProblem last = reported.get(reported.size() - 1);
        assertThat(best.plan()).isEqualTo(last.plan());
        assertThat(best.score()).isEqualTo(last.score());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theRoundsHearOfWhatTheLocalSearchFinds(long seed) {
        SetModel model = model(seed);
        SequenceRounds rounds = new SequenceRounds(model);
        List<Option[]> reported = new ArrayList<>();
        SetProblem best = new PlanSolver(model, Pins.none(), rounds, seed, 10, 60)
            .solve(plan -> reported.add(plan.plan()), () -> false);
        assertThat(rounds.done()).isEqualTo(GROUPS.length);
        assertThat(rounds.best()).isEqualTo(best.plan());
        int byRounds = reported.size() - rounds.accepted().size();
        assertThat(byRounds).isPositive().isLessThanOrEqualTo(GROUPS.length);
        assertThat(rounds.accepted()).containsExactlyElementsOf(reported.subList(byRounds, reported.size()));
    }

    @Test
    void theSameSeedFindsTheSamePlansOnTheWay() {
        assertThat(way(7)).hasSizeGreaterThan(2).isEqualTo(way(7)).isNotEqualTo(way(8));
    }

    private static List<List<Option>> way(long seed) {
        SetModel model = model(9);
        List<List<Option>> way = new ArrayList<>();
        new PlanSolver(model, Pins.none(), new SequenceRounds(model), seed, 1, 60)
            .solve(plan -> way.add(Arrays.asList(plan.plan())), () -> false);
        return way;
    }

    /** The solver works out every score anew and compares, before and after each move and its undoing. */
    @Test
    void movesAndTheirUndoingLeaveTheScoreRight() {
        SetModel model = model(2);
        SolverFactory<SetProblem> factory = SolverFactory.create(SolverSetup
            .planning(new RoundCommand(new SequenceRounds(model)), 10, 30, 3)
            .withEnvironmentMode(EnvironmentMode.FULL_ASSERT));
        SetProblem best = factory.buildSolver().solve(SetProblem.of(model, Pins.none()));
        assertThat(best.score().isFeasible()).isTrue();
    }

    @Test
    void noMoreRoundsThanAllowed() {
        SetModel model = model(1);
        SequenceRounds rounds = new SequenceRounds(model);
        new PlanSolver(model, Pins.none(), rounds, 1, 2, 0).solve(plan -> { }, () -> false);
        assertThat(rounds.done()).isEqualTo(2);
    }

    @Test
    void stoppedBeforeItBeginsItDoesNothing() {
        SetModel model = model(1);
        SequenceRounds rounds = new SequenceRounds(model);
        SetProblem best = new PlanSolver(model, Pins.none(), rounds, 1, 10, 100).solve(plan -> { }, () -> true);
        assertThat(rounds.done()).isZero();
        assertThat(best.plan()).containsOnlyNulls();
        assertThat(best.score()).isEqualTo(SCORE.score(SetProblem.of(model, Pins.none())));
    }

    @Test
    void stoppedBetweenRoundsItKeepsTheBest() {
        SetModel model = model(1);
        SequenceRounds rounds = new SequenceRounds(model);
        SetProblem best = new PlanSolver(model, Pins.none(), rounds, 1, 10, 100)
            .solve(plan -> { }, () -> rounds.done() == 2);
        assertThat(rounds.done()).isEqualTo(2);
        assertThat(rounds.accepted()).isEmpty();
        assertThat(best.plan()).isEqualTo(rounds.best());
    }

    /** A local search that would go on for ever asks after every move. The one round leaves it most of the work. */
    @Test
    void stoppedInTheLocalSearchItKeepsTheBest() {
        SetModel model = model(3);
        AtomicInteger asked = new AtomicInteger();
        BooleanSupplier stop = () -> asked.incrementAndGet() > 3000;
        List<SetProblem> reported = new ArrayList<>();
        SequenceRounds rounds = new SequenceRounds(model);
        SetProblem best = new PlanSolver(model, Pins.none(), rounds, 1, 1, Integer.MAX_VALUE).solve(reported::add, stop);
        assertThat(asked.get()).isBetween(3001, 3050);
        assertThat(rounds.done()).isEqualTo(1);
        assertThat(rounds.accepted()).isNotEmpty();
        assertThat(best.plan()).isEqualTo(reported.get(reported.size() - 1).plan());
    }

    /** Searching goes on where it was left, without a round in between. */
    @Test
    void whatTheRoundsHaveIsWhereItBegins() {
        SetModel model = model(3);
        SequenceRounds rounds = new SequenceRounds(model);
        SetProblem before = new PlanSolver(model, Pins.none(), rounds, 1, 10, 0).solve(plan -> { }, () -> false);
        List<SetProblem> reported = new ArrayList<>();
        SetProblem after = new PlanSolver(model, Pins.none(), rounds, 1, 0, 60).solve(reported::add, () -> false);
        assertThat(reported).isNotEmpty().allMatch(plan -> plan.score().compareTo(before.score()) > 0);
        assertThat(rounds.best()).isEqualTo(after.plan());
        SetProblem stopped = new PlanSolver(model, Pins.none(), rounds, 1, 0, 60).solve(reported::add, () -> true);
        assertThat(stopped.plan()).isEqualTo(after.plan());
        assertThat(stopped.score()).isEqualTo(after.score());
    }

    @Test
    void withNothingToDoItScoresTheEmptyPlan() {
        SetModel model = model(1);
        SetProblem best = new PlanSolver(model, Pins.none(), new SequenceRounds(model), 1, 0, 0)
            .solve(plan -> { }, () -> false);
        assertThat(best.score()).hasToString("0hard/-1800000000000medium/0soft");
    }

    @Test
    void numbersOutOfRangeAreRefused() {
        SetModel model = model(1);
        assertThatThrownBy(() -> new PlanSolver(model, Pins.none(), new SequenceRounds(model), 1, -1, 0))
            .hasMessage("-1 rounds and 0 steps of local search; expected 0 to 100000, and 0 or more");
        assertThatThrownBy(() -> new PlanSolver(model, Pins.none(), new SequenceRounds(model), 1, 100_001, 0))
            .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PlanSolver(model, Pins.none(), new SequenceRounds(model), 1, 0, -1))
            .isInstanceOf(IllegalArgumentException.class);
    }
}
