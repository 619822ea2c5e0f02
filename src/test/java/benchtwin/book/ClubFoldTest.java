package benchtwin.book;

import static benchtwin.book.EventKind.CORRECTED;
import static benchtwin.book.EventKind.DESCRIBED;
import static benchtwin.book.EventKind.FOUND;
import static benchtwin.book.EventKind.RECORDED;
import static benchtwin.book.Slips.facts;
import static benchtwin.book.Slips.frequency;
import static benchtwin.book.Slips.loft;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which readings still tell of a club once it was changed, and what it was when it was last as it should be. */
class ClubFoldTest {

    private static Slips club() {
        return Slips.of(ThingKind.CLUB).add(NewEvent.of(RECORDED).with(facts("head", "H-1", "shaft", "S-1", "grip", "G-1", "sleeve",
            "SL-1", "setting", "2/1", "tape_layers", "2")).reading(List.of(loft(9), frequency(250),
            NewReading.of("length_mm", 1149, "mm"), NewReading.of("total_mass_g", 310, "grams"),
            NewReading.of("torque_deg", 3.5, "degrees"))));
    }

    private static String left(State state) {
        return state.readings().stream().map(one -> one.read().quantity()).sorted().collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"head", "shaft", "sleeve"})
    void anotherHeadShaftOrSleeveLeavesNoReading(String part) {
        assertThat(left(club().add(DESCRIBED, part, "another").state())).isEmpty();
        assertThat(left(club().add(DESCRIBED, part, "").state())).as("taken off").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"setting, frequency_cpm torque_deg total_mass_g", "grip, loft_deg torque_deg", "tape_layers, loft_deg torque_deg",
        "tip_weight_g, loft_deg torque_deg", "melt_g, loft_deg torque_deg", "tape_g, loft_deg torque_deg",
        "finish, frequency_cpm length_mm loft_deg torque_deg total_mass_g"})
    void aSmallerChangeLeavesWhatItDoesNotTouch(String fact, String kept) {
        assertThat(left(club().add(DESCRIBED, fact, "7").state())).isEqualTo(kept);
    }

    @Test
    void theSamePartNamedOnceMoreChangesNothing() {
        assertThat(left(club().add(DESCRIBED, "head", "H-1", "setting", "2/1", "grip", "G-1").state()))
            .isEqualTo("frequency_cpm length_mm loft_deg torque_deg total_mass_g");
    }

    @Test
    void aPartThatIsPutDownForTheFirstTimeWasThereBefore() {
        State state = Slips.of(ThingKind.CLUB).read(RECORDED, loft(9)).add(DESCRIBED, "head", "H-1", "setting", "2/1").state();
        assertThat(left(state)).isEqualTo("loft_deg");
    }

    @Test
    void whatIsReadWithTheChangeStands() {
        State state = club().add(NewEvent.of(FOUND).with(facts("head", "H-2")).reading(List.of(loft(9.6)))).state();
        assertThat(state.readings()).singleElement().satisfies(one -> assertThat(one.read().value()).hasValue(9.6));
    }

    @Test
    void theLastRecordOfASoundClubIsWhatItShouldBe() {
        Slips slips = club().read(FOUND, loft(9.8));
        assertThat(slips.state().readings()).anyMatch(one -> one.read().value().equals(loft(9.8).value()));
        Accepted accepted = slips.state().accepted().orElseThrow();
        assertThat(accepted.readings()).anyMatch(one -> one.read().value().equals(loft(9).value())).hasSize(5);
        assertThat(accepted.facts()).containsEntry("head", "H-1");
        assertThat(accepted.since()).isEqualTo(new Moment("2026-05-01T08:02:00.000Z"));
        slips.read(RECORDED, loft(9.7));
        assertThat(slips.state().accepted().orElseThrow().readings()).anyMatch(one -> one.read().value().equals(loft(9.7).value()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"damaged", "stripped"})
    void aRecordOfAClubThatIsNotSoundIsNotWhatItShouldBe(String unsound) {
        Slips slips = club().add(NewEvent.of(RECORDED).with(facts("state", unsound)).reading(List.of(loft(11))));
        Accepted accepted = slips.state().accepted().orElseThrow();
        assertThat(accepted.facts()).doesNotContainKey("state");
        assertThat(accepted.readings()).noneMatch(one -> one.read().value().equals(loft(11).value()));
        slips.add(NewEvent.of(RECORDED).with(facts("state", "")).reading(List.of(loft(9.1))));
        assertThat(slips.state().accepted().orElseThrow().readings()).anyMatch(one -> one.read().value().equals(loft(9.1).value()));
    }

    @Test
    void aClubThatWasOnlyFoundHasNoRecord() {
        assertThat(Slips.of(ThingKind.CLUB).read(FOUND, loft(9)).state().accepted()).isEmpty();
    }

    @Test
    void aCorrectionOfARecordPutsTheRecordRight() {
        Slips slips = Slips.of(ThingKind.CLUB).read(RECORDED, loft(99)).read(CORRECTED, loft(9.9).correcting(1, "misread"));
        assertThat(slips.state().accepted().orElseThrow().readings()).singleElement()
            .satisfies(one -> assertThat(one.read().value()).hasValue(9.9));
    }

    @Test
    void aHeadKeepsItsReadingsWhateverBecomesKnownOfIt() {
        assertThat(left(Slips.of(ThingKind.HEAD).add(DESCRIBED, "sleeve", "SL-1").read(DESCRIBED, loft(9)).add(DESCRIBED, "sleeve",
            "SL-2", "setting", "1/1").state())).isEqualTo("loft_deg");
    }
}
