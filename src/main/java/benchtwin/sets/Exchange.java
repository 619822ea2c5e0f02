package benchtwin.sets;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;

/**
 * Betters a whole plan by solving groups anew. A group may take parts from others, at their prices; who lost parts is solved
 * next and may, for a while, take from others again. The exchange stands when all the groups in it are better off together:
 * so a slot that a fixed order left empty can be filled from a part that its holder can spare.
 */
final class Exchange {

    /** More groups than this in one exchange, and it is given up. */
    private static final int MOST_GROUPS = 10;
    /** How many groups of an exchange may take from others; the last only to fill an empty slot. */
    private static final int[] TAKERS = {0, 1, 3, 8};
    private static final int MOST_PASSES = 6;

    private final Solvers solvers;
    private final BiConsumer<Integer, GroupPlan> seen;

    /**
     * @param solvers of the groups
     * @param seen    gets every plan tried
     */
    Exchange(Solvers solvers, BiConsumer<Integer, GroupPlan> seen) {
        this.solvers = solvers;
        this.seen = seen;
    }

    /**
     * Betters until nothing more is found.
     * @param plan   to start from
     * @param prices what taking a part from others costs
     * @param stop   whether to stop early
     * @return as good or better
     */
    EventPlan better(EventPlan plan, Prices prices, BooleanSupplier stop) {
        Allotment allotment = Allotment.of(solvers.model(), plan);
        boolean[][] isSettled = new boolean[TAKERS.length][solvers.count()];
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            boolean improved = false;
            for (int t = 0; t < TAKERS.length; t++) {
                for (int g = 0; g < solvers.count(); g++) {
                    if (stop.getAsBoolean()) {
                        return allotment.whole();
                    }
                    if (isSettled[t][g] || t == TAKERS.length - 1 && allotment.plan(g).emptyCost(solvers.model()) == 0) {
                        continue;
                    }
                    isSettled[t][g] = true;
                    if (exchange(allotment, g, TAKERS[t], prices)) {
                        improved = true;
                        for (boolean[] each : isSettled) {
                            Arrays.fill(each, false);
                        }
                    }
                }
            }
            if (!improved) {
                break;
            }
        }
        return allotment.whole();
    }

    private boolean exchange(Allotment allotment, int first, int takers, Prices prices) {
        SetModel model = solvers.model();
        Map<Integer, GroupPlan> before = new LinkedHashMap<>();
        Map<Integer, GroupPlan> after = new LinkedHashMap<>();
        Deque<Integer> waiting = new ArrayDeque<>();
        waiting.add(first);
        before.put(first, allotment.plan(first));
        allotment.release(first);
        boolean isGivenUp = false;
        while (!waiting.isEmpty() && !isGivenUp) {
            int g = waiting.poll();
            Prices here = after.size() < takers ? allotment.without(prices, after.keySet()) : allotment.withoutHeld(prices);
            GroupPlan plan = solvers.quick(g, here, before.get(g));
            if (after.isEmpty() && Arrays.equals(plan.options(), before.get(g).options())) {
                isGivenUp = true;
            }
            for (Option option : plan.used()) {
                for (int holder : allotment.holders(option)) {
                    before.putIfAbsent(holder, allotment.plan(holder));
                    allotment.release(holder);
                    waiting.add(holder);
                }
            }
            seen.accept(g, plan);
            after.put(g, plan);
            allotment.give(g, plan);
            isGivenUp |= before.size() > MOST_GROUPS;
        }
        if (!isGivenUp && isBetter(model, after, before)) {
            return true;
        }
        after.keySet().forEach(allotment::release);
        before.forEach(allotment::give);
        return false;
    }

    private static boolean isBetter(SetModel model, Map<Integer, GroupPlan> after, Map<Integer, GroupPlan> before) {
        long empty = 0;
        long soft = 0;
        for (int g : after.keySet()) {
            GroupPlan now = after.get(g);
            GroupPlan then = before.get(g);
            empty += now.emptyCost(model) - then.emptyCost(model);
            soft += now.softCost() + now.modelCost(model) - then.softCost() - then.modelCost(model);
        }
        return empty < 0 || empty == 0 && soft < 0;
    }
}
