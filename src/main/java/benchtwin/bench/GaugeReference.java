package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.book.NewReading;
import benchtwin.book.StateOf;
import benchtwin.book.ThingKind;
import benchtwin.club.Quantity;
import benchtwin.club.ValueComparison;
import benchtwin.gauge.Carried;
import benchtwin.gauge.Difference;
import benchtwin.gauge.Finding;
import benchtwin.gauge.GaugeNetwork;
import benchtwin.gauge.GaugeReading;
import benchtwin.gauge.Link;
import benchtwin.measure.Reading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** What the workshop accepted of its gauges: carries readings to one reference, and holds those of two gauges together. */
final class GaugeReference {

    /** What the book calls a gauge's figures, before the column they are of. */
    static final String REPEATABILITY = "repeatability_";
    static final String STATED = "uncertainty_";
    static final String MARK = "mark_";
    static final String OFFSET = "offset_";
    static final String OFFSET_UNCERTAINTY = "offset_uncertainty_";
    static final String OFFSET_FROM = "offset_from_";
    /** Any day: offsets do not ask for it. */
    private static final LocalDate ANY_DAY = LocalDate.EPOCH;

    private final Map<String, Map<String, String>> gauges = new TreeMap<>();
    private final Map<String, GaugeNetwork> networks = new HashMap<>();
    private final Set<String> remarks = new LinkedHashSet<>();

    private GaugeReference() {
    }

    static GaugeReference of(BookView view) {
        GaugeReference reference = new GaugeReference();
        for (StateOf gauge : view.states(ThingKind.GAUGE)) {
            reference.gauges.put(gauge.thing().tag(), gauge.state().facts());
        }
        return reference;
    }

    /** Standard uncertainty of a reading on a gauge: as accepted, else as stated; empty when neither is known. */
    OptionalDouble uncertainty(String gauge, String column) {
        Map<String, String> facts = gauges.getOrDefault(gauge, Map.of());
        String found = facts.getOrDefault(REPEATABILITY + column, facts.get(STATED + column));
        return found == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(found));
    }

    /** How far a gauge's marks are apart, where that is known. */
    OptionalDouble mark(String gauge, String column) {
        String mark = gauges.getOrDefault(gauge, Map.of()).get(MARK + column);
        return mark == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(mark));
    }

    /** Readings trusted as far as the gauge each names is, where that is known. */
    List<NewReading> trusted(List<NewReading> readings) {
        return readings.stream().map(read -> {
            OptionalDouble known = read.gauge().isEmpty() ? OptionalDouble.empty() : uncertainty(read.gauge().get(), read.quantity());
            return known.isEmpty() ? read : read.trustedTo(known);
        }).toList();
    }

    /** The accepted offsets of one quantity. */
    List<Link> links(String column) {
        List<Link> links = new ArrayList<>();
        gauges.forEach((name, facts) -> {
            if (facts.containsKey(OFFSET + column)) {
                links.add(new Link(column, name, facts.get(OFFSET_FROM + column), Double.parseDouble(facts.get(OFFSET + column)),
                    Double.parseDouble(facts.get(OFFSET_UNCERTAINTY + column))));
            }
        });
        return links;
    }

    /** The gauge others are carried to: the one most offsets were accepted against; by name where there is a draw. */
    private GaugeNetwork network(String column) {
        return networks.computeIfAbsent(column, name -> {
            List<Link> links = links(name);
            Map<String, Integer> named = new TreeMap<>();
            links.forEach(link -> named.merge(link.reference(), 1, Integer::sum));
            Optional<String> most = named.entrySet().stream().max(Map.Entry.<String, Integer>comparingByValue()
                .thenComparing(Map.Entry.comparingByKey())).map(Map.Entry::getKey);
            return most.map(reference -> GaugeNetwork.of(name, reference, gauges.keySet(), links)).orElse(null);
        });
    }

    /** A reading as it would stand on the reference gauge; the same where no accepted offset leads there. */
    Reading carried(String column, Reading reading) {
        Optional<String> gauge = reading.taken().gauge();
        GaugeNetwork network = gauge.isPresent() && gauges.containsKey(gauge.get()) ? network(column) : null;
        if (network == null) {
            return reading;
        }
        Finding<Carried> carried = network.carry(new GaugeReading("part", column, "", gauge.get(), ANY_DAY, reading.value(),
            reading.standardUncertainty()));
        return carried.found().map(on -> new Reading(on.value().value(), on.value().standardUncertainty(), reading.taken()))
            .orElse(reading);
    }

    /** The gauge readings of a column are carried to; empty where no offset was accepted. */
    Optional<String> reference(String column) {
        return Optional.ofNullable(network(column)).map(GaugeNetwork::reference);
    }

    /** Two values of a quantity, b less a, on one gauge where accepted offsets lead there. */
    ValueComparison compare(Quantity quantity, ClubValues.Value a, ClubValues.Value b, double tolerance) {
        Set<String> on = new LinkedHashSet<>();
        a.gauge().ifPresent(on::add);
        b.gauge().ifPresent(on::add);
        if (a.ids().equals(b.ids())) {
            return ValueComparison.of(a.value(), b.value(), 0, tolerance, List.copyOf(on));
        }
        Optional<Difference> apart = ReadColumn.of(quantity).flatMap(column -> difference(column.column(), a, b));
        double uncertainty = apart.map(Difference::standardUncertainty).orElse(Math.hypot(a.uncertainty(), b.uncertainty()));
        // the second is carried to the first one's gauge, so that what was read first stands as it was read
        double second = apart.map(difference -> a.value() + difference.value()).orElse(b.value());
        return ValueComparison.of(a.value(), second, uncertainty, tolerance,
            apart.map(Difference::gauges).orElse(List.copyOf(on)));
    }

    private Optional<Difference> difference(String column, ClubValues.Value a, ClubValues.Value b) {
        if (a.gauge().isEmpty() || b.gauge().isEmpty() || a.gauge().equals(b.gauge())) {
            return Optional.empty();
        }
        GaugeNetwork network = network(column);
        Finding<Difference> found = network == null ? null : network.difference(reading(column, a), reading(column, b));
        if (found == null || found.found().isEmpty()) {
            remarks.add("%s was read on %s and on %s, and what they read apart is not known: a check of the gauges finds it".formatted(
                ColumnText.name(column), a.gauge().get(), b.gauge().get()));
            return Optional.empty();
        }
        return found.found();
    }

    private static GaugeReading reading(String column, ClubValues.Value value) {
        return new GaugeReading("part", column, "", value.gauge().orElseThrow(), ANY_DAY, value.value(), value.uncertainty());
    }

    List<String> remarks() {
        return List.copyOf(remarks);
    }
}
