package benchtwin.sets;

import benchtwin.club.Head;
import benchtwin.club.Shaft;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Looks, among the pairs that were not worked out, for those that now promise better than what a club has: the search has
 * shown which parts are contested, and what a contested part costs the others is its price. A pair promises better when its
 * rough cost and its prices are below those of the club's own pair. A club left out takes whatever is best.
 */
final class Widening {

    /** Pairs added for a club at a time. */
    private static final int MOST = 40;
    /** Pairs added for a club that is left out. */
    private static final int MOST_EMPTY = 120;

    private final SetTables tables;
    private final SetModel model;
    private final Prices prices;
    private final Option[] plan;

    Widening(SetTables tables, SetModel model, Prices prices, Option[] plan) {
        this.tables = tables;
        this.model = model;
        this.prices = prices;
        this.plan = plan;
    }

    /**
     * Works the promising pairs out.
     * @return a wider problem; the same when nothing promises better
     */
    SetModel run() {
        List<Set<OptionChoice.Pair>> more = new ArrayList<>();
        tables.slots().forEach(slot -> more.add(new LinkedHashSet<>()));
        for (SlotGroup group : model.groups()) {
            Set<List<Integer>> models = group.sameModels() ? models(group) : Set.of();
            for (int slot : group.slots()) {
                promising(tables.slots().get(slot), group.sameModels(), models, more.get(slot));
            }
            if (group.sameModels()) {
                otherModels(group, models, more);
            }
        }
        return tables.wider(model, more);
    }

    /** Pairs of models the group has options of. */
    private Set<List<Integer>> models(SlotGroup group) {
        Set<List<Integer>> models = new HashSet<>();
        for (int slot : group.slots()) {
            for (Option option : model.options(slot)) {
                models.add(List.of(model.headModel(option.head()), model.shaftModel(option.shaft())));
            }
        }
        return models;
    }

    private double priced(WantedSlot slot, int head, int shaft) {
        double price = prices.head()[tables.index(slot.plans().heads().get(head))]
            + prices.shaft()[tables.index(slot.plans().shafts().get(shaft))];
        return slot.roughCost(head, shaft) + price / SetTables.MILLION;
    }

    private double budget(int slot) {
        return plan[slot] == null ? Double.POSITIVE_INFINITY
            : (plan[slot].cost() + prices.of(plan[slot])) / SetTables.MILLION;
    }

    private record Promising(OptionChoice.Pair pair, double cost) {
    }

    private void promising(WantedSlot slot, boolean sameModels, Set<List<Integer>> models, Set<OptionChoice.Pair> into) {
        double budget = budget(slot.index());
        List<Head> heads = slot.plans().heads();
        List<Shaft> shafts = slot.plans().shafts();
        List<Promising> found = new ArrayList<>();
        for (int h = 0; h < heads.size(); h++) {
            for (int s = 0; s < shafts.size(); s++) {
                double cost = priced(slot, h, s);
                OptionChoice.Pair pair = new OptionChoice.Pair(h, s);
                if (cost < budget && !tables.isKnown(slot, pair)
                    && (!sameModels || models.contains(modelsOf(heads.get(h), shafts.get(s))))) {
                    found.add(new Promising(pair, cost));
                }
            }
        }
        found.stream().sorted(Comparator.comparingDouble(Promising::cost))
            .limit(plan[slot.index()] == null ? MOST_EMPTY : MOST).forEach(p -> into.add(p.pair()));
    }

    private List<Integer> modelsOf(Head head, Shaft shaft) {
        return List.of(model.headModel(tables.index(head)), model.shaftModel(tables.index(shaft)));
    }

    /** A head model and a shaft model. */
    private record Models(String head, String shaft) {
    }

    /** Pairs of models the group has no option of, whose cheapest pairs together promise better than the group's own. */
    private void otherModels(SlotGroup group, Set<List<Integer>> known, List<Set<OptionChoice.Pair>> more) {
        Map<Models, double[]> least = new LinkedHashMap<>();
        int n = group.slots().size();
        double budget = 0;
        for (int i = 0; i < n; i++) {
            WantedSlot slot = tables.slots().get(group.slots().get(i));
            budget += budget(slot.index());
            List<Head> heads = slot.plans().heads();
            List<Shaft> shafts = slot.plans().shafts();
            for (int h = 0; h < heads.size(); h++) {
                for (int s = 0; s < shafts.size(); s++) {
                    double cost = priced(slot, h, s);
                    if (!Double.isInfinite(cost) && !known.contains(modelsOf(heads.get(h), shafts.get(s)))) {
                        double[] row = least.computeIfAbsent(new Models(heads.get(h).model(), shafts.get(s).model()), key -> {
                            double[] none = new double[n];
                            Arrays.fill(none, Double.POSITIVE_INFINITY);
                            return none;
                        });
                        row[i] = Math.min(row[i], cost);
                    }
                }
            }
        }
        for (Map.Entry<Models, double[]> entry : least.entrySet()) {
            if (Arrays.stream(entry.getValue()).sum() < budget) {
                for (int slot : group.slots()) {
                    more.get(slot).addAll(OptionChoice.ofModels(tables.slots().get(slot), entry.getKey().head(),
                        entry.getKey().shaft()));
                }
            }
        }
    }
}
