package benchtwin.stock;

import benchtwin.club.Category;
import benchtwin.measure.PlainNumber;
import benchtwin.measure.Reading;
import benchtwin.measure.SwingWeightText;
import benchtwin.measure.Taken;
import benchtwin.measure.Units;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The numbers of one row. Lengths come out in mm, whatever unit their column is in, and every number of the stock to a
 * millionth, so that inches and millimetres of the same length are the same number. What cannot be is a fault, what is
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
    OptionalDouble number(String name) {
        Column column = row.column(name);
        Reading recorded = row.cells().reading(column);
        if (recorded != null) {
            return inRange(column, column.recordName(), null, recorded.value());
        }
        String ownCell = row.cells().own(column);
        String otherCell = row.cells().other(column);
        OptionalDouble own = ownCell.isEmpty() ? OptionalDouble.empty() : numberUnder(column, column.name(), ownCell);
        OptionalDouble other = otherCell.isEmpty() ? OptionalDouble.empty()
            : numberUnder(column, column.otherName().orElseThrow(), otherCell);
        if (own.isPresent() && other.isPresent()) {
            refuseApart(column, own.getAsDouble(), other.getAsDouble());
        }
        OptionalDouble found = own.isPresent() ? own : other;
        if (found.isPresent() && row.source().noting()) {
            row.note(name, PlainNumber.text(found.getAsDouble()));
        }
        return found;
    }

    private void refuseApart(Column column, double own, double other) {
        if (Math.abs(own - other) > Math.max(SAME_ABSOLUTE, SAME_SHARE * Math.abs(own))) {
            row.fault(column.otherName().orElseThrow(), row.cells().other(column),
                "does not agree with %s in column %s".formatted(row.cells().own(column), column.name()),
                "one of the two, or both alike");
        }
    }

    /** A number that must be there. */
    OptionalDouble need(String name) {
        if (!row.has(name)) {
            row.missing(name, row.column(name).expectation(row.nameInFile(name)));
        }
        return number(name);
    }

    /** A reading: the recorded one where there is one, else the number with its usual uncertainty. */
    Optional<Reading> reading(String name) {
        return reading(name, false);
    }

    /** A reading whose usual uncertainty may be another on a wood. */
    Optional<Reading> reading(String name, boolean ofWood) {
        OptionalDouble number = number(name);
        if (number.isEmpty()) {
            return Optional.empty();
        }
        Column column = row.column(name);
        Reading recorded = row.cells().reading(column);
        return Optional.of(recorded != null ? recorded : new Reading(number.getAsDouble(),
            MeasuredColumns.known(row.source().kind(), column.recordName()).uncertainty(ofWood), taken));
    }

    OptionalInt whole(String name) {
        OptionalDouble number = number(name);
        if (number.isEmpty()) {
            return OptionalInt.empty();
        }
        if (number.getAsDouble() != Math.rint(number.getAsDouble())) {
            row.fault(name, "is not a whole number", "a whole number, such as " + row.column(name).example());
            return OptionalInt.empty();
        }
        return OptionalInt.of((int) number.getAsDouble());
    }

    /** One number out of a list in a cell. */
    OptionalDouble member(String name, String text) {
        return numberUnder(row.column(name), name, text);
    }

    /** A length as the column writes it, without its unit. */
    String shown(String name, double mm) {
        return shownUnder(row.nameInFile(name), mm);
    }

    /** The unit of the column in this row, in words. */
    String unit(String name) {
        return Unit.of(row.nameInFile(name)).words();
    }

    private OptionalDouble numberUnder(Column column, String name, String cell) {
        boolean comma = row.source().decimalComma();
        if (name.equals(SWING_WEIGHT)) {
            return swingWeight(column, cell, comma);
        }
        NumberText number = column.isLength() ? NumberText.parseMm(cell, comma, Unit.of(name) == Unit.INCHES)
            : NumberText.parse(cell, comma);
        if (number.value().isEmpty()) {
            row.fault(name, cell, number.problem(), column.expectation(name));
            return OptionalDouble.empty();
        }
        return inRange(column, name, cell, number.value().getAsDouble());
    }

    private OptionalDouble swingWeight(Column column, String cell, boolean comma) {
        OptionalDouble points = cell.length() > Fault.SHOWN_CHARACTERS ? OptionalDouble.empty()
            : SwingWeightText.parsePoints(comma ? cell.replace(',', '.') : cell);
        if (points.isEmpty()) {
            row.fault(SWING_WEIGHT, cell, "is not a swing weight",
                "a letter A to G and points, such as D2.4; plain points go under swing_weight_points");
            return points;
        }
        return inRange(column, SWING_WEIGHT, cell, points.getAsDouble());
    }

    /** The value, settled, unless it cannot be. The cell is null for a recorded reading, whose value is taken as it is. */
    private OptionalDouble inRange(Column column, String name, String cell, double value) {
        Range range = Ranges.of(row.source().kind(), column, category);
        if (!range.isPossible(value)) {
            row.fault(name, cell == null ? PlainNumber.text(value) : cell, "is not possible",
                "%s from %s to %s".formatted(Unit.of(name).words(), shownUnder(name, range.least()),
                    shownUnder(name, range.most())));
            return OptionalDouble.empty();
        }
        if (!range.isUsual(value) && !row.source().isRecord()) {
            row.source().warnings().add(new Fault(row.cells().source(), row.cells().line(), Optional.of(name),
                Optional.of(cell), category.map(known -> "is unusual for a " + known.word()).orElse("is unusual")
                    .replace(" a iron", " an iron"),
                "%s to %s as a rule".formatted(shownUnder(name, range.usualLeast()),
                    shownUnder(name, range.usualMost()))));
        }
        return OptionalDouble.of(cell != null && row.source().kind().isStock() ? PlainNumber.rounded(value) : value);
    }

    private static String shownUnder(String name, double value) {
        return switch (Unit.of(name)) {
            case INCHES -> NumberText.write(Units.inches(value), 2);
            case MILLIMETRES -> NumberText.write(value, 1);
            default -> NumberText.write(value, 2);
        };
    }
}
