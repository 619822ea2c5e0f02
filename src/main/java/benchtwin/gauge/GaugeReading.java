package benchtwin.gauge;

import java.time.LocalDate;
import java.util.Comparator;

/**
 * One value read on a gauge.
 *
 * <p>Readings that are equal in part, quantity and condition are taken as readings of one thing that did not change
 * between them. A head that was bent after a reading is another thing: whoever collects the readings puts what tells its
 * states apart (the number of the bend, say) into the condition.
 * @param part                tag of what was read
 * @param quantity            which of its quantities; readings of one name share one unit
 * @param condition           how it was read, and which state of the part where it was worked on; may be empty
 * @param gauge               name of the gauge
 * @param day                 when it was read
 * @param value               what was read, finite, in the quantity's unit
 * @param standardUncertainty how far the value scatters by itself, one standard deviation, same unit, 0 or more: the
 *                            gauge's repeatability for a single reading, less for a mean. What the gauge is off by as a
 *                            whole is not in it; that is its offset
 */
public record GaugeReading(String part, String quantity, String condition, String gauge, LocalDate day, double value,
                           double standardUncertainty) {

    /** The order in which readings are worked through, so that the order they came in never shows. */
    static final Comparator<GaugeReading> ORDER = Comparator.comparing(GaugeReading::part)
        .thenComparing(GaugeReading::condition).thenComparing(GaugeReading::day)
        .thenComparingDouble(GaugeReading::value);

    public GaugeReading {
        if (part.isBlank() || quantity.isBlank() || gauge.isBlank()) {
            throw new IllegalArgumentException(
                "a gauge's reading needs a part, a quantity and a gauge, not \"%s\", \"%s\", \"%s\"".formatted(part, quantity, gauge));
        }
        if (condition == null || day == null) {
            throw new IllegalArgumentException("the reading of %s on %s lacks its condition or its day".formatted(part, gauge));
        }
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the reading of %s on %s must be a finite number, not %s"
                .formatted(part, gauge, value));
        }
        if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException("the standard uncertainty of %s on %s must be 0 or more and finite, not %s"
                .formatted(part, gauge, standardUncertainty));
        }
    }

    /** Whether it is a reading of this quantity on this gauge. */
    boolean isOf(String wantedQuantity, String wantedGauge) {
        return quantity.equals(wantedQuantity) && gauge.equals(wantedGauge);
    }
}
