package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.LongStream;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.MaximumWeightBipartiteMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must stay empty: matched parts against a graph library's matching, both kinds together by hand. */
class EmptyBoundTest {

    static LongStream seeds() {
        return LongStream.range(1, 31);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void weighsWhatTheLibraryLeavesUnmatched(long seed) {
        SetModel model = RandomModel.of(seed, new int[] {3, 4, 3, 2}, 7, 8, seed % 2 == 0 ? 0.04 : 0.1);
        assertThat(EmptyBound.ofHeads(model).weight()).isEqualTo(unmatched(model, Option::head));
        assertThat(EmptyBound.ofShafts(model).weight()).isEqualTo(unmatched(model, Option::shaft));
    }

    private static long unmatched(SetModel model, ToIntFunction<Option> part) {
        Graph<String, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        Set<String> slots = new LinkedHashSet<>();
        Set<String> parts = new LinkedHashSet<>();
        long all = 0;
        for (int slot = 0; slot < model.slots(); slot++) {
            all += model.emptyCost(slot);
            slots.add("s" + slot);
            graph.addVertex("s" + slot);
            for (Option option : model.options(slot)) {
                String name = "p" + part.applyAsInt(option);
                if (parts.add(name)) {
                    graph.addVertex(name);
                }
                if (!graph.containsEdge("s" + slot, name)) {
                    graph.setEdgeWeight(graph.addEdge("s" + slot, name), model.emptyCost(slot));
                }
            }
        }
        return all - Math.round(new MaximumWeightBipartiteMatching<>(graph, slots, parts).getMatching().getWeight());
    }

    /** Two slots, two heads, but both heads go with the one shaft only: one stays empty, which neither kind alone shows. */
    @Test
    void headsAndShaftsTogetherShowMore() {
        List<List<Option>> options = List.of(
            List.of(new Option(0, 0, 0, 5, 0, 0, 0)),
            List.of(new Option(1, 1, 0, 7, 0, 0, 0)),
            new ArrayList<>(List.of(new Option(2, 2, 1, 9, 0, 0, 0))));
        List<SlotGroup> groups = List.of(single(0), single(1), single(2));
        SetModel model = new SetModel(groups, new long[] {3_000_000, 2_000_000, 2_000_000}, new int[3], new int[2], options);
        assertThat(EmptyBound.ofHeads(model).weight()).isZero();
        Workers workers = new Workers(1);
        EventProof proof = new EventProof(new Solvers(model, workers), workers, 1, 0);
        EventPlan plan = EventPlan.of(model, new Option[] {options.get(0).get(0), null, options.get(2).get(0)});
        assertThat(proof.proveEmpty(plan, () -> false)).isTrue();
        assertThat(proof.bound().emptyCost()).isEqualTo(2_000_000);
        SetEngine engine = new SetEngine(model, 1);
        while (engine.next(() -> false)) {
            assertThat(engine.rounds()).isLessThan(100);
        }
        assertThat(engine.plan()).isEqualByComparingTo(plan);
        assertThat(engine.gap()).hasValue(0);
    }

    private static SlotGroup single(int slot) {
        return new SlotGroup(List.of(slot), false, new long[] {1, 1, 0}, 0);
    }
}
