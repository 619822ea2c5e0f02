package benchtwin.bench;

import benchtwin.sets.PlanLimits;
import benchtwin.sets.SetRequest;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * Searches for plans of sets: one at a time, because each takes the whole machine, and the last few that have ended. Safe for several
 * threads.
 */
public final class SetRuns implements AutoCloseable {

    /** Plans that are kept to be looked at, the newest. */
    private static final int KEPT = 5;
    /** Sixteen sets of fifteen: more has not been tried. */
    private static final int MOST_CLUBS = 240;

    private final Deque<SetRun> runs = new ArrayDeque<>();
    private final LongSupplier clock;
    private int last;

    /** None yet. */
    public SetRuns() {
        this(System::nanoTime);
    }

    /** By another clock, in nanoseconds. */
    SetRuns(LongSupplier clock) {
        this.clock = clock;
    }

    /**
     * Starts one.
     * @param workshop the stock
     * @param sets     the sets wished for
     * @param wish     what is asked
     * @param limits   when it ends
     * @param before   a plan it is held against
     * @return the run
     * @throws BadInput when it cannot be planned as asked, or another is being planned
     */
    public synchronized SetRun start(Workshop workshop, WantedSets sets, SetService.Wish wish, PlanLimits limits,
                                     Optional<SetRun.Before> before) throws BadInput {
        if (running().isPresent()) {
            throw new BadInput("the sets of %s are being planned; one plan at a time: wait for it, or stop it".formatted(
                String.join(", ", running().get().players())));
        }
        SetRequest request = SetService.request(workshop, sets, wish);
        if (request.targets().clubs().size() > MOST_CLUBS) {
            throw new BadInput("%d clubs at once; expected at most %d: choose fewer players".formatted(request.targets().clubs().size(),
                MOST_CLUBS));
        }
        last++;
        SetRun run = new SetRun(Integer.toString(last), sets, request, limits, before, clock);
        runs.addFirst(run);
        while (runs.size() > KEPT) {
            runs.removeLast();
        }
        Thread search = new Thread(run::search, "plan of sets " + last);
        search.setDaemon(true);
        search.start();
        return run;
    }

    /**
     * The one that is searching.
     * @return empty when none is
     */
    public synchronized Optional<SetRun> running() {
        return runs.stream().filter(run -> !run.isOver()).findFirst();
    }

    /**
     * One by its number.
     * @param id the number
     * @return the run
     * @throws BadInput when it was not kept
     */
    public synchronized SetRun get(String id) throws BadInput {
        return runs.stream().filter(run -> run.id().equals(id)).findFirst().orElseThrow(() -> new BadInput(
            "plan %s of sets is not kept: the last %d are; plan it again".formatted(id, KEPT)));
    }

    /**
     * Those that are kept.
     * @return newest first
     */
    public synchronized List<SetRun> all() {
        return List.copyOf(runs);
    }

    @Override
    public synchronized void close() {
        runs.forEach(SetRun::stop);
    }
}
