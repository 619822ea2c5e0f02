package benchtwin.gauge;

import java.util.Collection;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;

/** Finds the largest deviation of a study and the limit it is held against. See {@link LargestDeviation}. */
final class SlipTest {

    /** The chance of suspecting a study in which nothing went wrong. Ours. */
    static final double FALSE_ALARM = 0.01;

    /** Deviations that differ by less than this share differ by rounding, and the first of them counts. */
    private static final double SAME = 1e-9;

    private SlipTest() {
    }

    /**
     * The largest deviation.
     * @param groups groups of two readings or more, in order; of equal deviations the first counts
     * @return empty when no reading deviates at all
     */
    static Optional<LargestDeviation> of(Collection<ReadingGroup> groups, double pooled, int degreesOfFreedom) {
        if (pooled == 0) {
            return Optional.empty();
        }
        int readings = groups.stream().mapToInt(ReadingGroup::size).sum();
        double limit = limit(readings, degreesOfFreedom, FALSE_ALARM);
        LargestDeviation largest = null;
        for (ReadingGroup group : groups) {
            double share = Math.sqrt((group.size() - 1.0) / group.size());
            for (GaugeReading reading : group.readings()) {
                double deviation = group.deviation(reading);
                double weighed = Math.abs(deviation) / (pooled * share);
                if (largest == null || weighed > largest.weighed() * (1 + SAME)) {
                    largest = new LargestDeviation(reading, deviation, weighed, limit, group.size() == 2);
                }
            }
        }
        return Optional.ofNullable(largest);
    }

    /** The limit for so many readings, 2 degrees of freedom or more, and a chance of a false alarm. */
    static double limit(int readings, int degreesOfFreedom, double falseAlarm) {
        double t = new TDistribution(degreesOfFreedom - 1).inverseCumulativeProbability(1 - falseAlarm / (2 * readings));
        return Math.sqrt(degreesOfFreedom) * t / Math.sqrt(degreesOfFreedom - 1 + t * t);
    }
}
