package benchtwin.bench;

import benchtwin.club.Quantity;
import java.util.Arrays;
import java.util.Optional;

/** Under which name the book keeps a club's quantities; the names are those of clubs.csv in the program's own units. */
enum ReadColumn {
    LOFT(Quantity.LOFT, "loft_deg", "degrees"),
    LIE(Quantity.LIE, "lie_deg", "degrees"),
    FACE(Quantity.FACE, "face_deg", "degrees"),
    BOUNCE(Quantity.BOUNCE, "bounce_deg", "degrees"),
    LENGTH(Quantity.LENGTH, "length_mm", "millimetres"),
    SWING_WEIGHT(Quantity.SWING_WEIGHT, "swing_weight_points", "points"),
    FREQUENCY(Quantity.FREQUENCY, "frequency_cpm", "cycles per minute"),
    TOTAL_MASS(Quantity.TOTAL_MASS, "total_mass_g", "grams");

    private final Quantity quantity;
    private final String column;
    private final String unit;

    ReadColumn(Quantity quantity, String column, String unit) {
        this.quantity = quantity;
        this.column = column;
        this.unit = unit;
    }

    Quantity quantity() {
        return quantity;
    }

    String column() {
        return column;
    }

    String unit() {
        return unit;
    }

    boolean isAngle() {
        return quantity.isAngle();
    }

    static Optional<ReadColumn> of(Quantity quantity) {
        return Arrays.stream(values()).filter(one -> one.quantity == quantity).findFirst();
    }

    static Optional<ReadColumn> of(String column) {
        return Arrays.stream(values()).filter(one -> one.column.equals(column)).findFirst();
    }
}
