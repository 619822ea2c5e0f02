package benchtwin.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The assignment of shafts to rungs against every permutation. */
class LadderTest {

    static LongStream seeds() {
        return LongStream.range(1, 41);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noAssignmentCostsLess(long seed) {
        Random random = new Random(seed);
        int rungs = 1 + random.nextInt(5);
        int shafts = rungs + random.nextInt(4);
        List<List<Ladder.Choice>> all = new ArrayList<>();
        for (int r = 0; r < rungs; r++) {
            List<Ladder.Choice> rung = new ArrayList<>();
            for (int s = 0; s < shafts; s++) {
                // few distinct costs, so that ties occur
                rung.add(new Ladder.Choice("S" + s, random.nextInt(6) / 2.0));
            }
            all.add(rung);
        }
        List<List<Ladder.Choice>> nearest = all.stream().map(rung -> rung.stream()
            .sorted(Comparator.comparingDouble(Ladder.Choice::cost).thenComparing(Ladder.Choice::tag)).limit(rungs).toList())
            .toList();
        List<Optional<String>> assigned = Ladder.assign(nearest);
        double cost = 0;
        for (int r = 0; r < rungs; r++) {
            String tag = assigned.get(r).orElseThrow();
            cost += all.get(r).stream().filter(c -> c.tag().equals(tag)).findFirst().orElseThrow().cost();
        }
        assertThat(new HashSet<>(assigned)).hasSize(rungs);
        assertThat(cost).isCloseTo(least(all, 0, new HashSet<>()), within(1e-9));
    }

    private static double least(List<List<Ladder.Choice>> rungs, int r, HashSet<String> taken) {
        if (r == rungs.size()) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (Ladder.Choice choice : rungs.get(r)) {
            if (taken.add(choice.tag())) {
                least = Math.min(least, choice.cost() + least(rungs, r + 1, taken));
                taken.remove(choice.tag());
            }
        }
        return least;
    }

    @Test
    void aShaftServesOneRungAndTheOtherStaysEmpty() {
        List<Optional<String>> assigned = Ladder.assign(List.of(List.of(new Ladder.Choice("A", 4)),
            List.of(new Ladder.Choice("A", 1)), List.of(new Ladder.Choice("A", 9))));
        assertThat(assigned).containsExactly(Optional.empty(), Optional.of("A"), Optional.empty());
    }

    @Test
    void withoutShaftsEveryRungIsEmpty() {
        assertThat(Ladder.assign(List.of(List.of(), List.of()))).containsExactly(Optional.empty(), Optional.empty());
    }
}
