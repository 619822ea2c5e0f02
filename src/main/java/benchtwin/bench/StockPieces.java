package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.StateText;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.RecordedClub;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.Weight;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The stock of a book thing by thing, so that what was entered since can be taken in alone. That is as good as reading all of it anew,
 * because what a part or a club is to the stock follows from its own state, from the gauges, and from the day: a club that was never
 * read counts as of today.
 */
final class StockPieces {

    /** More remarks than anybody reads; the others are counted. */
    private static final int MOST_REMARKS = 1000;

    private final OpenBook book;
    /** By the number of the thing, as the whole stock has them. */
    private final SortedMap<Long, Workshop> parts = new TreeMap<>();
    private final SortedMap<Long, Workshop> asRecorded = new TreeMap<>();
    private final SortedMap<Long, Workshop> asFound = new TreeMap<>();
    private GaugeReference gauges;
    private LocalDate day;
    private final LastLook last = new LastLook();

    StockPieces(OpenBook book) {
        this.book = book;
    }

    /** Takes in what was entered since the last time, or everything the first time; says whether any of it is stock. */
    boolean catchUp(BookView view) {
        Optional<List<Thing>> touched = last.touched(view);
        boolean anew = touched.isEmpty() || touched.get().stream().anyMatch(thing -> thing.kind() == ThingKind.GAUGE);
        boolean changed = anew;
        if (anew) {
            readAll(view);
        } else {
            List<Thing> stock = Stream.concat(touched.get().stream().filter(thing -> thing.kind().isPart()
                || thing.kind() == ThingKind.CLUB), dated(view).stream()).distinct().toList();
            stock.forEach(thing -> take(view.text(thing)));
            changed = !stock.isEmpty();
        }
        last.isNow(view);
        day = book.today();
        return changed;
    }

    private void readAll(BookView view) {
        List.of(parts, asRecorded, asFound).forEach(SortedMap::clear);
        gauges = GaugeReference.of(view);
        for (ThingKind kind : ThingKind.values()) {
            if (kind.isPart() || kind == ThingKind.CLUB) {
                view.eachState(kind, this::take);
            }
        }
    }

    /** On another day than the last: clubs that were taken as of that day. */
    private List<Thing> dated(BookView view) {
        if (book.today().equals(day)) {
            return List.of();
        }
        return view.things(ThingKind.CLUB).stream().filter(club -> isOfTheDay(asRecorded.get(club.id()))
            || isOfTheDay(asFound.get(club.id()))).toList();
    }

    private boolean isOfTheDay(Workshop club) {
        return club != null && club.inventory().clubs().stream().flatMap(one -> one.rows().stream())
            .anyMatch(row -> row.measuredOn().equals(day));
    }

    private void take(StateText text) {
        long id = text.thing().id();
        if (text.thing().kind() == ThingKind.CLUB) {
            asRecorded.put(id, piece(text, false));
            asFound.put(id, piece(text, true));
        } else {
            parts.put(id, piece(text, false));
        }
    }

    private Workshop piece(StateText text, boolean asFound) {
        return Workshop.ofGoodRows(StockInventory.one(book, text, gauges, asFound), book.way());
    }

    /** All of it together. */
    Workshop whole(boolean asFound) {
        Collection<Workshop> clubs = asFound ? this.asFound.values() : asRecorded.values();
        List<Workshop> pieces = Stream.concat(parts.values().stream(), clubs.stream()).toList();
        List<Head> heads = all(pieces, Inventory::heads);
        List<Shaft> shafts = all(pieces, Inventory::shafts);
        List<Grip> grips = all(pieces, Inventory::grips);
        List<Sleeve> sleeves = all(pieces, Inventory::sleeves);
        List<Weight> weights = all(pieces, Inventory::weights);
        List<RecordedClub> recorded = all(pieces, Inventory::clubs);
        List<String> remarks = pieces.stream().flatMap(piece -> piece.remarks().stream()).toList();
        List<String> said = new ArrayList<>(remarks.subList(0, Math.min(MOST_REMARKS, remarks.size())));
        Workshop.more(said, remarks.size() - said.size(), "faults");
        return new Workshop(new Inventory(heads, shafts, grips, sleeves, weights, recorded), List.copyOf(said), book.way());
    }

    private static <T> List<T> all(List<Workshop> pieces, Function<Inventory, List<T>> kind) {
        List<T> all = new ArrayList<>();
        pieces.forEach(piece -> all.addAll(kind.apply(piece.inventory())));
        return all;
    }
}
