package benchtwin.stock;

import benchtwin.club.Weight;
import benchtwin.measure.Taken;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Rows of weights.csv. */
final class WeightRows {

    private WeightRows() {
    }

    /** The weights, or empty when the row has a fault. */
    static Optional<Weight> read(Row row) {
        Measures measures = new Measures(row, Optional.empty(), Taken.UNRECORDED);
        String tag = row.tag("tag");
        String typed = row.need("port");
        String port = typed.equalsIgnoreCase(Weight.TIP) ? Weight.TIP : typed;
        row.note("port", port);
        OptionalDouble mass = measures.need("mass_g");
        if (!row.has("count")) {
            row.missing("count", "how many are in the drawer, such as 3");
        }
        OptionalInt count = measures.whole("count");
        return row.isGood() ? Optional.of(new Weight(tag, port,
            mass.getAsDouble(), count.getAsInt(), KeepingCells.read(row))) : Optional.empty();
    }
}
