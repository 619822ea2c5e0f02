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
        LOFT_AND_LIE("loft and lie gauge"),
        /** Reads face angles. */
        FACE("face gauge"),
        /** Weighs. */
        SCALE("scale"),
        /** Reads swing weights. */
        SWING_SCALE("swing weight scale"),
        /** Reads frequencies. */
        FREQUENCY("frequency machine"),
        /** Reads a head's angles on a coordinate machine. */
        COORDINATE("precision head machine"),
        /** Reads lengths. */
        RULER("ruler");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

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
     * @param figures   by column, what is used of it
     */
    public record Standing(String name, Optional<String> kind, Optional<String> checkedOn, boolean isDue,
                           Map<String, Figures> figures) {
    }

    /**
     * What is used of a gauge for one quantity.
     * @param uncertainty   standard uncertainty of a reading
     * @param isAccepted    whether it was found from readings and accepted; else it was stated
     * @param offset        what it reads more than the gauge named
     * @param offsetU       standard uncertainty of that
     * @param offsetFrom    the gauge named
     */
    public record Figures(OptionalDouble uncertainty, boolean isAccepted, OptionalDouble offset, OptionalDouble offsetU,
                          Optional<String> offsetFrom) {
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
     * Every gauge.
     * @param book the book
     * @return by name
     * @throws BadInput when the book cannot be read
     */
    public static List<Standing> list(OpenBook book) throws BadInput {
        return book.read(view -> view.states(ThingKind.GAUGE).stream().map(gauge -> standing(book, gauge))
            .sorted((a, b) -> a.name().compareTo(b.name())).toList());
    }

    private static Standing standing(OpenBook book, StateOf gauge) {
        State state = gauge.state();
        Set<String> columns = new TreeSet<>();
        for (String name : state.facts().keySet()) {
            for (String prefix : List.of(GaugeReference.REPEATABILITY, GaugeReference.STATED, GaugeReference.OFFSET_FROM)) {
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
                state.fact(GaugeReference.OFFSET_FROM + column)));
        }
        boolean due = state.fact(INTERVAL).isPresent() && state.fact(CHECKED).map(day -> LocalDate.parse(day)
            .plusDays(Integer.parseInt(state.fact(INTERVAL).get())).isBefore(book.today().plusDays(1))).orElse(true);
        return new Standing(gauge.thing().tag(), state.fact(KIND), state.fact(CHECKED), due, figures);
    }

    private static OptionalDouble number(Optional<String> text) {
        return text.isPresent() ? OptionalDouble.of(Double.parseDouble(text.get())) : OptionalDouble.empty();
    }
}
