package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Category;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.Setup;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The search for trims and the ladder against trying everything: every eighth of an inch off every tip, the butt cut that
 * makes the length right, the whole model predicted anew; and every way to give shafts to rungs.
 */
class ShaftChoiceBruteForceTest {

    static final ShaftRequest.Picking ALL = new ShaftRequest.Picking(Pick.NEAREST, 200, 200, 3, 5);

    /** A length that no whole millimetre's cut misses by exactly half of one, so that one cut is the right one. */
    private static final Map<Quantity, Double> NO_CUT_IN_THE_MIDDLE = Map.of(Quantity.LENGTH, 1149.83);

    static LongStream seeds() {
        return LongStream.range(1, 9);
    }

    static ShaftRequest request(Inventory stock, int head, ShaftRequest.Picking picking)
        throws FavouriteOfRecord.NothingToMatch {
        Head chosen = stock.heads().get(head);
        assertThat(chosen.category()).isEqualTo(Category.DRIVER);
        return new ShaftRequest(FavouriteOfRecord.of(stock.clubs().get(0), stock, Tolerances.DEFAULT), chosen, stock,
            ShopSettings.DEFAULT, Tolerances.DEFAULT, NO_CUT_IN_THE_MIDDLE, OptionalDouble.empty(), Optional.empty(), false, Set.of(), picking);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noTrimCostsLess(long seed) throws Exception {
        Inventory stock = new RandomStock(seed).inventory(2, seed % 2, 14);
        ShaftRequest request = request(stock, 1, ALL);
        ShaftAnswer answer = ShaftChoice.run(request);
        assertThat(answer.picks()).hasSizeGreaterThan(6);
        Map<String, Double> least = everyTrim(request, answer.target());
        for (ShaftPick pick : answer.picks()) {
            assertThat(pick.option().cost()).as(pick.option().shaft().tag())
                .isCloseTo(least.get(pick.option().shaft().tag()), within(1e-9));
        }
        assertThat(answer.picks()).extracting(pick -> pick.option().cost()).isSorted();
        assertThat(answer.picks()).hasSize(least.size());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noLadderCostsLess(long seed) throws Exception {
        Inventory stock = new RandomStock(seed).inventory(1, seed % 2, 9);
        ShaftRequest request = request(stock, 1, new ShaftRequest.Picking(Pick.LADDER, 12, 200, 3, 4));
        ShaftAnswer answer = ShaftChoice.run(request);
        List<Map<String, Double>> byRung = new ArrayList<>();
        for (double offset : request.picking().offsetsCpm()) {
            EnumMap<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
            wanted.putAll(answer.target().wanted());
            wanted.computeIfPresent(Quantity.FREQUENCY,
                (q, w) -> new Wanted(w.value() + offset, w.tolerance(), w.weight()));
            byRung.add(everyTrim(request, new Target(answer.target().reading(), wanted)));
        }
        double least = leastAssignment(byRung, 0, new ArrayList<>());
        double ours = answer.picks().stream().mapToDouble(pick -> pick.option().cost()).sum();
        assertThat(ours).isCloseTo(least, within(1e-9));
        assertThat(answer.picks()).extracting(pick -> pick.option().shaft().tag()).doesNotHaveDuplicates().hasSize(4);
    }

    private static double leastAssignment(List<Map<String, Double>> byRung, int rung, List<String> taken) {
        if (rung == byRung.size()) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (Map.Entry<String, Double> entry : byRung.get(rung).entrySet()) {
            if (!taken.contains(entry.getKey())) {
                taken.add(entry.getKey());
                least = Math.min(least, entry.getValue() + leastAssignment(byRung, rung + 1, taken));
                taken.remove(entry.getKey());
            }
        }
        return least;
    }

    /** The least cost of each shaft, the long way. */
    private static Map<String, Double> everyTrim(ShaftRequest request, Target target) throws ShaftBuild.NoTarget {
        ShaftBuild build = new ShaftBuild(request);
        Favourite club = request.club();
        Screening screening = new Screening(club.withTarget(target), request.inventory(), true);
        Map<String, Double> least = new HashMap<>();
        double wanted = target.of(Quantity.LENGTH).orElseThrow().value();
        for (Shaft shaft : request.inventory().shafts()) {
            if (screening.whyNot(shaft).isPresent()) {
                continue;
            }
            for (Screening.Way way : screening.waysWithTipFree(request.head(), shaft)) {
                Candidate candidate = screening.withGrip(request.head(), shaft, way, way.steps());
                Assembly assembly = candidate.assembly();
                double joining = candidate.joining().stream().mapToDouble(w -> request.shop().effort(w.kind())).sum();
                double most = way.tipFree() ? Math.max(0, 76 - shaft.tipCutMm() - 34.6) : 0;
                for (double tip = 0; tip <= most; tip += 25.4 / 8) {
                    for (int butt = 0; butt < 130; butt++) {
                        Setup setup = new Setup(tip, butt, 0, 0, 1, build.headMass().addedG(), 0, Setup.AS_READ);
                        double[] predicted = build.twin().predict(assembly, setup);
                        if (!(Math.abs(predicted[Quantity.LENGTH.ordinal()] - wanted) <= 0.5)
                            || tip > assemblyMost(candidate)) {
                            continue;
                        }
                        double effort = joining + build.headMass().effort() + (tip > 0 ? 0.06 : 0)
                            + (butt > 0 ? 0.06 + (candidate.gripOff() ? 0 : 0.01) : 0);
                        least.merge(shaft.tag(), CostTerms.missSquared(target, predicted) + effort, Math::min);
                    }
                }
            }
        }
        return least;
    }

    /** Parallel tip left less the insertion: what the bore does not hold may be cut. */
    private static double assemblyMost(Candidate candidate) {
        double insertion = candidate.head().bore().map(b -> b.depthMm().orElseThrow().value())
            .orElseGet(() -> candidate.sleeve().orElseThrow().boreDepthMm().orElseThrow().value());
        return candidate.trimmable() ? candidate.shaft().parallelTipLeftMm() - insertion : 0;
    }
}
