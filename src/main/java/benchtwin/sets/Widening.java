package benchtwin.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

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
            Set<Long> models = group.sameModels() ? models(group) : Set.of();
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
    private Set<Long> models(SlotGroup group) {
        Set<Long> models = new HashSet<>();
        for (int slot : group.slots()) {
            for (Option option : model.options(slot)) {
                models.add(models(model.headModel(option.head()), model.shaftModel(option.shaft())));
            }
        }
        return models;
    }

    /** A slot's parts with their prices in squared tolerances and their models' numbers. */
    private final class Priced {
        private final WantedSlot slot;
        private final double[] headPrice;
        private final double[] shaftPrice;
        private final int[] headModel;
        private final int[] shaftModel;

        Priced(WantedSlot slot) {
            this.slot = slot;
            int[] heads = slot.plans().heads().stream().mapToInt(tables::index).toArray();
            int[] shafts = slot.plans().shafts().stream().mapToInt(tables::index).toArray();
            headPrice = Arrays.stream(heads).mapToDouble(h -> prices.head()[h] / SetTables.MILLION).toArray();
            shaftPrice = Arrays.stream(shafts).mapToDouble(s -> prices.shaft()[s] / SetTables.MILLION).toArray();
            headModel = Arrays.stream(heads).map(model::headModel).toArray();
            shaftModel = Arrays.stream(shafts).map(model::shaftModel).toArray();
        }

        double cost(int head, int shaft) {
            return slot.roughCost(head, shaft) + headPrice[head] + shaftPrice[shaft];
        }

        /** One number for a pair of models. */
        long models(int head, int shaft) {
            return Widening.models(headModel[head], shaftModel[shaft]);
        }
    }

    private static long models(int head, int shaft) {
        return ((long) head << Integer.SIZE) | shaft;
    }

    private double budget(int slot) {
        return plan[slot] == null ? Double.POSITIVE_INFINITY
            : (plan[slot].cost() + prices.of(plan[slot])) / SetTables.MILLION;
    }

    private record Promising(OptionChoice.Pair pair, double cost) {
    }

    private void promising(WantedSlot slot, boolean sameModels, Set<Long> models, Set<OptionChoice.Pair> into) {
        double budget = budget(slot.index());
        Priced priced = new Priced(slot);
        List<Promising> found = new ArrayList<>();
        for (int h = 0; h < priced.headPrice.length; h++) {
            for (int s = 0; s < priced.shaftPrice.length; s++) {
                double cost = priced.cost(h, s);
                if (cost < budget && (!sameModels || models.contains(priced.models(h, s)))) {
                    OptionChoice.Pair pair = new OptionChoice.Pair(h, s);
                    if (!tables.isKnown(slot, pair)) {
                        found.add(new Promising(pair, cost));
                    }
                }
            }
        }
        found.stream().sorted(Comparator.comparingDouble(Promising::cost))
            .limit(plan[slot.index()] == null ? MOST_EMPTY : MOST).forEach(p -> into.add(p.pair()));
    }

    /** Pairs of models the group has no option of, whose cheapest pairs together promise better than the group's own. */
    private void otherModels(SlotGroup group, Set<Long> known, List<Set<OptionChoice.Pair>> more) {
        Map<Long, double[]> least = new TreeMap<>();
        Map<Long, String[]> names = new HashMap<>();
        int n = group.slots().size();
        double budget = 0;
        for (int i = 0; i < n; i++) {
            WantedSlot slot = tables.slots().get(group.slots().get(i));
            Priced priced = new Priced(slot);
            budget += budget(slot.index());
            for (int h = 0; h < priced.headPrice.length; h++) {
                for (int s = 0; s < priced.shaftPrice.length; s++) {
                    double cost = priced.cost(h, s);
                    long key = priced.models(h, s);
                    if (!Double.isInfinite(cost) && !known.contains(key)) {
                        double[] row = least.computeIfAbsent(key, k -> {
                            double[] none = new double[n];
                            Arrays.fill(none, Double.POSITIVE_INFINITY);
                            return none;
                        });
                        row[i] = Math.min(row[i], cost);
                        if (!names.containsKey(key)) {
                            names.put(key, new String[] {slot.plans().heads().get(h).model(), slot.plans().shafts().get(s).model()});
                        }
                    }
                }
            }
        }
        for (Map.Entry<Long, double[]> entry : least.entrySet()) {
            if (Arrays.stream(entry.getValue()).sum() < budget) {
                String[] models = names.get(entry.getKey());
                for (int slot : group.slots()) {
                    more.get(slot).addAll(OptionChoice.ofModels(tables.slots().get(slot), models[0], models[1]));
                }
            }
        }
    }
}
