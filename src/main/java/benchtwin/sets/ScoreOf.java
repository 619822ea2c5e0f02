package benchtwin.sets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.constraint.ConstraintMatch;
import org.optaplanner.core.api.score.constraint.ConstraintMatchTotal;
import org.optaplanner.core.api.score.stream.DefaultConstraintJustification;
import org.optaplanner.core.api.solver.SolutionManager;
import org.optaplanner.core.api.solver.SolutionUpdatePolicy;
import org.optaplanner.core.api.solver.SolverFactory;

/** Scores plans and says what in them costs what. */
final class ScoreOf {

    private final SolutionManager<SetProblem, HardMediumSoftLongScore> manager;

    ScoreOf() {
        this(SolverFactory.create(SolverSetup.scoring()));
    }

    ScoreOf(SolverFactory<SetProblem> factory) {
        manager = SolutionManager.create(factory);
    }

    /**
     * Scores a plan.
     * @param problem is given its score
     * @return the score: costs below 0
     */
    HardMediumSoftLongScore score(SetProblem problem) {
        return manager.update(problem, SolutionUpdatePolicy.UPDATE_SCORE_ONLY);
    }

    /**
     * Takes a score apart.
     * @param problem with its plan; is given its score
     * @return what costs anything, in the order of the constraints, then of the slots; adds up to the score
     */
    List<ScorePart> parts(SetProblem problem) {
        List<ScorePart> parts = new ArrayList<>();
        for (ConstraintMatchTotal<HardMediumSoftLongScore> total : manager
                .explain(problem, SolutionUpdatePolicy.UPDATE_SCORE_ONLY).getConstraintMatchTotalMap().values()) {
            for (ConstraintMatch<HardMediumSoftLongScore> match : total.getConstraintMatchSet()) {
                if (!match.getScore().isZero()) {
                    parts.add(part(problem, total.getConstraintName(), match));
                }
            }
        }
        parts.sort(Comparator.comparing((ScorePart part) -> SetConstraints.NAMES.indexOf(part.constraint()))
            .thenComparing(ScorePart::slots, ScoreOf::compare));
        return parts;
    }

    private static ScorePart part(SetProblem problem, String name, ConstraintMatch<HardMediumSoftLongScore> match) {
        HardMediumSoftLongScore score = match.getScore();
        ScorePart.Level level = score.hardScore() != 0 ? ScorePart.Level.HARD
            : score.mediumScore() != 0 ? ScorePart.Level.MEDIUM : ScorePart.Level.SOFT;
        DefaultConstraintJustification why = match.getJustification();
        List<Integer> slots = why.getFacts().stream().flatMap(fact -> slots(problem, fact)).sorted().toList();
        return new ScorePart(name, level, -(score.hardScore() + score.mediumScore() + score.softScore()), slots);
    }

    /** The slots behind what a constraint looked at; counts and sums have none. */
    private static Stream<Integer> slots(SetProblem problem, Object fact) {
        if (fact instanceof BuildSlot slot) {
            return Stream.of(slot.index());
        }
        return fact instanceof SlotGroup group
            ? group.slots().stream().filter(slot -> !problem.slots().get(slot).isEmpty()) : Stream.empty();
    }

    private static int compare(List<Integer> one, List<Integer> other) {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
            if (!one.get(i).equals(other.get(i))) {
                return Integer.compare(one.get(i), other.get(i));
            }
        }
        return Integer.compare(one.size(), other.size());
    }
}
