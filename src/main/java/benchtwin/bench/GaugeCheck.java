package benchtwin.bench;

import benchtwin.book.BookEntry;
import benchtwin.book.BookProblem;
import benchtwin.book.BookView;
import benchtwin.book.EventKind;
import benchtwin.book.GaugedReading;
import benchtwin.book.NewEvent;
import benchtwin.book.Thing;
import benchtwin.book.ThingKind;
import benchtwin.gauge.Finding;
import benchtwin.gauge.Gauge;
import benchtwin.gauge.GaugeReading;
import benchtwin.gauge.Offset;
import benchtwin.gauge.Repeatability;
import benchtwin.measure.PlainNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What the readings in the book show of a gauge, proposed first and used once it is accepted. */
public final class GaugeCheck {

    private static final double LEAST = 1e-6;

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

        /**
         * The gauges an offset was found against.
         * @return by name
         */
        public List<String> others() {
            return offsets.values().stream().flatMap(List::stream).flatMap(found -> found.found().stream()).map(Offset::reference).distinct()
                .sorted().toList();
        }

        /**
         * What could be accepted: findings with another key are other findings.
         * @return one line of text
         */
        public String key() {
            return repeatability.values().stream().flatMap(found -> found.found().stream()).map(found -> plain(found.standardUncertainty()))
                .collect(Collectors.joining(" ")) + "; " + offsets.values().stream().flatMap(List::stream)
                .flatMap(found -> found.found().stream()).map(found -> plain(found.value()) + " " + plain(found.standardUncertainty()))
                .collect(Collectors.joining(" "));
        }
    }

    private GaugeCheck() {
    }

    /**
     * Works out what a gauge's readings in the book show: how well it repeats, and what it reads apart from the other gauges
     * that read the same things. Nothing is used before it is accepted.
     * @param book the book
     * @param name the gauge
     * @return what was found
     * @throws BadInput when there is no such gauge
     */
    public static Checked of(OpenBook book, String name) throws BadInput {
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
            Finding<Repeatability> found = Repeatability.of(gauge.tag(), column, reference.mark(gauge.tag(), column), own);
            repeatability.put(column, found);
            Set<String> others = new TreeSet<>(own.stream().map(GaugeReading::gauge).toList());
            others.remove(gauge.tag());
            for (String other : others) {
                offsets.computeIfAbsent(column, key -> new ArrayList<>()).add(Offset.of(
                    gauge(reference, gauge.tag(), column, found.found(), own), gauge(reference, other, column,
                        Repeatability.of(other, column, reference.mark(other, column), own).found(), own), column, own));
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
    private static Gauge gauge(GaugeReference reference, String name, String column, Optional<Repeatability> found,
                               List<GaugeReading> readings) {
        OptionalDouble known = reference.uncertainty(name, column);
        double own = readings.stream().filter(reading -> reading.gauge().equals(name)).mapToDouble(GaugeReading::standardUncertainty)
            .filter(u -> u > 0).average().orElse(0.1);
        double repeats = known.isPresent() ? known.getAsDouble() : found.map(Repeatability::standardUncertainty).orElse(own);
        return new Gauge(name, repeats, reference.mark(name, column));
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
        return PlainNumber.text(value > 0 ? Math.max(value, LEAST) : value);
    }
}
