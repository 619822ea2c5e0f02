package benchtwin.bench;

import benchtwin.book.EventKind;
import benchtwin.book.NewEvent;
import benchtwin.book.State;
import benchtwin.book.StateOf;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Quantity;
import benchtwin.club.Word;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The workshop's gauges, and what is used of each. */
public final class GaugeBook {

    /** What a gauge is. */
    public enum Kind implements Word {
        /** Reads loft and lie. */
        LOFT_AND_LIE("loft and lie gauge", Quantity.LOFT, Quantity.LIE, Quantity.BOUNCE),
        /** Reads face angles. */
        FACE("face gauge", Quantity.FACE),
        /** Weighs. */
        SCALE("scale", Quantity.TOTAL_MASS),
        /** Reads swing weights. */
        SWING_SCALE("swing weight scale", Quantity.SWING_WEIGHT),
        /** Reads frequencies. */
        FREQUENCY("frequency machine", Quantity.FREQUENCY),
        /** Reads a head's angles on a coordinate machine. */
        COORDINATE("precision head machine", Quantity.LOFT, Quantity.LIE, Quantity.FACE, Quantity.BOUNCE),
        /** Reads lengths. */
        RULER("ruler", Quantity.LENGTH);

        private final String word;
        private final List<Quantity> quantities;

        Kind(String word, Quantity... quantities) {
            this.word = word;
            this.quantities = List.of(quantities);
        }

        /**
         * What it reads.
         * @return in the order they are always shown
         */
        public List<Quantity> quantities() {
            return quantities;
        }

        @Override
        public String word() {
            return word;
        }
    }

    private static final int MOST_DAYS = 3660;
    private static final String KIND = "kind";
    private static final String CHECKED = "checked_on";
    private static final String INTERVAL = "check_every_days";

    /**
     * What is put down of a gauge.
     * @param name          what the workshop calls it
     * @param kind          what it is, if it is new or changes
     * @param uncertainties standard uncertainties as stated, by column
     * @param marks         how far its marks are apart, or the step of its last digit, by column
     * @param checkedOn     when it was last checked
     * @param everyDays     how often it wants checking
     */
    public record Described(String name, Optional<Kind> kind, Map<String, Double> uncertainties, Map<String, Double> marks,
                            Optional<LocalDate> checkedOn, Optional<Integer> everyDays) {
    }

    /**
     * A gauge as it stands.
     * @param name      what it is called
     * @param kind      what it is, in words
     * @param checkedOn when it was last checked
     * @param isDue     whether its next check is due
     * @param everyDays how often it wants checking, days
     * @param figures   by column, what is used of it
     */
    public record Standing(String name, Optional<String> kind, Optional<String> checkedOn, boolean isDue, Optional<String> everyDays,
                           Map<String, Figures> figures) {

        /**
         * What such a gauge reads.
         * @return all that is read of a club where its kind is not on record
         */
        public List<Quantity> quantities() {
            return Arrays.stream(Kind.values()).filter(one -> kind.equals(Optional.of(one.word()))).findFirst().map(Kind::quantities)
                .orElse(Arrays.stream(ReadColumn.values()).map(ReadColumn::quantity).toList());
        }
    }

    /**
     * What is used of a gauge for one quantity.
     * @param uncertainty   standard uncertainty of a reading
     * @param isAccepted    whether it was found from readings and accepted; else it was stated
     * @param offset        what it reads more than the gauge named
     * @param offsetU       standard uncertainty of that
     * @param offsetFrom    the gauge named
     * @param mark          how far its marks are apart
     */
    public record Figures(OptionalDouble uncertainty, boolean isAccepted, OptionalDouble offset, OptionalDouble offsetU,
                          Optional<String> offsetFrom, OptionalDouble mark) {
    }

    private GaugeBook() {
    }

