package benchtwin.sets;

import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/**
 * The changes that the local search tries, drawn one after the other for as long as it asks. None puts a part where a pin
 * forbids it: all read the problem's options, and those are what the pins allow. Public only because the solver makes one by
 * reflection.
 */
public final class SetMoves implements MoveIteratorFactory<SetProblem, PlanMove> {

    /**
     * One draw in so many re-plans whole groups. Tried on 30 small problems with scarce parts: one in 2 found every best plan,
     * one in 10 only 24, though its steps are quicker; on larger ones it gained about twice as much in the same time.
     */
    private static final int ONE_REPLAN_IN = 2;
    private static final int TRIES = 10;

    private MoveKind replan;
    private List<MoveKind> small;

    @Override
    public void phaseStarted(ScoreDirector<SetProblem> director) {
        SetModel model = director.getWorkingSolution().model();
        OptionIndex options = new OptionIndex(model);
        replan = new ReplanMoves(model);
        small = List.of(new ChangeMoves(options), new SwapMoves(options));
    }

    @Override
    public void phaseEnded(ScoreDirector<SetProblem> director) {
        replan = null;
        small = null;
    }

    @Override
    public long getSize(ScoreDirector<SetProblem> director) {
        SetModel model = director.getWorkingSolution().model();
        long size = model.groups().size();
        for (int slot = 0; slot < model.slots(); slot++) {
            size += model.options(slot).size();
        }
        return size;
    }

    @Override
    public Iterator<PlanMove> createOriginalMoveIterator(ScoreDirector<SetProblem> director) {
        throw new UnsupportedOperationException("moves are drawn at random, not listed");
    }

    @Override
    public Iterator<PlanMove> createRandomMoveIterator(ScoreDirector<SetProblem> director, Random random) {
        SetProblem problem = director.getWorkingSolution();
        Board board = new Board(problem.model(), problem.plan());
        return Stream.generate(() -> draw(problem, board, random)).iterator();
    }

    private PlanMove draw(SetProblem problem, Board board, Random random) {
        for (int tried = 0; tried < TRIES && !problem.isToStop(); tried++) {
            MoveKind kind = random.nextInt(ONE_REPLAN_IN) == 0 ? replan : small.get(random.nextInt(small.size()));
            PlanMove move = kind.next(problem, board, random);
            if (move != null) {
                return move;
            }
        }
        return PlanMove.none();
    }
}
