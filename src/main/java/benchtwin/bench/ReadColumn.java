package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.stock.MeasuredColumns;
import benchtwin.stock.StockKind;
import java.util.Arrays;
import java.util.Optional;

/** Under which name the book keeps a club's quantities; the names are those of clubs.csv in the program's own units. */
enum ReadColumn {
    LOFT(Quantity.LOFT, "loft_deg"),
    LIE(Quantity.LIE, "lie_deg"),
    FACE(Quantity.FACE, "face_deg"),
    BOUNCE(Quantity.BOUNCE, "bounce_deg"),
    LENGTH(Quantity.LENGTH, "length_mm"),
    SWING_WEIGHT(Quantity.SWING_WEIGHT, "swing_weight_points"),
    FREQUENCY(Quantity.FREQUENCY, "frequency_cpm"),
    TOTAL_MASS(Quantity.TOTAL_MASS, "total_mass_g");

    private final Quantity quantity;
    private final String column;

    ReadColumn(Quantity quantity, String column) {
        this.quantity = quantity;
        this.column = column;
    }

    Quantity quantity() {
        return quantity;
    }

    String column() {
        return column;
    }

    String unit() {
        return MeasuredColumns.unit(StockKind.CLUBS, column);
    }

    /** What a reading of it is trusted to until a gauge's own uncertainty is known. */
    double uncertainty(boolean ofWood) {
        return MeasuredColumns.uncertainty(StockKind.CLUBS, column, ofWood);
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
