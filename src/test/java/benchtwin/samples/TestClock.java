package benchtwin.samples;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that goes on when it is told to, and, where it ticks, each time it is looked at too. */
public final class TestClock extends Clock {

    private final Duration tick;
    private Instant now;

    private TestClock(Instant now, Duration tick) {
        this.now = now;
        this.tick = tick;
    }

    /** Stands until it is told to go on. */
    public static TestClock at(Instant now) {
        return new TestClock(now, Duration.ZERO);
    }

    /** Goes on by a minute before it tells the time, so that no two looks at it see the same. */
    public static TestClock ticking(Instant start) {
        return new TestClock(start, Duration.ofMinutes(1));
    }

    public synchronized void on(Duration by) {
        now = now.plus(by);
    }

    public synchronized void set(Instant instant) {
        now = instant;
    }

    @Override
    public synchronized Instant instant() {
        now = now.plus(tick);
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
