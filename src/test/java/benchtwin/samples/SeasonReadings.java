package benchtwin.samples;

import benchtwin.book.Moment;
import benchtwin.book.NewReading;
import benchtwin.measure.DefaultUncertainty;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * One sitting with a club: every value once, or the angles three times, on one of several gauges each. Scatter: memory.
 */
final class SeasonReadings {

    private static final List<String> READERS = List.of("Kim", "Jo", "Ash");
    private static final double THREE_TIMES_SHARE = 0.15;

    /** What is read of a club: unit, standard uncertainty, scatter, decimals, on which gauges. */
    private record Kind(String unit, double uncertainty, double scatter, int decimals, List<String> gauges) {
    }

    private static final List<String> LOFT_AND_LIE = List.of("loft and lie 1", "loft and lie 2");
    private static final Map<String, Kind> KINDS = Map.of(
        "loft_deg", new Kind("degrees", DefaultUncertainty.IRON_LOFT_DEG, 0.06, 1, LOFT_AND_LIE),
        "lie_deg", new Kind("degrees", DefaultUncertainty.IRON_LIE_DEG, 0.06, 1, LOFT_AND_LIE),
        "face_deg", new Kind("degrees", DefaultUncertainty.FACE_DEG, 0.1, 1, List.of("face 1")),
        "bounce_deg", new Kind("degrees", DefaultUncertainty.BOUNCE_DEG, 0.1, 1, LOFT_AND_LIE),
        "length_mm", new Kind("millimetres", DefaultUncertainty.LENGTH_MM, 0.15, 1, List.of("ruler 1")),
        "swing_weight_points", new Kind("points", DefaultUncertainty.SWING_WEIGHT_POINTS, 0.05, 1, List.of("balance 1")),
        "frequency_cpm", new Kind("cycles per minute", DefaultUncertainty.FREQUENCY_CPM, 0.3, 1, List.of("bench 1", "bench 2")),
        "total_mass_g", new Kind("grams", DefaultUncertainty.MASS_G, 0.05, 1, List.of("scale 1")));

    private final Draw draw;
    private final SeasonClubs.Club club;
    private final LocalDate day;
    private final String reader;

    SeasonReadings(Draw draw, SeasonClubs.Club club, LocalDate day) {
        this.draw = draw;
        this.club = club;
        this.day = day;
        this.reader = draw.pick(READERS);
    }

    /** Every gauge something is read on. */
    static List<String> gauges() {
        return KINDS.values().stream().flatMap(kind -> kind.gauges().stream()).distinct().sorted().toList();
    }

    List<NewReading> all() {
        List<NewReading> readings = new ArrayList<>();
        boolean threeTimes = draw.chance(THREE_TIMES_SHARE);
        club.values().forEach((quantity, value) -> {
            Kind kind = KINDS.get(quantity);
            String gauge = draw.pick(kind.gauges());
            for (int i = 0; i < (threeTimes && quantity.endsWith("_deg") ? 3 : 1); i++) {
                readings.add(reading(quantity, kind, gauge, draw.read(value, kind.scatter(), 3 * kind.scatter(), kind.decimals())));
            }
        });
        return readings;
    }

    private NewReading reading(String quantity, Kind kind, String gauge, double value) {
        return new NewReading(quantity, OptionalDouble.of(value), OptionalDouble.of(kind.uncertainty()), kind.unit(),
            condition(quantity), Optional.of(gauge), Optional.empty(), Optional.of(Moment.on(day)), Optional.of(reader),
            Optional.empty(), OptionalLong.empty());
    }

    private Map<String, String> condition(String quantity) {
        Map<String, String> condition = new TreeMap<>();
        switch (quantity) {
            case "length_mm" -> condition.put("length_method", club.length());
            case "frequency_cpm" -> {
                condition.put("over_grip", club.overGrip());
                condition.put("clamp_mm", "127");
            }
            case "loft_deg", "lie_deg", "face_deg", "bounce_deg" -> condition.put("reading", club.reading());
            default -> {
                // a balance or a scale has one way only
            }
        }
        return condition;
    }
}
