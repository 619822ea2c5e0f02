package benchtwin.book;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What may be done to parts: each act looks at how the part stands and refuses what cannot be. Part of one entry, so that
 * of two who want the same part one wins and the other is told.
 */
public final class PartActs {

    /** What a part is called that broke in play. */
    public static final String CRACKED = "cracked";
    private static final int LONGEST_WORDS = 2000;

    private final BookEntry entry;

    /**
     * @param entry the act these belong to
     */
    public PartActs(BookEntry entry) {
        this.entry = entry;
    }

    /**
     * Promises a part.
     * @param part  a part that is free
     * @param job   the job it is for, if it is one of the book's
     * @param whom  for whom, in words; may be blank beside a job
     * @param count how many of a counted part, 1 of any other
     * @throws BookProblem when it is promised already, built in, retired, or there are too few
     */
    public void promise(Thing part, Optional<Thing> job, String whom, int count) throws BookProblem {
        String words = words(whom);
        if (job.isEmpty() && words.isEmpty()) {
            throw new BookProblem("%s: a promise needs a job or a name to be kept for".formatted(part.name()));
        }
        State state = free(part);
        if (part.kind().isCounted()) {
            int left = state.count() - state.promised();
            if (count < 1 || count > left) {
                throw new BookProblem("%s: %d wanted; %d there, %d of them promised%s".formatted(part.name(), count,
                    state.count(), state.promised(), state.promises().isEmpty() ? "" : " (" + promised(state) + ")"));
            }
        } else if (count != 1) {
            throw new BookProblem("%s is one part; %d of it cannot be promised".formatted(part.name(), count));
        } else if (!state.promises().isEmpty()) {
            throw new BookProblem("%s is promised to %s; it has to be released first".formatted(part.name(), promised(state)));
        }
        NewEvent event = NewEvent.of(EventKind.PROMISED).with(Map.of("whom", words, "count", Integer.toString(count)));
        entry.add(part, job.map(event::of).orElse(event));
    }

    /**
     * Takes promises of a part back.
     * @param part a part
     * @param job  the job whose promise it was; without one every promise goes
     * @param why  in words, may be blank
     * @throws BookProblem when there is no such promise
     */
    public void release(Thing part, Optional<Thing> job, String why) throws BookProblem {
        State state = entry.state(part);
        boolean any = state.promises().stream().anyMatch(promise -> job.isEmpty()
            || promise.job().equals(job.map(Thing::tag)));
        if (!any) {
            throw new BookProblem("%s is not promised%s".formatted(part.name(),
                job.map(thing -> " to " + thing.name()).orElse(" to anybody")));
        }
        NewEvent event = NewEvent.of(EventKind.RELEASED).saying(words(why));
        entry.add(part, job.map(event::of).orElse(event));
    }

    /**
     * Puts a part somewhere else.
     * @param part  a part that is not retired
     * @param place where it lies now
     * @throws BookProblem when it is retired or the place is blank
     */
    public void move(Thing part, String place) throws BookProblem {
        kept(part);
        if (words(place).isEmpty()) {
            throw new BookProblem("%s: expected the place it lies in, such as drawer 3".formatted(part.name()));
        }
        entry.add(part, NewEvent.of(EventKind.MOVED).with(Map.of("place", words(place))));
    }

    /**
     * Takes a part out of the stock. Promises of it lapse.
     * @param part    a part
     * @param cracked whether it is cracked, and so never comes back
     * @param why     in words
     * @return the promises that lapsed
     * @throws BookProblem when it is retired already, or no reason is given
     */
    public List<Promise> retire(Thing part, boolean cracked, String why) throws BookProblem {
        State state = kept(part);
        if (words(why).isEmpty() && !cracked) {
            throw new BookProblem("%s: expected why it is retired, such as sold or lost".formatted(part.name()));
        }
        Map<String, String> facts = new HashMap<>(Map.of("retired_why", words(why).isEmpty() ? CRACKED : words(why)));
        if (cracked) {
            facts.put("condition", CRACKED);
        }
        entry.add(part, NewEvent.of(EventKind.RETIRED).with(facts).saying(words(why)));
        return state.promises();
    }

