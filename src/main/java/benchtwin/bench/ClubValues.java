package benchtwin.bench;

import benchtwin.book.CurrentReading;
import benchtwin.book.Moment;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.LengthMethod;
import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.mechanics.RulesLength;
import benchtwin.mechanics.WoodLoft;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a club measures, one value a quantity, out of the readings that have not been overtaken: the newest of each, the mean
 * where one sitting read it several times.
 */
final class ClubValues {

    private static final String READING = "reading";
    private static final String LENGTH_METHOD = "length_method";

    /**
     * One value.
     * @param value       in the quantity's unit
     * @param uncertainty its standard uncertainty
     * @param since       when it counts from
     * @param gauge       what it was read on
     * @param condition   how, by name
     * @param ids         the readings it rests on
     */
    record Value(double value, double uncertainty, Moment since, Optional<String> gauge, Map<String, String> condition,
                 List<Long> ids) {

        Value carried(double to, String condition, String now) {
            Map<String, String> changed = new TreeMap<>(this.condition);
            changed.put(condition, now);
            return new Value(to, uncertainty, since, gauge, changed, ids);
        }
    }

    private ClubValues() {
    }

    /** As read. */
    static Map<Quantity, Value> of(List<CurrentReading> readings) {
        Map<Quantity, Value> values = new EnumMap<>(Quantity.class);
        for (ReadColumn column : ReadColumn.values()) {
            List<CurrentReading> own = readings.stream().filter(reading -> reading.read().quantity().equals(column.column()))
                .toList();
            own.stream().max(CurrentReading.BY_TIME).ifPresent(newest ->
                values.put(column.quantity(), value(newest, Repeats.with(newest, own))));
        }
        return values;
    }

    private static Value value(CurrentReading newest, Repeats repeats) {
        return new Value(repeats.mean(), repeats.uncertainty(), newest.since(), newest.read().gauge(), newest.read().condition(),
            repeats.readings().stream().map(CurrentReading::id).toList());
    }

    /**
     * The same with lengths along the axis and a wood's loft soled, as far as what that takes was read.
     * @param values   as read
     * @param category of the club
     */
    static Map<Quantity, Value> carried(Map<Quantity, Value> values, Optional<Category> category) {
        Map<Quantity, Value> carried = new EnumMap<>(Quantity.class);
        carried.putAll(values);
        Value lie = values.get(Quantity.LIE);
        Value length = values.get(Quantity.LENGTH);
        if (lie != null && length != null && LengthMethod.RULES60.word().equals(length.condition().get(LENGTH_METHOD))) {
            boolean wood = category.filter(Category::isDriverOrFairway).isPresent();
            carried.put(Quantity.LENGTH, length.carried(length.value()
                + RulesLength.shorterByMm(lie.value(), RulesLength.soleCentreMm(wood), RulesLength.SOLE_RADIUS_MM), LENGTH_METHOD, LengthMethod.AXIS.word()));
        }
        Value loft = values.get(Quantity.LOFT);
        Value face = values.get(Quantity.FACE);
        if (lie != null && loft != null && face != null
            && AngleReading.SQUARE.word().equals(loft.condition().get(READING))) {
            carried.put(Quantity.LOFT, loft.carried(WoodLoft.soledDeg(loft.value(), face.value(), lie.value()), READING,
                AngleReading.SOLED.word()));
        }
        return carried;
    }

    /** Why two values of a quantity cannot be held against each other; empty when they can. */
    static Optional<String> apart(Quantity quantity, Value a, Value b) {
        List<String> names = quantity.isAngle() ? List.of(READING)
            : quantity == Quantity.LENGTH ? List.of(LENGTH_METHOD)
            : quantity == Quantity.FREQUENCY ? List.of("over_grip", "clamp_mm") : List.of();
        for (String name : names) {
            String one = a.condition().get(name);
            String other = b.condition().get(name);
            if (one != null && other != null && !one.equals(other) && !(quantity != Quantity.LOFT && isWood(one) && isWood(other))) {
                return Optional.of("%s was read %s and %s, and cannot be carried from one to the other".formatted(
                    QuantityText.name(quantity), how(name, one), how(name, other)));
            }
        }
        return Optional.empty();
    }

    /** Soled and square differ in the loft alone: lie and face angle are those of the sole lying flat in either. */
    private static boolean isWood(String reading) {
        return reading.equals(AngleReading.SOLED.word()) || reading.equals(AngleReading.SQUARE.word());
    }

    private static String how(String name, String text) {
        String words = ColumnText.condition(Map.of(name, text));
        return name.equals("clamp_mm") ? "with " + words : words;
    }
}
