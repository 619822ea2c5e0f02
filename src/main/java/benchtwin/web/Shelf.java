package benchtwin.web;

import java.security.SecureRandom;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Keeps a few things between one request and the next, each under a name nobody can guess, for half an hour after its last use. */
final class Shelf<T> {

    private static final Duration LONGEST = Duration.ofMinutes(30);
    private static final int NAME_BYTES = 12;

    private record Kept<T>(T thing, long usedNanos) {
    }

    private final SecureRandom random = new SecureRandom();
    private final int most;
    private final Consumer<T> putAway;
    private final Map<String, Kept<T>> kept = new LinkedHashMap<>(16, 0.75f, true);

    /**
     * @param most    how many there is room for; the one used longest ago makes room
     * @param putAway what is done with one that goes
     */
    Shelf(int most, Consumer<T> putAway) {
        this.most = most;
        this.putAway = putAway;
    }

    /** Keeps a thing and gives its name. */
    synchronized String put(T thing) {
        tidy();
        byte[] bytes = new byte[NAME_BYTES];
        random.nextBytes(bytes);
        String name = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        kept.put(name, new Kept<>(thing, System.nanoTime()));
        return name;
    }

    /** A thing by its name; empty once it was put away. */
    synchronized Optional<T> get(String name) {
        tidy();
        Kept<T> found = kept.get(name);
        if (found == null) {
            return Optional.empty();
        }
        kept.put(name, new Kept<>(found.thing(), System.nanoTime()));
        return Optional.of(found.thing());
    }

    private void tidy() {
        List<T> gone = new ArrayList<>();
        Iterator<Kept<T>> oldestFirst = kept.values().iterator();
        while (oldestFirst.hasNext()) {
            Kept<T> one = oldestFirst.next();
            if (kept.size() <= most && System.nanoTime() - one.usedNanos() <= LONGEST.toNanos()) {
                break;
            }
            oldestFirst.remove();
            gone.add(one.thing());
        }
        gone.forEach(putAway);
    }
}
