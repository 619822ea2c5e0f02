package benchtwin.bench;

import benchtwin.book.BookView;
import benchtwin.club.Quantity;
import benchtwin.club.ValueComparison;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Holds readings of different gauges against each other, as far as what the workshop accepted of its gauges allows. */
final class GaugeReference {

    private final List<String> remarks = new ArrayList<>();

    private GaugeReference() {
    }

    static GaugeReference of(BookView view) {
        return new GaugeReference();
    }

    ValueComparison compare(Quantity quantity, ClubValues.Value a, ClubValues.Value b, double tolerance) {
        Set<String> gauges = new LinkedHashSet<>();
        a.gauge().ifPresent(gauges::add);
        b.gauge().ifPresent(gauges::add);
        double uncertainty = a.ids().equals(b.ids()) ? 0 : Math.hypot(a.uncertainty(), b.uncertainty());
        return ValueComparison.of(a.value(), b.value(), uncertainty, tolerance, List.copyOf(gauges));
    }

    List<String> remarks() {
        return remarks;
    }
}
