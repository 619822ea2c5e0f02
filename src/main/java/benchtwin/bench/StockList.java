package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.StateText;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The parts of a book in short, kept at hand: a list of thousands is looked through without reading each, and only those that are
 * shown are read to the end. Safe for several threads.
 */
public final class StockList {

    private static final Comparator<Thing> ORDER = Comparator.comparing(Thing::kind).thenComparing(Thing::tag);

    private OpenBook book;
    private LastLook last = new LastLook();
    private final TreeMap<Thing, PartLine> lines = new TreeMap<>(ORDER);

    /**
     * Some of a list.
     * @param parts those asked for, by kind and tag
     * @param from  how many come before them
     * @param all   how many there are in all
     */
    public record Page(List<StockViews.Part> parts, int from, int all) {
    }

    /**
     * Some of the parts {@link StockViews#list} gives.
     * @param book  the book
     * @param asked which
     * @param from  how many to pass over; past the end, none is shown
     * @param most  how many to show at most
     * @return those, and how many there are
     * @throws BadInput when the book cannot be read, or a kind is none
     */
    public Page page(OpenBook book, StockViews.Asked asked, int from, int most) throws BadInput {
        List<ThingKind> kinds = StockViews.kinds(asked.kinds());
        List<PartLine> found = lines(book, kinds).stream().filter(line -> line.isAsked(asked)).toList();
        int first = Math.max(0, Math.min(from, found.size()));
        List<PartLine> shown = found.subList(first, Math.min(first + most, found.size()));
        return book.read(view -> new Page(shown.stream().map(line -> StockViews.part(book, view.text(line.part()).whole())).toList(), first,
            found.size()));
    }

    /**
     * Counts what there is, as {@link StockViews#tally} does.
     * @param book  the book
     * @param kinds words of the kinds wanted; all when empty
     * @return by kind and model
     * @throws BadInput when the book cannot be read, or a kind is none
     */
    public List<StockViews.Tally> tally(OpenBook book, List<String> kinds) throws BadInput {
        return StockViews.tallied(lines(book, StockViews.kinds(kinds)));
    }

    /** One look into the book after the other, or an older one could come after a newer. */
    private synchronized List<PartLine> lines(OpenBook book, List<ThingKind> kinds) throws BadInput {
        return book.read(view -> {
            catchUp(book, view);
            return lines.values().stream().filter(line -> kinds.contains(line.part().kind())).toList();
        });
    }

    private void catchUp(OpenBook book, BookView view) {
        if (this.book != book) {
            this.book = book;
            last = new LastLook();
        }
        Optional<List<Thing>> touched = last.touched(view);
        if (touched.isEmpty()) {
            lines.clear();
            StockBook.PART_KINDS.forEach(kind -> view.eachState(kind, this::take));
        } else {
            touched.get().stream().filter(thing -> thing.kind().isPart()).forEach(part -> take(view.text(part)));
        }
        last.isNow(view);
    }

    private void take(StateText part) {
        lines.put(part.thing(), PartLine.of(part.whole()));
    }
}
