package benchtwin.bench;

import benchtwin.book.State;
import benchtwin.book.ThingKind;
import benchtwin.club.Category;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.measure.Units;
import benchtwin.stock.UsualOfClubs;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds readings that may be slips: they can be, but are far from what the club measured last, or from what such a club usually
 * measures where it was not read before. They are asked about, not refused.
 */
public final class OddReading {

    /** Standard uncertainties of a difference beyond which two readings of one club are not the same by chance. Ours. */
    private static final double SPREADS = 5;

    private OddReading() {
    }

    /**
     * What to ask before readings are entered.
     * @param book    the book
     * @param tag     the club's tag
     * @param sitting what was read
     * @return questions; none when nothing is odd
     * @throws BadInput when there is no such club, or a value cannot be at all
     */
    public static List<String> questions(OpenBook book, String tag, Sitting sitting) throws BadInput {
        for (Map.Entry<Quantity, List<Double>> one : sitting.values().entrySet()) {
            for (double value : one.getValue()) {
                AskedRange.check(one.getKey(), value);
            }
        }
        State club = book.read(view -> view.state(OpenBook.need(view, ThingKind.CLUB, tag)));
        Map<Quantity, ClubValues.Value> last = ClubValues.of(ClubReadings.current(club));
        List<String> questions = new ArrayList<>();
        sitting.values().forEach((quantity, values) -> values.forEach(value -> (last.containsKey(quantity)
            ? moved(book, quantity, value, last.get(quantity)) : unusual(quantity, value, ClubViews.category(club))).ifPresent(questions::add)));
        return questions;
    }

    private static Optional<String> moved(OpenBook book, Quantity quantity, double value, ClubValues.Value last) {
        double moved = Math.abs(value - last.value());
        return moved <= Math.max(surprise(quantity), SPREADS * Math.sqrt(2) * last.uncertainty()) ? Optional.empty()
            : Optional.of("%s %s is %s from the %s read on %s".formatted(QuantityText.name(quantity), QuantityText.value(quantity, value),
                QuantityText.size(quantity, moved), QuantityText.value(quantity, last.value()), last.since().day(book.zone())));
    }

    private static Optional<String> unusual(Quantity quantity, double value, Optional<Category> category) {
        return UsualOfClubs.of(quantity, category).filter(usual -> value < usual.least() || value > usual.most()).map(usual ->
            "%s %s is unusual for a club of this kind (%s); as a rule it is %s to %s".formatted(QuantityText.name(quantity), QuantityText.value(quantity, value),
                category.map(Category::word).orElse("club"), QuantityText.value(quantity, usual.least()),
                QuantityText.value(quantity, usual.most())));
    }

    /** How far a club that was left alone is never from its last reading. Ours; the angles' is that of a bending session. */
    private static double surprise(Quantity quantity) {
        return switch (quantity) {
            case LENGTH -> Units.MM_PER_INCH / 2;
            case SWING_WEIGHT -> 4;
            case FREQUENCY -> 10;
            case TOTAL_MASS -> 15;
            default -> BendRun.SURPRISE_DEG;
        };
    }
}
