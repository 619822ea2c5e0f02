package benchtwin.stock;

import java.util.Optional;

/** The units a column's name can end in. */
enum Unit {
    INCHES("_in", "inches"),
    MILLIMETRES("_mm", "millimetres"),
    DEGREES("_deg", "degrees"),
    INERTIA("_g_cm2", "g·cm²"),
    BUTT_INERTIA("_kg_cm2", "kg·cm²"),
    VOLUME("_cm3", "cubic centimetres"),
    MICROSECONDS("_us", "microseconds"),
    CPM("_cpm", "cycles per minute"),
    TOLERATED_POINTS("_tol_points", "points"),
    POINTS("_points", "points above A0"),
    GRAMS("_g", "grams"),
    CELSIUS("_c", "degrees Celsius"),
    MINUTES("_min", "minutes"),
    HOURS("_h", "hours"),
    NONE("", "a number");

    private static final Unit[] ALL = values();

    private final String ending;
    private final String words;

    Unit(String ending, String words) {
        this.ending = ending;
        this.words = words;
    }

    /** The unit a column's name ends in. {@code hot_melt_max_g} is in grams, {@code pulls} in none. */
    static Unit of(String column) {
        for (Unit unit : ALL) {
            if (column.endsWith(unit.ending)) {
                return unit;
            }
        }
        return NONE;
    }

    String words() {
        return words;
    }

    /** The column's name in the other unit of length; empty for anything that is no length. */
    Optional<String> otherName(String column) {
        String stem = column.substring(0, column.length() - ending.length());
        return switch (this) {
            case INCHES -> Optional.of(stem + MILLIMETRES.ending);
            case MILLIMETRES -> Optional.of(stem + INCHES.ending);
            default -> Optional.empty();
        };
    }
}
