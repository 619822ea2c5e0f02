package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** No cell is a formula, and every text comes back. */
class SafeCellPropertyTest {

    private static final List<String> PIECES = List.of("'", "'", "=", "+", "-", "@", "\t", "\r", "\n", "1", "0.5", ",", "\"", ";", "A1",
        " ", "\uFF1D", "\uFF0B", "\u202E", "\u05E9", "\uD83D\uDE00", "e", "(");

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 20);
    }

    /** OWASP, CSV Injection: no cell begins with one of seven characters; a number does no harm. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void writtenItIsHarmlessAndReadItIsTheSame(int seed) {
        Random random = new Random(seed);
        Map<String, String> textOf = new HashMap<>();
        for (int i = 0; i < 5000; i++) {
            StringBuilder made = new StringBuilder();
            for (int length = random.nextInt(6); length >= 0; length--) {
                made.append(PIECES.get(random.nextInt(PIECES.size())));
            }
            String text = made.toString();
            String cell = SafeCell.write(text);
            assertThat(SafeCell.read(cell)).as("seed %d", seed).isEqualTo(text);
            assertThat(textOf.put(cell, text)).as("one text a cell").isIn(null, text);
            if (!cell.matches("[+-]?[0-9]+([.,][0-9]+)?")) {
                assertThat("=+-@\t\r\n").doesNotContain(cell.substring(0, 1));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "'", "''", "plain", "'tis", "-0.5", "+3", "-58,5", "1=1", "3/5", "D2.4", "'-0.5", " =1"})
    void harmlessTextStaysAsItIs(String text) {
        assertThat(SafeCell.write(text)).isEqualTo(text);
        assertThat(SafeCell.read(text)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {"=1+2|'=1+2", "+49 170 12|'+49 170 12", "-|'-", "- soft|'- soft",
        "@SUM(A1)|'@SUM(A1)", "'=1+2|''=1+2", "''@x|'''@x", "\uFF1D1+2|'\uFF1D1+2", "-1e5|'-1e5", "-1+2|'-1+2", "+-5|'+-5"})
    void aFormulaGetsAnApostrophe(String text, String cell) {
        assertThat(SafeCell.write(text)).isEqualTo(cell);
        assertThat(SafeCell.read(cell)).isEqualTo(text);
    }
}
