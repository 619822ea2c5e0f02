package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.Thing;
import java.util.List;
import java.util.Optional;

/** How far a book was read: which things stand otherwise than at the last look. */
final class LastLook {

    private static final long NONE = -1;

    private long event = NONE;

    /**
     * What something befell since the last look.
     * @param view the book
     * @return each once; empty when nothing was looked at yet, or in another book than this
     */
    Optional<List<Thing>> touched(BookView view) {
        return event == NONE || view.lastEvent() < event ? Optional.empty() : Optional.of(view.touchedSince(event));
    }

    /** All of it was taken in. */
    void isNow(BookView view) {
        event = view.lastEvent();
    }
}