    /**
     * Brings a retired part back into the stock.
     * @param part a retired part that is not cracked
     * @param why  in words
     * @throws BookProblem when it is not retired, or cracked
     */
    public void giveBack(Thing part, String why) throws BookProblem {
        State state = entry.state(part);
        if (state.fact("condition").equals(Optional.of(CRACKED))) {
            throw new BookProblem("%s is cracked and never returns to the stock".formatted(part.name()));
        }
        if (state.standing() != Standing.RETIRED) {
            throw new BookProblem("%s is not retired".formatted(part.name()));
        }
        entry.add(part, NewEvent.of(EventKind.RETURNED).with(Map.of("retired_why", "")).saying(words(why)));
    }

    /**
     * Puts down how many of a counted part there are.
     * @param part  a sleeve or weight
     * @param count 0 or more
     * @throws BookProblem when it is not counted, or fewer than are promised
     */
    public void count(Thing part, int count) throws BookProblem {
        State state = kept(part);
        if (!part.kind().isCounted()) {
            throw new BookProblem("%s is one part and is not counted".formatted(part.name()));
        }
        if (count < 0) {
            throw new BookProblem("%s: %d cannot be a count; expected 0 or more".formatted(part.name(), count));
        }
        if (count < state.promised()) {
            throw new BookProblem("%s: %d counted, and %d are promised (%s); release some first".formatted(part.name(), count,
                state.promised(), promised(state)));
        }
        entry.add(part, NewEvent.of(EventKind.COUNTED).with(Map.of("count", Integer.toString(count))));
    }

    /**
     * Builds a part into a club. A promise to the same job is kept by it.
     * @param part a part that is free but for that job
     * @param club the club
     * @param job  the job it is done for
     * @throws BookProblem when it is retired, sits in another club, or is promised to somebody else; of a counted part, when
     *                     none is left or all that are left are promised to others
     */
    public void buildIn(Thing part, Thing club, Optional<Thing> job) throws BookProblem {
        State state = free(part);
        List<Promise> others = state.promises().stream().filter(promise -> job.isEmpty()
            || !promise.job().equals(job.map(Thing::tag))).toList();
        if (part.kind().isCounted()) {
            int left = state.count() - others.stream().mapToInt(Promise::count).sum();
            if (left < 1) {
                throw new BookProblem(others.isEmpty() ? "%s: none is left".formatted(part.name())
                    : "%s: none is left but what is promised to %s".formatted(part.name(), promised(others)));
            }
        } else if (!others.isEmpty()) {
            throw new BookProblem("%s is promised to %s; it has to be released first".formatted(part.name(), promised(others)));
        }
        NewEvent event = NewEvent.of(EventKind.BUILT_IN).with(Map.of("club", club.tag()));
        entry.add(part, job.map(event::of).orElse(event));
    }

    /**
     * Takes a part out of its club.
     * @param part  a part that sits in one
     * @param facts what is now known of it, such as what was cut
     * @param job   the job it is done for
     * @throws BookProblem when it sits in none
     */
    public void pull(Thing part, Map<String, String> facts, Optional<Thing> job) throws BookProblem {
        if (!part.kind().isCounted() && entry.state(part).standing() != Standing.BUILT_IN) {
            throw new BookProblem("%s sits in no club".formatted(part.name()));
        }
        NewEvent event = NewEvent.of(EventKind.PULLED).with(facts);
        entry.add(part, job.map(event::of).orElse(event));
    }

    /** How a part stands that is not retired. */
    private State kept(Thing part) throws BookProblem {
        if (!part.kind().isPart()) {
            throw new BookProblem("%s is no part of the stock".formatted(part.name()));
        }
        State state = entry.state(part);
        if (state.standing() == Standing.RETIRED) {
            throw new BookProblem("%s is retired: %s".formatted(part.name(), state.fact("retired_why").orElse("no reason given")));
        }
        return state;
    }

    private State free(Thing part) throws BookProblem {
        State state = kept(part);
        if (state.standing() == Standing.BUILT_IN) {
            throw new BookProblem("%s sits in club %s".formatted(part.name(), state.club().orElse("of another name")));
        }
        return state;
    }

    private static String words(String typed) throws BookProblem {
        String line = TypedText.line(typed);
        if (line.length() > LONGEST_WORDS) {
            throw new BookProblem("\"%s\" has %d characters; expected at most %d".formatted(TypedText.shown(line), line.length(),
                LONGEST_WORDS));
        }
        return line;
    }

    private static String promised(State state) {
        return promised(state.promises());
    }

    private static String promised(List<Promise> promises) {
        return promises.stream().map(Promise::text).collect(Collectors.joining(", "));
    }
}
