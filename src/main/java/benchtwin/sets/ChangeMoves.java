package benchtwin.sets;

import java.util.Random;

/** Fills one slot otherwise, with parts nobody else has: another shaft, another head, or both. */
final class ChangeMoves implements MoveKind {

    private static final int TRIES = 20;

    private final OptionIndex options;

    ChangeMoves(OptionIndex options) {
        this.options = options;
    }

    @Override
    public PlanMove next(SetProblem problem, Board board, Random random) {
        for (int tried = 0; tried < TRIES; tried++) {
            int slot = random.nextInt(board.model().slots());
            Option option = draw(slot, board.at(slot), random);
            if (option != null && !option.equals(board.at(slot)) && board.isFree(option) && board.suits(option)) {
                return PlanMove.filling(problem, option);
            }
        }
        return null;
    }

    private Option draw(int slot, Option now, Random random) {
        int kept = random.nextInt(3);
        if (now == null || kept == 2) {
            return options.any(slot, random);
        }
        return kept == 0 ? options.withHead(slot, now.head(), random) : options.withShaft(slot, now.shaft(), random);
    }
}
