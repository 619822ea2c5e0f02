package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.EventKind;
import benchtwin.book.GaugedReading;
import benchtwin.book.NewEvent;
import benchtwin.book.State;
import benchtwin.book.StateOf;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.club.Quantity;
import benchtwin.club.Word;
import benchtwin.gauge.Finding;
import benchtwin.gauge.Gauge;
import benchtwin.gauge.GaugeReading;
import benchtwin.gauge.Offset;
import benchtwin.gauge.Repeatability;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The workshop's gauges: what they read, how well, and what they read apart, as their readings in the book show. */
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

    private static final double LEAST = 1e-6;
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

    /**
     * What a gauge's readings show.
     * @param gauge         the gauge
     * @param repeatability by column
     * @param offsets       against each other gauge, by column
     */
    public record Checked(String gauge, Map<String, Finding<Repeatability>> repeatability,
                          Map<String, List<Finding<Offset>>> offsets) {

        /**
         * Whether there is anything to accept.
         * @return false when there are too few readings for everything
         */
        public boolean isEmpty() {
            return repeatability.values().stream().allMatch(found -> found.found().isEmpty())
                && offsets.values().stream().flatMap(List::stream).allMatch(found -> found.found().isEmpty());
        }
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

    /**
     * Works out what a gauge's readings in the book show: how well it repeats, and what it reads apart from the other gauges
     * that read the same things. Nothing is used before it is accepted.
     * @param book the book
     * @param name the gauge
     * @return what was found
     * @throws BadInput when there is no such gauge
     */
    public static Checked check(OpenBook book, String name) throws BadInput {
        return book.read(view -> {
            Thing gauge = OpenBook.need(view, ThingKind.GAUGE, name);
            return checked(book, view, gauge);
        });
    }

    private static Checked checked(OpenBook book, BookView view, Thing gauge) {
        GaugeReference reference = GaugeReference.of(view);
        List<GaugeReading> readings = view.readingsAround(gauge.tag()).stream().map(reading -> reading(book, reading)).toList();
        Map<String, Finding<Repeatability>> repeatability = new TreeMap<>();
        Map<String, List<Finding<Offset>>> offsets = new TreeMap<>();
        Set<String> columns = new TreeSet<>(readings.stream().filter(reading -> reading.gauge().equals(gauge.tag()))
            .map(GaugeReading::quantity).toList());
        for (String column : columns) {
            List<GaugeReading> own = readings.stream().filter(reading -> reading.quantity().equals(column)).toList();
            Finding<Repeatability> found = Repeatability.of(gauge.tag(), column, mark(view, gauge.tag(), column), own);
            repeatability.put(column, found);
            Set<String> others = new TreeSet<>(own.stream().map(GaugeReading::gauge).toList());
            others.remove(gauge.tag());
            for (String other : others) {
                offsets.computeIfAbsent(column, key -> new ArrayList<>()).add(Offset.of(
                    gauge(reference, view, gauge.tag(), column, found.found(), own), gauge(reference, view, other, column,
                        Repeatability.of(other, column, mark(view, other, column), own).found(), own), column, own));
            }
        }
        return new Checked(gauge.tag(), repeatability, offsets);
    }

    private static GaugeReading reading(OpenBook book, GaugedReading gauged) {
        return new GaugeReading(gauged.thing().name(), gauged.read().quantity(), gauged.read().condition() + " " + gauged.phase(),
            gauged.read().gauge().orElseThrow(), gauged.read().measuredAt().orElse(gauged.since()).day(book.zone()),
            gauged.read().value().orElseThrow(), gauged.read().uncertainty().orElse(0));
    }

    /** A gauge with what is known best of it: accepted, found just now, stated, or what its readings say of themselves. */
    private static Gauge gauge(GaugeReference reference, BookView view, String name, String column, Optional<Repeatability> found,
                               List<GaugeReading> readings) {
        OptionalDouble known = reference.uncertainty(name, column);
        double own = readings.stream().filter(reading -> reading.gauge().equals(name)).mapToDouble(GaugeReading::standardUncertainty)
            .filter(u -> u > 0).average().orElse(0.1);
        double repeats = known.isPresent() ? known.getAsDouble() : found.map(Repeatability::standardUncertainty).orElse(own);
        return new Gauge(name, repeats, mark(view, name, column));
    }

    private static OptionalDouble mark(BookView view, String gauge, String column) {
        return number(view.thing(ThingKind.GAUGE, gauge).flatMap(thing -> view.state(thing).fact(GaugeReference.MARK + column)));
    }

    /**
     * Accepts what a check found: from now on readings on the gauge are trusted so far, and carried by its offset against one
     * other gauge.
     * @param book    the book
     * @param checked what was found
     * @param against the gauge its offsets are taken against; without it offsets are left as they are
     * @return how many figures are used from now on
     * @throws BadInput when there is nothing to accept
     */
    public static int accept(OpenBook book, Checked checked, Optional<String> against) throws BadInput {
        Map<String, String> facts = new TreeMap<>();
        checked.repeatability().forEach((column, finding) -> finding.found().ifPresent(found ->
            facts.put(GaugeReference.REPEATABILITY + column, plain(found.standardUncertainty()))));
        int figures = facts.size();
        if (against.isPresent()) {
            for (Map.Entry<String, List<Finding<Offset>>> one : checked.offsets().entrySet()) {
                Optional<Offset> offset = one.getValue().stream().flatMap(finding -> finding.found().stream())
                    .filter(found -> found.reference().equalsIgnoreCase(against.get())).findFirst();
                if (offset.isPresent()) {
                    facts.put(GaugeReference.OFFSET + one.getKey(), plain(offset.get().value()));
                    facts.put(GaugeReference.OFFSET_UNCERTAINTY + one.getKey(), plain(offset.get().standardUncertainty()));
                    facts.put(GaugeReference.OFFSET_FROM + one.getKey(), offset.get().reference());
                    figures++;
                }
            }
        }
        if (figures == 0) {
            throw new BadInput("nothing of %s can be accepted: there are too few readings%s".formatted(checked.gauge(),
                against.map(other -> ", and none shared with " + other).orElse("")));
        }
        book.write("gauge check", entry -> {
            entry.add(OpenBook.need(entry, ThingKind.GAUGE, checked.gauge()), NewEvent.of(EventKind.ACCEPTED).with(facts));
            dropReverse(entry, checked.gauge(), facts);
            return null;
        });
        return figures;
    }

    /** The same readings make the offset the other way round; both together would count them twice. */
    private static void dropReverse(BookEntry entry, String gauge, Map<String, String> accepted) throws BookProblem {
        for (Map.Entry<String, String> one : accepted.entrySet()) {
            if (!one.getKey().startsWith(GaugeReference.OFFSET_FROM)) {
                continue;
            }
            String column = one.getKey().substring(GaugeReference.OFFSET_FROM.length());
            Thing other = OpenBook.need(entry, ThingKind.GAUGE, one.getValue());
            if (entry.state(other).fact(GaugeReference.OFFSET_FROM + column).equals(Optional.of(gauge))) {
                entry.add(other, NewEvent.of(EventKind.ACCEPTED).with(Map.of(GaugeReference.OFFSET + column, "",
                    GaugeReference.OFFSET_UNCERTAINTY + column, "", GaugeReference.OFFSET_FROM + column, "")));
            }
        }
    }

    /** To a millionth; an uncertainty that small is one all the same. */
    private static String plain(double value) {
        return Double.toString(value > 0 ? Math.max(Json.rounded(value), LEAST) : Json.rounded(value));
    }
}
