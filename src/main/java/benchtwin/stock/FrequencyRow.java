package benchtwin.stock;

import benchtwin.club.FrequencyReading;
import java.util.Optional;

/**
 * A row of frequencies.csv.
 * @param row     the row, for faults found when the shaft is known
 * @param shaft   tag of the shaft
 * @param reading the reading as written
 */
record FrequencyRow(Row row, String shaft, FrequencyReading reading) {

    static Optional<FrequencyRow> read(Row row) {
        String tag = row.tag("tag");
        if (!row.has("frequency_cpm")) {
            row.missing("frequency_cpm", "cycles per minute, such as 310");
        }
        Optional<FrequencyReading> reading = FrequencyCells.read(row, row.taken(), false, true);
        return row.isGood() ? reading.map(read -> new FrequencyRow(row, tag, read)) : Optional.empty();
    }

    /**
     * The reading as one of this shaft; empty when its condition does not fit the shaft.
     * @param lengthMm the shaft as it lies, mm
     * @param gripOn   whether it has a grip on, over which the clamp closes where the row says nothing
     */
    Optional<FrequencyReading> on(double lengthMm, boolean gripOn) {
        FrequencyReading full = FrequencyCells.complete(row, reading, lengthMm);
        boolean overGrip = row.has("over_grip") ? full.overGrip() : gripOn;
        return row.isGood() ? Optional.of(new FrequencyReading(full.cpm(), full.clampMm(), full.freeLengthMm(),
            full.tipMassG(), overGrip, full.planeDeg())) : Optional.empty();
    }
}