    /**
     * Puts a gauge into the book, or puts down anew what is known of it.
     * @param book  the book
     * @param gauge what is known
     * @return its name as it stands in the book
     * @throws BadInput when a new one lacks its kind
     */
    public static String describe(OpenBook book, Described gauge) throws BadInput {
        Map<String, String> facts = new TreeMap<>();
        gauge.kind().ifPresent(kind -> facts.put(KIND, kind.word()));
        gauge.uncertainties().forEach((column, u) -> facts.put(GaugeReference.STATED + column, Double.toString(u)));
        gauge.marks().forEach((column, mark) -> facts.put(GaugeReference.MARK + column, Double.toString(mark)));
        gauge.checkedOn().ifPresent(day -> facts.put(CHECKED, day.toString()));
        gauge.everyDays().ifPresent(days -> facts.put(INTERVAL, Integer.toString(days)));
        return book.write("gauge add", entry -> {
            Optional<Thing> known = entry.thing(ThingKind.GAUGE, gauge.name());
            if (known.isEmpty()) {
                return entry.add(ThingKind.GAUGE, gauge.name(), NewEvent.of(EventKind.RECEIVED).with(facts)).tag();
            }
            entry.add(known.get(), NewEvent.of(gauge.checkedOn().isPresent() ? EventKind.CHECKED : EventKind.DESCRIBED).with(facts));
            return known.get().tag();
        });
    }

    /**
     * The names the book keeps a quantity under, of clubs and of parts.
     * @param quantity what is read
     * @return at least one
     */
    public static List<String> columns(Quantity quantity) {
        return switch (quantity) {
            case TOTAL_MASS -> List.of("total_mass_g", "mass_g");
            case TORQUE -> List.of("torque_deg");
            default -> ReadColumn.of(quantity).map(column -> List.of(column.column())).orElse(List.of());
        };
    }

    /**
     * The unit a gauge's figures of a quantity are in.
     * @param quantity what is read
     * @return in short
     */
    public static String unit(Quantity quantity) {
        return quantity == Quantity.LENGTH ? "mm" : quantity == Quantity.SWING_WEIGHT ? "points" : quantity.unit();
    }

    /**
     * Every gauge.
     * @param book the book
     * @return by name
     * @throws BadInput when the book cannot be read
     */
    public static List<Standing> list(OpenBook book) throws BadInput {
        return book.read(view -> view.states(ThingKind.GAUGE).stream().map(gauge -> standing(book, gauge))
            .sorted((a, b) -> a.name().compareTo(b.name())).toList());
    }

    /**
     * One gauge.
     * @param book the book
     * @param name what it is called
     * @return how it stands
     * @throws BadInput when there is none of that name
     */
    public static Standing show(OpenBook book, String name) throws BadInput {
        return book.read(view -> {
            Thing gauge = OpenBook.need(view, ThingKind.GAUGE, name);
            return standing(book, new StateOf(gauge, view.state(gauge)));
        });
    }

    /**
     * Refuses an interval that is none.
     * @param called what it was typed in
     * @param days   how often a gauge wants checking
     * @return the same
     * @throws BadInput with what was expected
     */
    public static Optional<Integer> interval(String called, Optional<Integer> days) throws BadInput {
        if (days.filter(every -> every < 1 || every > MOST_DAYS).isPresent()) {
            throw new BadInput("%s %d: expected 1 to %d days".formatted(called, days.get(), MOST_DAYS));
        }
        return days;
    }

    private static Standing standing(OpenBook book, StateOf gauge) {
        State state = gauge.state();
        Set<String> columns = new TreeSet<>();
        for (String name : state.facts().keySet()) {
            for (String prefix : List.of(GaugeReference.REPEATABILITY, GaugeReference.STATED, GaugeReference.OFFSET_FROM, GaugeReference.MARK)) {
                if (name.startsWith(prefix)) {
                    columns.add(name.substring(prefix.length()));
                }
            }
        }
        Map<String, Figures> figures = new LinkedHashMap<>();
        for (String column : columns) {
            Optional<String> found = state.fact(GaugeReference.REPEATABILITY + column);
            figures.put(column, new Figures(number(found.or(() -> state.fact(GaugeReference.STATED + column))), found.isPresent(),
                number(state.fact(GaugeReference.OFFSET + column)), number(state.fact(GaugeReference.OFFSET_UNCERTAINTY + column)),
                state.fact(GaugeReference.OFFSET_FROM + column), number(state.fact(GaugeReference.MARK + column))));
        }
        boolean due = state.fact(INTERVAL).isPresent() && state.fact(CHECKED).map(day -> LocalDate.parse(day)
            .plusDays(Integer.parseInt(state.fact(INTERVAL).get())).isBefore(book.today().plusDays(1))).orElse(true);
        return new Standing(gauge.thing().tag(), state.fact(KIND), state.fact(CHECKED), due, state.fact(INTERVAL), figures);
    }

    private static OptionalDouble number(Optional<String> text) {
        return text.isPresent() ? OptionalDouble.of(Double.parseDouble(text.get())) : OptionalDouble.empty();
    }
}
