package benchtwin.stock;

import benchtwin.club.Category;
import java.util.Optional;

/** What parts usually measure, as the files are checked by. Marks and sources: {@code Ranges}. */
public final class UsualOfParts {

    private UsualOfParts() {
    }

    /**
     * What is usual.
     * @param kind     of the part
     * @param column   one of its measured columns, under its name in the program's own units
     * @param category of a head, if that is known
     * @return from least to most, in the column's unit
     */
    public static UsualOfClubs.Usual of(StockKind kind, String column, Optional<Category> category) {
        Range range = Ranges.of(kind, column, category);
        return new UsualOfClubs.Usual(range.usualLeast(), range.usualMost());
    }
}
