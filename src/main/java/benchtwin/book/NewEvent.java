package benchtwin.book;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Something that befell a thing, as it is entered.
 * @param kind     what
 * @param happened when, if recorded
 * @param job      the job it was done for
 * @param facts    what became known by it, by name; an empty text takes a fact back
 * @param words    free text: why, or what else
 * @param readings what was read
 * @param sheet    the row of a file it came from
 */
public record NewEvent(EventKind kind, Optional<Moment> happened, Optional<Thing> job, Map<String, String> facts,
                       Optional<String> words, List<NewReading> readings, Optional<SheetOrigin> sheet) {

    public NewEvent {
        facts = facts.isEmpty() ? Map.of() : Collections.unmodifiableMap(new TreeMap<>(facts));
        readings = List.copyOf(readings);
        words = words.map(String::strip).filter(text -> !text.isEmpty());
        job.ifPresent(thing -> {
            if (thing.kind() != ThingKind.JOB) {
                throw new IllegalArgumentException(thing.name() + " is no job");
            }
        });
    }

    /**
     * An event of which nothing more is known.
     * @param kind what
     * @return the event
     */
    public static NewEvent of(EventKind kind) {
        return new NewEvent(kind, Optional.empty(), Optional.empty(), Map.of(), Optional.empty(), List.of(),
            Optional.empty());
    }

    /**
     * The same with facts.
     * @param known by name; an empty text takes a fact back
     * @return a copy
     */
    public NewEvent with(Map<String, String> known) {
        return new NewEvent(kind, happened, job, known, words, readings, sheet);
    }

    /**
     * The same with words.
     * @param text why, or what else
     * @return a copy
     */
    public NewEvent saying(String text) {
        return new NewEvent(kind, happened, job, facts, Optional.of(text), readings, sheet);
    }

    /**
     * The same for a job.
     * @param forJob the job
     * @return a copy
     */
    public NewEvent of(Thing forJob) {
        return new NewEvent(kind, happened, Optional.of(forJob), facts, words, readings, sheet);
    }

    /**
     * The same with readings.
     * @param read what was read
     * @return a copy
     */
    public NewEvent reading(List<NewReading> read) {
        return new NewEvent(kind, happened, job, facts, words, read, sheet);
    }

    /**
     * The same at a time.
     * @param when when it happened
     * @return a copy
     */
    public NewEvent at(Moment when) {
        return new NewEvent(kind, Optional.of(when), job, facts, words, readings, sheet);
    }

    /**
     * The same out of a file.
     * @param origin the row
     * @return a copy
     */
    public NewEvent from(SheetOrigin origin) {
        return new NewEvent(kind, happened, job, facts, words, readings, Optional.of(origin));
    }
}
