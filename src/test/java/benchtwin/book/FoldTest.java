package benchtwin.book;

import static benchtwin.book.EventKind.BENT;
import static benchtwin.book.EventKind.BUILT_IN;
import static benchtwin.book.EventKind.CALLED_OFF;
import static benchtwin.book.EventKind.CORRECTED;
import static benchtwin.book.EventKind.COUNTED;
import static benchtwin.book.EventKind.DESCRIBED;
import static benchtwin.book.EventKind.GROUND;
import static benchtwin.book.EventKind.HANDED_OVER;
import static benchtwin.book.EventKind.MEASURED;
import static benchtwin.book.EventKind.PLANNED;
import static benchtwin.book.EventKind.PROMISED;
import static benchtwin.book.EventKind.PULLED;
import static benchtwin.book.EventKind.RELEASED;
import static benchtwin.book.EventKind.RETIRED;
import static benchtwin.book.EventKind.RETURNED;
import static benchtwin.book.Slips.JOB_1;
import static benchtwin.book.Slips.JOB_2;
import static benchtwin.book.Slips.loft;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** How a part, a job and their readings stand after their events, one behaviour each. */
class FoldTest {

    private static Promise toJob(String job, int count) {
        return new Promise(Optional.of(job), "", count);
    }

    private static List<Double> lofts(Slips slips) {
        return slips.state().readings().stream().map(one -> one.read().value().orElseThrow()).toList();
    }

    @Test
    void aPromiseStandsUntilItsJobReleasesIt() {
        Slips slips = Slips.of(ThingKind.WEIGHT).add(COUNTED, "count", "5").add(JOB_1, PROMISED, "count", "2", "whom", "")
            .add(JOB_2, PROMISED, "count", "1", "whom", "");
        assertThat(slips.state().promises()).containsExactly(toJob("1", 2), toJob("2", 1));
        assertThat(slips.state().promised()).isEqualTo(3);
        assertThat(slips.add(JOB_1, RELEASED).state().promises()).containsExactly(toJob("2", 1));
    }

    @Test
    void aPromiseToAPersonIsReleasedByName() {
        Slips slips = Slips.of(ThingKind.WEIGHT).add(PROMISED, "whom", "Kim").add(PROMISED, "whom", "Jo")
            .add(JOB_1, PROMISED, "whom", "Kim");
        assertThat(slips.add(RELEASED, "whom", "Kim").state().promises()).containsExactly(new Promise(Optional.empty(), "Jo", 1),
            new Promise(Optional.of("1"), "Kim", 1));
    }

    @Test
    void aReleaseThatNamesNobodyReleasesAll() {
        Slips slips = Slips.of(ThingKind.WEIGHT).add(PROMISED, "whom", "Kim").add(JOB_1, PROMISED);
        assertThat(slips.add(RELEASED).state().promises()).isEmpty();
    }

    @Test
    void aPartThatIsBuiltInSitsInItsClubAndItsJobsPromiseIsKept() {
        State state = Slips.of(ThingKind.HEAD).add(JOB_1, PROMISED).add(JOB_1, BUILT_IN, "club", "C-1").state();
        assertThat(state.standing()).isEqualTo(Standing.BUILT_IN);
        assertThat(state.club()).contains("C-1");
        assertThat(state.promises()).isEmpty();
        assertThat(state.facts()).as("the club is no fact of the part").isEmpty();
    }

    @Test
    void aPulledPartIsThereAgain() {
        State state = Slips.of(ThingKind.HEAD).add(BUILT_IN, "club", "C-1").add(PULLED).state();
        assertThat(state.standing()).isEqualTo(Standing.THERE);
        assertThat(state.club()).isEmpty();
        assertThat(state.facts()).isEmpty();
    }

    @Test
    void aPulledShaftCountsItsPullsAndIsPulled() {
        Slips slips = Slips.of(ThingKind.SHAFT).add(DESCRIBED, "condition", "new").add(BUILT_IN, "club", "C-1")
            .add(PULLED, "butt_cut_mm", "10");
        assertThat(slips.state().facts()).isEqualTo(Map.of("condition", "pulled", "pulls", "1", "butt_cut_mm", "10"));
        slips.add(BUILT_IN, "club", "C-2").add(PULLED);
        assertThat(slips.state().fact("pulls")).contains("2");
    }

    @Test
    void aShaftThatCameWithPullsGoesOnCountingFromThem() {
        assertThat(Slips.of(ThingKind.SHAFT).add(DESCRIBED, "pulls", "3").add(BUILT_IN).add(PULLED).state().fact("pulls"))
            .contains("4");
    }

    @Test
    void whatIsPulledAfterItWasRetiredStaysRetired() {
        State state = Slips.of(ThingKind.HEAD).add(BUILT_IN, "club", "C-1").add(RETIRED, "condition", "cracked").add(PULLED).state();
        assertThat(state.standing()).isEqualTo(Standing.RETIRED);
        assertThat(state.fact("condition")).contains("cracked");
        assertThat(state.club()).isEmpty();
    }

