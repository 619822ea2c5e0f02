package benchtwin.club;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTextTest {

    /** Lengths: 1149.35 mm is 45 1/4 in by 1 in = 25.4 mm (NIST SP 811); letters: ten points each. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        LOFT          | 9.3     | 9.30°       | -0.25  | −0.25° | 0.25°
        FACE          | -0.404  | −0.40°      | 0.004  | 0      | 0.00°
        LENGTH        | 1149.35 | 45 1/4 in   | 1.5875 | +1.6 mm | 1.6 mm
        SWING_WEIGHT  | 32.4    | D2.4        | -0.3   | −0.3 pt | 0.3 pt
        SWING_WEIGHT  | -3      | −3.0 pt     | 0.04   | 0      | 0.0 pt
        FREQUENCY     | 252.12  | 252.1 cpm   | 2      | +2.0 cpm | 2.0 cpm
        TORQUE        | 3.84    | 3.8°        | 0.2    | +0.2°  | 0.2°
        BUTT_INERTIA  | 2659.7  | 2660 kg·cm² | 12     | +12.0 kg·cm² | 12.0 kg·cm²
        """)
    void valuesAreWrittenWithTheirUnit(Quantity quantity, double value, String asValue, double difference, String asDifference,
                                       String asSize) {
        assertThat(QuantityText.value(quantity, value)).isEqualTo(asValue);
        assertThat(QuantityText.difference(quantity, difference)).isEqualTo(asDifference);
        assertThat(QuantityText.size(quantity, Math.abs(difference))).isEqualTo(asSize);
        assertThat(QuantityText.name(Quantity.SWING_WEIGHT)).isEqualTo("swing weight");
    }
}
