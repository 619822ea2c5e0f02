package benchtwin.gauge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Readings of one thing on one gauge. Everything is counted from the first, so that large values cost no digits. */
record ReadingGroup(List<GaugeReading> readings) {

    ReadingGroup {
        readings = List.copyOf(readings);
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("a group has at least one reading");
        }
    }

    /** Groups by a key, in the readings' own order whatever order they come in. */
    static <K> Map<K, ReadingGroup> by(Function<GaugeReading, K> key, List<GaugeReading> readings) {
        Map<K, List<GaugeReading>> lists = new LinkedHashMap<>();
        readings.stream().sorted(GaugeReading.ORDER)
            .forEach(reading -> lists.computeIfAbsent(key.apply(reading), unused -> new ArrayList<>()).add(reading));
        Map<K, ReadingGroup> groups = new LinkedHashMap<>();
        lists.forEach((k, list) -> groups.put(k, new ReadingGroup(list)));
        return groups;
    }

    int size() {
        return readings.size();
    }

    int degreesOfFreedom() {
        return size() - 1;
    }

    private double first() {
        return readings.get(0).value();
    }

    private double meanFromFirst() {
        double sum = 0;
        for (GaugeReading reading : readings) {
            sum += reading.value() - first();
        }
        return sum / size();
    }

    double mean() {
        return first() + meanFromFirst();
    }

    /** This group's mean less another's, without going through the two large means. */
    double meanLess(ReadingGroup other) {
        return first() - other.first() + (meanFromFirst() - other.meanFromFirst());
    }

    /** A reading less the group's mean. */
    double deviation(GaugeReading reading) {
        return reading.value() - first() - meanFromFirst();
    }

    double sumOfSquares() {
        double squares = 0;
        for (GaugeReading reading : readings) {
            double deviation = deviation(reading);
            squares += deviation * deviation;
        }
        return squares;
    }
}
