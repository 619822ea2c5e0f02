package benchtwin.stock;

import benchtwin.club.Grip;
import benchtwin.measure.Reading;
import java.util.Optional;
import java.util.OptionalDouble;

/** Rows of grips.csv. */
final class GripRows {

    private GripRows() {
    }

    /** The grip, or empty when the row has a fault. */
    static Optional<Grip> read(Row row) {
        Measures measures = new Measures(row, Optional.empty(), row.taken());
        String tag = row.tag("tag");
        String model = row.need("model");
        Optional<Reading> mass = measures.reading("mass_g");
        OptionalDouble length = measures.number("length_in");
        OptionalDouble cap = measures.number("cap_mm");
        OptionalDouble core = measures.number("core_in");
        Optional<Reading> cg = measures.reading("cg_in");
        if (cg.isPresent() && length.isPresent() && cg.get().value() >= length.getAsDouble()) {
            row.fault("cg_in", "is past the end of the grip", "%s from the butt end, above 0 and below %s".formatted(
                measures.unit("cg_in"), measures.shown("cg_in", length.getAsDouble())));
        }
        boolean ribbed = ribbed(row);
        return row.isGood() ? Optional.of(new Grip(tag, model, mass, length, cap, core, ribbed, cg, KeepingCells.read(row)))
            : Optional.empty();
    }

    /** Besides yes and no, the words for it. A blank cell is taken as round. */
    private static boolean ribbed(Row row) {
        String word = Nearest.fold(row.text("rib").orElse(""));
        if (word.equals("ribbed") || word.equals("round")) {
            row.note("rib", word.equals("ribbed") ? "yes" : "no");
            return word.equals("ribbed");
        }
        return row.yesOrNo("rib").orElse(false);
    }
}