    @Test
    void bendsAddUpEachDirectionOnItsOwn() {
        State state = Slips.of(ThingKind.HEAD).add(BENT, "bent_upright_deg", "0.1").add(BENT, "bent_upright_deg", "0.2",
            "bent_back_deg", "1").add(BENT, "bent_flat_deg", "0.5").state();
        assertThat(state.facts()).isEqualTo(Map.of("bent_upright_deg", "0.3", "bent_back_deg", "1", "bent_flat_deg", "0.5"));
    }

    @Test
    void bendsAddToWhatTheHeadCameWith() {
        assertThat(Slips.of(ThingKind.HEAD).add(DESCRIBED, "bent_forward_deg", "1.5").add(BENT, "bent_forward_deg", "0.5").state()
            .facts()).isEqualTo(Map.of("bent_forward_deg", "2"));
    }

    @Test
    void aRetiredPartHasNoPromises() {
        State state = Slips.of(ThingKind.HEAD).add(JOB_1, PROMISED).add(PROMISED, "whom", "Kim").add(RETIRED, "retired_why", "sold")
            .state();
        assertThat(state.standing()).isEqualTo(Standing.RETIRED);
        assertThat(state.promises()).isEmpty();
        assertThat(state.fact("retired_why")).contains("sold");
    }

    @Test
    void aReturnedPartIsThereAndTheReasonIsGone() {
        State state = Slips.of(ThingKind.HEAD).add(RETIRED, "retired_why", "lost").add(RETURNED, "retired_why", "").state();
        assertThat(state.standing()).isEqualTo(Standing.THERE);
        assertThat(state.facts()).isEmpty();
    }

    @Test
    void oneOfACountedPartLeavesTheTinAndComesBack() {
        Slips slips = Slips.of(ThingKind.SLEEVE).add(COUNTED, "count", "3").add(BUILT_IN, "club", "C-1").add(BUILT_IN, "club", "C-2");
        assertThat(slips.state().count()).isEqualTo(1);
        assertThat(slips.state().standing()).isEqualTo(Standing.THERE);
        assertThat(slips.state().club()).isEmpty();
        assertThat(slips.add(PULLED).state().count()).isEqualTo(2);
        assertThat(slips.add(COUNTED, "count", "7").state().count()).as("a count puts it right").isEqualTo(7);
    }

    @Test
    void aTinHoldsNeverLessThanNothing() {
        assertThat(Slips.of(ThingKind.WEIGHT).add(COUNTED, "count", "0").add(BUILT_IN).state().count()).isZero();
    }

    @Test
    void buildingInOneOfTwoThatArePromisedKeepsOnePromised() {
        Slips slips = Slips.of(ThingKind.WEIGHT).add(COUNTED, "count", "4").add(JOB_2, PROMISED, "count", "1")
            .add(JOB_1, PROMISED, "count", "2").add(JOB_1, BUILT_IN, "club", "C-1");
        assertThat(slips.state().promises()).containsExactly(toJob("2", 1), toJob("1", 1));
        assertThat(slips.state().count()).isEqualTo(3);
        assertThat(slips.add(JOB_1, BUILT_IN, "club", "C-1").state().promises()).containsExactly(toJob("2", 1));
        assertThat(slips.add(JOB_1, BUILT_IN, "club", "C-1").state().promises()).as("one more than was promised")
            .containsExactly(toJob("2", 1));
    }

    @Test
    void anEmptyTextTakesAFactBack() {
        assertThat(Slips.of(ThingKind.HEAD).add(DESCRIBED, "model", "Sedge", "grind", "heel").add(DESCRIBED, "grind", "").state()
            .facts()).isEqualTo(Map.of("model", "Sedge"));
    }

    @Test
    void theNewestSittingTakesTheOlderOnesPlaceAsAWhole() {
        Slips slips = Slips.of(ThingKind.HEAD).read(MEASURED, loft(9), loft(9.1), loft(9.2)).read(MEASURED, loft(9.4));
        assertThat(lofts(slips)).containsExactly(9.4);
        assertThat(lofts(slips.read(MEASURED, loft(9.5), loft(9.6)))).containsExactly(9.5, 9.6);
    }

    private static NewReading lofts(double loftDeg, String gauge) {
        NewReading read = loft(loftDeg);
        return new NewReading(read.quantity(), read.value(), read.uncertainty(), read.unit(), read.condition(), Optional.of(gauge),
            read.station(), read.measuredAt(), read.by(), read.note(), read.corrects());
    }

    @Test
    void readingsOnAnotherGaugeStandBesideEachOther() {
        assertThat(lofts(Slips.of(ThingKind.HEAD).read(MEASURED, lofts(9, "A")).read(MEASURED, lofts(9.2, "B"))
            .read(MEASURED, lofts(9.1, "A")))).containsExactly(9.2, 9.1);
    }

