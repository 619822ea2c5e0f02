package benchtwin.sets;

import benchtwin.club.Head;
import benchtwin.club.Shaft;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Chooses which head and shaft pairs of a group are worth working out, by their rough costs. A group that must share models
 * keeps the best pairs of models; each club keeps, for each, its best heads crossed with its best shafts, so that what one
 * set takes leaves another something.
 */
final class OptionChoice {

    /** Pairs of models a sharing group keeps. */
    private static final int MODEL_PAIRS = 8;
    /** Heads of one model a club keeps, and shafts of one model. */
    private static final int HEADS_OF_A_MODEL = 5;
    private static final int SHAFTS_OF_A_MODEL = 10;
    /** Heads and shafts a club keeps that need not share. */
    private static final int HEADS = 12;
    private static final int SHAFTS = 16;
    /** A club left out weighs so much when pairs of models are compared, squared tolerances. */
    private static final double LEFT_OUT = 50;

    private final List<WantedSlot> slots;
    private final boolean sameModels;

    OptionChoice(List<WantedSlot> slots, boolean sameModels) {
        this.slots = slots;
        this.sameModels = sameModels;
    }

    /**
     * A pair worth working out.
     * @param head  place in the slot's list of heads
     * @param shaft place in the slot's list of shafts
     */
    record Pair(int head, int shaft) {
    }

    /**
     * The choice.
     * @return by place in the group: pairs
     */
    List<Set<Pair>> choose() {
        List<Set<Pair>> chosen = new ArrayList<>();
        slots.forEach(slot -> chosen.add(new LinkedHashSet<>()));
        if (!sameModels) {
            for (int i = 0; i < slots.size(); i++) {
                WantedSlot slot = slots.get(i);
                cross(slot, all(slot.plans().heads().size()), all(slot.plans().shafts().size()), HEADS, SHAFTS, chosen.get(i));
            }
            return chosen;
        }
        for (Models models : bestModels()) {
            for (int i = 0; i < slots.size(); i++) {
                chosen.get(i).addAll(ofModels(slots.get(i), models.head(), models.shaft()));
            }
        }
        return chosen;
    }

    private record Models(String head, String shaft, double cost) {
    }

    private List<Models> bestModels() {
        Map<String, Integer> headModels = numbered(slots.stream().flatMap(slot -> slot.plans().heads().stream()).map(Head::model));
        Map<String, Integer> shaftModels = numbered(slots.stream().flatMap(slot -> slot.plans().shafts().stream())
            .map(Shaft::model));
        double[][] sum = new double[headModels.size()][shaftModels.size()];
        for (WantedSlot slot : slots) {
            double[][] least = new double[headModels.size()][shaftModels.size()];
            for (double[] row : least) {
                Arrays.fill(row, LEFT_OUT);
            }
            int[] headModel = slot.plans().heads().stream().mapToInt(head -> headModels.get(head.model())).toArray();
            int[] shaftModel = slot.plans().shafts().stream().mapToInt(shaft -> shaftModels.get(shaft.model())).toArray();
            for (int h = 0; h < headModel.length; h++) {
                for (int s = 0; s < shaftModel.length; s++) {
                    double[] row = least[headModel[h]];
                    row[shaftModel[s]] = Math.min(row[shaftModel[s]], slot.roughCost(h, s));
                }
            }
            for (int h = 0; h < least.length; h++) {
                for (int s = 0; s < least[h].length; s++) {
                    sum[h][s] += least[h][s];
                }
            }
        }
        List<Models> all = new ArrayList<>();
        headModels.forEach((head, h) -> shaftModels.forEach((shaft, s) -> all.add(new Models(head, shaft, sum[h][s]))));
        return all.stream().filter(models -> models.cost() < LEFT_OUT * slots.size())
            .sorted(Comparator.comparingDouble(Models::cost)).limit(MODEL_PAIRS).toList();
    }

    /** Names in order, numbered from 0. */
    private static Map<String, Integer> numbered(Stream<String> names) {
        Map<String, Integer> numbers = new TreeMap<>();
        names.forEach(name -> numbers.put(name, 0));
        int next = 0;
        for (Map.Entry<String, Integer> entry : numbers.entrySet()) {
            entry.setValue(next++);
        }
        return numbers;
    }

    /**
     * The best heads of one model crossed with the best shafts of one model.
     * @param slot       the club
     * @param headModel  name of the head model
     * @param shaftModel name of the shaft model
     * @return pairs
     */
    static Set<Pair> ofModels(WantedSlot slot, String headModel, String shaftModel) {
        Set<Pair> pairs = new LinkedHashSet<>();
        cross(slot, headsOf(slot, headModel), shaftsOf(slot, shaftModel), HEADS_OF_A_MODEL, SHAFTS_OF_A_MODEL, pairs);
        return pairs;
    }

    private static int[] all(int count) {
        return IntStream.range(0, count).toArray();
    }

    private static int[] headsOf(WantedSlot slot, String model) {
        List<Head> heads = slot.plans().heads();
        return IntStream.range(0, heads.size()).filter(h -> heads.get(h).model().equals(model)).toArray();
    }

    private static int[] shaftsOf(WantedSlot slot, String model) {
        List<Shaft> shafts = slot.plans().shafts();
        return IntStream.range(0, shafts.size()).filter(s -> shafts.get(s).model().equals(model)).toArray();
    }

    /** The best heads by their best shaft, crossed with the best shafts by their best of those heads. */
    private static void cross(WantedSlot slot, int[] heads, int[] shafts, int mostHeads, int mostShafts, Set<Pair> into) {
        int[] bestHeads = best(heads, mostHeads, h -> least(shafts, s -> slot.roughCost(h, s)));
        int[] bestShafts = best(shafts, mostShafts, s -> least(bestHeads, h -> slot.roughCost(h, s)));
        for (int h : bestHeads) {
            for (int s : bestShafts) {
                if (!Double.isInfinite(slot.roughCost(h, s))) {
                    into.add(new Pair(h, s));
                }
            }
        }
    }

    private interface Cost {
        double of(int part);
    }

    private static double least(int[] parts, Cost cost) {
        double least = Double.POSITIVE_INFINITY;
        for (int part : parts) {
            least = Math.min(least, cost.of(part));
        }
        return least;
    }

    private static int[] best(int[] parts, int most, Cost cost) {
        record Costed(int part, double cost) {
        }
        return IntStream.of(parts).mapToObj(part -> new Costed(part, cost.of(part)))
            .filter(costed -> !Double.isInfinite(costed.cost()))
            .sorted(Comparator.comparingDouble(Costed::cost).thenComparingInt(Costed::part)).limit(most)
            .mapToInt(Costed::part).toArray();
    }
}
