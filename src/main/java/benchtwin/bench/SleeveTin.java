package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.EventKind;
import benchtwin.book.Moment;
import benchtwin.book.NewEvent;
import benchtwin.book.Thing;
import java.util.Map;
import java.util.Optional;

/**
 * Keeps the count of sleeves in the tin what somebody counted: a club that is on record with a sleeve did not take it from
 * there. Only work that bonds one on does.
 */
final class SleeveTin {

    private static final String SLEEVE = "sleeve";

    private SleeveTin() {
    }

    /** Puts down a club's sleeve by itself, so that what is entered next does not take one from the tin for it. */
    static void leaveAlone(BookEntry entry, Thing club, Map<String, String> before, Map<String, String> facts,
                           Optional<Thing> job, Optional<Moment> at) throws BookProblem {
        String now = facts.get(SLEEVE);
        if (now == null || now.equals(before.getOrDefault(SLEEVE, ""))) {
            return;
        }
        NewEvent event = NewEvent.of(EventKind.DESCRIBED).with(Map.of(SLEEVE, now));
        event = job.isPresent() ? event.of(job.get()) : event;
        entry.add(club, at.isPresent() ? event.at(at.get()) : event);
    }
}
