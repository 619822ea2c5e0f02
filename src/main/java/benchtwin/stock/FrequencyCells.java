package benchtwin.stock;

import benchtwin.club.FrequencyReading;
import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import java.util.Optional;
import java.util.OptionalDouble;

/** A row's frequency and the condition it was read in. */
final class FrequencyCells {

    /** How far clamp and free length may miss the shaft's length together, mm. Our choice: a tape measure's slip. */
    private static final double SLACK_MM = 3;

    private FrequencyCells() {
    }

    /** The reading as the row gives it; empty when it has none. A row of a shaft has free length and tip mass, a club not. */
    static Optional<FrequencyReading> read(Row row, Taken taken, boolean overGripWhenBlank, boolean ofShaft) {
        Measures measures = new Measures(row, Optional.empty(), taken);
        Optional<Reading> cpm = measures.reading("frequency_cpm");
        OptionalDouble clamp = measures.number("clamp_in");
        OptionalDouble free = ofShaft ? measures.number("free_length_in") : OptionalDouble.empty();
        OptionalDouble tipMass = ofShaft ? measures.number("tip_mass_g") : OptionalDouble.empty();
        OptionalDouble plane = measures.number("plane_deg");
        boolean overGrip = row.yesOrNo("over_grip").orElse(overGripWhenBlank);
        return cpm.map(read -> new FrequencyReading(read, clamp, free, tipMass, overGrip, plane));
    }

    /**
     * Clamp and free length against the shaft as it lies: the missing one is worked out, what cannot be is a fault of
     * the row the reading stands in, what does not add up a warning.
     */
    static FrequencyReading complete(Row row, FrequencyReading reading, double lengthMm) {
        Measures measures = new Measures(row, Optional.empty(), Taken.UNRECORDED);
        OptionalDouble clamp = reading.clampMm();
        OptionalDouble free = reading.freeLengthMm();
        for (String column : new String[] {"clamp_in", "free_length_in"}) {
            OptionalDouble part = column.equals("clamp_in") ? clamp : free;
            if (part.isPresent() && part.getAsDouble() >= lengthMm) {
                row.fault(column, "is as long as the shaft or longer", "%s above 0 and below %s, the shaft as it lies"
                    .formatted(measures.unit(column), measures.shown(column, lengthMm)));
                return reading;
            }
        }
        if (clamp.isPresent() && free.isPresent()
            && Math.abs(clamp.getAsDouble() + free.getAsDouble() - lengthMm) > SLACK_MM) {
            row.warn("free_length_in", "and the clamp do not add up to the shaft as it lies",
                "%s for this clamp".formatted(measures.shown("free_length_in", lengthMm - clamp.getAsDouble())));
        }
        if (clamp.isPresent() && free.isEmpty()) {
            free = OptionalDouble.of(lengthMm - clamp.getAsDouble());
        } else if (free.isPresent() && clamp.isEmpty()) {
            clamp = OptionalDouble.of(lengthMm - free.getAsDouble());
        }
        return new FrequencyReading(reading.cpm(), clamp, free, reading.tipMassG(), reading.overGrip(), reading.planeDeg());
    }
}
