package benchtwin.stock;

import benchtwin.club.Quantity;
import java.util.List;

/**
 * A quantity that set-targets.csv may name, and its three columns.
 * @param quantity  the quantity
 * @param value     column of the wanted value
 * @param tolerance column of its tolerance
 * @param weight    column of its weight
 */
record WantedColumn(Quantity quantity, String value, String tolerance, String weight) {

    static final List<WantedColumn> ALL = List.of(
        new WantedColumn(Quantity.LOFT, "loft_deg", "loft_tol_deg", "loft_weight"),
        new WantedColumn(Quantity.LIE, "lie_deg", "lie_tol_deg", "lie_weight"),
        new WantedColumn(Quantity.FACE, "face_deg", "face_tol_deg", "face_weight"),
        new WantedColumn(Quantity.BOUNCE, "bounce_deg", "bounce_tol_deg", "bounce_weight"),
        new WantedColumn(Quantity.LENGTH, "length_in", "length_tol_in", "length_weight"),
        new WantedColumn(Quantity.SWING_WEIGHT, "swing_weight", "swing_weight_tol_points", "swing_weight_weight"),
        new WantedColumn(Quantity.BUTT_INERTIA, "butt_inertia_kg_cm2", "butt_inertia_tol_kg_cm2", "butt_inertia_weight"),
        new WantedColumn(Quantity.FREQUENCY, "frequency_cpm", "frequency_tol_cpm", "frequency_weight"),
        new WantedColumn(Quantity.TOTAL_MASS, "total_mass_g", "total_mass_tol_g", "total_mass_weight"));

    static WantedColumn of(Quantity quantity) {
        return ALL.stream().filter(column -> column.quantity() == quantity).findFirst()
            .orElseThrow(() -> new IllegalArgumentException("set-targets.csv has no column for " + quantity.word()));
    }
}
