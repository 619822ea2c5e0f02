package benchtwin.sets;

import java.util.Random;

/** Swaps the heads, the shafts or both of two slots that can be filled with them. */
final class SwapMoves implements MoveKind {

    private static final int TRIES = 40;

    private final OptionIndex options;

    SwapMoves(OptionIndex options) {
        this.options = options;
    }

    @Override
    public PlanMove next(SetProblem problem, Board board, Random random) {
        for (int tried = 0; tried < TRIES; tried++) {
            Option one = board.at(random.nextInt(board.model().slots()));
            Option other = board.at(random.nextInt(board.model().slots()));
            int what = random.nextInt(3);
            if (one != null && other != null && one != other) {
                Option oneAfter = with(one, other, what);
                Option otherAfter = with(other, one, what);
                if (oneAfter != null && otherAfter != null && board.suits(oneAfter) && board.suits(otherAfter)) {
                    return PlanMove.filling(problem, oneAfter, otherAfter);
                }
            }
        }
        return null;
    }

    /** An option's slot with the other's head, shaft or both. */
    private Option with(Option option, Option other, int what) {
        return options.find(option.slot(), what == 0 ? option.head() : other.head(), what == 1 ? option.shaft() : other.shaft());
    }
}
