package benchtwin.bench;

import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.Note;
import benchtwin.book.Thing;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;

/** Notes on anything in the book. */
public final class NoteBook {

    private static final int MOST_FOUND = 200;

    private NoteBook() {
    }

    /**
     * A note.
     * @param about what it is about: {@code head H-014}
     * @param day   the day it was written
     * @param by    who wrote it, empty when not recorded
     * @param text  as typed
     */
    public record Found(String about, String day, String by, String text) {
    }

    /**
     * Writes a note.
     * @param book  the book
     * @param about what it is about: a tag or name, with its kind before a colon where it may be several things
     * @param text  as typed
     * @return what it is about, by its full name
     * @throws BadInput when there is no such thing, or the text is blank or too long
     */
    public static String add(OpenBook book, String about, String text) throws BadInput {
        return book.write("note add", entry -> {
            Thing thing = thing(entry, about);
            entry.note(thing, text);
            return thing.name();
        });
    }

    /**
     * Finds notes.
     * @param book  the book
     * @param words each must be in the note, as a word or the start of one
     * @return newest first, at most 200
     * @throws BadInput when the book cannot be read
     */
    public static List<Found> find(OpenBook book, String words) throws BadInput {
        return book.read(view -> view.search(words, MOST_FOUND).stream().map(note -> found(book, note)).toList());
    }

    /**
     * Notes as JSON; the names are documented in docs/json.md and stay.
     * @param notes the notes
     * @return JSON text, indented
     */
    public static String json(List<Found> notes) {
        ObjectNode root = Json.object();
        ArrayNode array = root.putArray("notes");
        notes.forEach(note -> array.addObject().put("about", note.about()).put("day", note.day()).put("by", note.by())
            .put("text", note.text()));
        return Json.answer(root);
    }

    private static Found found(OpenBook book, Note note) {
        return new Found(note.thing().name(), note.entry().at().day(book.zone()).toString(), note.entry().by().orElse(""),
            note.text());
    }

    /** The one thing a tag or name stands for, alone or with its kind before a colon. */
    static Thing thing(BookView view, String typed) throws BookProblem {
        int colon = typed.indexOf(':');
        String kind = colon > 0 ? typed.substring(0, colon).toLowerCase(Locale.ROOT) : "";
        String tag = colon > 0 ? typed.substring(colon + 1) : typed;
        List<Thing> found = view.find(typed);
        if (found.isEmpty() && colon > 0) {
            found = view.find(tag).stream().filter(thing -> thing.kind().word().equals(kind)).toList();
        }
        if (found.size() == 1) {
            return found.get(0);
        }
        if (found.isEmpty()) {
            throw new BookProblem("nothing in the book is called %s; expected a tag, a name or a job's number, such as job:12"
                .formatted(typed));
        }
        throw new BookProblem("%s may be %s; say which, such as %s:%s".formatted(typed,
            String.join(" or ", found.stream().map(Thing::name).toList()), found.get(0).kind().word(), found.get(0).tag()));
    }
}
