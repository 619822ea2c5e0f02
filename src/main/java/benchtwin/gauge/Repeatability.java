package benchtwin.gauge;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * How well one gauge repeats one quantity, from readings of the same things again.
 *
 * <p>Readings of one part in one condition on one day form a group. s = √(Σ(x − mean of its group)² / ν), with
 * ν = Σ(readings of a group − 1): the parts may differ as they like, only the scatter within groups counts. The true
 * standard deviation lies, 95 times in 100, between s √(ν/χ²) at the upper and at the lower 2.5 % point of the
 * chi-squared distribution with ν degrees of freedom, if the scatter is normal.
 * <p>Source: published, NIST/SEMATECH e-Handbook of Statistical Methods, 2.4.4 (pooling) and 1.3.5.8 (interval); NIST StRD,
 * analysis of variance; see docs/accuracy.md.
 * @param gauge             the gauge
 * @param quantity          what was read
 * @param standardDeviation s, in the quantity's unit, 0 or more
 * @param degreesOfFreedom  ν, at least {@link #LEAST_DEGREES_OF_FREEDOM}
 * @param parts             how many parts were read more than once
 * @param readings          how many readings of them
 * @param lowest            lower end of the 95 % interval of the standard deviation
 * @param highest           its upper end
 * @param largest           the reading farthest from its group, unless all agree
 * @param scaleMark         the gauge's scale mark, if known
 */
public record Repeatability(String gauge, String quantity, double standardDeviation, int degreesOfFreedom, int parts,
                            int readings, double lowest, double highest, Optional<LargestDeviation> largest,
                            OptionalDouble scaleMark) {

    /**
     * Fewer degrees of freedom are too few to say. With 5 the 95 % interval reaches from 0.62 to 2.45 times s, a factor
     * just under four from end to end; with 4 it is nearly five, and a default is as good a guess. Ours.
     */
    public static final int LEAST_DEGREES_OF_FREEDOM = 5;

    private static final double TAIL = 0.025;

    public Repeatability {
        if (degreesOfFreedom < LEAST_DEGREES_OF_FREEDOM || parts < 1 || readings < degreesOfFreedom + parts) {
            throw new IllegalArgumentException("%d readings of %d parts do not leave %d degrees of freedom, or that is below %d"
                .formatted(readings, parts, degreesOfFreedom, LEAST_DEGREES_OF_FREEDOM));
        }
        if (!(lowest >= 0 && lowest <= standardDeviation && standardDeviation <= highest) || Double.isInfinite(highest)) {
            throw new IllegalArgumentException("a standard deviation of %s does not lie between %s and %s"
                .formatted(standardDeviation, lowest, highest));
        }
        Gauge.checkMark(gauge, scaleMark);
        if (standardDeviation == 0 && scaleMark.isEmpty()) {
            throw new IllegalArgumentException("%s cannot repeat without any scatter at all".formatted(gauge));
        }
    }

    private record Key(String part, String condition, LocalDate day) {
    }

    /**
     * Works out a gauge's repeatability.
     * @param gauge     the gauge
     * @param quantity  the quantity
     * @param scaleMark the gauge's scale mark in the quantity's unit, if known
     * @param readings  any readings; those of other gauges and quantities are passed over
     * @return the repeatability, or why there are too few readings to say
     */
    public static Finding<Repeatability> of(String gauge, String quantity, OptionalDouble scaleMark,
                                            List<GaugeReading> readings) {
        Gauge.checkMark(gauge, scaleMark);
        List<ReadingGroup> groups = repeated(gauge, quantity, readings);
        int freedom = groups.stream().mapToInt(ReadingGroup::degreesOfFreedom).sum();
        if (freedom < LEAST_DEGREES_OF_FREEDOM) {
            return Finding.refused(("too few repeat readings of %s on %s to say: %d beyond the first of a part, condition and"
                + " day, at least %d are needed").formatted(quantity, gauge, freedom, LEAST_DEGREES_OF_FREEDOM));
        }
        double squares = groups.stream().mapToDouble(ReadingGroup::sumOfSquares).sum();
        if (squares == 0 && scaleMark.isEmpty()) {
            return Finding.refused(("all repeat readings of %s on %s are equal: say how far its marks are apart, the"
                + " uncertainty is a third of that").formatted(quantity, gauge));
        }
        double pooled = Math.sqrt(squares / freedom);
        ChiSquaredDistribution chiSquared = new ChiSquaredDistribution(freedom);
        return Finding.of(new Repeatability(gauge, quantity, pooled, freedom, parts(groups),
            groups.stream().mapToInt(ReadingGroup::size).sum(),
            pooled * Math.sqrt(freedom / chiSquared.inverseCumulativeProbability(1 - TAIL)),
            pooled * Math.sqrt(freedom / chiSquared.inverseCumulativeProbability(TAIL)),
            SlipTest.of(groups, pooled, freedom), scaleMark));
    }

    private static List<ReadingGroup> repeated(String gauge, String quantity, List<GaugeReading> readings) {
        List<GaugeReading> own = readings.stream().filter(reading -> reading.isOf(quantity, gauge)).toList();
        return ReadingGroup.by(reading -> new Key(reading.part(), reading.condition(), reading.day()), own).values().stream()
            .filter(group -> group.size() > 1).toList();
    }

    private static int parts(Collection<ReadingGroup> groups) {
        return (int) groups.stream().map(group -> group.readings().get(0).part()).distinct().count();
    }

    /**
     * The standard uncertainty of a single reading: the standard deviation, but never less than a third of the scale's
     * mark.
     * @return above 0, in the quantity's unit
     */
    public double standardUncertainty() {
        return Math.max(standardDeviation, Gauge.leastUncertainty(scaleMark));
    }

    /**
     * The gauge with this repeatability, as it is used once it is accepted.
     * @return the gauge
     */
    public Gauge accepted() {
        return new Gauge(gauge, standardUncertainty(), scaleMark);
    }
}
