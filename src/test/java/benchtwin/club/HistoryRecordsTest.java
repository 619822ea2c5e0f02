package benchtwin.club;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HistoryRecordsTest {

    private static final BenchTime DAY = BenchTime.on(LocalDate.of(2026, 5, 3));
    private static final BenchTime MIDNIGHT = BenchTime.at(LocalDateTime.of(2026, 5, 3, 0, 0));
    private static final BenchTime MORNING = BenchTime.at(LocalDateTime.of(2026, 5, 3, 9, 15, 40));
    private static final BenchTime NEXT = BenchTime.on(LocalDate.of(2026, 5, 4));

    @Test
    void aDayComesBeforeTheTimesOfIt() {
        assertThat(List.of(NEXT, MORNING, MIDNIGHT, DAY).stream().sorted()).containsExactly(DAY, MIDNIGHT, MORNING, NEXT);
        assertThat(DAY.compareTo(MIDNIGHT)).isNegative();
        assertThat(MORNING.compareTo(BenchTime.at(LocalDateTime.of(2026, 5, 3, 9, 15, 40)))).isZero();
    }

    @Test
    void timesAreWrittenAsTheClockShowsThem() {
        assertThat(MORNING.text()).isEqualTo("2026-05-03 09:15");
        assertThat(MIDNIGHT.text()).isEqualTo("2026-05-03 00:00");
        assertThat(DAY.text()).isEqualTo("2026-05-03");
        assertThat(DAY.clock()).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> BenchTime.on(LocalDate.of(0, 1, 1)))
            .withMessage("the year of 0000-01-01 is not from 1 to 9999");
    }

    /** The limit is twice the standard uncertainty, by hand; 9.3 − 9.1 is a hair more than 0.2 in binary. */
    @ParameterizedTest
    @CsvSource({"0.2, 0.1, false", "-0.2, 0.1, false", "0.2001, 0.1, true", "-0.2001, 0.1, true", "0, 0, false",
        "0.001, 0, true", "1.2, 0.6, false"})
    void beyondIsMoreThanTwiceTheUncertainty(double difference, double uncertainty, boolean beyond) {
        assertThat(new MeasuredDifference(difference, uncertainty).isBeyondUncertainty()).isEqualTo(beyond);
        assertThat(ValueComparison.of(9.1, 9.1 + difference, uncertainty, 0.25, List.of()).isBeyondUncertainty()).isEqualTo(beyond);
    }

    @Test
    void whatWasNotReadOnBothIsNoDifference() {
        ValueComparison one = new ValueComparison(OptionalDouble.of(9.1), OptionalDouble.empty(), OptionalDouble.empty(), 0.25,
            List.of("LL-1", "LL-1"));
        assertThat(one.difference()).isEmpty();
        assertThat(one.isBeyondUncertainty()).isFalse();
        assertThat(one.gauges()).containsExactly("LL-1");
        assertThatIllegalArgumentException().isThrownBy(() -> new ValueComparison(OptionalDouble.of(9.1), OptionalDouble.of(9.2),
            OptionalDouble.empty(), 0.25, List.of())).withMessageContaining("known when both values are, and only then");
        assertThatIllegalArgumentException().isThrownBy(() -> ValueComparison.of(9.1, Double.NaN, 0.1, 0.25, List.of()))
            .withMessage("a compared value must be a finite number, not NaN");
        assertThatIllegalArgumentException().isThrownBy(() -> ValueComparison.of(9.1, 9.2, Double.NaN, 0.25, List.of()))
            .withMessage("the uncertainty of a difference must be 0 or more and finite, not NaN");
        assertThatIllegalArgumentException().isThrownBy(() -> ValueComparison.of(9.1, 9.2, 0.1, 0, List.of()))
            .withMessage("a tolerance must be above 0 and finite, not 0.0");
    }

    @Test
    void quantitiesStandInTheOrderTheyAreAlwaysShown() {
        ValueComparison same = ValueComparison.of(1, 1, 0, 1, List.of());
        assertThat(new SideBySide("a", "b", Map.of(Quantity.TORQUE, same, Quantity.LIE, same, Quantity.LENGTH, same, Quantity.LOFT, same))
            .values().keySet()).containsExactly(Quantity.LOFT, Quantity.LIE, Quantity.LENGTH, Quantity.TORQUE);
        TimelineValue value = new TimelineValue(1, 0, Optional.empty(), Optional.empty());
        assertThat(new TimelineEntry(DAY, "measured", Map.of(Quantity.TOTAL_MASS, value, Quantity.LOFT, value), List.of())
            .values().keySet()).containsExactly(Quantity.LOFT, Quantity.TOTAL_MASS);
        assertThatIllegalArgumentException().isThrownBy(() -> new SideBySide("a", "b", Map.of()))
            .withMessage("a and b: there is no value to compare");
        assertThatIllegalArgumentException().isThrownBy(() -> new SideBySide("a", " ", Map.of(Quantity.LOFT, same)))
            .withMessage("what is compared must have a name");
    }

    @Test
    void aTimelineRunsFromTheOldestAndKeepsTheOrderOfOneTime() {
        Timeline timeline = new Timeline("OAKES-DR", List.of(new TimelineEntry(MORNING, "b"), new TimelineEntry(DAY, "a"),
            new TimelineEntry(MORNING, "c")));
        assertThat(timeline.entries()).extracting(TimelineEntry::text).containsExactly("a", "b", "c");
        assertThatIllegalArgumentException().isThrownBy(() -> new TimelineEntry(DAY, " "))
            .withMessage("an entry of 2026-05-03 says nothing");
        assertThatIllegalArgumentException().isThrownBy(() -> new Timeline("", List.of()))
            .withMessage("a timeline must say what it is of");
        assertThatIllegalArgumentException()
            .isThrownBy(() -> new TimelineValue(Double.NaN, 0, Optional.empty(), Optional.empty()))
            .withMessage("a value of a timeline must be a finite number, not NaN");
        assertThatIllegalArgumentException().isThrownBy(() -> new TimelineValue(1, -1, Optional.empty(), Optional.empty()))
            .withMessage("a standard uncertainty must be 0 or more and finite, not -1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new TimelineValue(1, 1, Optional.empty(), Optional.of("")))
            .withMessage("a gauge has a name, or is left out");
        assertThatIllegalArgumentException().isThrownBy(() -> new ValueCorrection(Quantity.LIE, Double.NaN, DAY, ""))
            .withMessage("a corrected lie must be a finite number, not NaN");
    }
}
