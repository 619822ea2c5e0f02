package benchtwin.bench;

import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Finds whatever a tag or a name stands for: a part, a club, a player, a job. */
public final class TagFinder {

    private static final int MOST = 50;
    private static final String JOB = "job:";

    /**
     * Something that was found.
     * @param kind what it is, in a word: head, shaft, club, player, job and so on
     * @param tag  its tag, name or number
     */
    public record Found(String kind, String tag) {
    }

    private TagFinder() {
    }

    /**
     * Finds by a tag, or by its beginning where no tag is just so. A job is found by {@code job:12}, as tickets have it.
     * @param book  the book
     * @param typed as typed or scanned
     * @return at most fifty; one alone where the tag is exactly that
     * @throws BadInput when the book cannot be read
     */
    public static List<Found> find(OpenBook book, String typed) throws BadInput {
        String text = typed.strip();
        if (text.isEmpty()) {
            return List.of();
        }
        return book.read(view -> {
            if (text.regionMatches(true, 0, JOB, 0, JOB.length())) {
                return view.thing(ThingKind.JOB, text.substring(JOB.length()).strip()).map(TagFinder::found).stream().toList();
            }
            List<Found> exact = view.find(text).stream().map(TagFinder::found).toList();
            if (!exact.isEmpty()) {
                return exact;
            }
            List<Found> near = new ArrayList<>();
            for (ThingKind kind : ThingKind.values()) {
                Stream<Thing> begins = view.things(kind).stream().filter(thing -> holds(thing.tag(), text));
                begins.limit((long) MOST - near.size()).map(TagFinder::found).forEach(near::add);
            }
            return near;
        });
    }

    private static boolean holds(String tag, String text) {
        for (int at = 0; at + text.length() <= tag.length(); at++) {
            if (tag.regionMatches(true, at, text, 0, text.length())) {
                return true;
            }
        }
        return false;
    }

    private static Found found(Thing thing) {
        return new Found(thing.kind().word(), thing.tag());
    }
}
