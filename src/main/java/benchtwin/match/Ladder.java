package benchtwin.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * One shaft for each rung, no shaft twice, at the least cost in all: an assignment, solved exactly by the Hungarian method
 * (Kuhn 1955, Munkres 1957) of a graph library.
 *
 * <p>For R rungs the R nearest shafts of each are enough: were a rung given one farther down its list, at least one of its R
 * nearest would be left over, and taking that one instead costs no more.
 */
final class Ladder {

    /** More than any real cost: a rung is left empty only when there is no shaft for it. */
    private static final double EMPTY = 1e7;

    private Ladder() {
    }

    /**
     * A shaft for a rung.
     * @param tag  the shaft
     * @param cost what it costs there, 0 or more
     */
    record Choice(String tag, double cost) {
    }

    /**
     * Assigns.
     * @param choices for each rung its nearest shafts, at least as many as there are rungs where stock allows
     * @return a shaft's tag for each rung, empty where none is left
     */
    static List<Optional<String>> assign(List<List<Choice>> choices) {
        Graph<String, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        Set<String> tags = new LinkedHashSet<>();
        choices.forEach(rung -> rung.stream().map(Choice::tag).sorted(Comparator.naturalOrder()).forEach(tags::add));
        // as many shafts as rungs on either side: spare rungs for spare shafts, and an empty place for each rung
        int size = tags.size() + choices.size();
        List<String> rungs = new ArrayList<>();
        List<String> shafts = new ArrayList<>(tags.stream().map(tag -> "shaft " + tag).toList());
        for (int k = 0; k < size; k++) {
            rungs.add("rung " + k);
            if (k >= tags.size()) {
                shafts.add("empty " + k);
            }
        }
        rungs.forEach(graph::addVertex);
        shafts.forEach(graph::addVertex);
        for (int r = 0; r < size; r++) {
            for (String shaft : shafts) {
                double cost = r >= choices.size() ? 0 : cost(choices.get(r), shaft);
                graph.setEdgeWeight(graph.addEdge(rungs.get(r), shaft), cost);
            }
        }
        List<Optional<String>> assigned = new ArrayList<>();
        choices.forEach(rung -> assigned.add(Optional.empty()));
        new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, new LinkedHashSet<>(rungs),
            new LinkedHashSet<>(shafts)).getMatching().getEdges().forEach(edge -> {
                int rung = rungs.indexOf(graph.getEdgeSource(edge));
                String shaft = graph.getEdgeTarget(edge);
                if (rung < choices.size() && graph.getEdgeWeight(edge) < EMPTY && shaft.startsWith("shaft ")) {
                    assigned.set(rung, Optional.of(shaft.substring("shaft ".length())));
                }
            });
        return assigned;
    }

    private static double cost(List<Choice> rung, String shaft) {
        return rung.stream().filter(choice -> shaft.equals("shaft " + choice.tag())).mapToDouble(Choice::cost).findFirst()
            .orElse(EMPTY);
    }
}
