package benchtwin.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Plans up to three groups anew, one after the other, each exactly, with the parts that the rest leave: freely, or with head
 * model and shaft model drawn, or with some parts made dearer.
 */
final class ReplanMoves implements MoveKind {

    private static final int TRIES = 5;
    private static final int MOST_GROUPS = 3;

    private final SetModel model;
    private final GroupBound[] solvers;

    ReplanMoves(SetModel model) {
        this.model = model;
        solvers = new GroupBound[model.groups().size()];
    }

    @Override
    public PlanMove next(SetProblem problem, Board board, Random random) {
        for (int tried = 0; tried < TRIES && !problem.isToStop(); tried++) {
            PlanMove move = PlanMove.replanning(problem, plans(board, random));
            if (!move.getPlanningEntities().isEmpty()) {
                return move;
            }
        }
        return null;
    }

    private List<GroupPlan> plans(Board board, Random random) {
        List<Integer> groups = draw(random);
        Prices prices = Prices.none(model);
        if (random.nextBoolean()) {
            roughen(prices, groups, board, random);
        }
        for (int slot = 0; slot < model.slots(); slot++) {
            if (board.at(slot) != null && !groups.contains(model.groupOf(slot))) {
                prices.ban(board.at(slot));
            }
        }
        List<GroupPlan> plans = new ArrayList<>();
        for (int group : groups) {
            GroupPlan plan = plan(group, board, random.nextBoolean() ? oneModelOnly(group, prices, random) : prices);
            plan.used().forEach(prices::ban);
            plans.add(plan);
        }
        return plans;
    }

    /** Up to three groups, in any order. */
    private List<Integer> draw(Random random) {
        List<Integer> groups = new ArrayList<>();
        for (int wanted = 1 + random.nextInt(MOST_GROUPS); wanted > 0; wanted--) {
            int group = random.nextInt(solvers.length);
            if (!groups.contains(group)) {
                groups.add(group);
            }
        }
        return groups;
    }

    /** Makes parts dearer at random, by an eighth to eight times what a club costs, so that a group leaves others some. */
    private void roughen(Prices prices, List<Integer> groups, Board board, Random random) {
        long cost = 0;
        int clubs = 0;
        for (int group : groups) {
            GroupPlan plan = board.of(model.groups().get(group));
            cost += plan.softCost();
            clubs += plan.used().size();
        }
        double scale = Math.pow(2, 6 * random.nextDouble() - 3) * cost / Math.max(1, clubs);
        Arrays.setAll(prices.head(), head -> scale * random.nextDouble());
        Arrays.setAll(prices.shaft(), shaft -> scale * random.nextDouble());
    }

    private GroupPlan plan(int group, Board board, Prices prices) {
        if (solvers[group] == null) {
            solvers[group] = new GroupBound(model, new GroupSolver(model, model.groups().get(group)));
        }
        GroupBound solver = solvers[group];
        return solver.quick(prices, board.of(model.groups().get(group)).centres(solver.middle()));
    }

    /** Bans all head models and shaft models but those of one option of the group. */
    private Prices oneModelOnly(int group, Prices prices, Random random) {
        List<Integer> slots = model.groups().get(group).slots();
        List<Option> options = model.options(slots.get(random.nextInt(slots.size())));
        if (options.isEmpty()) {
            return prices;
        }
        Option drawn = options.get(random.nextInt(options.size()));
        Prices narrowed = prices.copy();
        Arrays.setAll(narrowed.head(), head -> model.headModel(head) == model.headModel(drawn.head())
            ? prices.head()[head] : Prices.BANNED);
        Arrays.setAll(narrowed.shaft(), shaft -> model.shaftModel(shaft) == model.shaftModel(drawn.shaft())
            ? prices.shaft()[shaft] : Prices.BANNED);
        return narrowed;
    }
}
