package benchtwin.book;

import java.util.List;
import java.util.Random;

/** Texts and numbers that mean something to a database, a file format, a terminal or a spreadsheet. */
final class HostileTexts {

    static final List<String> TEXTS = List.of("'", "\"", "''; DROP TABLE note; --", "' OR '1'='1", "Robert'); DELETE FROM thing;--",
        "{\"facts\":{}}", "}{", "[1,2", "\\u0000", "\\", "\\n", "%s %d %n", "%00", "?1 :id @id $id <id>", "=1+1", "@SUM(A1)", "+1", "-1",
        "a\tb", "line one\nline two", "line\r\nline", "nul\0inside", "bell\u0007escape\u001b[2J", "\u202Eright to left", "مضرب", "עץ",
        "⛳🏌️‍♀️", "👩‍👩‍👧‍👦", "e\u0301 and é", "ﬁ Ａ１", "İIıi", "ß", "\uFEFFmark", "\u00A0", "\u2028", "𝔊𝔬𝔩𝔣", "\uFFFF", "null", "NULL",
        "true", "0", "0x10", "1e5", "00012", " spaces  inside ", "*", "NEAR(a b)", "a AND b", "x".repeat(80), "書".repeat(80), "🏌".repeat(40),
        ";", ",", "\"quoted\", \"cells\"", "--", "/* */", "\u0085next line", "\u0000", "\u007F");

    private static final double[] NUMBERS = {0, -0.0, 1, -1, 0.1, 1 / 3.0, 9.3, 1e-9, 123456789.123456789, Math.PI, 1e22, 1e23, 5e-324,
        2.2250738585072014E-308, Double.MAX_VALUE, -Double.MAX_VALUE, 9007199254740993.0, 9223372036854775807.0, 0.30000000000000004,
        1.7976931348623155E308, 8.41e21, 2.0E-3, 5.0E-5};

    private HostileTexts() {
    }

    /** One of them, or several together. */
    static String any(Random random) {
        String text = TEXTS.get(random.nextInt(TEXTS.size()));
        return random.nextInt(3) == 0 ? text + " " + TEXTS.get(random.nextInt(TEXTS.size())) : text;
    }

    /** A finite number: an awkward one, a plain one, or one of random bits. */
    static double number(Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> NUMBERS[random.nextInt(NUMBERS.length)];
            case 1 -> random.nextInt(100_000) / 100.0;
            default -> {
                double bits = Double.longBitsToDouble(random.nextLong());
                yield Double.isFinite(bits) ? bits : 7;
            }
        };
    }
}
