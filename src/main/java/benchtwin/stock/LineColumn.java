package benchtwin.stock;

import benchtwin.club.Quantity;
import benchtwin.club.WantedClub;
import java.util.List;
import java.util.Optional;

/** The columns of set-targets.csv that name a line, and what such a line may run through. */
enum LineColumn {
    FREQUENCY("frequency_line", List.of(Quantity.FREQUENCY)),
    SWING("swing_line", List.of(Quantity.SWING_WEIGHT, Quantity.BUTT_INERTIA)),
    LOFT("loft_line", List.of(Quantity.LOFT));

    private final String column;
    private final List<Quantity> quantities;

    LineColumn(String column, List<Quantity> quantities) {
        this.column = column;
        this.quantities = quantities;
    }

    String column() {
        return column;
    }

    List<Quantity> quantities() {
        return quantities;
    }

    /** The line a club names in this column. */
    Optional<String> of(WantedClub club) {
        return switch (this) {
            case FREQUENCY -> club.frequencyLine();
            case SWING -> club.swingLine();
            case LOFT -> club.loftLine();
        };
    }
}
