package benchtwin.rules;

import benchtwin.club.Category;
import benchtwin.club.Head;
import benchtwin.club.HeadSize;
import benchtwin.club.LengthMethod;
import benchtwin.club.Quantity;
import benchtwin.measure.Reading;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What one club measures in the ruled quantities, and what is lacking where it was not measured. */
public final class RuledClub {

    private static final double UPRIGHT_DEG = 90;
    private static final String PREDICTED = "predicted";

    private final Category category;
    private final boolean readAsWood;
    private final Map<RuledQuantity, RuledValue> values = new EnumMap<>(RuledQuantity.class);
    private final Map<RuledQuantity, String> lacking = new EnumMap<>(RuledQuantity.class);

    private RuledClub(Category category, boolean readAsWood) {
        this.category = category;
        this.readAsWood = readAsWood;
    }

    /**
     * What was read on a club.
     * @param lengthMm length, mm
     * @param method   how the length was taken
     * @param loftDeg  loft, degrees
     * @param lieDeg   lie, degrees
     */
    public record Readings(Optional<Reading> lengthMm, LengthMethod method, Optional<Reading> loftDeg,
                           Optional<Reading> lieDeg) {
    }

    /**
     * A club as it was measured.
     * @param category   driver to putter
     * @param readAsWood whether its angles are read as a wood's
     * @param readings   what was read on it
     * @param head       its head; empty where that is not on record
     * @return the club
     */
    public static RuledClub recorded(Category category, boolean readAsWood, Readings readings, Optional<Head> head) {
        RuledClub club = new RuledClub(category, readAsWood);
        club.length(readings);
        head.ifPresentOrElse(club::head, club::noHead);
        if (category == Category.PUTTER) {
            readings.loftDeg().ifPresent(loft -> club.put(RuledQuantity.PUTTER_LOFT, loft, read(loft)));
            readings.lieDeg().ifPresent(lie ->
                club.put(RuledQuantity.SHAFT_OFF_VERTICAL, offVertical(lie), "from its lie, " + read(lie)));
        }
        return club;
    }

    /**
     * A club as it would be built.
     * @param head        its head
     * @param predicted   what it would measure, by quantity
     * @param uncertainty standard uncertainty of each
     * @return the club
     */
    public static RuledClub planned(Head head, Map<Quantity, Double> predicted, Map<Quantity, Double> uncertainty) {
        RuledClub club = new RuledClub(head.category(), head.isWood());
        club.head(head);
        boolean putter = club.category == Category.PUTTER;
        Optional<Reading> lie = known(Quantity.LIE, predicted, uncertainty);
        known(Quantity.RULES_LENGTH, predicted, uncertainty).filter(length -> putter || lie.isPresent()).ifPresent(length ->
            club.values.put(RuledQuantity.LENGTH, putter
                ? new RuledValue(length.value(), length.standardUncertainty(), 0, PREDICTED)
                : RulesLengths.predicted(club.readAsWood, length, lie.get().value())));
        if (putter) {
            known(Quantity.LOFT, predicted, uncertainty).ifPresent(loft -> club.put(RuledQuantity.PUTTER_LOFT, loft, PREDICTED));
            lie.ifPresent(angle -> club.put(RuledQuantity.SHAFT_OFF_VERTICAL, offVertical(angle), PREDICTED));
        }
        return club;
    }

    private static Optional<Reading> known(Quantity quantity, Map<Quantity, Double> predicted, Map<Quantity, Double> uncertainty) {
        double value = predicted.getOrDefault(quantity, Double.NaN);
        double u = uncertainty.getOrDefault(quantity, Double.NaN);
        return Double.isFinite(value) && Double.isFinite(u) ? Optional.of(Reading.of(value, u)) : Optional.empty();
    }

    private static Reading offVertical(Reading lie) {
        return Reading.of(UPRIGHT_DEG - lie.value(), lie.standardUncertainty());
    }

    /**
     * Held against every limit that is for such a club.
     * @return in showing order; a limit of what was not measured says what to do
     */
    public List<Finding> findings() {
        return Limit.of(category, readAsWood).stream().map(limit -> {
            Optional<RuledValue> value = Optional.ofNullable(values.get(limit.quantity()));
            return new Finding(limit, value, value.isPresent() ? Optional.empty()
                : Optional.of(lacking.getOrDefault(limit.quantity(), limit.quantity().howToMeasure())));
        }).toList();
    }

    private void length(Readings readings) {
        if (readings.lengthMm().isEmpty()) {
            return;
        }
        Reading length = readings.lengthMm().get();
        if (!RulesLengths.needsLie(category, readings.method())) {
            values.put(RuledQuantity.LENGTH, RulesLengths.asRead(length, readings.method()));
        } else if (readings.lieDeg().isPresent()) {
            values.put(RuledQuantity.LENGTH, RulesLengths.carried(readAsWood, length, readings.method(), readings.lieDeg().get()));
        } else {
            lacking.put(RuledQuantity.LENGTH, "read its lie, without which its length cannot be carried to the "
                + (category == Category.PUTTER ? "axis" : "60° plane"));
        }
    }

    private void head(Head head) {
        String whose = "head %s, ".formatted(head.tag());
        putIf(RuledQuantity.VOLUME, head.mass().volumeCm3(), whose);
        putIf(RuledQuantity.VERTICAL_INERTIA, head.mass().verticalInertiaGCm2(), whose);
        putIf(RuledQuantity.CHARACTERISTIC_TIME, head.mass().ctUs(), whose);
        HeadSize size = head.size();
        putIf(RuledQuantity.HEEL_TO_TOE, size.heelToeMm(), whose);
        putIf(RuledQuantity.SOLE_TO_CROWN, size.soleCrownMm(), whose);
        putIf(RuledQuantity.PUTTER_NECK, size.neckMm(), whose);
        size.heelToeMm().ifPresent(across -> size.faceBackMm().ifPresent(deep ->
            put(RuledQuantity.HEEL_TO_TOE_OVER_FACE_TO_BACK, Reading.of(across.value() - deep.value(),
                Math.hypot(across.standardUncertainty(), deep.standardUncertainty())), whose + read(across))));
        if (category == Category.PUTTER) {
            putIf(RuledQuantity.PUTTER_LOFT, head.angles().loftDeg(), whose);
            head.angles().lieDeg().ifPresent(lie ->
                put(RuledQuantity.SHAFT_OFF_VERTICAL, offVertical(lie), whose + "from its lie, " + read(lie)));
        }
    }

    private void noHead() {
        for (RuledQuantity quantity : RuledQuantity.values()) {
            if (quantity.isOfHead()) {
                lacking.put(quantity, "its head is not on record: " + quantity.howToMeasure());
            }
        }
    }

    private void putIf(RuledQuantity quantity, Optional<Reading> reading, String whose) {
        reading.ifPresent(r -> put(quantity, r, whose + read(r)));
    }

    private void put(RuledQuantity quantity, Reading reading, String from) {
        values.put(quantity, new RuledValue(reading.value(), reading.standardUncertainty(), 0, from));
    }

    /** When something was read. */
    static String read(Reading reading) {
        return reading.taken().on().map(day -> "read on " + day).orElse("read, the day not noted");
    }
}
