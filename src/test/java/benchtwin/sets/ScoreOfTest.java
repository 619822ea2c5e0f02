package benchtwin.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A score taken apart: three that must share models, two that prefer to; numbers worked by hand. */
class ScoreOfTest {

    private static final int[] MODELS = {0, 0, 1, 1, 2};
    private static final SetModel MODEL = new SetModel(List.of(
        new SlotGroup(List.of(0, 2, 4), true, new long[] {2, 1, 0}, 0),
        new SlotGroup(List.of(1, 3), false, new long[] {0, 0, 3}, 500)),
        new long[] {70, 60, 50, 40, 30}, MODELS, MODELS, Collections.nCopies(5, List.of()));

    @Test
    void saysWhatCostsWhatWhere() {
        Pins pins = new Pins(Map.of(4, 4), Map.of(), Set.of(), Set.of(4));
        Option[] plan = {
            new Option(0, 0, 0, 1000, 10, 5, 1),
            new Option(1, 0, 4, 2000, 0, 0, 7),
            new Option(2, 2, 1, 0, 30, 5, 2),
            new Option(3, 1, 2, 300, 0, 0, 9),
            null
        };
        assertThat(new ScoreOf().parts(SetProblem.of(MODEL, pins).take(plan))).containsExactly(
            hard(SetConstraints.HEAD_TWICE, 0, 1),
            hard(SetConstraints.HEAD_MODELS_DIFFER, 0, 2),
            hard(SetConstraints.PINNED_HEAD_MISSING, 4),
            hard(SetConstraints.SHAFT_LEFT_OUT, 1),
            new ScorePart(SetConstraints.UNBUILT, ScorePart.Level.MEDIUM, 30 + 250, List.of(4)),
            soft(SetConstraints.OFF_TARGET, 1000, 0),
            soft(SetConstraints.OFF_TARGET, 2000, 1),
            soft(SetConstraints.OFF_TARGET, 300, 3),
            soft(SetConstraints.FREQUENCIES_UNLIKE, 2 * (10 * 10 + 10 * 10), 0, 2),
            soft(SetConstraints.SHAFT_MASSES_UNLIKE, 3 * (1 + 1), 1, 3),
            soft(SetConstraints.MORE_SHAFT_MODELS, 500, 1, 3));
    }

    @Test
    void scoresEveryLevelByItself() {
        Option[] plan = {new Option(0, 0, 0, 1000, 10, 5, 1), null, new Option(2, 0, 1, 24, 10, 5, 1), null, null};
        SetProblem problem = SetProblem.of(MODEL, Pins.none()).take(plan);
        assertThat(new ScoreOf().score(problem)).hasToString("-1hard/-130medium/-1024soft");
        assertThat(problem.score()).hasToString("-1hard/-130medium/-1024soft");
        assertThat(problem.plan()).isEqualTo(plan);
    }

    private static ScorePart hard(String constraint, Integer... slots) {
        return new ScorePart(constraint, ScorePart.Level.HARD, 1, List.of(slots));
    }

    private static ScorePart soft(String constraint, long points, Integer... slots) {
        return new ScorePart(constraint, ScorePart.Level.SOFT, points, List.of(slots));
    }
}
