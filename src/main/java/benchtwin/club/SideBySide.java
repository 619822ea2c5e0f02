package benchtwin.club;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Two clubs, or one club on two dates, value by value.
 * @param a      what the first is called, the one held to
 * @param b      what the second is called
 * @param values what either was read in, at least one
 */
public record SideBySide(String a, String b, Map<Quantity, ValueComparison> values) {

    public SideBySide {
        a = a.strip();
        b = b.strip();
        if (a.isEmpty() || b.isEmpty()) {
            throw new IllegalArgumentException("what is compared must have a name");
        }
        if (values.isEmpty()) {
            throw new IllegalArgumentException("%s and %s: there is no value to compare".formatted(a, b));
        }
        EnumMap<Quantity, ValueComparison> copy = new EnumMap<>(Quantity.class);
        copy.putAll(values);
        values = Collections.unmodifiableMap(copy);
    }
}
