package benchtwin.stock;

import benchtwin.measure.LengthText;
import benchtwin.measure.PlainNumber;
import benchtwin.measure.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A number as a cell holds it: its value, or what is wrong with it.
 * @param value   the value; empty when the text is none
 * @param problem what is wrong, empty text when nothing is
 */
record NumberText(OptionalDouble value, String problem) {

    /** No honest number is longer; the limit also keeps a pattern from labouring over a megabyte of digits. */
    private static final int LONGEST = 40;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?");
    private static final Pattern PLAIN = Pattern.compile("[+-]?\\d+(?:[.,]\\d+)?");
    private static final Pattern GROUPED = Pattern.compile("[+-]?\\d{1,3}(?:[.,' ’]\\d{3})+(?:[.,]\\d*)?");
    private static final Pattern COMMA = Pattern.compile("[^,]*\\d,\\d[^,]*");

    /** Whether a text reads as a number at a glance, and so needs no quotes in a message. */
    static boolean isPlain(String text) {
        return text.length() <= LONGEST && PLAIN.matcher(text).matches();
    }

    /** Reads a plain number. A decimal comma counts only where the file's separator leaves it free. */
    static NumberText parse(String cell, boolean decimalComma) {
        return read(cell, decimalComma, NumberText::number);
    }

    /** Reads a length from a column in inches or millimetres, to millimetres; a cell may name millimetres itself. */
    static NumberText parseMm(String cell, boolean decimalComma, boolean inches) {
        return read(cell, decimalComma, text -> {
            OptionalDouble number = number(text);
            if (number.isPresent()) {
                return inches ? OptionalDouble.of(Units.mm(number.getAsDouble())) : number;
            }
            return inches || text.endsWith("mm") ? LengthText.parseMm(text) : OptionalDouble.empty();
        });
    }

    /** Plain decimals come by the thousand, and need no pattern. */
    private static OptionalDouble number(String text) {
        double plain = PlainNumber.parse(text);
        if (!Double.isNaN(plain)) {
            return OptionalDouble.of(plain);
        }
        return NUMBER.matcher(text).matches() ? OptionalDouble.of(Double.parseDouble(text)) : OptionalDouble.empty();
    }

    /** How a text without decimal commas becomes a value. */
    private interface Form {
        OptionalDouble valueOf(String text);
    }

    private static NumberText read(String cell, boolean decimalComma, Form form) {
        if (cell.length() > LONGEST) {
            return bad("is not a number");
        }
        String text = cell.replace('\u2212', '-');
        boolean comma = text.indexOf(',') >= 0;
        if (comma && decimalComma && text.indexOf('.') < 0 && text.indexOf(',') == text.lastIndexOf(',')) {
            text = text.replace(',', '.');
            comma = false;
        }
        OptionalDouble value = comma ? OptionalDouble.empty() : form.valueOf(text);
        if (value.isPresent()) {
            return Double.isFinite(value.getAsDouble()) ? new NumberText(value, "") : bad("is too large for a number");
        }
        if (comma && !decimalComma && COMMA.matcher(text).matches()
            && form.valueOf(text.replace(',', '.')).isPresent()) {
            return bad("is written with a comma, which is a decimal comma only in a file separated by semicolons or tabs");
        }
        return bad(GROUPED.matcher(text).matches() ? "is written with a thousands separator" : "is not a number");
    }

    private static NumberText bad(String problem) {
        return new NumberText(OptionalDouble.empty(), problem);
    }

    /** Writes a number without trailing zeros. */
    static String write(double number, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
