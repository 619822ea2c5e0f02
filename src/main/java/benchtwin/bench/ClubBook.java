package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.ClubActs;
import benchtwin.book.EventKind;
import benchtwin.book.Moment;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Category;
import benchtwin.club.ClubState;
import benchtwin.club.Hand;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Enters players' clubs into the book and what is read of them. */
public final class ClubBook {

    /** What a player would notice of a club, and its parts, by the name the book keeps each under. */
    public static final List<String> DETAILS = List.of("orientation", "grip_orientation", "rib", "tape_layers", "ferrule",
        "finish", "grind", "tip_weight_g", "tape_g", "melt_g");
    /** A club's parts and the sleeve's setting, by the name the book keeps each under. */
    public static final List<String> PARTS = List.of("head", "shaft", "grip", "sleeve", "setting");

    private ClubBook() {
    }

    /**
     * A club that comes into the book.
     * @param tag      its own tag
     * @param player   whose it is; a player who is not in the book yet comes into it
     * @param category driver to putter
     * @param number   its number in the set
     * @param hand     right or left
     * @param state    in play, backup, test and so on
     * @param facts    its parts and details, by name
     */
    public record NewClub(String tag, String player, Category category, Optional<String> number, Hand hand, ClubState state,
                          Map<String, String> facts) {
    }

    /**
     * What came of entering something about a club.
     * @param club    the club's tag
     * @param read    how many readings were entered
     * @param remarks what the person who entered it should know
     */
    public record Entered(String club, int read, List<String> remarks) {
    }

    /**
     * Puts a club into the book.
     * @param book    the book
     * @param club    the club
     * @param sitting what it measures
     * @return what came of it
     * @throws BadInput when its tag is taken, or a part of it is not free
     */
    public static Entered add(OpenBook book, NewClub club, Sitting sitting) throws BadInput {
        List<NewReading> readings = sitting.readings(club.category(), Optional.ofNullable(club.facts().get("setting")));
        notToCome(book, sitting);
        return book.write("club add", entry -> {
            Map<String, String> known = new TreeMap<>();
            Optional.ofNullable(club.facts().get("sleeve")).ifPresent(sleeve -> known.put("sleeve", sleeve));
            known.put("player", PlayerBook.orNew(entry, club.player()).tag());
            known.put("category", club.category().word());
            club.number().ifPresent(number -> known.put("number", number));
            known.put("hand", club.hand().word());
            Thing thing = entry.add(ThingKind.CLUB, club.tag(), at(NewEvent.of(EventKind.RECEIVED).with(known), sitting));
            Map<String, String> facts = new TreeMap<>(club.facts());
            facts.put("state", club.state().word());
            List<String> remarks = new ClubActs(entry).enter(thing,
                at(event(EventKind.RECORDED, facts, GaugeReference.of(entry).trusted(readings), sitting), sitting));
            return new Entered(thing.tag(), readings.size(), remarks);
        });
    }

    /**
     * Enters what was read of a club, and what of it has changed.
     * @param book    the book
     * @param tag     the club's tag
     * @param sitting what it measures
     * @param facts   parts, setting and details that have changed, by name; an empty text takes one back
     * @param state   in play, damaged and so on, where it has changed
     * @param found   whether this is only how it came to the bench, not how it should be
     * @return what came of it
     * @throws BadInput when the club is not in the book, a part is not free, or there is nothing to enter
     */
    public static Entered record(OpenBook book, String tag, Sitting sitting, Map<String, String> facts,
                                 Optional<ClubState> state, boolean found) throws BadInput {
        Map<String, String> news = new TreeMap<>(facts);
        state.ifPresent(now -> news.put("state", now.word()));
        if (sitting.values().isEmpty() && news.isEmpty()) {
            throw new BadInput("nothing to record: give what was read, such as loft=9.3 lie=58.5, or what has changed");
        }
        notToCome(book, sitting);
        return book.write("club record", entry -> {
            Thing club = OpenBook.need(entry, ThingKind.CLUB, tag);
            List<NewReading> readings = readings(entry, club, sitting, news);
            State before = entry.state(club);
            if (!news.isEmpty() || sitting.on().isEmpty()) {
                refuseBackdated(book, entry, club, sitting);
            }
            SleeveTin.leaveAlone(entry, club, before.facts(), news, Optional.empty(), sitting.on().map(Moment::on));
            List<String> remarks = new ArrayList<>(new ClubActs(entry).enter(club, at(event(found ? EventKind.FOUND
                : EventKind.RECORDED, news, readings, sitting), sitting)));
            lost(club, before, entry.state(club), remarks);
            return new Entered(club.tag(), readings.size(), remarks);
        });
    }

