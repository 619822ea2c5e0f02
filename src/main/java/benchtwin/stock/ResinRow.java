package benchtwin.stock;

import benchtwin.club.ResinTable;
import benchtwin.measure.Taken;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One row of resins.csv.
 * @param resin  the resin's name
 * @param stated what is stated of it at one temperature
 */
record ResinRow(String resin, ResinTable.Row stated) {

    static final double MINUTES_AN_HOUR = 60;

    static Optional<ResinRow> read(Row row) {
        Measures measures = new Measures(row, Optional.empty(), Taken.UNRECORDED);
        String resin = row.tag("resin");
        OptionalDouble temperature = measures.need("temperature_c");
        OptionalDouble handling = measures.need("handling_min");
        OptionalDouble cure = measures.need("full_cure_h");
        if (handling.isPresent() && cure.isPresent() && cure.getAsDouble() * MINUTES_AN_HOUR < handling.getAsDouble()) {
            row.fault("full_cure_h", "is over before the joint may be handled, after %s minutes".formatted(
                row.text("handling_min").orElse("")), "hours, at least as long as until handling");
        }
        return row.isGood() ? Optional.of(new ResinRow(resin, new ResinTable.Row(temperature.orElseThrow(), handling.orElseThrow(),
            cure.orElseThrow() * MINUTES_AN_HOUR))) : Optional.empty();
    }
}
