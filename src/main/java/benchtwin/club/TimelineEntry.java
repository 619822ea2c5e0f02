package benchtwin.club;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * One thing that happened to a club or a part, with what was read then.
 * @param when        when it happened
 * @param text        what happened, in words
 * @param values      what was read, as it is known now; empty when nothing was
 * @param corrections what stood here before; a quantity that has a correction but no value was taken back
 */
public record TimelineEntry(BenchTime when, String text, Map<Quantity, TimelineValue> values,
                            List<ValueCorrection> corrections) {

    public TimelineEntry {
        text = text.strip();
        if (text.isEmpty()) {
            throw new IllegalArgumentException("an entry of %s says nothing".formatted(when.text()));
        }
        EnumMap<Quantity, TimelineValue> copy = new EnumMap<>(Quantity.class);
        copy.putAll(values);
        values = Collections.unmodifiableMap(copy);
        corrections = List.copyOf(corrections);
    }

    /**
     * Something that was done, with nothing read.
     * @param when when
     * @param text what
     */
    public TimelineEntry(BenchTime when, String text) {
        this(when, text, Map.of(), List.of());
    }
}
