package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Our assignment against a graph library's. */
class AssignmentTest {

    static LongStream seeds() {
        return LongStream.range(1, 81);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costsWhatTheLibrarySays(long seed) {
        Random random = new Random(seed);
        int rows = 1 + random.nextInt(8);
        int columns = rows + random.nextInt(6);
        double[][] cost = new double[rows][columns];
        for (double[] row : cost) {
            for (int j = 0; j < columns; j++) {
                row[j] = random.nextInt(10) == 0 ? 1e12 : random.nextInt(40) * 0.5;
            }
        }
        int[] columnOf = new int[rows];
        double ours = new Assignment(8, 14).solve(cost, rows, columns, columnOf);
        assertThat(columnOf).doesNotHaveDuplicates();
        double sum = 0;
        for (int i = 0; i < rows; i++) {
            sum += cost[i][columnOf[i]];
        }
        assertThat(ours).isCloseTo(sum, within(1e-6));
        assertThat(ours).isCloseTo(library(cost, rows, columns), within(1e-3));
    }

    private static double library(double[][] cost, int rows, int columns) {
        SimpleWeightedGraph<String, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        List<String> left = new ArrayList<>();
        List<String> right = new ArrayList<>();
        for (int k = 0; k < columns; k++) {
            left.add("r" + k);
            right.add("c" + k);
        }
        left.forEach(graph::addVertex);
        right.forEach(graph::addVertex);
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < columns; j++) {
                graph.setEdgeWeight(graph.addEdge(left.get(i), right.get(j)), i < rows ? cost[i][j] : 0);
            }
        }
        return new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, new LinkedHashSet<>(left),
            new LinkedHashSet<>(right)).getMatching().getWeight();
    }
}
