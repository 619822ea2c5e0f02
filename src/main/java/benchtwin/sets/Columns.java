package benchtwin.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/** The group plans met so far, each once; the ones that look worst under the prices go when there are too many. */
final class Columns {

    private final SetModel model;
    private final int mostPerGroup;
    private final List<Map<List<Option>, Column>> plans = new ArrayList<>();

    /**
     * @param model        the problem
     * @param mostPerGroup more than twice this many plans of a group are not kept
     */
    Columns(SetModel model, int mostPerGroup) {
        this.model = model;
        this.mostPerGroup = mostPerGroup;
        model.groups().forEach(group -> plans.add(new LinkedHashMap<>()));
    }

    void add(int group, GroupPlan plan) {
        List<Option> key = Arrays.asList(plan.options());
        if (!plans.get(group).containsKey(key)) {
            plans.get(group).put(key, new Column(plan, plan.softCost() + plan.modelCost(model), plan.emptyCost(model)));
        }
    }

    void add(List<GroupPlan> oneAGroup) {
        for (int g = 0; g < oneAGroup.size(); g++) {
            add(g, oneAGroup.get(g));
        }
    }

    /** A plan and what it costs without prices. */
    private record Column(GroupPlan plan, long soft, long emptyCost) {

        double value(Prices prices) {
            double value = soft + prices.empty() * emptyCost;
            for (Option option : plan.options()) {
                if (option != null) {
                    value += prices.of(option);
                }
            }
            return value;
        }
    }

    /** The cheapest plan of a group under the prices; null when none is known. */
    GroupPlan cheapest(int group, Prices prices) {
        GroupPlan cheapest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Column column : plans.get(group).values()) {
            double value = column.value(prices);
            if (value < least) {
                least = value;
                cheapest = column.plan();
            }
        }
        return cheapest;
    }

    /** A plan and what it costs, under the prices, above its group's cheapest. */
    private record Priced(int group, GroupPlan plan, double excess) {
    }

    /**
     * Those that are likeliest to be in a better choice.
     * @param prices    of the parts
     * @param budget    what plans of a better choice cost above the cheapest of their groups, at most
     * @param incumbent its plans are always among them
     * @param most      how many in all, besides
     * @return by group
     */
    List<List<GroupPlan>> nearest(Prices prices, double budget, EventPlan incumbent, int most) {
        List<Priced> near = new ArrayList<>();
        for (int g = 0; g < plans.size(); g++) {
            int group = g;
            List<Priced> own = new ArrayList<>(plans.get(g).values().stream()
                .map(column -> new Priced(group, column.plan(), column.value(prices))).toList());
            own.sort(Comparator.comparingDouble(Priced::excess));
            forget(g, own);
            own.stream().map(each -> new Priced(group, each.plan(), each.excess() - own.get(0).excess()))
                .takeWhile(each -> each.excess() <= budget).forEach(near::add);
        }
        near.sort(Comparator.comparingDouble(Priced::excess).thenComparingInt(Priced::group));
        Map<Integer, LinkedHashSet<List<Option>>> chosen = new LinkedHashMap<>();
        for (int g = 0; g < plans.size(); g++) {
            chosen.put(g, new LinkedHashSet<>());
            chosen.get(g).add(Arrays.asList(incumbent.groups().get(g).options()));
        }
        near.stream().limit(most).forEach(each -> chosen.get(each.group()).add(Arrays.asList(each.plan().options())));
        return chosen.entrySet().stream().map(entry -> entry.getValue().stream()
            .map(options -> new GroupPlan(model.groups().get(entry.getKey()), options.toArray(Option[]::new))).toList())
            .toList();
    }

    private void forget(int group, List<Priced> sorted) {
        if (sorted.size() > 2 * mostPerGroup) {
            sorted.subList(mostPerGroup, sorted.size()).forEach(
                each -> plans.get(group).remove(Arrays.asList(each.plan().options())));
        }
    }
}
