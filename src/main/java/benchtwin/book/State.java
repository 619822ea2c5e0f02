package benchtwin.book;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How a thing stands, worked out from its events.
 * @param standing how it stands
 * @param facts    what is known of it, by name
 * @param readings what it measures: of each quantity in each condition on each gauge the newest sitting's
 * @param promises to whom it is promised
 * @param club     the club it sits in
 * @param accepted of a club, how it was when it was last as it should be
 */
public record State(Standing standing, Map<String, String> facts, List<CurrentReading> readings, List<Promise> promises,
                    Optional<String> club, Optional<Accepted> accepted) {

    public State {
        facts = Collections.unmodifiableMap(new TreeMap<>(facts));
        readings = List.copyOf(readings);
        promises = List.copyOf(promises);
    }

    /**
     * Something known of it.
     * @param name the fact's name
     * @return empty when it is not known
     */
    public Optional<String> fact(String name) {
        return Optional.ofNullable(facts.get(name));
    }

    /**
     * How many of it there are.
     * @return the count of a counted part, 1 of any other
     */
    public int count() {
        return fact("count").map(Integer::parseInt).orElse(1);
    }

    /**
     * How many of it are promised.
     * @return 0 or more
     */
    public int promised() {
        return promises.stream().mapToInt(Promise::count).sum();
    }
}
