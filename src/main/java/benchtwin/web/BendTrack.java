package benchtwin.web;

import benchtwin.bench.BendRun;
import benchtwin.bend.Bend;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One angle's way to its target, reading by reading, as a page draws it.
 * @param quantity  the angle
 * @param readings  degrees; the first before any bend
 * @param target    degrees
 * @param tolerance degrees
 */
public record BendTrack(Quantity quantity, List<Double> readings, double target, double tolerance) {

    private static final double LEFT_PX = 40;
    private static final double RIGHT_PX = 760;
    private static final double ROOM = 0.08;

    /** The tracks of everything a session is to bring somewhere. */
    static List<BendTrack> of(BendRun run) {
        List<BendTrack> tracks = new ArrayList<>();
        run.goal().targetDeg().forEach((quantity, target) -> {
            List<Double> readings = new ArrayList<>();
            List<Bend> bends = run.session().bends();
            readings.add(bends.isEmpty() ? run.session().nowDeg().get(quantity) : bends.get(0).beforeDeg().get(quantity));
            bends.forEach(bend -> readings.add(bend.afterDeg().get(quantity)));
            tracks.add(new BendTrack(quantity, readings, target, run.goal().toleranceDeg().get(quantity)));
        });
        return tracks;
    }

    /**
     * Where an angle stands.
     * @param degrees the angle
     * @return x of the drawing
     */
    public String x(double degrees) {
        double low = Math.min(target - 2 * tolerance, readings.stream().mapToDouble(Double::doubleValue).min().orElse(target));
        double high = Math.max(target + 2 * tolerance, readings.stream().mapToDouble(Double::doubleValue).max().orElse(target));
        double room = ROOM * (high - low);
        return String.format(Locale.ROOT, "%.1f", LEFT_PX + (RIGHT_PX - LEFT_PX) * (degrees - low + room) / (high - low + 2 * room));
    }

    /**
     * The way in words.
     * @return for who cannot see it
     */
    public String words() {
        return "%s: %s; target %s within %s".formatted(QuantityText.name(quantity), String.join(", then ", readings.stream()
            .map(reading -> QuantityText.value(quantity, reading)).toList()), QuantityText.value(quantity, target),
            QuantityText.size(quantity, tolerance));
    }
}
