package benchtwin.book;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What may be done to jobs, the parts promised to them included. Part of one entry. */
public final class JobActs {

    /**
     * A part a plan uses.
     * @param part  the part
     * @param count how many of a counted part, 1 of any other
     */
    public record Needed(Thing part, int count) {
    }

    private final BookEntry entry;
    private final PartActs parts;

    /**
     * @param entry the act these belong to
     */
    public JobActs(BookEntry entry) {
        this.entry = entry;
        this.parts = new PartActs(entry);
    }

    /**
     * Takes a job on, under the next number.
     * @param facts what is known of it: player, what, club, due
     * @param words anything else
     * @return the job
     * @throws BookProblem never for lack of a number
     */
    public Thing open(Map<String, String> facts, String words) throws BookProblem {
        int next = 1 + entry.things(ThingKind.JOB).stream().map(Thing::tag).filter(tag -> tag.matches("\\d{1,9}"))
            .mapToInt(Integer::parseInt).max().orElse(0);
        return entry.add(ThingKind.JOB, Integer.toString(next), NewEvent.of(EventKind.RECEIVED).with(facts).saying(words));
    }

    /**
     * Chooses a job's plan and promises its parts; parts of an earlier plan are free again.
     * @param job    a job that is neither done nor called off
     * @param facts  the plan
     * @param needed the parts it uses
     * @throws BookProblem when a part is not free; then nothing of it is kept
     */
    public void plan(Thing job, Map<String, String> facts, List<Needed> needed) throws BookProblem {
        State state = open(job);
        releaseAll(job, "planned anew");
        for (Needed one : needed) {
            parts.promise(one.part(), Optional.of(job), whom(state), one.count());
        }
        entry.add(job, NewEvent.of(EventKind.PLANNED).with(facts));
    }

    /**
     * Hands a job over. What is still promised to it is free again.
     * @param job   a job that is neither done nor called off
     * @param facts how it came out
     * @param words anything else
     * @throws BookProblem when it is done already, or called off
     */
    public void handOver(Thing job, Map<String, String> facts, String words) throws BookProblem {
        open(job);
        releaseAll(job, "not used");
        entry.add(job, NewEvent.of(EventKind.HANDED_OVER).with(facts).saying(words));
    }

    /**
     * Calls a job off; its parts are free again.
     * @param job a job that is neither done nor called off
     * @param why in words
     * @throws BookProblem when it is done already, or called off
     */
    public void callOff(Thing job, String why) throws BookProblem {
        open(job);
        releaseAll(job, "job called off");
        Map<String, String> facts = new HashMap<>();
        if (!why.isBlank()) {
            facts.put("called_off_why", TypedText.line(why));
        }
        entry.add(job, NewEvent.of(EventKind.CALLED_OFF).with(facts).saying(why));
    }

    /**
     * The parts promised to a job now.
     * @param view the book
     * @param job  the job
     * @return in order of promise
     */
    public static List<StateOf> promisedTo(BookView view, Thing job) {
        return view.eventsFor(job).stream().filter(event -> event.event().kind() == EventKind.PROMISED)
            .map(KeptEvent::thing).distinct().map(part -> new StateOf(part, view.state(part)))
            .filter(part -> part.state().promises().stream().anyMatch(promise -> promise.job().equals(Optional.of(job.tag()))))
            .toList();
    }

    private void releaseAll(Thing job, String why) throws BookProblem {
        for (StateOf part : promisedTo(entry, job)) {
            parts.release(part.thing(), Optional.of(job), why);
        }
    }

    private State open(Thing job) throws BookProblem {
        State state = entry.state(job);
        if (state.standing() == Standing.HANDED_OVER || state.standing() == Standing.CALLED_OFF) {
            throw new BookProblem("%s is %s already".formatted(job.name(), state.standing().word()));
        }
        return state;
    }

    private static String whom(State job) {
        return job.fact("player").orElse("");
    }
}
