package benchtwin.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AngleReading;
import benchtwin.club.Hand;
import benchtwin.club.Keeping;
import benchtwin.club.MeasuredSetting;
import benchtwin.club.Ring;
import benchtwin.club.Sleeve;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the settings of a sleeve do. Worked by hand from the ring geometry. */
class SleeveSettingsTest {

    private static final double ARITHMETIC = 1e-12;

    private static Sleeve sleeve(List<Ring> rings, List<MeasuredSetting> measured) {
        return new Sleeve("KEEL", Set.of("KEEL"), Optional.empty(), 8.6, Optional.empty(), Optional.empty(),
            Optional.empty(), true, rings, measured, OptionalInt.empty(), Keeping.UNRECORDED);
    }

    @Test
    void oneRingCountsItsSettingsFromOne() {
        Sleeve twelve = sleeve(List.of(new Ring(1.5, 12, 0)), List.of());
        assertThat(SleeveSettings.labels(twelve)).hasSize(12).startsWith("1", "2").endsWith("12");
        HoselTilt first = SleeveSettings.tilt(twelve, "1", Hand.RIGHT).orElseThrow();
        assertThat(first.uprightDeg()).isEqualTo(1.5);
        assertThat(first.forwardDeg()).isEqualTo(0);
        HoselTilt fourth = SleeveSettings.tilt(twelve, "4", Hand.RIGHT).orElseThrow();   // a quarter turn
        assertThat(fourth.uprightDeg()).isCloseTo(0, within(ARITHMETIC));
        assertThat(fourth.forwardDeg()).isCloseTo(1.5, within(ARITHMETIC));
    }

    @Test
    void twoRingsOfSixAndFiveGiveThirtyCombinations() {
        Sleeve thirty = sleeve(List.of(new Ring(0.8, 6, 0), new Ring(0.6, 5, 0)), List.of());
        assertThat(SleeveSettings.labels(thirty)).hasSize(30).doesNotHaveDuplicates();
        HoselTilt both = SleeveSettings.tilt(thirty, "1/1", Hand.RIGHT).orElseThrow();
        assertThat(both.uprightDeg()).isCloseTo(1.4, within(ARITHMETIC));
        assertThat(SleeveSettings.tilt(thirty, "7/1", Hand.RIGHT)).isEmpty();
        assertThat(SleeveSettings.tilt(thirty, "3", Hand.RIGHT)).isEmpty();
    }

    @Test
    void theMirrorReversesTheCountForALeftHand() {
        Sleeve twelve = sleeve(List.of(new Ring(1.5, 12, 10)), List.of());
        HoselTilt right = SleeveSettings.tilt(twelve, "3", Hand.RIGHT).orElseThrow();
        HoselTilt left = SleeveSettings.tilt(twelve, "3", Hand.LEFT).orElseThrow();
        assertThat(left.uprightDeg()).isCloseTo(right.uprightDeg(), within(ARITHMETIC));
        assertThat(left.forwardDeg()).isCloseTo(-right.forwardDeg(), within(ARITHMETIC));
    }

    @Test
    void equallySpacedSettingsAverageToNothing() {
        HoselTilt mean = SleeveSettings.mean(sleeve(List.of(new Ring(0.8, 6, 20), new Ring(0.6, 5, 0)), List.of()),
            Hand.RIGHT);
        assertThat(mean.uprightDeg()).isCloseTo(0, within(ARITHMETIC));
        assertThat(mean.forwardDeg()).isCloseTo(0, within(ARITHMETIC));
    }

    @Test
    void aMeasuredTableTakesTheGeometrysPlace() {
        Sleeve measured = sleeve(List.of(new Ring(1.5, 12, 0)), List.of(
            new MeasuredSetting("low", -1.0, 0.0, OptionalDouble.of(1.5), AngleReading.SQUARE),
            new MeasuredSetting("high", 1.0, 0.25, OptionalDouble.of(-1.5), AngleReading.SQUARE)));
        assertThat(SleeveSettings.labels(measured)).containsExactly("low", "high");
        Setup.Aim aim = SleeveSettings.aim(measured, Hand.RIGHT, Optional.of("low"), "high").orElseThrow();
        assertThat(aim).isEqualTo(new Setup.Shifted(2.0, 0.25, -3.0, true));
        assertThat(SleeveSettings.aim(measured, Hand.RIGHT, Optional.of("3"), "high")).isEmpty();
    }

    @Test
    void aHeadReadAtAnUnknownSettingIsTakenAtTheMean() {
        Sleeve twelve = sleeve(List.of(new Ring(1.5, 12, 0)), List.of());
        Setup.Tilted aim = (Setup.Tilted) SleeveSettings.aim(twelve, Hand.RIGHT, Optional.empty(), "1").orElseThrow();
        assertThat(aim.tilt().uprightDeg()).isCloseTo(1.5, within(ARITHMETIC));
    }
}
