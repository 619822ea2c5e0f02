package benchtwin.sets;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.ToIntFunction;

/** Finds options by slot, head and shaft. Sorted arrays: a map of all options would be larger than the options. */
final class OptionIndex {

    private final Option[][] byHead;
    private final Option[][] byShaft;

    OptionIndex(SetModel model) {
        byHead = sorted(model, Comparator.comparingInt(Option::head).thenComparingInt(Option::shaft));
        byShaft = sorted(model, Comparator.comparingInt(Option::shaft).thenComparingInt(Option::head));
    }

    private static Option[][] sorted(SetModel model, Comparator<Option> order) {
        Option[][] sorted = new Option[model.slots()][];
        for (int slot = 0; slot < sorted.length; slot++) {
            List<Option> options = model.options(slot);
            sorted[slot] = options.toArray(Option[]::new);
            Arrays.sort(sorted[slot], order);
        }
        return sorted;
    }

    /** The option of a slot with this head and this shaft, null when there is none. */
    Option find(int slot, int head, int shaft) {
        Option[] options = byHead[slot];
        int low = 0;
        int high = options.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            Option option = options[middle];
            if (option.head() < head || option.head() == head && option.shaft() < shaft) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low < options.length && options[low].head() == head && options[low].shaft() == shaft ? options[low] : null;
    }

    /** Any option of a slot, null when it has none. */
    Option any(int slot, Random random) {
        Option[] options = byHead[slot];
        return options.length == 0 ? null : options[random.nextInt(options.length)];
    }

    /** Any option of a slot with this head, null when there is none. */
    Option withHead(int slot, int head, Random random) {
        return anyWith(byHead[slot], Option::head, head, random);
    }

    /** Any option of a slot with this shaft, null when there is none. */
    Option withShaft(int slot, int shaft, Random random) {
        return anyWith(byShaft[slot], Option::shaft, shaft, random);
    }

    private static Option anyWith(Option[] options, ToIntFunction<Option> part, int wanted, Random random) {
        int from = firstNotBelow(options, part, wanted);
        int to = firstNotBelow(options, part, wanted + 1);
        return from == to ? null : options[from + random.nextInt(to - from)];
    }

    private static int firstNotBelow(Option[] options, ToIntFunction<Option> part, int wanted) {
        int low = 0;
        int high = options.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (part.applyAsInt(options[middle]) < wanted) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
