package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Grip;
import benchtwin.club.Keeping;
import benchtwin.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The matching of grips against JGraphT's Kuhn-Munkres matching, on random bags. */
class GripMatchingPropertyTest {

    static Stream<Long> seeds() {
        return IntStream.range(0, 60).mapToObj(k -> 7_000L + k);
    }

    private static Grip grip(String tag, double massG) {
        return new Grip(tag, "Moss", Optional.of(Reading.of(massG, 0.1)), OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), false, Optional.empty(), Keeping.UNRECORDED);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theSumOfChangesIsTheLeastThereIs(long seed) {
        Random random = new Random(seed);
        int clubs = 1 + random.nextInt(14);
        int stock = clubs + random.nextInt(6);
        List<Optional<Double>> masses = IntStream.range(0, clubs).mapToObj(k -> Optional.of(45 + 10 * random.nextDouble())).toList();
        List<Grip> grips = IntStream.range(0, stock).mapToObj(k -> grip("G-" + k, 45 + 10 * random.nextDouble())).toList();
        List<Optional<Grip>> given = GripMatching.nearest(masses, grips);
        assertThat(given).allMatch(Optional::isPresent).doesNotHaveDuplicates();
        double sum = IntStream.range(0, clubs).mapToDouble(k -> Math.abs(masses.get(k).get()
            - given.get(k).get().massG().get().value())).sum();
        assertThat(sum).isCloseTo(least(masses, grips), within(1e-9));
    }

    /** A perfect matching needs two sides alike: clubs that do not exist take what is left over, for nothing. */
    private static double least(List<Optional<Double>> masses, List<Grip> grips) {
        SimpleWeightedGraph<String, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        List<String> left = new ArrayList<>();
        for (int k = 0; k < grips.size(); k++) {
            left.add("club " + k);
            graph.addVertex("club " + k);
        }
        grips.forEach(grip -> graph.addVertex(grip.tag()));
        for (int k = 0; k < grips.size(); k++) {
            for (Grip grip : grips) {
                double change = k < masses.size() ? Math.abs(masses.get(k).get() - grip.massG().get().value()) : 0;
                graph.setEdgeWeight(graph.addEdge(left.get(k), grip.tag()), change);
            }
        }
        return new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, java.util.Set.copyOf(left),
            java.util.Set.copyOf(grips.stream().map(Grip::tag).toList())).getMatching().getWeight();
    }
}
