package benchtwin.cli;

import benchtwin.sets.PlanProgress;
import java.io.PrintWriter;
import java.util.Timer;
import java.util.TimerTask;
import java.util.function.Consumer;

/** One line that tells where a search stands, written over itself, and gone when it ends. */
final class ProgressLine implements Consumer<PlanProgress>, AutoCloseable {

    private static final long TICK_MS = 1000;
    private static final double NANOS_A_SECOND = 1e9;

    private final PrintWriter err;
    private final int clubs;
    private final long startNanos = System.nanoTime();
    private final Timer clock = new Timer("progress", true);
    private PlanProgress latest;
    private int written;
    private boolean closed;

    /**
     * Starts it.
     * @param err   a terminal
     * @param clubs how many are to be planned
     */
    ProgressLine(PrintWriter err, int clubs) {
        this.err = err;
        this.clubs = clubs;
        clock.schedule(new TimerTask() {
            @Override
            public void run() {
                write();
            }
        }, 0, TICK_MS);
    }

    @Override
    public synchronized void accept(PlanProgress progress) {
        latest = progress;
        write();
    }

    private synchronized void write() {
        if (!closed) {
            over(text(latest, clubs, (System.nanoTime() - startNanos) / NANOS_A_SECOND));
        }
    }

    private void over(String text) {
        err.print("\r" + text + " ".repeat(Math.max(0, written - text.length())));
        err.flush();
        written = text.length();
    }

    /** The line, at most as wide as a page. */
    static String text(PlanProgress progress, int clubs, double seconds) {
        if (progress == null) {
            return "Working out what fits %d clubs ... %.0f s".formatted(clubs, seconds);
        }
        String gap = progress.gapPercent().isPresent()
            ? Figures.fixed(progress.gapPercent().getAsDouble(), 1) + "% from proven" : "not proven yet";
        return "Round %d: %d of %d built, %d out of tolerance, cost %s, %s, %.0f s; Ctrl-C keeps this plan".formatted(
            progress.rounds(), clubs - progress.unbuilt(), clubs, progress.outOfTolerance(),
            Figures.fixed(progress.cost(), 2), gap, seconds);
    }

    @Override
    public synchronized void close() {
        closed = true;
        clock.cancel();
        err.print("\r" + " ".repeat(written) + "\r");
        err.flush();
    }
}
