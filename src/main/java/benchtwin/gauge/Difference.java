package benchtwin.gauge;

import benchtwin.club.MeasuredDifference;
import java.util.List;

/**
 * How far two readings are apart once what their gauges differ by is taken off.
 * @param value               the second less the first, in the quantity's unit
 * @param standardUncertainty of the difference, same unit, 0 or more
 * @param gauges              the gauges the comparison rests on: those of the two readings, then those in between
 */
public record Difference(double value, double standardUncertainty, List<String> gauges) {

    /** Coverage factor: how many standard uncertainties measuring may explain. Source: published, JCGM 100:2008, 6.3.3. */
    public static final double COVERAGE_FACTOR = MeasuredDifference.COVERAGE_FACTOR;

    public Difference {
        gauges = List.copyOf(gauges);
        if (!Double.isFinite(value) || !(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException("a difference of %s ± %s".formatted(value, standardUncertainty));
        }
    }

    /**
     * The size of the difference in standard uncertainties.
     * @return 0 or more; infinite for a difference that is certain
     */
    public double ratio() {
        return value == 0 ? 0 : Math.abs(value) / standardUncertainty;
    }

    /**
     * Whether the readings differ by more than measuring explains: by more than two standard uncertainties.
     * @return true when they do
     */
    public boolean beyondUncertainty() {
        return beyond(COVERAGE_FACTOR);
    }

    /**
     * Whether the readings differ by more than so many standard uncertainties.
     * @param coverageFactor above 0
     * @return true when they do; exactly so many is not more
     */
    public boolean beyond(double coverageFactor) {
        if (!(coverageFactor > 0)) {
            throw new IllegalArgumentException("a coverage factor must be above 0, not " + coverageFactor);
        }
        return ratio() > coverageFactor;
    }
}
