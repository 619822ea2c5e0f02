package benchtwin.mechanics;

import benchtwin.club.FrequencyReading;
import benchtwin.club.Shaft;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a shop's own pairs of readings, one on the bare butt and one over a grip, say of its machines.
 *
 * <p>A pair is one shaft read both ways on one gauge. Read in the same condition, the two are divided as they stand; otherwise
 * the bare readings are carried to the gripped one's condition first, at the cost of their uncertainty there. The pairs are
 * joined with {@link GripFactor#DEFAULT} as a normal prior: precision-weighted mean, each pair's variance the readings' own and
 * that of one grip to another. Source: textbook (normal mean with a normal prior); 0.98 ± 0.01 and 0.003 grip to grip: memory.
 */
public final class GripFactors {

    private static final String POOLED_KEY = GripFactor.DEFAULT.key();

    private final Map<String, GripFactor> byGauge = new LinkedHashMap<>();
    private final GripFactor pooled;

    /** A pair's ratio and the standard uncertainty of it, grip-to-grip scatter included. */
    private record Pair(double ratio, double u) {
    }

    private GripFactors(Map<Optional<String>, List<Pair>> pairs) {
        List<Pair> all = new ArrayList<>();
        pairs.forEach((gauge, own) -> {
            all.addAll(own);
            gauge.ifPresent(name -> byGauge.put(name, factor("gauge:" + name + ":grip-factor",
                GripFactor.DEFAULT.label() + " on " + name, own)));
        });
        pooled = all.isEmpty() ? GripFactor.DEFAULT : factor(POOLED_KEY, GripFactor.DEFAULT.label(), all);
    }

    /**
     * Learns from every shaft that was read both ways on one gauge.
     * @param shafts the shop's shafts
     * @return the factors found; {@link GripFactor#DEFAULT} for everything when there is no pair
     */
    public static GripFactors learn(Collection<Shaft> shafts) {
        Map<Optional<String>, List<Pair>> pairs = new LinkedHashMap<>();
        for (Shaft shaft : shafts) {
            if (shaft.frequencies().size() < 2) {
                continue;
            }
            Map<Optional<String>, List<FrequencyReading>> perGauge = new LinkedHashMap<>();
            for (FrequencyReading reading : shaft.frequencies()) {
                perGauge.computeIfAbsent(reading.cpm().taken().gauge(), g -> new ArrayList<>()).add(reading);
            }
            perGauge.forEach((gauge, readings) -> pair(shaft, readings).ifPresent(
                found -> pairs.computeIfAbsent(gauge, g -> new ArrayList<>()).add(found)));
        }
        return new GripFactors(pairs);
    }

    /**
     * The factor of a gauge.
     * @param gauge the gauge; empty when it is not known
     * @return its own; that of all pairs when it has none or is not known; the default when there are no pairs at all
     */
    public GripFactor of(Optional<String> gauge) {
        return gauge.map(byGauge::get).orElse(pooled);
    }

    /**
     * Every gauge that has pairs.
     * @return its factors, in the order in which the gauges stand in the record
     */
    public List<GripFactor> learned() {
        return List.copyOf(byGauge.values());
    }

    /** One pair a shaft: its grip is one draw of the grips there are, however often it was read. */
    private static Optional<Pair> pair(Shaft shaft, List<FrequencyReading> readings) {
        List<FrequencyReading> bare = readings.stream().filter(reading -> !reading.overGrip()).toList();
        if (bare.isEmpty() || bare.size() == readings.size()) {
            return Optional.empty();
        }
        ShaftStiffness stiffness = ShaftStiffness.of(shaft, bare, GripFactor.DEFAULT);
        List<CombinedReading> combinedBare = CombinedReading.of(shaft, bare, new ArrayList<>());
        List<FrequencyReading> gripped = readings.stream().filter(FrequencyReading::overGrip).toList();
        double ratio = 0;
        double variance = 0;
        int count = 0;
        for (CombinedReading over : CombinedReading.of(shaft, gripped, new ArrayList<>())) {
            Optional<CombinedReading> same = combinedBare.stream()
                .filter(one -> one.isSameLoad(over.freeLengthMm(), over.tipMassG())).findFirst();
            double clampMm = shaft.lengthMm() - over.freeLengthMm();
            double base = same.isPresent() ? same.get().cpm()
                : stiffness.carriedCpm(clampMm, over.tipMassG()).orElse(Double.NaN);
            double baseU = same.isPresent() ? same.get().standardUncertaintyCpm()
                : stiffness.carriedUncertaintyCpm(clampMm, over.tipMassG()).orElse(Double.NaN);
            double one = over.cpm() / base;
            double relative = Math.hypot(over.standardUncertaintyCpm() / over.cpm(), baseU / base);
            if (!Double.isNaN(relative)) {
                ratio += one;
                variance += one * one * relative * relative;
                count++;
            }
        }
        // several readings over one grip mostly lean on the same bare one: their mean is taken for no surer than one of them
        return count == 0 ? Optional.empty()
            : Optional.of(new Pair(ratio / count, Math.hypot(Math.sqrt(variance / count), MechanicsDefaults.GRIP_TO_GRIP_U)));
    }

    private static GripFactor factor(String key, String label, List<Pair> pairs) {
        double priorU = GripFactor.DEFAULT.standardUncertainty();
        double weight = 1 / (priorU * priorU);
        double sum = GripFactor.DEFAULT.value() * weight;
        for (Pair pair : pairs) {
            double own = 1 / (pair.u() * pair.u());
            weight += own;
            sum += pair.ratio() * own;
        }
        return new GripFactor(key, label, sum / weight, Math.sqrt(1 / weight), pairs.size(), Origin.MEASURED);
    }
}
