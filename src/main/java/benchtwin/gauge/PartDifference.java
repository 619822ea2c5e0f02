package benchtwin.gauge;

/**
 * What two gauges read of one part.
 * @param part                the part
 * @param condition           the condition both were read in
 * @param difference          mean on the gauge less mean on the reference, in the quantity's unit
 * @param standardUncertainty of the difference, from the repeatability of both, above 0
 * @param gaugeReadings       how many readings on the gauge, 1 or more
 * @param referenceReadings   how many on the reference, 1 or more
 */
public record PartDifference(String part, String condition, double difference, double standardUncertainty,
                             int gaugeReadings, int referenceReadings) {

    public PartDifference {
        if (!Double.isFinite(difference) || !(standardUncertainty > 0) || gaugeReadings < 1 || referenceReadings < 1) {
            throw new IllegalArgumentException("%s differs by %s ± %s from %d and %d readings"
                .formatted(part, difference, standardUncertainty, gaugeReadings, referenceReadings));
        }
    }

    /** Of the same thing read on both. */
    static PartDifference of(Gauge gauge, ReadingGroup onGauge, Gauge reference, ReadingGroup onReference) {
        GaugeReading any = onGauge.readings().get(0);
        return new PartDifference(any.part(), any.condition(), onGauge.meanLess(onReference),
            Math.hypot(gauge.uncertaintyOfMean(onGauge.size()), reference.uncertaintyOfMean(onReference.size())),
            onGauge.size(), onReference.size());
    }
}
