package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the engine promises besides a good plan: the same plan again, stopping when asked, keeping what it has. */
class SetEngineTest {

    private static final int ROUNDS = 26;

    static LongStream seeds() {
        return LongStream.range(1, 4);
    }

    /** Too large to be listed, so that prices, repairs and choices all get their turn. */
    private static SetModel crowded(long seed) {
        return RandomModel.of(seed, new int[] {3, 2, 2, 3, 1, 2, 3}, 18, 18, 0.3);
    }

    private static SetEngine after(SetModel model, long seed, int threads, int rounds) {
        SetEngine engine = new SetEngine(model, seed, threads);
        for (int round = 0; round < rounds; round++) {
            engine.next(() -> false);
        }
        return engine;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void samePlanAgainOnAnyNumberOfThreads(long seed) {
        SetEngine once = after(crowded(seed), seed, 1, ROUNDS);
        for (int threads = 1; threads <= 2; threads++) {
            SetEngine again = after(crowded(seed), seed, threads, ROUNDS);
            assertThat(again.best()).isEqualTo(once.best());
            assertThat(again.bound()).isEqualTo(once.bound());
            assertThat(again.prices().head()).isEqualTo(once.prices().head());
            assertThat(again.rounds()).isEqualTo(once.rounds());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverWorseFromRoundToRoundAndNeverBelowTheBound(long seed) {
        SetModel model = crowded(seed);
        SetEngine engine = new SetEngine(model, seed);
        EventPlan before = engine.plan();
        Bound bound = engine.bound();
        for (int round = 0; round < ROUNDS; round++) {
            engine.next(() -> false);
            assertThat(engine.plan()).isLessThanOrEqualTo(before);
            assertThat(EventPlan.of(model, engine.best())).isEqualByComparingTo(engine.plan());
            assertThat(engine.bound().emptyCost()).isBetween(bound.emptyCost(), engine.plan().emptyCost());
            if (engine.plan().emptyCost() == engine.bound().emptyCost()) {
                assertThat(engine.bound().soft()).isLessThanOrEqualTo(engine.plan().soft());
                assertThat(engine.gap()).isPresent();
            } else {
                assertThat(engine.gap()).isEmpty();
            }
            before = engine.plan();
            bound = engine.bound();
        }
        assertThat(engine.bound().soft()).isPositive();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aRoundThatIsStoppedLeavesThePlanAndIsNotCounted(long seed) {
        SetEngine engine = after(crowded(seed), seed, 2, 4);
        EventPlan before = engine.plan();
        int rounds = engine.rounds();
        for (int asked = 0; asked < 6; asked++) {
            AtomicInteger questions = new AtomicInteger();
            int patience = asked;
            assertThat(engine.next(() -> questions.incrementAndGet() > patience)).isTrue();
            assertThat(engine.rounds()).isEqualTo(rounds);
            assertThat(engine.plan()).isEqualTo(before);
        }
        while (engine.rounds() < ROUNDS) {
            engine.next(() -> false);
        }
        assertThat(engine.best()).isEqualTo(after(crowded(seed), seed, 2, ROUNDS).best());
    }

    /** A banned part is in no plan, neither of the sequence nor of what exchanges and repairs make of it. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void bannedPartsStayOut(long seed) {
        SetModel model = crowded(seed);
        Prices prices = Prices.none(model);
        for (int part = (int) (seed % 3); part < 18; part += 3) {
            prices.head()[part] = Prices.BANNED;
            prices.shaft()[17 - part] = Prices.BANNED;
        }
        List<GroupPlan> seen = new ArrayList<>();
        Solvers solvers = new Solvers(model, new Workers(1));
        EventPlan plan = new Repair(solvers, (g, each) -> seen.add(each))
            .repair(EventPlan.empty(model).groups(), prices, new Random(seed), () -> false);
        assertThat(plan.emptyCost()).isLessThan(EventPlan.empty(model).emptyCost());
        seen.addAll(plan.groups());
        assertThat(seen).flatExtracting(GroupPlan::used).noneMatch(option -> prices.bans((Option) option));
    }

    @Test
    void stoppedInTheFirstRoundItKeepsWhatItHas() {
        AtomicInteger questions = new AtomicInteger();
        SetModel model = crowded(1);
        SetEngine engine = new SetEngine(model, 1);
        assertThat(engine.next(() -> questions.incrementAndGet() > 3)).isTrue();
        assertThat(engine.rounds()).isZero();
        assertThat(engine.plan().emptyCost()).isPositive().isLessThan(EventPlan.empty(model).emptyCost());
        assertThat(engine.best()).hasSize(model.slots()).doesNotContainSequence(new Option[model.slots()]);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void widerKeepsThePlanAndNeverWorsens(long seed) {
        SetModel wide = crowded(seed);
        SetModel narrow = thinned(wide, seed, 0.5);
        SetEngine engine = after(narrow, seed, 2, 25);
        EventPlan before = engine.plan();
        engine.widen(wide);
        assertThat(engine.best()).isEqualTo(before.bySlot());
        assertThat(engine.gap().orElse(1)).as("the proof is forgotten").isPositive();
        for (int round = 0; round < ROUNDS; round++) {
            engine.next(() -> false);
            assertThat(engine.plan()).isLessThanOrEqualTo(before);
        }
        assertThat(engine.plan()).isLessThan(before);
        assertThat(engine.bound().soft()).isLessThanOrEqualTo(engine.plan().soft());
    }

    @Test
    void takesOverOnlyWhatIsBetterAndAllowed() {
        SetModel model = crowded(2);
        SetEngine good = after(model, 2, 2, ROUNDS);
        SetEngine engine = new SetEngine(model, 2);
        engine.accept(good.best());
        assertThat(engine.plan()).isEqualByComparingTo(good.plan());
        engine.accept(new Option[model.slots()]);
        assertThat(engine.plan()).isEqualByComparingTo(good.plan());
        Option[] twice = good.best();
        twice[1] = new Option(1, twice[0].head(), twice[0].shaft(), 0, 0, 0, 0);
        assertThatThrownBy(() -> engine.accept(twice)).isInstanceOf(IllegalArgumentException.class)
            .hasMessageContaining("is used twice");
        assertThatThrownBy(() -> engine.widen(RandomModel.of(1, new int[] {2}, 18, 18, 0.5)))
            .isInstanceOf(IllegalArgumentException.class);
    }

    /** Where the gap is 0: without a part that is used the best is no better, and with more options no worse. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void lessStockIsNeverBetterAndMoreIsNeverWorse(long seed) {
        SetModel model = SetEngineBruteForceTest.model(seed);
        EventPlan best = proven(model, seed);
        for (GroupPlan plan : best.groups()) {
            for (Option used : plan.used()) {
                assertThat(proven(filtered(model, option -> option.head() != used.head()), seed)).isGreaterThanOrEqualTo(best);
                assertThat(proven(filtered(model, option -> option.shaft() != used.shaft()), seed)).isGreaterThanOrEqualTo(best);
            }
        }
        EventPlan fewer = proven(thinned(model, seed, 0.7), seed);
        assertThat(fewer).isGreaterThanOrEqualTo(best);
    }

    private static EventPlan proven(SetModel model, long seed) {
        SetEngine engine = after(model, seed, 2, 60);
        assertThat(engine.gap()).hasValue(0);
        assertThat(engine.next(() -> false)).isFalse();
        return engine.plan();
    }

    private static SetModel filtered(SetModel model, Predicate<Option> kept) {
        List<List<Option>> options = new ArrayList<>();
        for (int slot = 0; slot < model.slots(); slot++) {
            options.add(model.options(slot).stream().filter(kept).toList());
        }
        return new SetModel(model.groups(), IntStream.range(0, model.slots()).mapToLong(model::emptyCost).toArray(),
            IntStream.range(0, model.heads()).map(model::headModel).toArray(),
            IntStream.range(0, model.shafts()).map(model::shaftModel).toArray(), options);
    }

    private static SetModel thinned(SetModel model, long seed, double share) {
        Random random = new Random(seed);
        return filtered(model, option -> random.nextDouble() < share);
    }
}
