package benchtwin.picture;

import benchtwin.club.BenchTime;
import java.util.Optional;

/**
 * One reading of a history, in the unit of the quantity it stands under.
 * @param when                when it was read
 * @param value               what was read, carried to the reference gauge where that is known, finite
 * @param standardUncertainty one standard deviation of it, 0 or more; with 0 no whisker is drawn
 * @param otherGauge          the gauge it was read on, where that is not the reference
 * @param superseded          true when it was put right or taken back later
 */
public record HistoryReading(BenchTime when, double value, double standardUncertainty, Optional<String> otherGauge,
                             boolean superseded) {

    /**
     * Checks the numbers and makes the gauge's name printable.
     * @throws IllegalArgumentException naming the time and what cannot be
     */
    public HistoryReading {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the reading of %s: a value of %s is no number".formatted(when.text(), value));
        }
        Words.notNegative("the reading of " + when.text() + ": an uncertainty", standardUncertainty);
        otherGauge = otherGauge.map(name -> Words.required("gauge", name));
    }

    /**
     * A reading on the reference gauge that still stands.
     * @param when                when it was read
     * @param value               what was read
     * @param standardUncertainty one standard deviation of it
     * @return the reading
     */
    public static HistoryReading of(BenchTime when, double value, double standardUncertainty) {
        return new HistoryReading(when, value, standardUncertainty, Optional.empty(), false);
    }

    /** Half the whisker. */
    double whisker() {
        return 2 * standardUncertainty;
    }
}
