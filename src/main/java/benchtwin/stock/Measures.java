package benchtwin.stock;

import benchtwin.club.Category;
import benchtwin.measure.Reading;
import benchtwin.measure.SwingWeightText;
import benchtwin.measure.Taken;
import benchtwin.measure.Units;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The numbers of one row. Lengths come out in mm, whatever unit their column is in. What cannot be is a fault, what is
 * unusual a warning.
 */
final class Measures {

    private static final String SWING_WEIGHT = "swing_weight";
    /** How far one quantity in two units may differ by rounding: absolutely, and as a share of it. Our choice. */
    private static final double SAME_ABSOLUTE = 0.051;
    private static final double SAME_SHARE = 0.0005;

    private final Row row;
    private final Optional<Category> category;
    private final Taken taken;

    Measures(Row row, Optional<Category> category, Taken taken) {
        this.row = row;
        this.category = category;
        this.taken = taken;
    }

    /** The number in a column, lengths in mm, swing weight in points; empty when blank or wrong. */
    OptionalDouble number(String column) {
        Header.Spot spot = row.spot(column);
        OptionalDouble own = numberUnder(column, column, row.cell(spot.position()));
        OptionalDouble other = numberUnder(column, spot.otherName(), row.cell(spot.otherPosition()));
        if (own.isPresent() && other.isPresent()) {
            double apart = Math.abs(own.getAsDouble() - other.getAsDouble());
            if (apart > Math.max(SAME_ABSOLUTE, SAME_SHARE * Math.abs(own.getAsDouble()))) {
                row.fault(spot.otherName(), row.cell(spot.otherPosition()),
                    "does not agree with %s in column %s".formatted(row.cell(spot.position()), column),
                    "one of the two, or both alike");
            }
        }
        return own.isPresent() ? own : other;
    }

    /** A number that must be there. */
    OptionalDouble need(String column) {
        if (!row.has(column)) {
            row.missing(column, row.spot(column).column().expectation(row.nameInFile(column)));
        }
        return number(column);
    }

    Optional<Reading> reading(String column, double standardUncertainty) {
        OptionalDouble number = number(column);
        return number.isEmpty() ? Optional.empty()
            : Optional.of(new Reading(number.getAsDouble(), standardUncertainty, taken));
    }

    OptionalInt whole(String column) {
        OptionalDouble number = number(column);
        if (number.isEmpty()) {
            return OptionalInt.empty();
        }
        if (number.getAsDouble() != Math.rint(number.getAsDouble())) {
            row.fault(column, "is not a whole number", "a whole number, such as " + row.spot(column).column().example());
            return OptionalInt.empty();
        }
        return OptionalInt.of((int) number.getAsDouble());
    }

    /** One number out of a list in a cell. */
    OptionalDouble member(String column, String text) {
        return numberUnder(column, column, text);
    }

    /** A length as the column writes it, without its unit. */
    String shown(String column, double mm) {
        return shownUnder(row.nameInFile(column), mm);
    }

    /** The unit of the column in this row, in words. */
    String unit(String column) {
        return Unit.of(row.nameInFile(column)).words();
    }

    private OptionalDouble numberUnder(String column, String name, String cell) {
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        boolean comma = row.source().decimalComma();
        if (name.equals(SWING_WEIGHT)) {
            return swingWeight(cell, comma);
        }
        Unit unit = Unit.of(name);
        NumberText number = unit == Unit.INCHES || unit == Unit.MILLIMETRES
            ? NumberText.parseMm(cell, comma, unit == Unit.INCHES) : NumberText.parse(cell, comma);
        if (number.value().isEmpty()) {
            row.fault(name, cell, number.problem(), row.spot(column).column().expectation(name));
            return OptionalDouble.empty();
        }
        return inRange(column, name, cell, number.value().getAsDouble());
    }

    private OptionalDouble swingWeight(String cell, boolean comma) {
        OptionalDouble points = cell.length() > Fault.SHOWN_CHARACTERS ? OptionalDouble.empty()
            : SwingWeightText.parsePoints(comma ? cell.replace(',', '.') : cell);
        if (points.isEmpty()) {
            row.fault(SWING_WEIGHT, cell, "is not a swing weight",
                "a letter A to G and points, such as D2.4; plain points go under swing_weight_points");
            return points;
        }
        return inRange(SWING_WEIGHT, SWING_WEIGHT, cell, points.getAsDouble());
    }

    private OptionalDouble inRange(String column, String name, String cell, double value) {
        Range range = Ranges.of(row.source().kind(), column, category);
        String unit = Unit.of(name).words();
        if (!range.isPossible(value)) {
            row.fault(name, cell, "is not possible",
                "%s from %s to %s".formatted(unit, shownUnder(name, range.least()), shownUnder(name, range.most())));
            return OptionalDouble.empty();
        }
        if (!range.isUsual(value)) {
            row.source().warnings().add(new Fault(row.source().file(), row.line(), Optional.of(name), Optional.of(cell),
                category.map(known -> "is unusual for a " + known.word()).orElse("is unusual")
                    .replace(" a iron", " an iron"),
                "%s to %s as a rule".formatted(shownUnder(name, range.usualLeast()),
                    shownUnder(name, range.usualMost()))));
        }
        return OptionalDouble.of(value);
    }

    private static String shownUnder(String name, double value) {
        return switch (Unit.of(name)) {
            case INCHES -> NumberText.write(Units.inches(value), 2);
            case MILLIMETRES -> NumberText.write(value, 1);
            default -> NumberText.write(value, 2);
        };
    }
}
