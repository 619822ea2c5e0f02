package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** The constraints and the exact search add up the same numbers, to the last digit, whatever the plan. */
class SetScoreAgreesTest {

    private static final int PLANS = 100;
    private static final ScoreOf SCORE = new ScoreOf();

    static LongStream seeds() {
        return LongStream.range(1, 41);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void onRandomPlans(long seed) {
        Random random = new Random(seed);
        SetModel model = RandomModel.of(seed, new int[] {1 + random.nextInt(5), 3, 4, 1, 2, 3}, 12, 12, 0.3);
        for (int p = 0; p < PLANS; p++) {
            Pins pins = p % 2 == 0 ? Pins.none() : RandomPlan.pins(model, random);
            Option[] plan = RandomPlan.of(model, random);
            SetProblem problem = SetProblem.of(model, pins).take(plan);
            HardMediumSoftLongScore expected = HardMediumSoftLongScore.of(-hard(model, pins, plan),
                -medium(pins.within(model), plan), -soft(model, plan));
            assertThat(SCORE.score(problem)).as("plan %d", p).isEqualTo(expected);
            assertThat(problem.score()).isEqualTo(expected);
            assertThat(sum(SCORE.parts(problem))).isEqualTo(expected);
        }
    }

    private static List<GroupPlan> groups(SetModel model, Option[] plan) {
        return model.groups().stream().map(new Board(model, plan)::of).toList();
    }

    private static long medium(SetModel model, Option[] plan) {
        return groups(model, plan).stream().mapToLong(group -> group.emptyCost(model)).sum();
    }

    private static long soft(SetModel model, Option[] plan) {
        return groups(model, plan).stream().mapToLong(group -> group.softCost() + group.modelCost(model)).sum();
    }

    private static long hard(SetModel model, Pins pins, Option[] plan) {
        long points = 0;
        for (int i = 0; i < plan.length; i++) {
            Option one = plan[i];
            points += pins.head().containsKey(i) && (one == null || pins.head().get(i) != one.head()) ? 1 : 0;
            points += pins.shaft().containsKey(i) && (one == null || pins.shaft().get(i) != one.shaft()) ? 1 : 0;
            points += one != null && pins.headsLeft().contains(one.head()) ? 1 : 0;
            points += one != null && pins.shaftsLeft().contains(one.shaft()) ? 1 : 0;
            for (int j = 0; one != null && j < plan.length; j++) {
                Option other = plan[j];
                points += j > i && other != null && other.head() == one.head() ? 1 : 0;
                points += j > i && other != null && other.shaft() == one.shaft() ? 1 : 0;
                points += j != i && pins.head().containsKey(j) && pins.head().get(j) == one.head() ? 1 : 0;
                points += j != i && pins.shaft().containsKey(j) && pins.shaft().get(j) == one.shaft() ? 1 : 0;
            }
        }
        for (GroupPlan group : groups(model, plan)) {
            if (group.group().sameModels()) {
                points += beyondFirst(group, option -> model.headModel(option.head()));
                points += beyondFirst(group, option -> model.shaftModel(option.shaft()));
            }
        }
        return points;
    }

    private static long beyondFirst(GroupPlan group, ToIntFunction<Option> modelOf) {
        Set<Integer> models = new HashSet<>();
        group.used().forEach(option -> models.add(modelOf.applyAsInt(option)));
        return Math.max(0, models.size() - 1);
    }

    private static HardMediumSoftLongScore sum(List<ScorePart> parts) {
        long[] points = new long[ScorePart.Level.values().length];
        parts.forEach(part -> points[part.level().ordinal()] -= part.points());
        return HardMediumSoftLongScore.of(points[0], points[1], points[2]);
    }

    /** Otherwise the agreement above would show little. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyConstraintCostsSomethingSomewhere(long seed) {
        Random random = new Random(seed);
        SetModel model = RandomModel.of(seed, new int[] {4, 3, 4}, 12, 12, 0.5);
        Set<String> seen = new HashSet<>();
        IntStream.range(0, PLANS).forEach(p -> SCORE
            .parts(SetProblem.of(model, RandomPlan.pins(model, random)).take(RandomPlan.of(model, random)))
            .forEach(part -> seen.add(part.constraint())));
        assertThat(seen).containsExactlyInAnyOrderElementsOf(SetConstraints.NAMES);
    }
}
