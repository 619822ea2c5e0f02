package benchtwin.cli;

import java.util.concurrent.atomic.AtomicBoolean;
import sun.misc.Signal;
import sun.misc.SignalHandler;

/**
 * Lets Ctrl-C end a search with what it has so far. While one is open, the first Ctrl-C is only noted; a second one ends the
 * program as usual, and so does the first where the machine does not let the key be caught.
 */
final class StopKey implements AutoCloseable {

    private static final Signal KEY = new Signal("INT");

    private final AtomicBoolean pressed = new AtomicBoolean();
    private final SignalHandler before;

    private StopKey() {
        SignalHandler usual;
        try {
            usual = Signal.handle(KEY, signal -> noted());
        } catch (IllegalArgumentException notToBeHad) {
            usual = null;
        }
        this.before = usual;
    }

    static StopKey watch() {
        return new StopKey();
    }

    private void noted() {
        pressed.set(true);
        Signal.handle(KEY, SignalHandler.SIG_DFL);
    }

    boolean isPressed() {
        return pressed.get();
    }

    @Override
    public void close() {
        if (before != null) {
            Signal.handle(KEY, before);
        }
    }
}
