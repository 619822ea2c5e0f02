package benchtwin.book;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;

/** Books for tests. */
final class Books {

    static final Author JO = new Author(Optional.of("Jo"), "test build");

    private Books() {
    }

    static Book in(Path folder) throws BookProblem {
        return Book.open(folder.resolve("test.book"), new TickingClock(Instant.parse("2026-05-01T08:00:00Z")));
    }

    /** A clock that moves on a minute each time it is looked at. */
    static final class TickingClock extends Clock {

        private Instant now;

        TickingClock(Instant start) {
            now = start;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public synchronized Instant instant() {
            now = now.plus(Duration.ofMinutes(1));
            return now;
        }

        synchronized void set(Instant instant) {
            now = instant;
        }
    }
}
