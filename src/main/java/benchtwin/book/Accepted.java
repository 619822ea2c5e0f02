package benchtwin.book;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How a club was when it was last as it should be.
 * @param since    when
 * @param facts    what it was made of, by name
 * @param readings what it measured
 */
public record Accepted(Moment since, Map<String, String> facts, List<CurrentReading> readings) {

    public Accepted {
        facts = Collections.unmodifiableMap(new TreeMap<>(facts));
        readings = List.copyOf(readings);
    }
}
