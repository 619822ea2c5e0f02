package benchtwin.book;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * A measured value as it is entered.
 * @param quantity    what was read, its unit at the end: {@code loft_deg}
 * @param value       what was read, in that unit; empty only where a correction takes a reading back
 * @param uncertainty its standard uncertainty, same unit, if known
 * @param unit        the unit in words
 * @param condition   how it was read, by name
 * @param gauge       what it was read on, if recorded
 * @param station     where it was read, if recorded
 * @param measuredAt  when, if recorded
 * @param by          who read it, if recorded
 * @param note        free text
 * @param corrects    the reading it takes the place of
 */
public record NewReading(String quantity, OptionalDouble value, OptionalDouble uncertainty, String unit,
                         Map<String, String> condition, Optional<String> gauge, Optional<String> station,
                         Optional<Moment> measuredAt, Optional<String> by, Optional<String> note, OptionalLong corrects) {

    public NewReading {
        condition = condition.isEmpty() ? Map.of() : Collections.unmodifiableMap(new TreeMap<>(condition));
        gauge = gauge.map(String::strip).filter(text -> !text.isEmpty());
        station = station.map(String::strip).filter(text -> !text.isEmpty());
        by = by.map(String::strip).filter(text -> !text.isEmpty());
        note = note.map(String::strip).filter(text -> !text.isEmpty());
        if (value.isPresent() && !Double.isFinite(value.getAsDouble())) {
            throw new IllegalArgumentException("%s must be a finite number, not %s".formatted(quantity, value));
        }
        if (value.isEmpty() && corrects.isEmpty()) {
            throw new IllegalArgumentException(quantity + " has no value and takes back no reading");
        }
        if (uncertainty.isPresent() && !(uncertainty.getAsDouble() >= 0 && Double.isFinite(uncertainty.getAsDouble()))) {
            throw new IllegalArgumentException("a standard uncertainty must be 0 or more, not " + uncertainty);
        }
    }

    /**
     * A value of which nothing else is known.
     * @param quantity what was read
     * @param value    what was read
     * @param unit     the unit in words
     * @return the reading
     */
    public static NewReading of(String quantity, double value, String unit) {
        return new NewReading(quantity, OptionalDouble.of(value), OptionalDouble.empty(), unit, Map.of(), Optional.empty(),
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), OptionalLong.empty());
    }

    /**
     * The same, trusted otherwise.
     * @param other its standard uncertainty, same unit
     * @return a copy
     */
    public NewReading trustedTo(OptionalDouble other) {
        return new NewReading(quantity, value, other, unit, condition, gauge, station, measuredAt, by, note, corrects);
    }

    /**
     * The same with what it should have said.
     * @param other the value, same unit
     * @return a copy
     */
    public NewReading saying(double other) {
        return new NewReading(quantity, OptionalDouble.of(other), uncertainty, unit, condition, gauge, station, measuredAt, by,
            note, corrects);
    }

    /** The same by itself, whatever it corrected. */
    NewReading byItself() {
        return new NewReading(quantity, value, uncertainty, unit, condition, gauge, station, measuredAt, by, note,
            OptionalLong.empty());
    }

    /**
     * The same, put in the place of another.
     * @param id     the reading it corrects
     * @param reason why
     * @return a copy
     */
    public NewReading correcting(long id, String reason) {
        return new NewReading(quantity, value, uncertainty, unit, condition, gauge, station, measuredAt, by,
            Optional.of(reason), OptionalLong.of(id));
    }

    /**
     * The same, taken back.
     * @param id     the reading that was wrong
     * @param reason why
     * @return a copy without a value
     */
    public NewReading takingBack(long id, String reason) {
        return new NewReading(quantity, OptionalDouble.empty(), OptionalDouble.empty(), unit, condition, gauge, station,
            measuredAt, by, Optional.of(reason), OptionalLong.of(id));
    }
}
