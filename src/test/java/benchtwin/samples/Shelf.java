package benchtwin.samples;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Parts of one kind as they are tagged: in no order, with gaps, as after years of coming and going. */
final class Shelf<T> {

    private final String prefix;
    private final List<Integer> numbers;
    private final List<T> parts = new ArrayList<>();

    /**
     * An empty shelf.
     * @param prefix what its tags begin with
     * @param most   highest number
     * @param draw   decides which part gets which
     */
    Shelf(String prefix, int most, Draw draw) {
        this.prefix = prefix;
        this.numbers = new ArrayList<>(IntStream.rangeClosed(1, most).boxed().toList());
        Collections.shuffle(numbers, draw.random());
    }

    /** Higher numbers for what comes in later; those given out before stay as they are. */
    void extend(int most, Draw draw) {
        List<Integer> more = new ArrayList<>(IntStream.rangeClosed(numbers.size() + 1, most).boxed().toList());
        Collections.shuffle(more, draw.random());
        numbers.addAll(more);
    }

    /** Tags a part and keeps it. */
    T add(Function<String, T> tagged) {
        T part = tagged.apply(String.format(Locale.ROOT, "%s-%03d", prefix, numbers.get(parts.size())));
        parts.add(part);
        return part;
    }

    /** The parts by tag. */
    List<T> all(Function<T, String> tag) {
        return parts.stream().sorted((a, b) -> tag.apply(a).compareTo(tag.apply(b))).toList();
    }
}
