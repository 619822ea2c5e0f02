package benchtwin.bench;

import benchtwin.book.CurrentReading;
import java.util.List;

/**
 * Readings of one quantity in one condition at one sitting.
 * @param readings at least one
 */
record Repeats(List<CurrentReading> readings) {

    Repeats {
        readings = List.copyOf(readings);
    }

    /** Those read together with one of them. */
    static Repeats with(CurrentReading one, List<CurrentReading> among) {
        return new Repeats(among.stream().filter(reading -> reading.event() == one.event()
            && reading.read().quantity().equals(one.read().quantity())
            && reading.read().condition().equals(one.read().condition())).toList());
    }

    /** Their mean, in the quantity's unit. */
    double mean() {
        return readings.stream().mapToDouble(reading -> reading.read().value().orElseThrow()).average().orElseThrow();
    }

    /** Its standard uncertainty: a single reading's over the root of how many there are; 0 where none is recorded. */
    double uncertainty() {
        return readings.get(0).read().uncertainty().orElse(0) / Math.sqrt(readings.size());
    }
}
