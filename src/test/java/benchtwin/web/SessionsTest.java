package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.samples.TestClock;
import java.time.Instant;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class SessionsTest {

    private final TestClock clock = TestClock.at(Instant.parse("2026-05-21T07:00:00Z"));
    private final Sessions sessions = new Sessions(clock);

    @Test
    void onlyWhoSignedInMayGoOn() {
        sessions.open("a");
        assertThat(sessions.use("a")).isTrue();
        assertThat(sessions.use("b")).isFalse();
        sessions.close("a");
        assertThat(sessions.use("a")).isFalse();
    }

    @Test
    void usedAgainInTimeItGoesOn() {
        sessions.open("a");
        for (int k = 0; k < 5; k++) {
            clock.on(Sessions.IDLE);
            assertThat(sessions.use("a")).as("after %d times the idle time", k + 1).isTrue();
        }
    }

    @Test
    void unusedForLongerItEnds() {
        sessions.open("a");
        clock.on(Sessions.IDLE.plusMillis(1));
        assertThat(sessions.use("a")).isFalse();
        assertThat(sessions.use("a")).as("and stays so").isFalse();
    }

    @Test
    void afterADayItEndsHoweverMuchItIsUsed() {
        sessions.open("a");
        Duration step = Sessions.LONGEST.dividedBy(8);
        for (int k = 0; k < 8; k++) {
            clock.on(step);
            assertThat(sessions.use("a")).isTrue();
        }
        clock.on(Duration.ofMillis(1));
        assertThat(sessions.use("a")).isFalse();
    }

    @Test
    void ofTooManyTheOneUnusedLongestGoes() {
        for (int k = 0; k < Sessions.MOST; k++) {
            sessions.open("s" + k);
            clock.on(Duration.ofSeconds(1));
        }
        sessions.use("s0");
        clock.on(Duration.ofSeconds(1));
        sessions.open("one more");
        assertThat(sessions.use("s0")).isTrue();
        assertThat(sessions.use("s1")).isFalse();
        assertThat(sessions.use("s2")).isTrue();
        assertThat(sessions.use("one more")).isTrue();
    }
}
