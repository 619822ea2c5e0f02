package benchtwin.sets;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * One plan a group out of lists, no part twice, the best of all such choices, in whole numbers: a search through the groups,
 * the one with the fewest plans left first, that turns back where what the plans cost above the least under the prices has
 * used up all there is between bound and score.
 */
final class Packing {

    private static final int MOST_LOOKS = 1_000_000;

    private final SetModel model;
    private final List<Candidate[]> lists = new ArrayList<>();
    private final BooleanSupplier stop;
    private final BitSet heads = new BitSet();
    private final BitSet shafts = new BitSet();
    private final GroupPlan[] chosen;
    private EventPlan best;
    private final double share;
    private double budget;
    private final long mostLooks;
    private int nodes;
    private long looks;
    private boolean isCut;

    /** A plan, what it costs above its group's bound under the prices, and what it costs without. */
    private record Candidate(GroupPlan plan, double excess, long emptyCost, long soft) {
    }

    /**
     * @param model the problem
     * @param lists by group: every plan that could be in a better choice
     * @param excess by group and plan: what it costs above the group's bound
     * @param budget what the excesses of a better choice add up to at most
     * @param share  of the weight of empty slots in the excesses
     * @param incumbent the plan to beat
     * @param effort how long to look, 1 or more
     * @param stop  whether to give up
     */
    Packing(SetModel model, List<List<GroupPlan>> lists, List<double[]> excess, double budget, double share,
            EventPlan incumbent, int effort, BooleanSupplier stop) {
        this.share = share;
        this.mostLooks = (long) MOST_LOOKS * effort;
        this.model = model;
        this.stop = stop;
        this.budget = budget;
        this.best = incumbent;
        for (int g = 0; g < lists.size(); g++) {
            List<Candidate> candidates = new ArrayList<>();
            for (int c = 0; c < lists.get(g).size(); c++) {
                GroupPlan plan = lists.get(g).get(c);
                candidates.add(new Candidate(plan, excess.get(g)[c], plan.emptyCost(model),
                    plan.softCost() + plan.modelCost(model)));
            }
            candidates.sort(Comparator.comparingDouble(Candidate::excess));
            this.lists.add(candidates.toArray(Candidate[]::new));
        }
        chosen = new GroupPlan[lists.size()];
    }

    /** Searches; true when nothing better is left. */
    boolean search() {
        branch(0, 0, 0, 0);
        return !isCut;
    }

    /** The incumbent or something better. */
    EventPlan best() {
        return best;
    }

    private void branch(int depth, double spent, long emptyCost, long soft) {
        if (isCut || looks > mostLooks || (++nodes & 63) == 0 && stop.getAsBoolean()) {
            isCut = true;
            return;
        }
        if (depth == chosen.length) {
            if (emptyCost < best.emptyCost() || emptyCost == best.emptyCost() && soft < best.soft()) {
                budget -= Math.max(0, best.soft() - soft + share * (best.emptyCost() - emptyCost));
                best = EventPlan.of(model, List.of(chosen));
            }
            return;
        }
        int next = -1;
        int fewest = Integer.MAX_VALUE;
        double least = spent;
        double ofNext = 0;
        for (int g = 0; g < chosen.length; g++) {
            if (chosen[g] == null) {
                double first = Double.NaN;
                int left = 0;
                for (Candidate candidate : lists.get(g)) {
                    if (candidate.excess() > budget - spent || left >= fewest) {
                        break;
                    }
                    if (isFree(candidate.plan())) {
                        first = left == 0 ? candidate.excess() : first;
                        left++;
                    }
                }
                if (left == 0) {
                    return;
                }
                least += first;
                if (left < fewest) {
                    fewest = left;
                    next = g;
                    ofNext = first;
                }
            }
        }
        if (least > budget) {
            return;
        }
        for (Candidate candidate : lists.get(next)) {
            if (least - ofNext + candidate.excess() > budget || isCut) {
                break;
            }
            if (isFree(candidate.plan())) {
                chosen[next] = candidate.plan();
                mark(candidate.plan(), true);
                branch(depth + 1, spent + candidate.excess(), emptyCost + candidate.emptyCost(), soft + candidate.soft());
                mark(candidate.plan(), false);
                chosen[next] = null;
            }
        }
    }

    private boolean isFree(GroupPlan plan) {
        looks++;
        for (Option option : plan.options()) {
            if (option != null && (heads.get(option.head()) || shafts.get(option.shaft()))) {
                return false;
            }
        }
        return true;
    }

    private void mark(GroupPlan plan, boolean taken) {
        for (Option option : plan.options()) {
            if (option != null) {
                heads.set(option.head(), taken);
                shafts.set(option.shaft(), taken);
            }
        }
    }
}
