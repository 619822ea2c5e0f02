package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.ClubActs;
import benchtwin.book.CurrentReading;
import benchtwin.book.EventKind;
import benchtwin.book.KeptEvent;
import benchtwin.book.KeptReading;
import benchtwin.book.Moment;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Category;
import benchtwin.club.ClubState;
import benchtwin.club.Hand;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
        List<NewReading> readings = sitting.readings(club.category());
        return book.write("club add", entry -> {
            Map<String, String> known = new TreeMap<>();
            known.put("player", PlayerBook.orNew(entry, club.player()).tag());
            known.put("category", club.category().word());
            club.number().ifPresent(number -> known.put("number", number));
            known.put("hand", club.hand().word());
            Thing thing = entry.add(ThingKind.CLUB, club.tag(), at(NewEvent.of(EventKind.RECEIVED).with(known), sitting));
            Map<String, String> facts = new TreeMap<>(club.facts());
            facts.put("state", club.state().word());
            List<String> remarks = new ClubActs(entry).enter(thing,
                at(event(EventKind.RECORDED, facts, readings, sitting), sitting));
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
        return book.write("club record", entry -> {
            Thing club = OpenBook.need(entry, ThingKind.CLUB, tag);
            List<NewReading> readings = readings(entry, club, sitting);
            List<String> remarks = new ClubActs(entry).enter(club, at(event(found ? EventKind.FOUND : EventKind.RECORDED, news,
                readings, sitting), sitting));
            return new Entered(club.tag(), readings.size(), remarks);
        });
    }

    static List<NewReading> readings(BookEntry entry, Thing club, Sitting sitting) throws BookProblem {
        try {
            return sitting.readings(category(entry, club));
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

    /**
     * Puts a reading right; the old one is kept.
     * @param book  the book
     * @param tag   the club's or part's tag
     * @param id    the reading's number, as the history shows it
     * @param value what it should have said, in the quantity's own unit; empty to take the reading back
     * @param why   in words
     * @return the quantity that was corrected
     * @throws BadInput when there is no such reading of it, it was corrected already, or no reason is given
     */
    public static String correct(OpenBook book, String tag, long id, OptionalDouble value, String why) throws BadInput {
        if (why.isBlank()) {
            throw new BadInput("a correction needs a reason: --why \"…\"");
        }
        return book.write("club correct", entry -> {
            Thing club = OpenBook.need(entry, ThingKind.CLUB, tag);
            for (KeptEvent event : entry.events(club)) {
                for (KeptReading reading : event.readings()) {
                    if (reading.id() == id) {
                        entry.add(club, NewEvent.of(EventKind.CORRECTED).at(event.since()).saying(why)
                            .reading(List.of(corrected(reading, value, why))));
                        return reading.read().quantity();
                    }
                }
            }
            throw new BookProblem("%s has no reading %d; benchtwin club history %s lists them".formatted(club.name(), id,
                club.tag()));
        });
    }

    private static NewReading corrected(KeptReading reading, OptionalDouble value, String why) {
        NewReading read = reading.read();
        if (value.isEmpty()) {
            return read.takingBack(reading.id(), why);
        }
        return new NewReading(read.quantity(), value, read.uncertainty(), read.unit(), read.condition(), read.gauge(),
            read.station(), read.measuredAt(), read.by(), read.note(), read.corrects()).correcting(reading.id(), why);
    }

    /** Of several readings of one sitting their mean; what is newest stands for the quantity. */
    static Optional<CurrentReading> newest(List<CurrentReading> readings, String quantity) {
        return readings.stream().filter(reading -> reading.read().quantity().equals(quantity))
            .reduce((earlier, later) -> later.since().compareTo(earlier.since()) >= 0 ? later : earlier);
    }
}
