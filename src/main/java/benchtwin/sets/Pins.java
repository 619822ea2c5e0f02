package benchtwin.sets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Choices fixed by hand.
 * @param head       by slot: the head it is to have
 * @param shaft      by slot: the shaft it is to have
 * @param headsLeft  heads not to be used anywhere
 * @param shaftsLeft shafts not to be used anywhere
 */
record Pins(Map<Integer, Integer> head, Map<Integer, Integer> shaft, Set<Integer> headsLeft, Set<Integer> shaftsLeft) {

    Pins {
        head = Map.copyOf(head);
        shaft = Map.copyOf(shaft);
        headsLeft = Set.copyOf(headsLeft);
        shaftsLeft = Set.copyOf(shaftsLeft);
        check("head", head, headsLeft);
        check("shaft", shaft, shaftsLeft);
    }

    static Pins none() {
        return new Pins(Map.of(), Map.of(), Set.of(), Set.of());
    }

    private static void check(String part, Map<Integer, Integer> pinned, Set<Integer> left) {
        Map<Integer, Integer> slotOf = new HashMap<>();
        pinned.forEach((slot, index) -> {
            Integer other = slotOf.put(index, slot);
            if (other != null) {
                throw new IllegalArgumentException("%s %d is pinned to slots %d and %d"
                    .formatted(part, index, Math.min(slot, other), Math.max(slot, other)));
            }
            if (left.contains(index)) {
                throw new IllegalArgumentException("%s %d is pinned to slot %d and left out".formatted(part, index, slot));
            }
        });
    }

    /** Whether a slot may be filled so: with what is pinned to it, and nothing that is pinned elsewhere or left out. */
    boolean allow(Option option) {
        return allow(head, headsLeft, option.slot(), option.head()) && allow(shaft, shaftsLeft, option.slot(), option.shaft());
    }

    private static boolean allow(Map<Integer, Integer> pinned, Set<Integer> left, int slot, int part) {
        Integer own = pinned.get(slot);
        return own != null ? own == part : !left.contains(part) && !pinned.containsValue(part);
    }

    /**
     * The same problem for a search that knows nothing of pins: the options are only those that are allowed, so that no pin
     * can be broken but by leaving a slot empty; and that weighs, for each part pinned to it, more than all slots together.
     */
    SetModel within(SetModel model) {
        List<List<Option>> allowed = new ArrayList<>();
        long[] emptyCost = new long[model.slots()];
        long all = 0;
        for (int slot = 0; slot < emptyCost.length; slot++) {
            allowed.add(model.options(slot).stream().filter(this::allow).toList());
            all += model.emptyCost(slot);
        }
        for (int slot = 0; slot < emptyCost.length; slot++) {
            int pinned = (head.containsKey(slot) ? 1 : 0) + (shaft.containsKey(slot) ? 1 : 0);
            emptyCost[slot] = model.emptyCost(slot) + pinned * all;
        }
        return model.withOptions(allowed).withEmptyCost(emptyCost);
    }
}
