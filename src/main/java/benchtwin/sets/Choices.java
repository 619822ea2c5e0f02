package benchtwin.sets;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/** When and from what to choose one plan a group: not from the same plans twice, and after a choice in vain not so soon again. */
final class Choices {

    private static final int MOST_COLUMNS = 400;
    private static final int COLUMNS_A_GROUP = 10;

    private final SetModel model;
    private final Columns columns;
    private final int period;
    private Set<List<Object>> before = Set.of();
    private int wait = 1;
    private int next;

    /**
     * @param model   the problem
     * @param columns the group plans met
     * @param period  rounds from one choice to the next, when it helps
     */
    Choices(SetModel model, Columns columns, int period) {
        this.model = model;
        this.columns = columns;
        this.period = period;
    }

    boolean isDue(int round) {
        return round >= next;
    }

    /** Waits no longer. */
    void hurry() {
        next = 0;
    }

    /**
     * Chooses, if there is anything new to choose from.
     * @param round  which round it is
     * @param prices of the parts
     * @param budget what plans of a better choice cost above the cheapest of their groups, at most
     * @param best   the best plan so far
     * @param stop   whether to give up
     * @return the best plan, or better; nothing when given up
     */
    Optional<EventPlan> choose(int round, Prices prices, double budget, EventPlan best, BooleanSupplier stop) {
        List<List<GroupPlan>> near = columns.nearest(prices, budget, best,
            Math.min(MOST_COLUMNS, COLUMNS_A_GROUP * model.groups().size()));
        Set<List<Object>> keys = keys(near);
        if (before.containsAll(keys)) {
            return Optional.of(best);
        }
        EventPlan chosen = new ColumnChoice(model, near, best).choose(stop);
        if (stop.getAsBoolean()) {
            return Optional.empty();
        }
        before = keys;
        wait = chosen.isBetterThan(best) ? 1 : 2 * wait;
        next = round + wait * period;
        return Optional.of(chosen);
    }

    private static Set<List<Object>> keys(List<List<GroupPlan>> near) {
        Set<List<Object>> keys = new HashSet<>();
        for (int g = 0; g < near.size(); g++) {
            for (GroupPlan plan : near.get(g)) {
                keys.add(List.of(g, Arrays.asList(plan.options())));
            }
        }
        return keys;
    }
}
