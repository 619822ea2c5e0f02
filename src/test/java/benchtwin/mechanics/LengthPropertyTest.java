package benchtwin.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.Head;
import benchtwin.club.HeadMaterial;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a lie bend does to length, over all lies from 50° to 70°. Flatter is longer: common practice, no source. */
class LengthPropertyTest {

    private static final double STEP = 0.25;

    private static CutClub club(boolean wood, double lieDeg) {
        Head head = wood
            ? Samples.head("H", Category.DRIVER, AngleReading.SOLED, 9.5, lieDeg, 0, 200, 32, HeadMaterial.TITANIUM)
            : Samples.head("H", Category.IRON, AngleReading.EDGE, 34, lieDeg, 5, 268, 30, HeadMaterial.CARBON_STEEL);
        return new CutClub(Assembler.of(head, wood ? Samples.driverShaft(255, 0, 0) : Samples.ironShaft(),
            Optional.empty(), Optional.of(Samples.grip())), Setup.plain(0, 0), MechanicsDefaults.CLAMP_MM);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void bentFlatterAClubIsLongerInBothMeasures(boolean wood) {
        for (double lie = 50; lie <= 70; lie += STEP) {
            CutClub club = club(wood, lie);
            for (double flatter = lie - STEP; flatter >= Math.max(50, lie - 3); flatter -= STEP) {
                assertThat(club.lengthMm(flatter)).as("lie %s to %s", lie, flatter)
                    .isGreaterThan(club.lengthMm(flatter + STEP));
                assertThat(club.rulesLengthMm(flatter)).as("rules length, lie %s to %s", lie, flatter)
                    .isGreaterThan(club.rulesLengthMm(flatter + STEP));
            }
        }
    }

    /** The handbook's figures: 0.29 mm a degree for an iron, 0.45 mm for a driver. */
    @Test
    void aDegreeOfLieIsWorthAThirdToAHalfOfAMillimetre() {
        assertThat(club(false, 62).lengthMm(61) - club(false, 62).lengthMm(62)).isCloseTo(0.29, within(0.01));
        assertThat(club(true, 58).lengthMm(57) - club(true, 58).lengthMm(58)).isCloseTo(0.45, within(0.01));
    }

    /** The handbook's figure: the rules length grows by at least 0.14 mm a degree. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void theRulesLengthGrowsByAtLeastASeventhOfAMillimetreADegree(boolean wood) {
        for (double lie = 51; lie <= 70; lie += 1) {
            CutClub club = club(wood, lie);
            assertThat(club.rulesLengthMm(lie - 1) - club.rulesLengthMm(lie)).isGreaterThanOrEqualTo(0.14);
        }
    }

    /** At 60° the sole stands on the inclined plane at the ground point's height: both lengths agree. */
    @Test
    void atSixtyDegreesBothLengthsAgree() {
        assertThat(RulesLength.mm(1150, 60, 45, 250)).isCloseTo(1150, within(1e-12));
    }

    /** The handbook's limit of validity: an iron's sole flatter than about 290 mm turns the rule round near 70°. */
    @Test
    void aMuchFlatterSoleTurnsTheRuleRoundNearSeventyDegrees() {
        double before = RulesLength.shorterByMm(70, 35, 400);
        double moved = RulesLength.soleCentreAfterMm(35, 30, 70, 69);
        double longer = 30 * (Math.sin(Math.toRadians(70)) / Math.sin(Math.toRadians(69)) - 1);
        assertThat(longer - RulesLength.shorterByMm(69, moved, 400) + before).isNegative();
    }
}
