package benchtwin.bench;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.FutureTask;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * The last answers by what was asked, for as long as the stock they were worked out from is the newest. Each is worked out once, on a
 * thread of its own, whoever asks for it meanwhile. Safe for several threads.
 * @param <A> an answer that nobody changes
 */
public final class AnswerMemory<A> {

    /** So many answers are kept: a bench looks at a few clubs, each with a few tolerances tried. */
    private static final int KEPT = 24;
    /** So many are worked out at the same time; each takes a whole core. */
    private static final int AT_ONCE = 2;
    private static final Executor WORKERS = workers();

    private Workshop workshop;
    private final Map<Object, FutureTask<A>> answers = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, FutureTask<A>> eldest) {
            return size() > KEPT;
        }
    };

    /**
     * How an answer is worked out.
     * @param <A> the answer
     */
    @FunctionalInterface
    public interface Asks<A> {

        /**
         * Works it out.
         * @return the answer
         * @throws BadInput when it cannot be
         */
        A answer() throws BadInput;
    }

    /** What was asked last is worked out first: of a tolerance that is tried again and again only the last matters. */
    private static Executor workers() {
        LinkedBlockingDeque<Runnable> waiting = new LinkedBlockingDeque<>() {
            private static final long serialVersionUID = 1;

            @Override
            public boolean offer(Runnable task) {
                return offerFirst(task);
            }
        };
        return new ThreadPoolExecutor(AT_ONCE, AT_ONCE, 0, TimeUnit.SECONDS, waiting, task -> {
            Thread thread = new Thread(task, "an answer");
            thread.setDaemon(true);
            return thread;
        });
    }

    /**
     * The answer, remembered or worked out, if it is there in time. It is worked out to its end either way.
     * @param patience how long to wait; for ever when empty
     * @param newest   the stock it is worked out from, the very object
     * @param asked    what is asked, with an equals of its own
     * @param asks     works it out
     * @return empty while it is being worked out
     * @throws BadInput when it cannot be worked out; that is not remembered
     */
    public Optional<A> within(Optional<Duration> patience, Workshop newest, Object asked, Asks<A> asks) throws BadInput {
        FutureTask<A> task = begun(newest, asked, asks);
        try {
            return Optional.of(patience.isEmpty() ? task.get() : task.get(patience.get().toNanos(), TimeUnit.NANOSECONDS));
        } catch (TimeoutException notYet) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while an answer was worked out", stopped);
        } catch (ExecutionException failed) {
            forget(asked, task);
            if (failed.getCause() instanceof BadInput cannot) {
                throw cannot;
            }
            throw failed.getCause() instanceof RuntimeException fault ? fault : new IllegalStateException(failed.getCause());
        }
    }

    private synchronized FutureTask<A> begun(Workshop newest, Object asked, Asks<A> asks) {
        if (workshop != newest) {
            answers.clear();
            workshop = newest;
        }
        FutureTask<A> known = answers.get(asked);
        if (known == null) {
            known = new FutureTask<>(asks::answer);
            answers.put(asked, known);
            WORKERS.execute(known);
        }
        return known;
    }

    private synchronized void forget(Object asked, FutureTask<A> task) {
        answers.remove(asked, task);
    }
}
