package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.Note;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What somebody had before their eyes when they filled a form in: some things of the book, as of an entry. What they then enter
 * rests on that, so it is not entered once somebody else has entered something about one of these things.
 */
public final class Seen {

    /** Nothing was looked at: whatever was entered since does not matter. */
    static final Seen NOTHING = new Seen(0, List.of());

    private record Look(ThingKind kind, String tag) {
    }

    /**
     * Something that was entered since.
     * @param entry the number of its entry
     * @param words of which thing, when, by whom, what
     */
    record Change(long entry, String words) {
    }

    private final long entry;
    private final List<Look> looks;

    private Seen(long entry, List<Look> looks) {
        this.entry = entry;
        this.looks = List.copyOf(looks);
    }

    /**
     * As of an entry; of which things is still to be said.
     * @param entry its number, from {@link OpenBook#lastEntry}
     * @return nothing looked at yet
     */
    public static Seen at(long entry) {
        return new Seen(entry, List.of());
    }

    /**
     * A club as well.
     * @param tag its tag
     * @return a copy
     */
    public Seen club(String tag) {
        return and(ThingKind.CLUB, tag);
    }

    /**
     * A job as well.
     * @param number its number
     * @return a copy
     */
    public Seen job(String number) {
        return and(ThingKind.JOB, number);
    }

    /**
     * A player as well.
     * @param name the player's name
     * @return a copy
     */
    public Seen player(String name) {
        return and(ThingKind.PLAYER, name);
    }

    /**
     * A gauge as well.
     * @param name what it is called
     * @return a copy
     */
    public Seen gauge(String name) {
        return and(ThingKind.GAUGE, name);
    }

    /**
     * A part as well.
     * @param fullTag its tag with its kind before it: {@code head:H-014}; anything else is left out
     * @return a copy
     */
    public Seen part(String fullTag) {
        String[] named = fullTag.split(":", 2);
        return StockBook.PART_KINDS.stream().filter(kind -> named.length == 2 && kind.word().equals(named[0])).findFirst()
            .map(kind -> and(kind, named[1])).orElse(this);
    }

    private Seen and(ThingKind kind, String tag) {
        List<Look> more = new ArrayList<>(looks);
        more.add(new Look(kind, tag));
        return new Seen(entry, more);
    }

    /** What was entered of them since, oldest first. */
    List<Change> changes(OpenBook book, BookView view) {
        List<Change> changes = new ArrayList<>();
        for (Look look : looks) {
            Optional<Thing> thing = view.thing(look.kind(), look.tag());
            if (thing.isPresent()) {
                String name = thing.get().name() + "  ";
                view.eventsSince(thing.get(), entry).forEach(event -> changes.add(new Change(event.entry().id(),
                    name + HistoryWords.entered(book, event))));
                view.notes(thing.get()).stream().filter((Note note) -> note.entry().id() > entry).forEach(note ->
                    changes.add(new Change(note.entry().id(), name + HistoryWords.entered(book, note))));
            }
        }
        changes.sort(Comparator.comparingLong(Change::entry));
        return changes;
    }
}
