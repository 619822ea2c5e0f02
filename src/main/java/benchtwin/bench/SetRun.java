package benchtwin.bench;

import benchtwin.sets.PlanLimits;
import benchtwin.sets.PlanProgress;
import benchtwin.sets.PlanScore;
import benchtwin.sets.SetRequest;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * One search for a plan of sets that goes on while somebody looks at it. Ends by itself, when it is told to, and when nobody has
 * looked for some minutes; the best plan so far is kept each time. Safe for several threads.
 */
public final class SetRun {

    /** Nobody looked for so long: the two cores are for somebody else. */
    static final Duration ABANDONED = Duration.ofMinutes(3);
    private static final int MOST_STEPS = 400;
    private static final double NANOS = 1e9;

    /**
     * The plan this one is held against.
     * @param id    the number of its run
     * @param score how good it was
     * @param words what is different now
     */
    public record Before(String id, PlanScore score, String words) {
    }

    /**
     * Where it stands.
     * @param version grows with every change
     * @param seconds since the start
     * @param clubs   how many are wanted
     * @param steps   how the plan got better, oldest first
     * @param ending  whether it was told to end and has not yet
     * @param over    whether it has ended
     */
    public record Now(long version, double seconds, int clubs, List<PlanProgress> steps, boolean ending, boolean over) {

        /**
         * The best plan so far.
         * @return empty until there is a first one
         */
        public Optional<PlanProgress> last() {
            return steps.isEmpty() ? Optional.empty() : Optional.of(steps.get(steps.size() - 1));
        }
    }

    private final String id;
    private final WantedSets sets;
    private final SetRequest request;
    private final PlanLimits limits;
    private final Optional<Before> before;
    private final LongSupplier clock;
    private final long start;
    private final List<PlanProgress> steps = new ArrayList<>();
    private long lookedNanos;
    private long version;
    private boolean told;
    private boolean abandoned;
    private boolean over;
    private double seconds;
    private Optional<SetService.Answer> answer = Optional.empty();
    private Optional<String> failure = Optional.empty();
    private List<String> jobs = List.of();

    SetRun(String id, WantedSets sets, SetRequest request, PlanLimits limits, Optional<Before> before,
           LongSupplier clock) {
        this.id = id;
        this.sets = sets;
        this.request = request;
        this.limits = limits;
        this.before = before;
        this.clock = clock;
        this.start = clock.getAsLong();
        this.lookedNanos = start;
    }

    /** Searches until it ends. */
    void search() {
        Optional<SetService.Answer> found = Optional.empty();
        Optional<String> broke = Optional.empty();
        try {
            found = Optional.of(SetService.plan(request, limits, this::better, this::isToStop));
        } catch (OutOfMemoryError tooMuch) {
            broke = Optional.of("the machine has not enough memory for so many clubs at once: plan fewer players");
        } catch (RuntimeException fault) {
            broke = Optional.of("a fault of the program, not of your input: " + fault.getClass().getSimpleName());
        }
        synchronized (this) {
            answer = found;
            failure = broke;
            over = true;
            seconds = (clock.getAsLong() - start) / NANOS;
            changed();
        }
    }

    private synchronized void better(PlanProgress step) {
        if (steps.size() == MOST_STEPS) {
            for (int i = MOST_STEPS - 2; i > 0; i -= 2) {   // every other one, so that the picture keeps its shape
                steps.remove(i);
            }
        }
        steps.add(step);
        changed();
    }

    private synchronized boolean isToStop() {
        abandoned = abandoned || clock.getAsLong() - lookedNanos > ABANDONED.toNanos();
        return told || abandoned;
    }

    private void changed() {
        version++;
        notifyAll();
    }

    /**
     * Its number.
     * @return unlike that of any other run
     */
    public String id() {
        return id;
    }

    /**
     * For whom.
     * @return the players, in the order of the sets
     */
    public List<String> players() {
        return request.targets().players();
    }

    /**
     * The sets that are wished for.
     * @return what it was started with
     */
    public WantedSets sets() {
        return sets;
    }

    /**
     * What is asked.
     * @return what it was started with
     */
    public SetRequest request() {
        return request;
    }

    /**
     * When the search ends.
     * @return what it was started with
     */
    public PlanLimits limits() {
        return limits;
    }

    /**
     * What it is held against.
     * @return empty for a first plan
     */
    public Optional<Before> before() {
        return before;
    }

    /** Ends it with the best plan so far. */
    public synchronized void stop() {
        told = true;
        changed();
    }

    /**
     * Where it stands; somebody is looking.
     * @return as of now
     */
    public synchronized Now now() {
        lookedNanos = clock.getAsLong();
        return new Now(version, over ? seconds : (clock.getAsLong() - start) / NANOS, request.targets().clubs().size(), List.copyOf(steps),
            told && !over, over);
    }

    /**
     * Where it stands once that is something new.
     * @param known the version that is known
     * @param patience how long to wait for another
     * @return as of then
     * @throws InterruptedException when the waiting was interrupted
     */
    public synchronized Now after(long known, Duration patience) throws InterruptedException {
        long until = System.nanoTime() + patience.toNanos();
        for (long left = patience.toMillis(); version == known && !over && left > 0; left = (until - System.nanoTime()) / 1_000_000) {
            wait(left);
        }
        return now();
    }

    /**
     * Whether it has ended.
     * @return false while it is searching
     */
    public synchronized boolean isOver() {
        return over;
    }

    /**
     * Whether it ended because nobody looked.
     * @return false also while it is searching
     */
    public synchronized boolean isAbandoned() {
        return over && abandoned;
    }

    /**
     * The plan.
     * @return empty while it is searching, and when it failed
     */
    public synchronized Optional<SetService.Answer> answer() {
        return answer;
    }

    /**
     * Why there is no plan.
     * @return in words; empty while it is searching, and when there is one
     */
    public synchronized Optional<String> failure() {
        return failure;
    }

    /**
     * Makes each player's built clubs a job, once.
     * @param book the book
     * @param due  by when
     * @return the numbers of the jobs, those from before where that was done already
     * @throws BadInput when there is no plan, or a part is not free any more; then nothing is kept
     */
    public synchronized List<String> promise(OpenBook book, Optional<String> due) throws BadInput {
        if (jobs.isEmpty()) {
            jobs = JobPlanning.promiseSets(book, answer.orElseThrow(() -> new BadInput("there is no plan yet")).plan(), Optional.empty(), due);
        }
        return jobs;
    }

    /**
     * The jobs it was made.
     * @return their numbers; none yet
     */
    public synchronized List<String> jobs() {
        return jobs;
    }
}
