package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AddedMasses;
import benchtwin.bend.HoselLimits;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.Inventory;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.mechanics.ClubModel;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.Setup;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any match, on seeded invented stock. */
class MatchTest {

    static LongStream seeds() {
        return LongStream.range(1, 9);
    }

    private static MatchAnswer run(Inventory inventory, Keep keep, ShopSettings shop, OptionalDouble due, int top) {
        try {
            Favourite favourite = FavouriteOfRecord.of(inventory.clubs().get(0), inventory, Tolerances.DEFAULT);
            return Match.run(new MatchRequest(favourite, inventory, keep, false, top, shop, due));
        } catch (FavouriteOfRecord.NothingToMatch impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static MatchAnswer run(Inventory inventory, Keep keep) {
        return run(inventory, keep, ShopSettings.DEFAULT, OptionalDouble.empty(), 5);
    }

    /** The old club's head again, sound and under another tag. */
    private static Head twinOfTheOldHead(Inventory inventory) {
        Head old = inventory.head("OLD").orElseThrow();
        return new Head("TWIN", old.model(), old.category(), old.number(), old.hand(), old.angles(), old.offsetMm(),
            old.grind(), old.massG(), old.weighedWith(), old.bore(), old.seat(), old.material(), old.adjust(),
            old.ports(), old.hotMeltMaxG(), old.made(), old.bent(), old.mass(), old.size(),
            HeadCondition.NEW, old.keeping());
    }

    private static Inventory with(Inventory inventory, Head head) {
        List<Head> heads = new ArrayList<>(inventory.heads());
        heads.add(heads.size() / 2, head);
        return new Inventory(heads, inventory.shafts(), inventory.grips(), inventory.sleeves(), inventory.weights(),
            inventory.clubs());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aHeadIdenticalToTheFavouritesComesFirstWithMissZero(long seed) {
        Inventory stock = new RandomStock(seed).inventory(60, 0.5, 5);
        MatchAnswer answer = run(with(stock, twinOfTheOldHead(stock)), Keep.SHAFT);
        Ranked first = answer.results().get(0);
        assertThat(first.head().tag()).isEqualTo("TWIN");
        assertThat(first.miss()).isCloseTo(0, within(1e-6));
        first.difference().forEach((quantity, off) -> assertThat(off).as(quantity.word()).isCloseTo(0, within(1e-6)));
        assertThat(first.plan().steps()).hasSize(1);
        assertThat(first.plan().isUndoneFreely()).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Keep.class)
    void theOrderOfRowsDoesNotMatter(Keep keep) {
        Inventory stock = new RandomStock(3).inventory(50, 0.4, 40);
        MatchAnswer answer = run(stock, keep);
        Random random = new Random(7);
        for (int k = 0; k < 4; k++) {
            List<Head> heads = new ArrayList<>(stock.heads());
            List<Shaft> shafts = new ArrayList<>(stock.shafts());
            Collections.shuffle(heads, random);
            Collections.shuffle(shafts, random);
            MatchAnswer shuffled = run(new Inventory(heads, shafts, stock.grips(), stock.sleeves(), stock.weights(),
                stock.clubs()), keep);
            assertThat(summary(shuffled)).isEqualTo(summary(answer));
        }
    }

    private static List<String> summary(MatchAnswer answer) {
        return answer.results().stream().map(r -> "%s %s %.9f %s".formatted(r.head().tag(), r.shaft().tag(), r.cost(),
            r.plan().steps())).toList();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyPlanStaysInsideTheHoselsLimitsAndItsRoomForHotMelt(long seed) {
        Inventory stock = new RandomStock(seed).inventory(40, 0, 5);
        PlanSearch search = search(stock, Keep.SHAFT);
        for (Candidate candidate : screened(stock).fit()) {
            FoundPlan plan = search.best(candidate, Double.POSITIVE_INFINITY);
            HoselLimits limits = HoselLimits.of(candidate.head());
            assertThat(limits.allow(((Setup.Tilted) plan.angle().aim()).tilt())).isTrue();
            assertThat(plan.mass().meltG()).isBetween(0.0, candidate.head().hotMeltMaxG());
            assertThat(plan.mass().tapeG()).isBetween(0.0, ShopSettings.DEFAULT.tapeMaxG());
            assertThat(plan.cut().extensionMm()).isBetween(0.0, 12.7);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void rankingByBoundsFindsWhatPlanningEveryHeadFinds(long seed) {
        Inventory stock = new RandomStock(seed).inventory(80, 0.4, 5);
        PlanSearch search = search(stock, Keep.SHAFT);
        List<Candidate> candidates = screened(stock).fit();
        List<String> all = candidates.stream().map(c -> search.best(c, Double.POSITIVE_INFINITY))
            .sorted(Comparator.comparingDouble(FoundPlan::cost).thenComparing(p -> p.candidate().key()))
            .limit(7).map(p -> "%s %.12f".formatted(p.candidate().head().tag(), p.cost())).toList();
        List<String> bounded = Ranking.best(candidates, search, 7).stream()
            .map(p -> "%s %.12f".formatted(p.candidate().head().tag(), p.cost())).toList();
        assertThat(bounded).isEqualTo(all);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theQuickBoundIsNeverAboveTheCost(long seed) {
        Inventory stock = new RandomStock(seed).inventory(80, 0.4, 5);
        PlanSearch search = search(stock, Keep.SHAFT);
        for (Candidate candidate : screened(stock).fit()) {
            assertThat(search.lowerBound(candidate))
                .isLessThanOrEqualTo(search.best(candidate, Double.POSITIVE_INFINITY).cost() + 1e-12);
        }
    }

    @Test
    void pairsFoundByBoundsAreThoseFoundByTryingAll() {
        Inventory stock = new RandomStock(11).inventory(14, 0.5, 14);
        Favourite favourite = favourite(stock);
        Screening screening = new Screening(favourite, stock, false);
        PlanSearch search = search(stock, Keep.NONE);
        List<FoundPlan> all = new ArrayList<>();
        for (Head head : stock.heads()) {
            for (Shaft shaft : stock.shafts()) {
                if (screening.whyNot(head).isPresent() || screening.whyNot(shaft).isPresent()) {
                    continue;
                }
                FoundPlan best = null;
                for (Screening.Way way : screening.ways(head, shaft, Optional.empty())) {
                    FoundPlan plan = search.best(screening.withGrip(head, shaft, way, way.steps()), Double.POSITIVE_INFINITY);
                    if (best == null || plan.cost() < best.cost()) {
                        best = plan;
                    }
                }
                all.add(best);
            }
        }
        List<String> expected = all.stream().sorted(Comparator.comparingDouble(FoundPlan::cost)).limit(5)
            .map(p -> "%s %s %.12f".formatted(p.candidate().head().tag(), p.candidate().shaft().tag(), p.cost())).toList();
        List<String> found = new PairSearch(stock, screening).best(search, 5, false).stream()
            .map(p -> "%s %s %.12f".formatted(p.candidate().head().tag(), p.candidate().shaft().tag(), p.cost())).toList();
        assertThat(found).isEqualTo(expected);
    }

    @Test
    void whatIsShownIsTheModelRecomputedExactly() {
        Inventory stock = new RandomStock(5).inventory(60, 0.5, 5);
        MatchAnswer answer = run(stock, Keep.SHAFT);
        for (Ranked option : answer.results()) {
            double missSquared = option.terms().values().stream().mapToDouble(Double::doubleValue).sum();
            assertThat(option.miss() * option.miss()).isCloseTo(missSquared, within(1e-9));
            assertThat(option.cost()).isCloseTo(missSquared + option.effort(), within(1e-9));
            assertThat(option.effort()).isCloseTo(effortOf(option), within(0.15));
        }
    }

    /** Minutes and permanent steps as the handbook counts them; tilt and grams come on top. */
    private static double effortOf(Ranked option) {
        return 0.002 * option.plan().minutes() + 0.05 * option.plan().permanentSteps();
    }

    @Test
    void aPlanThatCannotBeReadyStandsBelowTheLine() {
        Inventory stock = new RandomStock(2).inventory(60, 0.1, 5);
        MatchAnswer hurried = run(stock, Keep.SHAFT, ShopSettings.DEFAULT, OptionalDouble.of(45), 60);
        assertThat(hurried.results()).isNotEmpty().allMatch(r -> r.plan().readyMinutes() <= 45);
        assertThat(hurried.belowTheLine()).isNotEmpty().allMatch(b -> b.reason().equals("cannot be ready in time"));
        assertThat(hurried.belowTheLine()).allMatch(b -> b.option().plan().readyMinutes() > 45);
    }

    /** Keeping the head keeps its angles: nothing to bend or set, whatever the head's own record says. */
    @Test
    void keepingTheHeadCarriesItsAnglesOver() {
        MatchAnswer answer = run(new RandomStock(4).inventory(5, 1, 60), Keep.HEAD);
        assertThat(answer.results()).isNotEmpty();
        for (Ranked option : answer.results()) {
            assertThat(option.difference().get(Quantity.LIE)).isCloseTo(0, within(1e-9));
            assertThat(option.difference().get(Quantity.LOFT)).isCloseTo(0, within(1e-9));
        }
    }

    /** What the model misses on the old club is carried over: the old parts themselves must come out as measured. */
    @Test
    void theOldClubsOwnPartsComeOutAsMeasured() {
        Inventory stock = new RandomStock(1).inventory(1, 1, 1);
        Favourite favourite = favourite(stock);
        OldClub old = favourite.old().orElseThrow();
        TwinModel twin = new TwinModel(favourite.old(), Keep.SHAFT, favourite.condition(), favourite.reading());
        double[] values = twin.predict(old.assembly(), old.setup());
        old.measured().forEach((quantity, reading) -> {
            if (!quantity.isAngle() && quantity != Quantity.TORQUE) {
                assertThat(values[quantity.ordinal()]).as(quantity.word()).isCloseTo(reading.value(), within(1e-6));
            }
        });
        double bare = ClubModel.predict(old.assembly(), old.setup(), FrequencyCondition.BARE,
            twin.stiffnessRoot(old.assembly()), favourite.reading())[Quantity.FREQUENCY.ordinal()];
        assertThat(bare * 0.98).isCloseTo(old.measured().get(Quantity.FREQUENCY).value(), within(1e-6));
    }

    @Test
    void aRawReadingThatDisagreesWithTheClubsIsReported() {
        assertThat(Consistency.disagreement(Double.NaN)).isEmpty();
        assertThat(Consistency.disagreement(2)).isEmpty();
        assertThat(Consistency.disagreement(-2.6)).singleElement().asString().contains("2.6 cpm less than it did");
        Inventory stock = new RandomStock(1).inventory(3, 1, 1);
        Favourite favourite = favourite(stock);
        TwinModel twin = new TwinModel(favourite.old(), Keep.SHAFT, favourite.condition(), favourite.reading());
        TwinModel raw = new TwinModel(favourite.old(), Keep.NONE, favourite.condition(), favourite.reading());
        assertThat(twin.rawDisagreementCpm()).isCloseTo(-raw.carried()[Quantity.FREQUENCY.ordinal()], within(1e-9));
        assertThat(raw.rawDisagreementCpm()).isNaN();
    }

    @Test
    void readingsPutTheHeadThatReadsNearestFirst() {
        Inventory stock = new RandomStock(6).inventory(60, 1, 5);
        MatchAnswer answer = run(stock, Keep.SHAFT);
        String last = answer.results().get(2).head().tag();
        Map<Quantity, Double> spotOn = new EnumMap<>(Quantity.class);
        answer.favourite().target().wanted().forEach((q, w) -> spotOn.put(q, w.value()));
        MatchAnswer again = Reranking.byReadings(answer, Map.of(last, spotOn,
            answer.results().get(0).head().tag(), Map.of(Quantity.LOFT, 12.0)));
        assertThat(again.results().get(0).head().tag()).isEqualTo(last);
        assertThat(again.results().get(0).miss()).isCloseTo(0, within(1e-9));
        assertThat(again.results().get(1).outOfTolerance()).containsExactly(Quantity.LOFT);
    }

    private static Favourite favourite(Inventory stock) {
        try {
            return FavouriteOfRecord.of(stock.clubs().get(0), stock, Tolerances.DEFAULT);
        } catch (FavouriteOfRecord.NothingToMatch impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static Screened screened(Inventory stock) {
        return new Screening(favourite(stock), stock, false).headsForTheOldShaft();
    }

    private static PlanSearch search(Inventory stock, Keep keep) {
        Favourite favourite = favourite(stock);
        TwinModel twin = new TwinModel(favourite.old(), keep, favourite.condition(), favourite.reading());
        return new PlanSearch(favourite.target(), twin, ShopSettings.DEFAULT, stock.weights(),
            new AddedMasses(favourite.tapeLayers(), 0, 0, 0), Double.POSITIVE_INFINITY, Levers.ALL);
    }
}
