package benchtwin.sets;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Plans and pins drawn at random, sound or not. */
final class RandomPlan {

    private RandomPlan() {
    }

    /** Every slot empty, or filled with anything it can have, whoever else has it. */
    static Option[] of(SetModel model, Random random) {
        Option[] plan = new Option[model.slots()];
        double empty = random.nextDouble() * 0.5;
        for (int slot = 0; slot < plan.length; slot++) {
            List<Option> options = model.options(slot);
            if (!options.isEmpty() && random.nextDouble() >= empty) {
                plan[slot] = options.get(random.nextInt(options.size()));
            }
        }
        return plan;
    }

    /** Some slots pinned to a head, a shaft or both that fit them, and some parts left out. */
    static Pins pins(SetModel model, Random random) {
        Map<Integer, Integer> head = new HashMap<>();
        Map<Integer, Integer> shaft = new HashMap<>();
        for (int slot = 0; slot < model.slots(); slot++) {
            List<Option> options = model.options(slot);
            if (!options.isEmpty() && random.nextInt(4) == 0) {
                Option option = options.get(random.nextInt(options.size()));
                if (random.nextInt(3) > 0 && !head.containsValue(option.head())) {
                    head.put(slot, option.head());
                }
                if (random.nextInt(3) > 0 && !shaft.containsValue(option.shaft())) {
                    shaft.put(slot, option.shaft());
                }
            }
        }
        return new Pins(head, shaft, left(model.heads(), head, random), left(model.shafts(), shaft, random));
    }

    private static Set<Integer> left(int parts, Map<Integer, Integer> pinned, Random random) {
        Set<Integer> left = new HashSet<>();
        for (int part = 0; part < parts; part++) {
            if (random.nextInt(6) == 0 && !pinned.containsValue(part)) {
                left.add(part);
            }
        }
        return left;
    }
}