    private static void notToCome(OpenBook book, Sitting sitting) throws BadInput {
        if (sitting.on().filter(day -> day.isAfter(book.today())).isPresent()) {
            throw new BadInput("%s is still to come; expected today, %s, or a day before".formatted(book.asks(ToDo.ON_DAY, sitting.on().get()),
                book.today()));
        }
    }

    /**
     * What was read of a club, as the book keeps it.
     * @param news what changed in the same act; a sleeve's setting among it is the one it was read at
     */
    static List<NewReading> readings(BookEntry entry, Thing club, Sitting sitting, Map<String, String> news) throws BookProblem {
        try {
            return GaugeReference.of(entry).trusted(sitting.readings(category(entry, club), Optional.ofNullable(news.get("setting"))
                .or(() -> entry.state(club).fact("setting"))));
        } catch (BadInput bad) {
            throw new BookProblem(bad.getMessage());
        }
    }

    private static Category category(BookEntry entry, Thing club) {
        String word = entry.state(club).fact("category").orElse("");
        for (Category category : Category.values()) {
            if (category.word().equals(word)) {
                return category;
            }
        }
        throw new IllegalStateException("%s has no category".formatted(club.name()));
    }

    private static NewEvent event(EventKind kind, Map<String, String> facts, List<NewReading> readings, Sitting sitting) {
        NewEvent event = NewEvent.of(kind).with(facts).reading(readings);
        return sitting.note().isPresent() ? event.saying(sitting.note().get()) : event;
    }

    private static NewEvent at(NewEvent event, Sitting sitting) {
        return sitting.on().map(day -> event.at(Moment.on(day))).orElse(event);
    }

    /** Parts do not go back in time: what is entered of a day before the last entry may only be what was read. */
    static void refuseBackdated(OpenBook book, BookEntry entry, Thing club, Sitting sitting) throws BookProblem {
        LocalDate day = sitting.on().orElse(book.today());
        Optional<LocalDate> last = entry.events(club).stream().map(event -> event.since().day(book.zone())).max(LocalDate::compareTo);
        if (last.isPresent() && day.isBefore(last.get())) {
            throw new BookProblem(sitting.on().isPresent()
                ? "%s has an entry of %s already: what it is made of cannot be changed on %s".formatted(club.name(), last.get(), day)
                : "%s has an entry of %s, and this computer's clock says %s: set the clock, or %s".formatted(
                    club.name(), last.get(), day, book.asks(ToDo.GIVE_DAY)));
        }
    }

    /** What nobody read again after something changed it. */
    private static void lost(Thing club, State before, State after, List<String> remarks) {
        List<String> lost = new ArrayList<>();
        Map<Quantity, ClubValues.Value> still = ClubValues.of(ClubReadings.current(after));
        ClubValues.of(ClubReadings.current(before)).keySet().stream().filter(quantity -> !still.containsKey(quantity))
            .forEach(quantity -> lost.add(QuantityText.name(quantity)));
        if (!lost.isEmpty()) {
            remarks.add("Read before the change and so no longer counted: %s of %s. Read %s again.".formatted(
                String.join(", ", lost), club.tag(), lost.size() == 1 ? "it" : "them"));
        }
    }
}
