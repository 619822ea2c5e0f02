package benchtwin.gauge;

/**
 * An accepted offset between two gauges.
 * @param quantity            what it holds for
 * @param gauge               the gauge
 * @param reference           the gauge it was compared with, another one
 * @param offset              what the gauge reads less what the reference reads, in the quantity's unit
 * @param standardUncertainty of the offset, same unit, above 0
 */
public record Link(String quantity, String gauge, String reference, double offset, double standardUncertainty) {

    public Link {
        if (quantity.isBlank() || gauge.isBlank() || reference.isBlank() || gauge.equals(reference)) {
            throw new IllegalArgumentException("an offset of %s joins two gauges, not \"%s\" and \"%s\""
                .formatted(quantity, gauge, reference));
        }
        if (!Double.isFinite(offset) || !(standardUncertainty > 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException("the offset of %s relative to %s cannot be %s ± %s"
                .formatted(gauge, reference, offset, standardUncertainty));
        }
    }
}
