package benchtwin.mechanics;

import benchtwin.club.FrequencyReading;
import benchtwin.club.Shaft;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * All readings of a shaft in one condition as one. Repeats in one plane count as their mean, whose uncertainty shrinks with
 * their number. Readings in several planes count as the mean of the planes, but never as surer than the least sure plane, and
 * the planes' own spread is added: which plane a build will be read in is open.
 * @param freeLengthMm           clamp face to tip, mm
 * @param tipMassG               mass on the tip, g
 * @param overGrip               whether the clamp closed over a grip
 * @param cpm                    what was read
 * @param standardUncertaintyCpm of it
 * @param count                  readings behind it
 */
record CombinedReading(double freeLengthMm, double tipMassG, boolean overGrip, double cpm, double standardUncertaintyCpm,
                       int count) {

    /** Free lengths this near are the same: what a ruler can tell. Ours. */
    private static final double SAME_LENGTH_MM = 0.5;
    /** Tip masses this near are the same. Ours. */
    private static final double SAME_MASS_G = 0.5;
    /** A plane comes back after half a turn. */
    private static final long HALF_TURN_DEG = 180;
    private static final long UNRECORDED_PLANE = -1;

    /**
     * The usable readings of a shaft.
     * @param shaft the shaft
     * @param all   those of its readings to look at
     * @param notes what a reader should know of them is added here
     * @return one for each condition, in the order in which the conditions first stand in the record
     */
    static List<CombinedReading> of(Shaft shaft, List<FrequencyReading> all, List<String> notes) {
        List<List<FrequencyReading>> groups = new ArrayList<>(1);
        List<CombinedReading> conditions = new ArrayList<>(1);
        int unplaced = 0;
        boolean tipMassAssumed = false;
        for (FrequencyReading reading : all) {
            OptionalDouble free = freeLengthMm(shaft, reading);
            if (free.isEmpty()) {
                unplaced++;
                continue;
            }
            double length = free.getAsDouble();
            if (!(length > 0 && length < shaft.lengthMm())) {
                notes.add("shaft %s: a free length of %.0f mm does not fit its length of %.0f mm; that frequency is not used"
                    .formatted(shaft.tag(), length, shaft.lengthMm()));
                continue;
            }
            tipMassAssumed |= reading.tipMassG().isEmpty();
            CombinedReading own = new CombinedReading(length, reading.tipMassG().orElse(MechanicsDefaults.RAW_TIP_MASS_G),
                reading.overGrip(), reading.cpm().value(), reading.cpm().standardUncertainty(), 1);
            int k = 0;
            while (k < conditions.size() && !conditions.get(k).isSameCondition(own)) {
                k++;
            }
            if (k == conditions.size()) {
                conditions.add(own);
                groups.add(new ArrayList<>(1));
            }
            groups.get(k).add(reading);
        }
        note(shaft, all.size(), unplaced, tipMassAssumed, notes);
        for (int k = 0; k < groups.size(); k++) {
            if (groups.get(k).size() > 1) {
                conditions.set(k, conditions.get(k).with(groups.get(k), shaft, notes));
            }
        }
        return conditions;
    }

    private static void note(Shaft shaft, int all, int unplaced, boolean tipMassAssumed, List<String> notes) {
        if (unplaced > 0 && all == 1) {
            notes.add("shaft %s: its frequency was recorded without clamp or free length and is not used"
                .formatted(shaft.tag()));
        } else if (unplaced > 0) {
            notes.add("shaft %s: %d of its %d frequencies recorded without clamp or free length and not used"
                .formatted(shaft.tag(), unplaced, all));
        }
        if (tipMassAssumed) {
            notes.add("shaft %s: its frequency is taken as read with %.0f g on the tip (default)"
                .formatted(shaft.tag(), MechanicsDefaults.RAW_TIP_MASS_G));
        }
    }

    private static OptionalDouble freeLengthMm(Shaft shaft, FrequencyReading reading) {
        return reading.freeLengthMm().isPresent() || reading.clampMm().isEmpty() ? reading.freeLengthMm()
            : OptionalDouble.of(shaft.lengthMm() - reading.clampMm().getAsDouble());
    }

    /**
     * Whether another was read at the same free length, with the same tip mass, and over a grip or not alike.
     * @param other the other
     * @return true when the two may be compared as they stand
     */
    boolean isSameCondition(CombinedReading other) {
        return overGrip == other.overGrip && isSameLoad(other.freeLengthMm, other.tipMassG);
    }

    boolean isSameLoad(double otherFreeMm, double otherTipMassG) {
        return Math.abs(freeLengthMm - otherFreeMm) <= SAME_LENGTH_MM && Math.abs(tipMassG - otherTipMassG) <= SAME_MASS_G;
    }

    private CombinedReading with(List<FrequencyReading> readings, Shaft shaft, List<String> notes) {
        Map<Long, List<FrequencyReading>> planes = new LinkedHashMap<>();
        for (FrequencyReading reading : readings) {
            long plane = reading.planeDeg().isEmpty() ? UNRECORDED_PLANE
                : Math.floorMod(Math.round(reading.planeDeg().getAsDouble()), HALF_TURN_DEG);
            planes.computeIfAbsent(plane, p -> new ArrayList<>()).add(reading);
        }
        double[] means = new double[planes.size()];
        double worst = 0;
        int k = 0;
        for (List<FrequencyReading> plane : planes.values()) {
            double sum = 0;
            double squares = 0;
            for (FrequencyReading reading : plane) {
                sum += reading.cpm().value();
                squares += reading.cpm().standardUncertainty() * reading.cpm().standardUncertainty();
            }
            means[k++] = sum / plane.size();
            worst = Math.max(worst, squares / (plane.size() * plane.size()));
        }
        double mean = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (double one : means) {
            mean += one / means.length;
            least = Math.min(least, one);
            most = Math.max(most, one);
        }
        double spread = 0;
        for (double one : means) {
            spread += (one - mean) * (one - mean) / means.length;
        }
        if (means.length > 1) {
            notes.add("shaft %s: its readings in %d planes at %.0f mm lie %.1f cpm apart; their mean is used"
                .formatted(shaft.tag(), means.length, freeLengthMm, most - least));
        }
        return new CombinedReading(freeLengthMm, tipMassG, overGrip, mean, Math.sqrt(worst + spread), readings.size());
    }
}
