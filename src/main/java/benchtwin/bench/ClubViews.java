package benchtwin.bench;

import benchtwin.book.AsOf;
import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.Note;
import benchtwin.book.State;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Category;
import benchtwin.club.Quantity;
import benchtwin.club.SideBySide;
import benchtwin.club.ValueComparison;
import benchtwin.match.Tolerances;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Shows what the book knows of players' clubs, today or on another day, alone or side by side. */
public final class ClubViews {

    private ClubViews() {
    }

    /**
     * A look at a day.
     * @param on       the day looked at; without it today
     * @param knownNow whether what was entered later counts too, as far as it is about that day
     */
    public record When(Optional<LocalDate> on, boolean knownNow) {

        /** Today. */
        public static final When NOW = new When(Optional.empty(), true);

        AsOf asOf(OpenBook book) {
            return new AsOf(knownNow ? Optional.empty() : on, on, book.zone());
        }
    }

    /**
     * A club on a day.
     * @param tag      its tag
     * @param facts    what is known of it, by name
     * @param values   what it measures
     * @param accepted what it measured when it was last as it should be
     * @param unread   what was moved by work and not read since
     * @param notes    notes on it
     */
    public record Club(String tag, Map<String, String> facts, Map<Quantity, ReadValue> values,
                       Map<Quantity, ReadValue> accepted, Set<Quantity> unread, List<String> notes) {

        /**
         * Something known of it.
         * @param name the fact's name
         * @return empty when it is not known
         */
        public Optional<String> fact(String name) {
            return Optional.ofNullable(facts.get(name));
        }
    }

    /**
     * A value of a club.
     * @param value       in the quantity's unit
     * @param uncertainty its standard uncertainty
     * @param day         the day it was read, or entered
     * @param gauge       what it was read on
     * @param condition   how it was read, by name
     * @param readings    numbers of the readings it rests on
     */
    public record ReadValue(double value, double uncertainty, LocalDate day, Optional<String> gauge,
                            Map<String, String> condition, List<Long> readings) {
    }

    /**
     * Two clubs, or one club on two days.
     * @param values  their values
     * @param facts   what else differs: name, then one and the other
     * @param remarks what could not be held against each other, and why
     */
    public record Compared(SideBySide values, Map<String, List<String>> facts, List<String> remarks) {
    }

    /**
     * A club on a day.
     * @param book the book
     * @param tag  the club's tag
     * @param when the day
     * @return what is known
     * @throws BadInput when there is no such club, or nothing of it was known
     */
    public static Club show(OpenBook book, String tag, When when) throws BadInput {
        return book.read(view -> {
            Thing club = OpenBook.need(view, ThingKind.CLUB, tag);
            State state = state(book, view, club, when);
            Map<String, String> facts = new TreeMap<>(state.facts());
            facts.keySet().removeIf(ClubReadings::isMark);
            return new Club(club.tag(), facts, values(book, ClubValues.of(ClubReadings.current(state))),
                values(book, state.accepted().map(accepted -> ClubValues.of(ClubReadings.accepted(accepted))).orElse(Map.of())),
                ClubReadings.unread(state), notes(book, view, club, when));
        });
    }

    /** Notes as they were known on the day. */
    private static List<String> notes(OpenBook book, BookView view, Thing club, When when) {
        return view.notes(club).stream().filter(note -> when.knownNow() || when.on().map(day ->
            !note.entry().at().day(book.zone()).isAfter(day)).orElse(true)).map(Note::text).toList();
    }

    static State state(OpenBook book, BookView view, Thing club, When when) throws BookProblem {
        if (when.on().isEmpty()) {
            return view.state(club);
        }
        Optional<State> then = view.state(club, when.asOf(book));
        if (then.isEmpty()) {
            boolean since = !when.knownNow() && view.state(club, new When(when.on(), true).asOf(book)).isPresent();
            throw new BookProblem("nothing of %s %s on %s%s".formatted(club.name(), when.knownNow() ? "had happened" : "was known",
                when.on().get(), since ? "; " + book.asks(ToDo.KNOWN_NOW) : ""));
        }
        return then.get();
    }

    private static Map<Quantity, ReadValue> values(OpenBook book, Map<Quantity, ClubValues.Value> values) {
        Map<Quantity, ReadValue> read = new EnumMap<>(Quantity.class);
        values.forEach((quantity, value) -> read.put(quantity, new ReadValue(value.value(), value.uncertainty(),
            value.since().day(book.zone()), value.gauge(), value.condition(), value.ids())));
        return read;
    }

    static Optional<Category> category(State state) {
        return state.fact("category").flatMap(word -> Arrays.stream(Category.values())
            .filter(category -> category.word().equals(word)).findFirst());
    }

