package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the moves of the local search may and may not do to a plan that is sound. */
class SetMovesTest {

    private static final int DRAWS = 200;

    static LongStream seeds() {
        return LongStream.range(1, 21);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void changesFillOneSlotWithPartsNobodyHas(long seed) {
        Case drawn = new Case(seed);
        for (Option[] after : drawn.results(index -> new ChangeMoves(index))) {
            drawn.assertSound(after);
            assertThat(drawn.changed(after)).hasSize(1).doesNotContainNull();
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void swapsExchangePartsOfTwoSlots(long seed) {
        Case drawn = new Case(seed);
        for (Option[] after : drawn.results(index -> new SwapMoves(index))) {
            drawn.assertSound(after);
            assertThat(drawn.changed(after)).hasSize(2).doesNotContainNull();
            assertThat(heads(after)).isEqualTo(heads(drawn.plan));
            assertThat(shafts(after)).isEqualTo(shafts(drawn.plan));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void replansTouchAtMostThreeGroups(long seed) {
        Case drawn = new Case(seed);
        Set<Integer> groups = new HashSet<>();
        for (Option[] after : drawn.results(index -> new ReplanMoves(drawn.model))) {
            drawn.assertSound(after);
            Set<Integer> touched = new HashSet<>();
            for (int slot = 0; slot < after.length; slot++) {
                if (!Objects.equals(after[slot], drawn.plan[slot])) {
                    touched.add(drawn.model.groupOf(slot));
                }
            }
            assertThat(touched).hasSizeBetween(1, 3);
            groups.addAll(touched);
        }
        assertThat(groups).hasSizeGreaterThan(3);
    }

    private static Set<Integer> heads(Option[] plan) {
        Set<Integer> heads = new HashSet<>();
        Arrays.stream(plan).filter(Objects::nonNull).forEach(option -> heads.add(option.head()));
        return heads;
    }

    private static Set<Integer> shafts(Option[] plan) {
        Set<Integer> shafts = new HashSet<>();
        Arrays.stream(plan).filter(Objects::nonNull).forEach(option -> shafts.add(option.shaft()));
        return shafts;
    }

    /** A problem with pins and a sound plan of it that is not the best. */
    private static final class Case {
        private final SetModel model;
        private final Pins pins;
        private final SetProblem problem;
        private final Option[] plan;
        private final Random random;

        Case(long seed) {
            random = new Random(seed);
            SetModel free = RandomModel.of(seed, new int[] {2, 2, 3, 2, 2}, 16, 16, 0.5);
            pins = RandomPlan.pins(free, random);
            model = pins.within(free);
            plan = new Option[model.slots()];
            for (int slot = 0; slot < plan.length; slot++) {
                Board board = new Board(model, plan);
                plan[slot] = model.options(slot).stream().filter(option -> board.isFree(option) && board.suits(option))
                    .findFirst().orElse(null);
            }
            problem = SetProblem.of(free, pins).take(plan);
            assertSound(plan);
        }

        List<Option[]> results(Function<OptionIndex, MoveKind> kind) {
            MoveKind moves = kind.apply(new OptionIndex(model));
            List<Option[]> results = new ArrayList<>();
            for (int draw = 0; draw < DRAWS; draw++) {
                PlanMove move = moves.next(problem, new Board(model, problem.plan()), random);
                if (move != null) {
                    assertThat(move.isMoveDoable(null)).isTrue();
                    results.add(after(move));
                }
            }
            assertThat(problem.plan()).as("thinking of a move changes nothing").isEqualTo(plan);
            assertThat(results).isNotEmpty();
            return results;
        }

        private Option[] after(PlanMove move) {
            Option[] after = plan.clone();
            List<?> with = new ArrayList<>(move.getPlanningValues());
            int i = 0;
            for (Object slot : move.getPlanningEntities()) {
                after[((BuildSlot) slot).index()] = (Option) with.get(i++);
            }
            return after;
        }

        Collection<Option> changed(Option[] after) {
            List<Option> changed = new ArrayList<>();
            for (int slot = 0; slot < after.length; slot++) {
                if (!Objects.equals(after[slot], plan[slot])) {
                    changed.add(after[slot]);
                }
            }
            return changed;
        }

        void assertSound(Option[] after) {
            for (int slot = 0; slot < after.length; slot++) {
                if (after[slot] != null) {
                    assertThat(model.options(slot)).contains(after[slot]);
                    assertThat(pins.allow(after[slot])).isTrue();
                }
            }
            assertThat(heads(after)).hasSize((int) Arrays.stream(after).filter(Objects::nonNull).count());
            assertThat(shafts(after)).hasSize((int) Arrays.stream(after).filter(Objects::nonNull).count());
            for (SlotGroup group : model.groups()) {
                assertThat(GroupBoundBruteForceTest.isAllowed(model, new Board(model, after).of(group))).isTrue();
            }
        }
    }
}
