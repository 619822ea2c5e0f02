package benchtwin.stock;

import benchtwin.measure.PlainNumber;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plain numbers against the JDK's own parser and decimals. */
class PlainNumberPropertyTest {

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 20);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aTextIsReadAsTheJdkReadsIt(int seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            String digits = BigDecimal.valueOf(random.nextLong(1_000_000_000_000_000L), random.nextInt(16)).toPlainString();
            String text = (random.nextBoolean() ? "-" : "") + (digits.length() > 16 ? digits.substring(0, 14) : digits);
            double read = PlainNumber.parse(text);
            if (!text.endsWith(".")) {
                assertThat(read).as(text).isEqualTo(Double.parseDouble(text));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aNumberIsWrittenToAMillionthAndReadBack(int seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            double value = random.nextGaussian() * Math.pow(10, random.nextInt(9) - 3);
            String text = PlainNumber.text(value);
            assertThat(new BigDecimal(text)).as("%s", value)
                .isEqualByComparingTo(new BigDecimal(value).setScale(6, RoundingMode.HALF_EVEN));
            assertThat(text).doesNotContain("E").doesNotMatch(".*\\.\\d*0").doesNotMatch("-0");
            assertThat(PlainNumber.parse(text)).isEqualTo(PlainNumber.rounded(value));
        }
    }

    @ParameterizedTest
    @CsvSource({"1149.3500000000001, 1149.35", "-0.0, 0", "-0.0000004, 0", "0.1, 0.1", "100000, 100000", "-2.5, -2.5",
        "1e12, 1000000000000", "0.000001, 0.000001"})
    void written(double value, String text) {
        assertThat(PlainNumber.text(value)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", ".", "-.", "5.", "1.2.3", "--1", "+1", "1e3", "1 2", "٣", "NaN", "1234567890123456"})
    void otherTextsAreLeftToOthers(String text) {
        assertThat(PlainNumber.parse(text)).isNaN();
    }
}
