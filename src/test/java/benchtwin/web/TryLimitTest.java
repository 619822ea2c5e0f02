package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.samples.TestClock;
import java.time.Instant;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class TryLimitTest {

    private final TestClock clock = TestClock.at(Instant.parse("2026-05-21T07:00:00Z"));
    private final TryLimit limit = new TryLimit(clock);

    @Test
    void theFirstFewWrongOnesCostNothing() {
        for (int k = 0; k < TryLimit.FREE; k++) {
            assertThat(limit.ask("a")).as("try %d", k + 1).isZero();
        }
        assertThat(limit.ask("a")).isEqualTo(TryLimit.FIRST_WAIT);
    }

    @Test
    void eachFurtherWaitIsTwiceAsLongUpToTheLongest() {
        Duration expected = TryLimit.FIRST_WAIT;
        for (int k = 0; k < TryLimit.FREE; k++) {
            limit.ask("a");
        }
        for (int k = 0; k < 14; k++) {
            assertThat(limit.ask("a")).as("wait %d", k + 1).isEqualTo(expected);
            clock.on(expected.minusMillis(1));
            assertThat(limit.ask("a")).as("a moment too early").isEqualTo(Duration.ofMillis(1));
            clock.on(Duration.ofMillis(1));
            assertThat(limit.ask("a")).isZero();
            expected = expected.multipliedBy(2).compareTo(TryLimit.LONGEST_WAIT) > 0 ? TryLimit.LONGEST_WAIT : expected.multipliedBy(2);
        }
        assertThat(expected).isEqualTo(TryLimit.LONGEST_WAIT);
    }

    @Test
    void theRightOneForgetsTheWrongOnes() {
        limit.ask("a");
        limit.ask("a");
        limit.ask("a");
        limit.right("a");
        assertThat(limit.ask("a")).isZero();
    }

    @Test
    void oneAddressDoesNotMakeAnotherWait() {
        for (int k = 0; k < TryLimit.FREE; k++) {
            limit.ask("a");
        }
        assertThat(limit.ask("a")).isPositive();
        assertThat(limit.ask("b")).isZero();
    }

    @Test
    void manyAddressesTogetherWaitToo() {
        for (int k = 0; k < TryLimit.MOST_OF_ALL; k++) {
            assertThat(limit.ask("a" + k)).isZero();
        }
        assertThat(limit.ask("fresh")).isEqualTo(TryLimit.WINDOW);
        clock.on(TryLimit.WINDOW);
        assertThat(limit.ask("fresh")).isZero();
    }

    @Test
    void afterAWhileAnAddressIsForgotten() {
        for (int k = 0; k < TryLimit.FREE; k++) {
            limit.ask("a");
        }
        clock.on(TryLimit.WINDOW.plusMillis(1));
        for (int k = 0; k < TryLimit.FREE; k++) {
            assertThat(limit.ask("a")).isZero();
        }
    }

    @Test
    void triesAtTheSameTimeCountEach() {
        for (int k = 0; k < TryLimit.FREE; k++) {
            assertThat(limit.ask("a")).isZero();
        }
        assertThat(limit.ask("a")).as("none of the three was answered yet").isPositive();
    }

    @Test
    void aNetworkOfLongAddressesIsOne() {
        assertThat(SignInPages.network("2001:db8:1:2::5")).isEqualTo(SignInPages.network("2001:db8:1:2:ffff::9%eth0"));
        assertThat(SignInPages.network("2001:db8:1:3::5")).isNotEqualTo(SignInPages.network("2001:db8:1:2::5"));
        assertThat(SignInPages.network("192.0.2.5")).isNotEqualTo(SignInPages.network("192.0.2.6"));
    }
}
