package benchtwin.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;

/** Browsers on other machines that gave the passphrase. They are remembered here and nowhere else, so ending the program signs all out. */
final class Sessions {

    /** A tablet that lies unused longer has to give the passphrase again; ours: with gloves on, nobody types it every half hour. */
    static final Duration IDLE = Duration.ofHours(4);
    /** So does one that was in use all day; ours. */
    static final Duration LONGEST = Duration.ofHours(24);
    /** More are not remembered: the one that lay unused longest goes; ours. */
    static final int MOST = 200;

    private record Session(Instant began, Instant used) {

        private boolean isOver(Instant now) {
            return now.isAfter(used.plus(IDLE)) || now.isAfter(began.plus(LONGEST));
        }
    }

    private final Clock clock;
    private final Map<String, Session> open = new HashMap<>();

    Sessions(Clock clock) {
        this.clock = clock;
    }

    /** A browser gave the passphrase. */
    synchronized void open(String id) {
        Instant now = clock.instant();
        open.values().removeIf(session -> session.isOver(now));
        if (open.size() >= MOST) {
            open.entrySet().stream().min(Comparator.comparing(entry -> entry.getValue().used())).map(Map.Entry::getKey).ifPresent(open::remove);
        }
        open.put(id, new Session(now, now));
    }

    /** Whether a browser may go on; asking counts as use. */
    synchronized boolean use(String id) {
        Instant now = clock.instant();
        Session session = open.get(id);
        if (session == null) {
            return false;
        }
        if (session.isOver(now)) {
            open.remove(id);
            return false;
        }
        open.put(id, new Session(session.began(), now));
        return true;
    }

    /** A browser signed out. */
    synchronized void close(String id) {
        open.remove(id);
    }
}
