package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sun.misc.Signal;

/** Ctrl-C while a search runs. The signal is a real one, raised in this process. */
class StopKeyTest {

    private static final long PATIENCE_MS = 60_000;

    @Test
    void theFirstPressIsNotedAndEndsNothing() throws InterruptedException {
        Signal key = new Signal("INT");
        // something else to fall back on, so that the test cannot end its own process
        var before = Signal.handle(key, signal -> { });
        try (StopKey stop = StopKey.watch()) {
            assertThat(stop.isPressed()).isFalse();
            Signal.raise(key);
            for (long waited = 0; !stop.isPressed() && waited < PATIENCE_MS; waited += 10) {
                Thread.sleep(10);
            }
            assertThat(stop.isPressed()).isTrue();
        } finally {
            Signal.handle(key, before);
        }
    }
}
