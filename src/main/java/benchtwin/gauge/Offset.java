package benchtwin.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What one gauge reads more than another, from parts that were read on both.
 *
 * <p>Sign: gauge less reference. Where a head reads 10.4° on A and 10.0° on R, the offset of A relative to R is +0.4°,
 * and 0.4° is subtracted from what A reads to carry it to R.
 *
 * <p>For each part d = (mean on the gauge) − (mean on the reference), u² = u²(mean on the gauge) + u²(mean on the
 * reference), both from the gauges' repeatability. The offset is the mean of d weighted by 1/u². Its standard
 * uncertainty is the larger of the internal one, (Σ 1/u²)^−½, and the external one, which is that times the Birge ratio.
 * One part is enough; then only the internal one exists.
 *
 * <p>A frequency machine may differ from another by a factor rather than by a difference: a stiffer clamp raises 300 cpm
 * by more than 200 cpm. It is still treated as an offset here. Over the 60 cpm that one kind of club spans, a factor of
 * 1.005 leaves ± 0.15 cpm; over a whole bag it leaves more, shows as parts that do not agree, and widens the uncertainty.
 * <p>Source: published, Birge, Physical Review 40 (1932) 207; see docs/accuracy.md.
 * @param gauge       the gauge
 * @param reference   the gauge it is compared with
 * @param quantity    what was read
 * @param value       gauge less reference, in the quantity's unit
 * @param internal    standard uncertainty of it as the gauges' repeatability has it, same unit, above 0
 * @param agreement   how well the parts agree, with one degree of freedom less than there are differences
 * @param differences part by part, at least one, in order of part and condition
 */
public record Offset(String gauge, String reference, String quantity, double value, double internal, Agreement agreement,
                     List<PartDifference> differences) {

    public Offset {
        differences = List.copyOf(differences);
        if (gauge.equals(reference)) {
            throw new IllegalArgumentException("%s has no offset relative to itself".formatted(gauge));
        }
        if (!Double.isFinite(value) || !(internal > 0) || Double.isInfinite(internal)) {
            throw new IllegalArgumentException("%s is off %s by %s ± %s".formatted(gauge, reference, value, internal));
        }
        if (differences.isEmpty() || agreement.degreesOfFreedom() != differences.size() - 1) {
            throw new IllegalArgumentException("%d differences do not leave %d degrees of freedom"
                .formatted(differences.size(), agreement.degreesOfFreedom()));
        }
    }

    private record Key(String part, String condition) {
    }

    /**
     * Works out the offset of a gauge relative to another.
     * @param gauge     the gauge
     * @param reference the gauge it is compared with, another one
     * @param quantity  the quantity
     * @param readings  any readings, of whatever day; those of other gauges and quantities are passed over
     * @return the offset, or why there is none
     */
    public static Finding<Offset> of(Gauge gauge, Gauge reference, String quantity, List<GaugeReading> readings) {
        Map<Key, ReadingGroup> onGauge = groups(gauge, quantity, readings);
        Map<Key, ReadingGroup> onReference = groups(reference, quantity, readings);
        List<PartDifference> differences = new ArrayList<>();
        onGauge.forEach((key, group) -> {
            if (onReference.containsKey(key)) {
                differences.add(PartDifference.of(gauge, group, reference, onReference.get(key)));
            }
        });
        if (differences.isEmpty()) {
            return Finding.refused("no part's %s was read on both %s and %s in the same condition: read one on both"
                .formatted(quantity, gauge.name(), reference.name()));
        }
        WeightedMean mean = WeightedMean.of(differences.stream().mapToDouble(PartDifference::difference).toArray(),
            differences.stream().mapToDouble(PartDifference::standardUncertainty).toArray());
        return Finding.of(new Offset(gauge.name(), reference.name(), quantity, mean.value(), mean.internal(), mean.agreement(),
            differences));
    }

    private static Map<Key, ReadingGroup> groups(Gauge gauge, String quantity, List<GaugeReading> readings) {
        return ReadingGroup.by(reading -> new Key(reading.part(), reading.condition()),
            readings.stream().filter(reading -> reading.isOf(quantity, gauge.name())).toList());
    }

    /**
     * The standard uncertainty of the offset: the larger of the internal and the external one.
     * @return above 0, in the quantity's unit
     */
    public double standardUncertainty() {
        return internal * agreement.enlargement();
    }

    /**
     * How many parts it rests on.
     * @return 1 or more
     */
    public int parts() {
        return (int) differences.stream().map(PartDifference::part).distinct().count();
    }

    /**
     * The offset as a link between the two gauges, as it is used once it is accepted.
     * @return the link
     */
    public Link accepted() {
        return new Link(quantity, gauge, reference, value, standardUncertainty());
    }
}