    /**
     * Two clubs side by side, or one on two days.
     * @param book       the book
     * @param a          the club held to
     * @param whenA      on which day
     * @param b          the other; may be the same
     * @param whenB      on which day
     * @param tolerances how far apart still counts as the same
     * @return the comparison
     * @throws BadInput when a club is not in the book, or neither was read
     */
    public static Compared compare(OpenBook book, String a, When whenA, String b, When whenB, Tolerances tolerances)
        throws BadInput {
        return book.read(view -> {
            Thing one = OpenBook.need(view, ThingKind.CLUB, a);
            Thing other = OpenBook.need(view, ThingKind.CLUB, b);
            State first = state(book, view, one, whenA);
            State second = state(book, view, other, whenB);
            Map<Quantity, ClubValues.Value> left = measured(first);
            Map<Quantity, ClubValues.Value> right = measured(second);
            List<String> remarks = new ArrayList<>();
            GaugeReference gauges = GaugeReference.of(view);
            Map<Quantity, ValueComparison> values = compared(left, right, tolerances, gauges, remarks);
            if (values.isEmpty()) {
                throw new BookProblem(!remarks.isEmpty() ? String.join("; ", remarks) : "neither %s nor %s was read, so there is nothing to compare".formatted(
                    label(one, whenA), label(other, whenB)));
            }
            remarks.addAll(gauges.remarks());
            return new Compared(new SideBySide(label(one, whenA), label(other, whenB), values), facts(first, second), remarks);
        });
    }

    /**
     * A club against its own record: what it should measure first, what it measures now second.
     * @param book       the book
     * @param tag        the club's tag
     * @param tolerances how far off still counts as right
     * @return by quantity; what was never read is left out
     * @throws BadInput when there is no such club
     */
    public static Map<Quantity, ValueComparison> againstRecord(OpenBook book, String tag, Tolerances tolerances) throws BadInput {
        return book.read(view -> againstRecord(view.state(OpenBook.need(view, ThingKind.CLUB, tag)), tolerances,
            GaugeReference.of(view), new ArrayList<>()));
    }

    static Map<Quantity, ValueComparison> againstRecord(State club, Tolerances tolerances, GaugeReference gauges, List<String> remarks) {
        Map<Quantity, ClubValues.Value> should = club.accepted().map(accepted -> ClubValues.carried(
            ClubValues.of(ClubReadings.accepted(accepted)), category(club))).orElse(Map.of());
        return compared(should, measured(club), tolerances, gauges, remarks);
    }

    private static Map<Quantity, ClubValues.Value> measured(State club) {
        return ClubValues.carried(ClubValues.of(ClubReadings.current(club)), category(club));
    }

    static Map<Quantity, ValueComparison> compared(Map<Quantity, ClubValues.Value> left, Map<Quantity, ClubValues.Value> right,
                                                   Tolerances tolerances, GaugeReference gauges, List<String> remarks) {
        Map<Quantity, ValueComparison> values = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            ClubValues.Value x = left.get(quantity);
            ClubValues.Value y = right.get(quantity);
            if (x == null && y == null) {
                continue;
            }
            Optional<String> apart = x == null || y == null ? Optional.empty() : ClubValues.apart(quantity, x, y);
            apart.ifPresent(remarks::add);
            double tolerance = tolerances.wanted(quantity, 0).tolerance();
            if (x != null && y != null && apart.isEmpty()) {
                values.put(quantity, gauges.compare(quantity, x, y, tolerance));
            } else {
                values.put(quantity, new ValueComparison(apart.isPresent() ? OptionalDouble.empty() : value(x),
                    apart.isPresent() ? OptionalDouble.empty() : value(y), OptionalDouble.empty(), tolerance, gaugesOf(x, y)));
            }
        }
        values.values().removeIf(value -> value.a().isEmpty() && value.b().isEmpty());
        return values;
    }

    private static OptionalDouble value(ClubValues.Value value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value.value());
    }

    private static List<String> gaugesOf(ClubValues.Value... values) {
        Set<String> gauges = new LinkedHashSet<>();
        Stream.of(values).filter(value -> value != null).forEach(value -> value.gauge().ifPresent(gauges::add));
        return List.copyOf(gauges);
    }

    static String label(Thing club, When when) {
        return club.tag() + when.on().map(day -> " on " + day).orElse("");
    }

    private static Map<String, List<String>> facts(State first, State second) {
        Map<String, List<String>> facts = new LinkedHashMap<>();
        List<String> names = new ArrayList<>(List.of("player", "category", "number", "hand", "state"));
        names.addAll(ClubBook.PARTS);
        names.addAll(ClubBook.DETAILS);
        for (String name : names) {
            String one = first.fact(name).orElse("");
            String other = second.fact(name).orElse("");
            if (!one.equals(other)) {
                facts.put(name, List.of(one, other));
            }
        }
        return facts;
    }
}
