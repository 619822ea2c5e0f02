package benchtwin.picture;

import java.util.Locale;

/** Numbers and names as a picture writes them. */
final class Words {

    private Words() {
    }

    static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        boolean nothing = Double.parseDouble(text) == 0;
        return nothing ? text.replace("-", "") : text.replace('-', '−');
    }

    /** A difference with its sign; one that rounds to nothing is a plain 0. */
    static String difference(double value, int decimals) {
        String text = fixed(value, decimals);
        if (Double.parseDouble(text.replace('−', '-')) == 0) {
            return "0";
        }
        return value > 0 ? "+" + text : text;
    }

    /** The text on one line, without the characters that XML 1.0 cannot hold; each becomes a replacement character. */
    static String printable(String text) {
        StringBuilder clean = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (c == '\t' || c == '\n' || c == '\r') {
                clean.append(' ');
            } else if (c < 0x20 || c >= 0x7F && c < 0xA0 || c >= 0xD800 && c <= 0xDFFF || c == 0xFFFE || c == 0xFFFF) {
                clean.append('\uFFFD');
            } else {
                clean.appendCodePoint(c);
            }
        });
        return clean.toString().strip();
    }

    static String required(String what, String text) {
        String clean = printable(text);
        if (clean.isEmpty()) {
            throw new IllegalArgumentException("a picture's " + what + " is empty; it must say something");
        }
        return clean;
    }

    static double positive(String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("%s of %s is not above 0".formatted(what, value));
        }
        return value;
    }

    static double notNegative(String what, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("%s of %s is not 0 or more".formatted(what, value));
        }
        return value;
    }
}
