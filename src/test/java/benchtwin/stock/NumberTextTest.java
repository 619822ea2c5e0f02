package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is a number and what is none. Values are those {@code Double.valueOf} gives for the digits beside them. */
class NumberTextTest {

    @ParameterizedTest
    @CsvSource({"7, 7", "-0.5, -0.5", "+3, 3", ".5, 0.5", "5., 5", "-.25, -0.25", "1e3, 1000", "2.5E-1, 0.25",
        "\u22121.5, -1.5", "007, 7"})
    void numbers(String text, double value) {
        assertThat(NumberText.parse(text, false).value()).hasValue(value);
        assertThat(NumberText.parse(text.replace('.', ','), true).value()).hasValue(value);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-", ".", "-.", "1-2", "1..2", "--1", "1e", "e5", "NaN", "Infinity", "0x1p3", "1d", "1 2", "٣",
        "1_000", "$5", "12 g"})
    void noNumbers(String text) {
        assertThat(NumberText.parse(text, false).value()).isEmpty();
        assertThat(NumberText.parse(text, true).problem()).isEqualTo("is not a number");
    }

    @ParameterizedTest
    @CsvSource({"46, 1168.4", "45 1/4, 1149.35", "45-1/4, 1149.35", "1149 mm, 1149", "1/2, 12.7"})
    void inches(String text, double mm) {
        assertThat(NumberText.parseMm(text, false, true).value().orElseThrow())
            .isCloseTo(mm, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1149.5, 1149.5", "1149.5 mm, 1149.5"})
    void millimetres(String text, double mm) {
        assertThat(NumberText.parseMm(text, false, false).value()).hasValue(mm);
        assertThat(NumberText.parseMm(text.replace('.', ','), true, false).value()).hasValue(mm);
    }

    @ParameterizedTest
    @CsvSource({"8.5, 1, 8.5", "8.509, 1, 8.5", "46.0, 2, 46", "0.004, 2, 0", "100, 1, 100", "-0.04, 1, 0"})
    void written(double number, int decimals, String text) {
        assertThat(NumberText.write(number, decimals)).isEqualTo(text);
    }
}
