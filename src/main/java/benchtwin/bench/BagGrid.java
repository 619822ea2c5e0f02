package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.ClubActs;
import benchtwin.book.EventKind;
import benchtwin.book.Moment;
import benchtwin.book.NewEvent;
import benchtwin.book.NewReading;
import benchtwin.book.State;
import benchtwin.book.StateOf;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Quantity;
import benchtwin.club.ValueComparison;
import benchtwin.match.Lever;
import benchtwin.match.ShopSettings;
import benchtwin.match.Tolerances;
import benchtwin.match.Way;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A player's whole bag against its record: what each club should measure, what it measures now, what has drifted beyond what
 * measuring explains, and what puts it right.
 */
public final class BagGrid {

    /** States of clubs that are in the bag or stand in for one that is. */
    private static final Set<String> CARRIED = Set.of("in play", "backup", "test");
    /** What wanders in play and is set again at the bench; bounce goes with the loft. Common practice, no source. */
    private static final Set<Quantity> SET_AT_THE_BENCH = Set.of(Quantity.LOFT, Quantity.LIE, Quantity.FACE,
        Quantity.SWING_WEIGHT, Quantity.TOTAL_MASS);
    /** What a touch at the bench may change: the club keeps its parts. */
    private static final Set<Lever> TOUCHES = Set.of(Lever.SETTING, Lever.BEND, Lever.WEIGHT);
    private static final int WAYS_LOOKED_AT = 60;
    private static final List<String> ORDER = List.of("driver", "fairway", "hybrid", "iron", "wedge", "putter");

    /**
     * One club of the bag.
     * @param tag     its tag
     * @param what    category and number
     * @param state   in play, backup or test
     * @param values  what it should measure (first) and measures now (second), by quantity
     * @param readOn  when it was last read; empty when never
     * @param drifted quantities that are off by more than measuring explains
     * @param plan    what puts it right; empty when nothing is to be done, or nothing can be
     * @param cannot  why nothing puts it right; empty otherwise
     */
    public record Club(String tag, String what, String state, Map<Quantity, ValueComparison> values,
                       Optional<LocalDate> readOn, List<Quantity> drifted, Optional<Way> plan, Optional<String> cannot) {

        /** Copies what it is given. */
        public Club {
            values = Collections.unmodifiableMap(values);
            drifted = List.copyOf(drifted);
        }

        Club planned(Optional<Way> way, Optional<String> why) {
            return new Club(tag, what, state, values, readOn, drifted, way, why);
        }
    }

    /**
     * The bag.
     * @param player     whose
     * @param tolerances how far off counts as right
     * @param clubs      longest first, as a bag is laid out
     * @param remarks    what could not be compared
     */
    public record Bag(String player, Tolerances tolerances, List<Club> clubs, List<String> remarks) {

        /** Copies what it is given. */
        public Bag {
            clubs = List.copyOf(clubs);
            remarks = List.copyOf(remarks);
        }
    }

    private BagGrid() {
    }

    /**
     * Enters what was read of several clubs at one sitting: all of it, or nothing.
     * @param book     the book
     * @param player   whose clubs
     * @param sittings what was read, by club
     * @param accepted whether the clubs should measure so from now on; else they were only found so
     * @return how many readings were entered
     * @throws BadInput when a club is not the player's, or a value cannot be
     */
    public static int enter(OpenBook book, String player, Map<String, Sitting> sittings, boolean accepted) throws BadInput {
        return book.write("bag", entry -> {
            String name = OpenBook.need(entry, ThingKind.PLAYER, player).tag();
            int read = 0;
            for (Map.Entry<String, Sitting> one : sittings.entrySet()) {
                read += enter(entry, name, one.getKey(), one.getValue(), accepted);
            }
            return read;
        });
    }

    private static int enter(BookEntry entry, String player, String tag, Sitting sitting, boolean accepted)
        throws BookProblem {
        Thing club = OpenBook.need(entry, ThingKind.CLUB, tag);
        String owner = entry.state(club).fact("player").orElse("nobody");
        if (!owner.equals(player)) {
            throw new BookProblem("%s is %s's, not %s's".formatted(club.name(), owner, player));
        }
        List<NewReading> readings = ClubBook.readings(entry, club, sitting, Map.of());
        NewEvent event = NewEvent.of(accepted ? EventKind.RECORDED : EventKind.FOUND).reading(readings);
        new ClubActs(entry).enter(club, sitting.on().map(day -> event.at(Moment.on(day))).orElse(event));
        return readings.size();
    }

    /**
     * Lays the bag out, with what puts each club right.
     * @param book       the book
     * @param player     whose
     * @param tolerances how far off still counts as right; those the player prefers stand where none is named
     * @param shop       what the workshop can set
     * @return the bag
     * @throws BadInput when there is no such player, or the player has no clubs
     */
    public static Bag of(OpenBook book, String player, Map<Quantity, Double> tolerances, ShopSettings shop) throws BadInput {
        Bag bag = laidOut(book, player, tolerances);
        if (bag.clubs().stream().allMatch(club -> club.drifted().isEmpty())) {
            return bag;
        }
        Workshop found = Workshop.of(book, Optional.empty(), true);
        return new Bag(bag.player(), bag.tolerances(), bag.clubs().stream().map(club -> putRight(found, club, bag.tolerances(), shop))
            .toList(), bag.remarks());
    }

