package benchtwin.sets;

import java.util.Arrays;
import java.util.Objects;

/**
 * A whole run from a cold start, in a process of its own. Prints nothing unless asked for its times:
 * {@code java -cp target/benchtwin.jar:target/test-classes benchtwin.sets.SolverStart times}.
 */
final class SolverStart {

    private SolverStart() {
    }

    public static void main(String[] args) {
        long start = System.nanoTime();
        SetModel model = RandomModel.of(3, new int[] {3, 2, 3, 1}, 12, 12, 0.4);
        long[] first = new long[1];
        SetProblem best = new PlanSolver(model, Pins.none(), new SequenceRounds(model), 1, 10, 50).solve(plan -> {
            if (first[0] == 0) {
                first[0] = System.nanoTime();
            }
        }, () -> false);
        long solved = System.nanoTime();
        int parts = new ScoreOf().parts(best).size();
        if (Arrays.stream(best.plan()).allMatch(Objects::isNull) || parts == 0) {
            throw new IllegalStateException("nothing planned");
        }
        if (args.length > 0) {
            System.out.printf("first plan %d ms, best %d ms, explained %d ms%n", (first[0] - start) / 1_000_000,
                (solved - start) / 1_000_000, (System.nanoTime() - start) / 1_000_000);
        }
    }
}
