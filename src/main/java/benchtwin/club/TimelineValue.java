package benchtwin.club;

import java.util.Optional;

/**
 * One value of a timeline, in the unit of the quantity it stands under.
 * @param value               what was read, finite
 * @param standardUncertainty one standard deviation of it, 0 or more
 * @param sinceBefore         this less the reading before, carried to one gauge and one condition; empty for the first
 * @param gauge               what it was read on, if recorded
 */
public record TimelineValue(double value, double standardUncertainty, Optional<MeasuredDifference> sinceBefore,
                            Optional<String> gauge) {

    public TimelineValue {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a value of a timeline must be a finite number, not " + value);
        }
        if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException(
                "a standard uncertainty must be 0 or more and finite, not " + standardUncertainty);
        }
        if (gauge.isPresent() && gauge.get().isBlank()) {
            throw new IllegalArgumentException("a gauge has a name, or is left out");
        }
    }
}
