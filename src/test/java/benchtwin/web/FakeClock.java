package benchtwin.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that goes on when it is told to. */
final class FakeClock extends Clock {

    private volatile Instant now = Instant.parse("2026-05-21T07:00:00Z");

    void goOn(Duration by) {
        now = now.plus(by);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("only instants are asked for");
    }
}
