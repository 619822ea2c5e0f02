package benchtwin.sets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * The options of a group as plain arrays: sorted by the pair of head model and shaft model, then by place in the group, then by
 * shaft, so that what can fill one place of one pair lies together. Groups that need not share models have one pair of
 * everything.
 */
final class GroupTable {

    /** Places in the group. */
    final int places;
    final int pairs;
    /** Where the options of a place of a pair begin, by pair × places + place; the next entry is where they end. */
    final int[] start;
    final Option[] option;
    final int[] head;
    final int[] shaft;
    /** Shaft, head model and shaft model, numbered within the group. */
    final int[] shaftHere;
    final int[] headModelHere;
    final int[] shaftModelHere;
    final int shaftsHere;
    final int headModelsHere;
    final int shaftModelsHere;
    /** Cost, and what the residuals would cost about a centre of 0. */
    final double[] base;
    /** Residuals that are weighed, by kind. */
    final int[] kinds;
    final double[] weight;
    final double[][] residual;

    private record Entry(long pair, int place, Option option) {
    }

    GroupTable(SetModel model, SlotGroup group) {
        places = group.slots().size();
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            for (Option each : model.options(group.slots().get(i))) {
                long pair = group.sameModels()
                    ? (long) model.headModel(each.head()) << 32 | model.shaftModel(each.shaft()) : 0;
                entries.add(new Entry(pair, i, each));
            }
        }
        entries.sort(Comparator.comparingLong(Entry::pair).thenComparingInt(Entry::place)
            .thenComparingInt(entry -> entry.option().shaft()).thenComparingInt(entry -> entry.option().head()));
        long[] pairKeys = entries.stream().mapToLong(Entry::pair).distinct().toArray();
        pairs = pairKeys.length;
        start = new int[pairs * places + 1];
        option = entries.stream().map(Entry::option).toArray(Option[]::new);
        head = entries.stream().mapToInt(entry -> entry.option().head()).toArray();
        shaft = entries.stream().mapToInt(entry -> entry.option().shaft()).toArray();
        int[] headModel = entries.stream().mapToInt(entry -> model.headModel(entry.option().head())).toArray();
        int[] shaftModel = entries.stream().mapToInt(entry -> model.shaftModel(entry.option().shaft())).toArray();
        shaftHere = new int[option.length];
        headModelHere = new int[option.length];
        shaftModelHere = new int[option.length];
        shaftsHere = number(shaft, shaftHere);
        headModelsHere = number(headModel, headModelHere);
        shaftModelsHere = number(shaftModel, shaftModelHere);
        int at = 0;
        for (int p = 0; p < pairs; p++) {
            for (int i = 0; i < places; i++) {
                start[p * places + i] = at;
                while (at < option.length && entries.get(at).pair() == pairKeys[p] && entries.get(at).place() == i) {
                    at++;
                }
            }
        }
        start[pairs * places] = option.length;
        kinds = group.spreadKinds();
        weight = new double[kinds.length];
        residual = new double[kinds.length][option.length];
        base = new double[option.length];
        for (int o = 0; o < option.length; o++) {
            base[o] = option[o].cost();
            for (int b = 0; b < kinds.length; b++) {
                weight[b] = group.weights()[kinds[b]];
                double r = option[o].residual(kinds[b]);
                residual[b][o] = r;
                base[o] += weight[b] * r * r;
            }
        }
    }

    private static int number(int[] ids, int[] here) {
        TreeSet<Integer> seen = new TreeSet<>();
        for (int id : ids) {
            seen.add(id);
        }
        int[] sorted = seen.stream().mapToInt(Integer::intValue).toArray();
        for (int o = 0; o < ids.length; o++) {
            here[o] = Arrays.binarySearch(sorted, ids[o]);
        }
        return sorted.length;
    }
}
