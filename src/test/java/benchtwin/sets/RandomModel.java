package benchtwin.sets;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Small random problems, seeded: few parts and few models, so that wishes meet. */
final class RandomModel {

    static final long EMPTY = 100_000_000_000L;

    private RandomModel() {
    }

    /**
     * A problem.
     * @param seed   same seed, same problem
     * @param groups sizes of the groups
     * @param heads  how many heads
     * @param shafts how many shafts
     * @param share  the share of pairs that fit
     */
    static SetModel of(long seed, int[] groups, int heads, int shafts, double share) {
        Random random = new Random(seed);
        int[] headModel = random.ints(heads, 0, 3).toArray();
        int[] shaftModel = random.ints(shafts, 0, 2).toArray();
        List<SlotGroup> list = new ArrayList<>();
        List<List<Option>> options = new ArrayList<>();
        int slots = 0;
        for (int g = 0; g < groups.length; g++) {
            List<Integer> members = new ArrayList<>();
            for (int i = 0; i < groups[g]; i++) {
                members.add(slots++);
                List<Option> fitting = new ArrayList<>();
                for (int h = 0; h < heads; h++) {
                    for (int s = 0; s < shafts; s++) {
                        if (random.nextDouble() < share) {
                            fitting.add(new Option(slots - 1, h, s, 1000L * random.nextInt(4000),
                                random.nextInt(4000) - 2000, random.nextInt(3000) - 1500, random.nextInt(2000) - 1000));
                        }
                    }
                }
                options.add(fitting);
            }
            boolean must = g % 3 != 2;
            list.add(new SlotGroup(members, must, new long[] {1, 1, g % 2}, must ? 0 : 300_000));
        }
        long[] empty = new long[slots];
        for (int s = 0; s < slots; s++) {
            empty[s] = EMPTY * (1 + s % 3);
        }
        return new SetModel(list, empty, headModel, shaftModel, options);
    }

    /** Random prices, many of them 0. */
    static Prices prices(SetModel model, long seed) {
        Random random = new Random(seed);
        Prices prices = Prices.none(model);
        for (int h = 0; h < model.heads(); h++) {
            prices.head()[h] = random.nextInt(3) == 0 ? 1000.0 * random.nextInt(2000) : 0;
        }
        for (int s = 0; s < model.shafts(); s++) {
            prices.shaft()[s] = random.nextInt(3) == 0 ? 1000.0 * random.nextInt(2000) : 0;
        }
        return prices;
    }
}
