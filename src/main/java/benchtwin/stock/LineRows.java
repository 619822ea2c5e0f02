package benchtwin.stock;

import benchtwin.club.Line;
import benchtwin.club.LinePer;
import benchtwin.club.Quantity;
import benchtwin.club.Word;
import benchtwin.measure.SwingWeightText;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads lines.csv. A line's value and slope are in the unit of its quantity. */
final class LineRows {

    private LineRows() {
    }

    static Optional<Line> read(Row row) {
        String name = row.tag("line");
        Optional<Quantity> quantity = quantity(row);
        String anchor = row.tag("anchor_club");
        OptionalDouble value = value(row, quantity);
        OptionalDouble slope = slope(row, quantity);
        Optional<LinePer> per = row.needWord("per", LinePer.class);
        return row.isGood() ? Optional.of(new Line(name, quantity.orElseThrow(), anchor, value.orElseThrow(),
            slope.orElseThrow(), per.orElseThrow())) : Optional.empty();
    }

    private static Optional<Quantity> quantity(Row row) {
        List<String> allowed = Line.quantities().stream().map(Word::word).toList();
        if (!row.has("quantity")) {
            row.missing("quantity", "one of " + String.join(", ", allowed));
            return Optional.empty();
        }
        String text = row.need("quantity");
        Optional<Quantity> found = Words.find(text, Quantity.class).filter(Line.quantities()::contains);
        if (found.isEmpty()) {
            row.fault("quantity", "is not a word of this column", Words.expectation(text, allowed));
        }
        return found;
    }

    /** The value at the anchor club; a swing weight by letter and points, or in plain points above A0. */
    private static OptionalDouble value(Row row, Optional<Quantity> quantity) {
        String cell = row.need("anchor_value");
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        String unit = unit(quantity);
        boolean swing = quantity.equals(Optional.of(Quantity.SWING_WEIGHT));
        String written = row.source().decimalComma() ? cell.replace(',', '.') : cell;
        OptionalDouble points = swing && cell.length() <= Fault.SHOWN_CHARACTERS
            ? SwingWeightText.parsePoints(written) : OptionalDouble.empty();
        OptionalDouble value = points.isPresent() ? points
            : number(row, "anchor_value", unit + ", such as " + example(quantity, swing));
        return quantity.isEmpty() || value.isEmpty() ? value : inRange(row, "anchor_value", value.getAsDouble(),
            Ranges.of(StockKind.SET_TARGETS, columnOf(quantity.get()), Optional.empty()), unit);
    }

    private static OptionalDouble slope(Row row, Optional<Quantity> quantity) {
        if (row.need("slope").isEmpty()) {
            return OptionalDouble.empty();
        }
        String unit = unit(quantity) + " a step";
        OptionalDouble slope = number(row, "slope", unit + ", such as 8, or 0 for the same at every club");
        return quantity.isEmpty() || slope.isEmpty() ? slope
            : inRange(row, "slope", slope.getAsDouble(), Ranges.ofSlope(quantity.get()), unit);
    }

    private static OptionalDouble number(Row row, String column, String expected) {
        NumberText number = NumberText.parse(row.need(column), row.source().decimalComma());
        if (number.value().isEmpty()) {
            row.fault(column, number.problem(), expected);
        }
        return number.value();
    }

    private static OptionalDouble inRange(Row row, String column, double value, Range range, String unit) {
        if (!range.isPossible(value)) {
            row.fault(column, "is not possible", "%s from %s to %s".formatted(unit, NumberText.write(range.least(), 2),
                NumberText.write(range.most(), 2)));
            return OptionalDouble.empty();
        }
        if (!range.isUsual(value)) {
            row.warn(column, "is unusual", "%s from %s to %s as a rule".formatted(unit,
                NumberText.write(range.usualLeast(), 2), NumberText.write(range.usualMost(), 2)));
        }
        return OptionalDouble.of(value);
    }

    private static String columnOf(Quantity quantity) {
        return WantedColumn.of(quantity).value();
    }

    private static String unit(Optional<Quantity> quantity) {
        return quantity.map(known -> known == Quantity.SWING_WEIGHT ? "points" : Unit.of(columnOf(known)).words())
            .orElse("a number");
    }

    private static String example(Optional<Quantity> quantity, boolean swing) {
        return swing ? "D2.4 or 32.4" : quantity.map(known -> StockKind.SET_TARGETS.column(columnOf(known)).orElseThrow())
            .map(Column::example).orElse("300");
    }
}