    @Test
    void aBentHeadsAnglesAreHistoryAndItsMassIsNot() {
        Slips slips = Slips.of(ThingKind.HEAD).read(MEASURED, loft(9), NewReading.of("mass_g", 198, "grams"))
            .add(BENT, "bent_back_deg", "1");
        assertThat(slips.state().readings()).extracting(one -> one.read().quantity()).containsExactly("mass_g");
        assertThat(slips.read(MEASURED, loft(10)).state().readings()).hasSize(2);
    }

    @Test
    void aGroundHeadsMassIsHistoryAndItsLoftIsNot() {
        Slips slips = Slips.of(ThingKind.HEAD).read(MEASURED, loft(9), NewReading.of("mass_g", 198, "grams")).add(GROUND);
        assertThat(lofts(slips)).containsExactly(9.0);
    }

    @Test
    void aCutShaftsFrequencyIsHistory() {
        Slips slips = Slips.of(ThingKind.SHAFT).read(MEASURED, Slips.frequency(250)).add(DESCRIBED, "place", "bench");
        assertThat(slips.state().readings()).hasSize(1);
        assertThat(slips.add(PULLED, "tip_cut_mm", "12").state().readings()).isEmpty();
    }

    @Test
    void readingsInAnotherConditionStandBesideEachOther() {
        NewReading square = new NewReading("loft_deg", OptionalDouble.of(10), OptionalDouble.empty(), "degrees", Map.of("how",
            "square"), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
            OptionalLong.empty());
        assertThat(lofts(Slips.of(ThingKind.HEAD).read(MEASURED, loft(9)).read(MEASURED, square))).containsExactly(9.0, 10.0);
    }

    @Test
    void whatHappenedEarlierDoesNotTakeThePlaceOfWhatHappenedLater() {
        Slips slips = Slips.of(ThingKind.HEAD).read(MEASURED, loft(9)).add(NewEvent.of(MEASURED).at(Moment.on(LocalDate.of(2026, 4, 2)))
            .reading(List.of(loft(8))));
        assertThat(lofts(slips)).containsExactly(9.0);
    }

    @Test
    void aCorrectionHasThePlaceOfWhatItCorrects() {
        Slips slips = Slips.of(ThingKind.HEAD).read(MEASURED, loft(99)).read(MEASURED, loft(9.4))
            .read(CORRECTED, loft(9.9).correcting(1, "misread"));
        assertThat(lofts(slips)).as("an old reading was put right, the newer one stands").containsExactly(9.4);
        assertThat(lofts(slips.read(CORRECTED, loft(9.5).correcting(2, "misread")))).containsExactly(9.5);
        assertThat(slips.state().readings().get(0).read().corrects()).as("how it came about is in the events").isEmpty();
        assertThat(slips.state().readings().get(0).id()).isEqualTo(4);
    }

    @Test
    void aChainOfCorrectionsEndsAtItsLast() {
        Slips slips = Slips.of(ThingKind.HEAD).read(MEASURED, loft(1)).read(CORRECTED, loft(2).correcting(1, "misread"))
            .read(CORRECTED, loft(3).correcting(2, "again")).read(CORRECTED, loft(4).correcting(3, "and again"));
        assertThat(lofts(slips)).containsExactly(4.0);
    }

    @Test
    void aReadingThatWasTakenBackUncoversTheOneBefore() {
        Slips slips = Slips.of(ThingKind.HEAD).read(MEASURED, loft(9)).read(MEASURED, loft(12));
        assertThat(lofts(slips.read(CORRECTED, loft(12).takingBack(2, "another head")))).containsExactly(9.0);
        assertThat(lofts(slips.read(CORRECTED, loft(9).takingBack(1, "another head too")))).isEmpty();
    }

    @Test
    void oneOfSeveralReadingsMayBeTakenBack() {
        Slips slips = Slips.of(ThingKind.HEAD).read(MEASURED, loft(9), loft(19), loft(9.2));
        assertThat(lofts(slips.read(CORRECTED, loft(19).takingBack(2, "slipped")))).containsExactly(9.0, 9.2);
    }

    @Test
    void aCorrectionMadeWhileMeasuringAnewCountsOnce() {
        Slips slips = Slips.of(ThingKind.HEAD).read(MEASURED, loft(99)).read(MEASURED, loft(9.9).correcting(1, "misread"), loft(9.4));
        assertThat(lofts(slips)).containsExactly(9.4);
    }

    @Test
    void aJobWaitsIsPlannedAndHandedOverOrCalledOff() {
        assertThat(Slips.of(ThingKind.JOB).state().standing()).isEqualTo(Standing.WAITING);
        assertThat(Slips.of(ThingKind.JOB).add(PLANNED).state().standing()).isEqualTo(Standing.PLANNED);
        assertThat(Slips.of(ThingKind.JOB).add(PLANNED).add(HANDED_OVER).state().standing()).isEqualTo(Standing.HANDED_OVER);
        assertThat(Slips.of(ThingKind.JOB).add(CALLED_OFF).state().standing()).isEqualTo(Standing.CALLED_OFF);
    }
}
