package benchtwin.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;

/**
 * How often the passphrase may be tried. After a few wrong ones an address waits, twice as long each time. All addresses together have
 * a count too, or many machines could share the guessing; while that is used up, nobody on the network signs in, but who is signed in
 * stays so, and this machine itself never needs the passphrase.
 */
final class TryLimit {

    /** Wrong tries of an address before it waits; ours: typing with gloves goes wrong. */
    static final int FREE = 3;
    /** The first wait; ours. */
    static final Duration FIRST_WAIT = Duration.ofSeconds(2);
    /** The longest; ours. */
    static final Duration LONGEST_WAIT = Duration.ofMinutes(15);
    /** Tries of all addresses together within {@link #WINDOW}; ours. */
    static final int MOST_OF_ALL = 40;
    /** Wrong tries are forgotten after this; ours. */
    static final Duration WINDOW = Duration.ofMinutes(30);
    /** Addresses that are remembered; more than this is no workshop. */
    private static final int MOST_ADDRESSES = 1_000;

    private record Tries(int count, Instant last) {

        private Instant until() {
            if (count < FREE) {
                return last;
            }
            int doublings = Math.min(count - FREE, 20);
            Duration wait = FIRST_WAIT.multipliedBy(1L << doublings);
            return last.plus(wait.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : wait);
        }
    }

    private final Clock clock;
    private final Map<String, Tries> byAddress = new HashMap<>();
    private Instant windowBegan = Instant.MIN;
    private int ofAll;

    TryLimit(Clock clock) {
        this.clock = clock;
    }

    /**
     * Asks for a try, and counts it as a wrong one until {@link #right} says otherwise, so that tries at the same time count too.
     * @return zero when it may be tried now, else how long to wait; a try that has to wait does not count
     */
    synchronized Duration ask(String address) {
        Instant now = clock.instant();
        byAddress.values().removeIf(tries -> now.isAfter(tries.last().plus(WINDOW)));
        if (windowBegan == Instant.MIN || !now.isBefore(windowBegan.plus(WINDOW))) {
            windowBegan = now;
            ofAll = 0;
        }
        Tries before = byAddress.getOrDefault(address, new Tries(0, now));
        Instant until = ofAll >= MOST_OF_ALL ? later(before.until(), windowBegan.plus(WINDOW)) : before.until();
        if (until.isAfter(now)) {
            return Duration.between(now, until);
        }
        if (byAddress.size() >= MOST_ADDRESSES && !byAddress.containsKey(address)) {
            byAddress.entrySet().stream().min(Comparator.comparing(entry -> entry.getValue().last())).map(Map.Entry::getKey)
                .ifPresent(byAddress::remove);
        }
        ofAll++;
        byAddress.put(address, new Tries(before.count() + 1, now));
        return Duration.ZERO;
    }

    /** The try that was let through was the right passphrase. */
    synchronized void right(String address) {
        byAddress.remove(address);
        ofAll = Math.max(0, ofAll - 1);
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}
