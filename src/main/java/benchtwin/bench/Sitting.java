package benchtwin.bench;

import benchtwin.book.Moment;
import benchtwin.book.NewReading;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.LengthMethod;
import benchtwin.club.Quantity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * What was read of a club at one sitting.
 * @param values       by quantity, each one value or several readings of it; lengths in mm, swing weight in points
 * @param reading      how the angles were read; default soled for a driver or fairway, else by the edge
 * @param lengthMethod how the length was taken
 * @param setting      the sleeve's setting it was read at
 * @param clampMm      length of butt in the clamp, mm
 * @param overGrip     whether the clamp closed over the grip
 * @param on           the day, if it was not just now
 * @param gauge        what it was read on
 * @param station      where
 * @param by           who read it
 * @param note         free text
 */
public record Sitting(Map<Quantity, List<Double>> values, Optional<AngleReading> reading, LengthMethod lengthMethod,
                      Optional<String> setting, OptionalDouble clampMm, boolean overGrip, Optional<LocalDate> on,
                      Optional<String> gauge, Optional<String> station, Optional<String> by, Optional<String> note) {

    public Sitting {
        Map<Quantity, List<Double>> copy = new LinkedHashMap<>();
        values.forEach((quantity, read) -> copy.put(quantity, List.copyOf(read)));
        values = copy;
    }

    /**
     * The readings as the book keeps them.
     * @param category of the club
     * @param at       the setting of its sleeve, as far as that is on record; what was typed goes before it
     */
    List<NewReading> readings(Category category, Optional<String> at) throws BadInput {
        List<NewReading> readings = new ArrayList<>();
        for (Map.Entry<Quantity, List<Double>> one : values.entrySet()) {
            ReadColumn column = ReadColumn.of(one.getKey()).orElseThrow(() -> new BadInput(
                "%s is not read of a whole club; expected loft, lie, face, bounce, length, swing-weight, frequency or total-mass"
                    .formatted(one.getKey().word())));
            for (double value : one.getValue()) {
                AskedRange.check(one.getKey(), value);
                readings.add(new NewReading(column.column(), OptionalDouble.of(value),
                    OptionalDouble.of(column.uncertainty(readAs(category).isWood())), column.unit(), condition(column, category, at), gauge,
                    station, on.map(Moment::on), by, note, OptionalLong.empty()));
            }
        }
        return readings;
    }

    private Map<String, String> condition(ReadColumn column, Category category, Optional<String> at) {
        Map<String, String> condition = new TreeMap<>();
        if (column.isAngle()) {
            condition.put("reading", readAs(category).word());
            setting.or(() -> at).filter(text -> !text.isBlank()).ifPresent(text -> condition.put("setting", text.strip()));
        }
        if (column == ReadColumn.LENGTH) {
            condition.put("length_method", lengthMethod.word());
        }
        if (column == ReadColumn.FREQUENCY) {
            condition.put("over_grip", overGrip ? "yes" : "no");
            clampMm.ifPresent(mm -> condition.put("clamp_mm", Double.toString(mm).replaceAll("\\.0$", "")));
        }
        return condition;
    }

    private AngleReading readAs(Category category) {
        return reading.orElse(category.usualReading());
    }
}