    /**
     * Lays the bag out; what puts a club right is not looked for, which takes longer than all the rest.
     * @param book       the book
     * @param player     whose
     * @param tolerances how far off still counts as right; those the player prefers stand where none is named
     * @return the bag
     * @throws BadInput when there is no such player, or the player has no clubs
     */
    public static Bag laidOut(OpenBook book, String player, Map<Quantity, Double> tolerances) throws BadInput {
        Bag bag = book.read(view -> {
            Thing thing = OpenBook.need(view, ThingKind.PLAYER, player);
            Map<Quantity, Double> preferred = new EnumMap<>(Quantity.class);
            preferred.putAll(PlayerBook.tolerances(view.state(thing).facts()));
            preferred.putAll(tolerances);
            Tolerances used = new Tolerances(preferred, Map.of());
            GaugeReference gauges = GaugeReference.of(view);
            List<String> remarks = new ArrayList<>();
            List<Club> clubs = carried(view, thing).stream().map(club -> club(book, club, used, gauges, remarks)).toList();
            remarks.addAll(gauges.remarks());
            return new Bag(thing.tag(), used, clubs, remarks);
        });
        if (bag.clubs().isEmpty()) {
            throw new BadInput("%s has no clubs in play in the book; %s".formatted(bag.player(), book.asks(ToDo.ADD_CLUBS)));
        }
        return bag;
    }

    /** The clubs in a player's bag and those that stand in for one of them, longest first. */
    static List<StateOf> carried(BookView view, Thing player) {
        return view.statesOf(ThingKind.CLUB, player.tag()).stream()
            .filter(club -> CARRIED.contains(club.state().fact("state").orElse("in play")))
            .sorted(Comparator.comparingInt((StateOf club) -> ORDER.indexOf(club.state().fact("category").orElse("")))
                .thenComparing(club -> number(club.state())).thenComparing(club -> club.thing().tag())).toList();
    }

    private static int number(State club) {
        String digits = club.fact("number").orElse("").replaceAll("\\D", "");
        return digits.isEmpty() ? Integer.MAX_VALUE : Integer.parseInt(digits);
    }

    private static Club club(OpenBook book, StateOf club, Tolerances tolerances, GaugeReference gauges, List<String> remarks) {
        State state = club.state();
        List<String> own = new ArrayList<>();
        Map<Quantity, ValueComparison> values = ClubViews.againstRecord(state, tolerances, gauges, own);
        own.forEach(remark -> remarks.add(club.thing().tag() + ": " + remark));
        List<Quantity> drifted = values.entrySet().stream().filter(one -> one.getValue().isBeyondUncertainty())
            .map(Map.Entry::getKey).toList();
        Optional<LocalDate> readOn = ClubValues.of(ClubReadings.current(state)).values().stream().map(value -> value.since().day(book.zone())).max(LocalDate::compareTo);
        String number = state.fact("number").map(text -> " " + text).orElse("");
        return new Club(club.thing().tag(), state.fact("category").orElse("club") + number, state.fact("state").orElse("in play"),
            values, readOn, drifted, Optional.empty(), Optional.empty());
    }

    /**
     * Looks for the quickest way that brings a club back to its record.
     * @param found      the stock, with clubs as they measure now
     * @param club       a club of a bag
     * @param tolerances those of its bag
     * @param shop       what the workshop can set
     * @return the club with a plan, or with why there is none; as it is where nothing has drifted
     */
    public static Club putRight(Workshop found, Club club, Tolerances tolerances, ShopSettings shop) {
        if (club.drifted().isEmpty()) {
            return club;
        }
        Map<Quantity, ChangeService.Amount> back = new TreeMap<>();
        club.drifted().stream().filter(SET_AT_THE_BENCH::contains).forEach(quantity -> back.put(quantity,
            new ChangeService.Amount(club.values().get(quantity).a().orElseThrow(), false)));
        Optional<String> look = club.drifted().stream().filter(quantity -> !SET_AT_THE_BENCH.contains(quantity))
            .filter(quantity -> quantity != Quantity.BOUNCE || !back.containsKey(Quantity.LOFT)).findFirst().map(BagGrid::lookFirst);
        if (look.isPresent() || back.isEmpty()) {
            return club.planned(Optional.empty(), look);
        }
        try {
            ChangeService.Answer answer = ChangeService.ways(found, club.tag(), new ChangeService.Wish(back, Optional.empty(),
                Optional.empty(), Optional.empty(), false, WAYS_LOOKED_AT, tolerances, shop));
            Optional<Way> quickest = answer.change().ways().stream().filter(way -> TOUCHES.containsAll(way.changed()))
                .min(Comparator.comparing((Way way) -> way.option().plan().readyMinutes())
                    .thenComparing(way -> way.option().cost()));
            return quickest.isPresent() ? club.planned(quickest, Optional.empty())
                : club.planned(Optional.empty(), Optional.of("no bend, setting or weight brings it back; " + found.asks(ToDo.ELSE_CHANGE,
                    club.tag())));
        } catch (BadInput cannot) {
            return club.planned(Optional.empty(), Optional.of(cannot.messages().get(0)));
        }
    }

    /** Common practice, no source: a length or a frequency does not wander, something gave way or was read otherwise. */
    private static String lookFirst(Quantity quantity) {
        return "%s does not drift by itself: look for a crack, a loose head or grip, another clamp or gauge, and read again before "
            .formatted(quantity.word()) + "anything is cut";
    }
}
