package benchtwin.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtwin.club.Category;
import benchtwin.club.ClubState;
import benchtwin.club.Hand;
import benchtwin.club.LengthMethod;
import benchtwin.club.Quantity;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits: ours. OAKES-DR of the sample workshop reads loft 9.4 ± 0.3, length 45 1/4 in, D2.2, 248.8 cpm, 309.5 g. */
class OddReadingTest {

    @TempDir
    private Path folder;

    @ParameterizedTest(name = "{0} {1} is odd: {2}")
    @CsvSource({"LOFT, 11.5, false", "LOFT, 11.6, true", "LOFT, 7.2, true", "LENGTH, 1137, false", "LENGTH, 1136, true",
        "SWING_WEIGHT, 36.1, false", "SWING_WEIGHT, 36.3, true", "FREQUENCY, 258.7, false", "FREQUENCY, 258.9, true",
        "TOTAL_MASS, 324.4, false", "TOTAL_MASS, 324.6, true"})
    void whatIsFarFromTheLastReadingIsAsked(Quantity quantity, double value, boolean odd) throws BadInput {
        assertThat(OddReading.questions(BenchBooks.samples(folder), "OAKES-DR", sitting(quantity, value))).hasSize(odd ? 1 : 0);
    }

    @Test
    void theQuestionNamesBothValuesAndTheDay() throws BadInput {
        assertThat(OddReading.questions(BenchBooks.samples(folder), "OAKES-DR", sitting(Quantity.LOFT, 19.4)))
            .containsExactly("loft 19.40° is 10.00° from the 9.40° read on 2026-04-14");
    }

    @Test
    void whatWasNeverReadIsHeldAgainstWhatIsUsual() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        ClubBook.add(book, new ClubBook.NewClub("NEW-7I", "N. Oakes", Category.IRON, Optional.of("7"), Hand.RIGHT, ClubState.IN_PLAY,
            Map.of()), sitting(Quantity.LIE, 62.5));
        assertThat(OddReading.questions(book, "NEW-7I", sitting(Quantity.LOFT, 34))).isEmpty();
        assertThat(OddReading.questions(book, "NEW-7I", sitting(Quantity.LOFT, 64)))
            .containsExactly("loft 64.00° is unusual for a club of this kind (iron); as a rule it is 14.00° to 52.00°");
    }

    @Test
    void whatCannotBeIsRefusedWithTheRange() throws BadInput {
        OpenBook book = BenchBooks.samples(folder);
        assertThatThrownBy(() -> OddReading.questions(book, "OAKES-DR", sitting(Quantity.LOFT, 94))).isInstanceOf(BadInput.class)
            .hasMessage("loft of 94.0°: expected -10.0° to 80.0°");
    }

    @ParameterizedTest(name = "{0} \"{1}\" is {2}")
    @CsvSource({"LOFT, '9,4', 9.4", "FACE, '−0.4', -0.4", "FACE, '-0.4°', -0.4", "LENGTH, 45 1/4, 1149.35", "LENGTH, 1149 mm, 1149",
        "SWING_WEIGHT, d2.3, 32.3", "TOTAL_MASS, 309.5 g, 309.5"})
    void valuesAreReadAsABenchWritesThem(Quantity quantity, String typed, double value) throws BadInput {
        // an inch is 25.4 mm; A0 is 0 points and each letter ten more
        assertThat(TypedReading.of(quantity, typed)).isEqualTo(value);
    }

    @Test
    void whatIsNoValueSaysWhatWouldBe() {
        assertThatThrownBy(() -> TypedReading.of(Quantity.LENGTH, "long")).hasMessage(
            "length: \"long\" is not a value; expected inches such as 45.25 or 45 1/4, or millimetres such as 1149 mm");
        assertThatThrownBy(() -> TypedReading.of(Quantity.LOFT, "NaN")).hasMessageContaining("is not a value");
        assertThatThrownBy(() -> TypedReading.of(Quantity.TORQUE, "3")).hasMessage("torque is not read of a whole club");
    }

    static Sitting sitting(Quantity quantity, double value) {
        return new Sitting(Map.of(quantity, List.of(value)), Optional.empty(), LengthMethod.AXIS, Optional.empty(), OptionalDouble.empty(),
            true, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
