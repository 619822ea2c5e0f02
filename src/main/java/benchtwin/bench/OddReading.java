package benchtwin.bench;

import benchtwin.book.CurrentReading;
import benchtwin.book.NewReading;
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
    /** How far a part's mass is never from its last reading, g. Ours: a head or a shaft gains less by a label or a leftover ferrule. */
    private static final double SURPRISE_PART_G = 5;

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
        refuseImpossible(sitting);
        State club = book.read(view -> view.state(OpenBook.need(view, ThingKind.CLUB, tag)));
        Map<Quantity, ClubValues.Value> last = ClubValues.of(ClubReadings.current(club));
        List<String> questions = new ArrayList<>();
        sitting.values().forEach((quantity, values) -> values.forEach(value -> (last.containsKey(quantity)
            ? moved(book, quantity, value, last.get(quantity)) : unusual(quantity, value, ClubViews.category(club))).ifPresent(questions::add)));
        return questions;
    }

    /**
     * Why a reading is asked about, or is not.
     * @param book  the book
     * @param tag   the club's tag
     * @param word  the quantity's word
     * @param typed the reading as it was typed
     * @return the account
     * @throws BadInput when there is no such club, or what was typed is no value
     */
    public static Account why(OpenBook book, String tag, String word, String typed) throws BadInput {
        Quantity quantity = HowOption.quantity(word);
        ReadColumn column = ReadColumn.of(quantity).orElseThrow(() -> new BadInput("%s is not read of a whole club".formatted(QuantityText.name(quantity))));
        double value = ColumnText.parse(column.column(), typed.replace(',', '.')).orElseThrow(() -> new BadInput(
            "\"%s\" is not a value for %s; expected %s".formatted(typed, QuantityText.name(quantity), ColumnText.expected(column.column()))));
        State club = book.read(view -> view.state(OpenBook.need(view, ThingKind.CLUB, tag)));
        ClubValues.Value last = ClubValues.of(ClubReadings.current(club)).get(quantity);
        Account.Teller tell = Account.tell("Why %s %s of %s is asked about".formatted(QuantityText.name(quantity), QuantityText.value(quantity, value),
            tag), QuantityText.value(quantity, value), "as typed");
        if (last != null) {
            tell.say("Last read %s ± %s on %s: this is %s away.".formatted(QuantityText.value(quantity, last.value()),
                QuantityText.size(quantity, last.uncertainty()), last.since().day(book.zone()), QuantityText.size(quantity, Math.abs(value - last.value()))))
                .say("Asked about beyond the larger of %s and 5 × √2 × %s = %s.".formatted(QuantityText.size(quantity, surprise(quantity)),
                    QuantityText.size(quantity, last.uncertainty()), QuantityText.size(quantity, byChance(last.uncertainty()))));
        } else {
            tell.say("It was not read since anything changed it.").points("What such a club usually measures:", UsualOfClubs.of(quantity,
                ClubViews.category(club)).map(usual -> "%s to %s".formatted(QuantityText.value(quantity, usual.least()),
                    QuantityText.value(quantity, usual.most()))).stream().toList());
        }
        return tell.law(Formula.ODD).done();
    }

    /**
     * What to ask before readings of a new club are entered.
     * @param category of the club
     * @param sitting  what was read
     * @return questions; none when nothing is odd
     * @throws BadInput when a value cannot be at all
     */
    public static List<String> questions(Category category, Sitting sitting) throws BadInput {
        refuseImpossible(sitting);
        List<String> questions = new ArrayList<>();
        sitting.values().forEach((quantity, values) -> values.forEach(value -> unusual(quantity, value, Optional.of(category))
            .ifPresent(questions::add)));
        return questions;
    }

    private static void refuseImpossible(Sitting sitting) throws BadInput {
        for (Map.Entry<Quantity, List<Double>> one : sitting.values().entrySet()) {
            for (double value : one.getValue()) {
                AskedRange.check(one.getKey(), value);
            }
        }
    }

    /** What to ask before a reading of a part is entered: against the last one read in the same way, else against what is usual. */
    static Optional<String> ofPart(OpenBook book, NewReading now, Optional<CurrentReading> last, UsualOfClubs.Usual usual, ThingKind kind) {
        String column = now.quantity();
        double value = now.value().orElseThrow();
        String said = ColumnText.name(column) + " " + ColumnText.value(column, value);
        if (last.isPresent()) {
            double before = last.get().read().value().orElseThrow();
            double moved = Math.abs(value - before);
            return moved <= Math.max(surprise(column), byChance(last.get().read().uncertainty().orElse(0))) ? Optional.empty() : Optional.of("%s is %s from the %s read on %s".formatted(
                said, ColumnText.size(column, moved), ColumnText.value(column, before), last.get().since().day(book.zone())));
        }
        return value >= usual.least() && value <= usual.most() ? Optional.empty() : Optional.of(
            "%s is unusual for a %s of this kind; as a rule it is %s to %s".formatted(said, kind.word(),
                ColumnText.value(column, usual.least()), ColumnText.value(column, usual.most())));
    }

    /** How far two readings, each with this standard uncertainty, are apart at most by chance. */
    private static double byChance(double uncertainty) {
        return SPREADS * Math.sqrt(2) * uncertainty;
    }

    /** How far a part that was left alone is never from its last reading: angles, frequencies and masses as for clubs. Ours. */
    private static double surprise(String column) {
        return column.endsWith("_deg") ? BendRun.SURPRISE_DEG : column.endsWith("_cpm") ? surprise(Quantity.FREQUENCY)
            : column.endsWith("mass_g") ? SURPRISE_PART_G : 0;
    }

    private static Optional<String> moved(OpenBook book, Quantity quantity, double value, ClubValues.Value last) {
        double moved = Math.abs(value - last.value());
        return moved <= Math.max(surprise(quantity), byChance(last.uncertainty())) ? Optional.empty()
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
