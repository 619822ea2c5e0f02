package benchtwin.gauge;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Readings for tests: of loft, soled, on one day, unless said otherwise. */
final class Readings {

    static final LocalDate DAY = LocalDate.of(2031, 5, 3);
    static final String LOFT = "loft";

    private Readings() {
    }

    static GaugeReading reading(String part, String gauge, double value, double uncertainty) {
        return new GaugeReading(part, LOFT, "soled", gauge, DAY, value, uncertainty);
    }

    static List<GaugeReading> of(String part, String gauge, double... values) {
        List<GaugeReading> readings = new ArrayList<>();
        for (double value : values) {
            readings.add(reading(part, gauge, value, 0.1));
        }
        return readings;
    }

    /** One part for each row. */
    static List<GaugeReading> ofParts(String gauge, double[][] values) {
        List<GaugeReading> readings = new ArrayList<>();
        for (int part = 0; part < values.length; part++) {
            readings.addAll(of("P-%02d".formatted(part + 1), gauge, values[part]));
        }
        return readings;
    }

    @SafeVarargs
    static List<GaugeReading> all(List<GaugeReading>... lists) {
        List<GaugeReading> readings = new ArrayList<>();
        for (List<GaugeReading> list : lists) {
            readings.addAll(list);
        }
        return readings;
    }
}
