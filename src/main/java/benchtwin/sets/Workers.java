package benchtwin.sets;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/** Does numbered pieces of work on a few threads. Each piece writes only its own result, so their number changes nothing. */
final class Workers {

    private final int threads;
    private final ThreadPoolExecutor pool;

    /**
     * @param threads at least one, the caller's own
     */
    Workers(int threads) {
        this.threads = threads;
        pool = threads < 2 ? null : new ThreadPoolExecutor(threads - 1, threads - 1, 1, TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(), work -> {
                Thread thread = new Thread(work, "sets");
                thread.setDaemon(true);
                return thread;
            });
        if (pool != null) {
            pool.allowCoreThreadTimeOut(true);
        }
    }

    /** Does the pieces 0 to count − 1 and returns when all are done. */
    void each(int count, IntConsumer piece) {
        AtomicInteger next = new AtomicInteger();
        Runnable pieces = () -> {
            for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                piece.accept(i);
            }
        };
        List<Future<?>> others = new ArrayList<>();
        for (int thread = 1; thread < Math.min(threads, count); thread++) {
            others.add(pool.submit(pieces));
        }
        pieces.run();
        for (Future<?> other : others) {
            try {
                other.get();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("interrupted while planning", e);
            } catch (ExecutionException e) {
                throw new IllegalStateException(e.getCause());
            }
        }
    }
}
