package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtwin.bench.BadInput;
import benchtwin.bench.SetService.Pin;
import benchtwin.sets.PlanLimits;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is typed to steer a search. */
class SetWishTest {

    @ParameterizedTest
    @CsvSource({"30s, 30000", "2m, 120000", "500ms, 500", "1.5 min, 90000", "0.25S, 250", "24m, 1440000"})
    void aTimeHasItsUnit(String text, long millis) throws BadInput {
        assertThat(SetWish.limits(text, null, null, 1).time()).isEqualTo(Duration.ofMillis(millis));
    }

    @ParameterizedTest
    @ValueSource(strings = {"30", "0s", "-5s", "2h", "s", "1e3s", "1501m", "99999999m", ""})
    void whatIsNoTimeIsSaidToBeNone(String text) {
        assertThatThrownBy(() -> SetWish.limits(text, null, null, 1)).isInstanceOf(BadInput.class)
            .hasMessage("--time \"%s\": expected a time with its unit, such as 30s, 2m or 500ms, at most 24 hours", text);
    }

    @ParameterizedTest
    @CsvSource({"1%, 1", "1, 1", "0.5 %, 0.5", "0, 0", "99.9%, 99.9"})
    void aGapIsPerCentWithOrWithoutItsSign(String text, double perCent) throws BadInput {
        assertThat(SetWish.limits(null, text, null, 1).gapPercent()).isEqualTo(perCent);
    }

    @ParameterizedTest
    @ValueSource(strings = {"100", "-1", "1%%", "one", "1,5"})
    void whatIsNoGapIsSaidToBeNone(String text) {
        assertThatThrownBy(() -> SetWish.limits(null, text, null, 1)).isInstanceOf(BadInput.class)
            .hasMessageContaining("expected per cent from 0 to below 100, such as 1%");
    }

    @Test
    void theClockCutsNoRoundsShortUnlessItIsAskedTo() throws BadInput {
        assertThat(SetWish.limits(null, null, null, 1))
            .isEqualTo(new PlanLimits(Duration.ofSeconds(30), 0, OptionalInt.empty(), 1));
        assertThat(SetWish.limits(null, null, 40, 7)).isEqualTo(new PlanLimits(Duration.ZERO, 0, OptionalInt.of(40), 7));
        assertThat(SetWish.limits("5s", "2%", 40, 7))
            .isEqualTo(new PlanLimits(Duration.ofSeconds(5), 2, OptionalInt.of(40), 7));
    }

    @Test
    void aPinNamesAClubAndOneOfItsPartsOrBoth() throws BadInput {
        assertThat(SetWish.pins(List.of("7-iron=head:H-012,shaft:S-034", "J. Quillby/PW = Shaft: S-1", "a=b=head:H-1")))
            .containsExactly(new Pin("7-iron", Optional.of("H-012"), Optional.of("S-034")),
                new Pin("J. Quillby/PW", Optional.empty(), Optional.of("S-1")),
                new Pin("a=b", Optional.of("H-1"), Optional.empty()));
    }

    @Test
    void everyTextThatIsNoPinIsNamed() {
        List<String> wrong = List.of("7-iron", "=head:H-1", "7-iron=H-1", "7-iron=head:", "7-iron=head:H-1,head:H-2",
            "7-iron=head:H-1,grip:G-1", "7-iron=head:H-1,");
        assertThatThrownBy(() -> SetWish.pins(wrong)).isInstanceOfSatisfying(BadInput.class, bad ->
            assertThat(bad.messages()).hasSize(wrong.size()).allSatisfy(message -> assertThat(message)
                .startsWith("--pin \"").endsWith("expected a club and its parts, such as \"7-iron=head:H-012,shaft:S-034\"")));
    }
}
