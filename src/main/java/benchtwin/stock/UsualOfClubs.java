package benchtwin.stock;

import benchtwin.club.Category;
import benchtwin.club.Quantity;
import java.util.Map;
import java.util.Optional;

/** What clubs of a category usually measure, as the files are checked by. Marks and sources: {@code Ranges}. */
public final class UsualOfClubs {

    private static final Map<Quantity, String> COLUMNS = Map.of(Quantity.LOFT, "loft_deg", Quantity.LIE, "lie_deg", Quantity.FACE,
        "face_deg", Quantity.BOUNCE, "bounce_deg", Quantity.LENGTH, "length_in", Quantity.SWING_WEIGHT, "swing_weight",
        Quantity.FREQUENCY, "frequency_cpm", Quantity.TOTAL_MASS, "total_mass_g");

    /**
     * From least to most, both included, in the quantity's unit.
     * @param least below it is unusual
     * @param most  above it is unusual
     */
    public record Usual(double least, double most) {
    }

    private UsualOfClubs() {
    }

    /**
     * What is usual.
     * @param quantity what is read of a whole club
     * @param category of the club, if that is known
     * @return empty for a quantity that is not read of a whole club
     */
    public static Optional<Usual> of(Quantity quantity, Optional<Category> category) {
        return Optional.ofNullable(COLUMNS.get(quantity)).map(column -> Ranges.of(StockKind.CLUBS, column, category))
            .map(range -> new Usual(range.usualLeast(), range.usualMost()));
    }
}
