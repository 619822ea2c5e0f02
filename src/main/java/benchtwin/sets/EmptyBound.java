package benchtwin.sets;

import java.util.Arrays;
import java.util.function.ToIntFunction;

/**
 * What the slots that must stay empty weigh at least, from parts of one kind alone: slots and parts matched, every slot that
 * has an option with a part free to take it. Whoever looks at both kinds and at models leaves no less empty.
 * @param weight the least weight of empty slots
 * @param price  by part: what one of it more would save, which is what makes others leave it to who needs it
 * @param slotOf by part: the slot it is matched to where the slot depends on it; -1 otherwise
 */
record EmptyBound(long weight, double[] price, int[] slotOf) {

    /** A slot with no more parts of a kind to choose from is served first. */
    private static final int FEW = 12;
    private static final int NOBODY = -1;

    /** More than all empty slots together. */
    private static final double IMPOSSIBLE = 1e17;

    static EmptyBound ofHeads(SetModel model) {
        return of(model, model.heads(), Option::head);
    }

    static EmptyBound ofShafts(SetModel model) {
        return of(model, model.shafts(), Option::shaft);
    }

    /** Bans for a group what the slots of other groups depend on. */
    void reserve(double[] prices, SetModel model, int group) {
        for (int p = 0; p < prices.length; p++) {
            if (slotOf[p] != NOBODY && model.groupOf(slotOf[p]) != group) {
                prices[p] = Prices.BANNED;
            }
        }
    }

    /** The prices, each a share of what the part would save, with empty slots at the same share of their weight. */
    static Prices prices(SetModel model, EmptyBound ofHeads, EmptyBound ofShafts, double share) {
        double[] head = new double[model.heads()];
        double[] shaft = new double[model.shafts()];
        if (ofHeads.weight >= ofShafts.weight) {
            Arrays.setAll(head, h -> share * ofHeads.price[h]);
        } else {
            Arrays.setAll(shaft, s -> share * ofShafts.price[s]);
        }
        return new Prices(head, shaft, share);
    }

    private static EmptyBound of(SetModel model, int parts, ToIntFunction<Option> part) {
        int slots = model.slots();
        double[][] cost = new double[slots][parts + slots];
        for (int slot = 0; slot < slots; slot++) {
            Arrays.fill(cost[slot], IMPOSSIBLE);
            for (Option option : model.options(slot)) {
                cost[slot][part.applyAsInt(option)] = 0;
            }
            cost[slot][parts + slot] = model.emptyCost(slot);
        }
        Assignment assignment = new Assignment(slots, parts + slots);
        int[] partOf = new int[slots];
        double weight = assignment.solve(cost, slots, parts + slots, partOf);
        double[] price = new double[parts];
        for (int p = 0; p < parts; p++) {
            price[p] = assignment.price(p);
        }
        int[] slotOf = new int[parts];
        Arrays.fill(slotOf, NOBODY);
        for (int slot = 0; slot < slots; slot++) {
            if (partOf[slot] < parts && (price[partOf[slot]] > 0
                || model.options(slot).stream().mapToInt(part).distinct().count() <= FEW)) {
                slotOf[partOf[slot]] = slot;
            }
        }
        return new EmptyBound(Math.round(weight), price, slotOf);
    }
}
