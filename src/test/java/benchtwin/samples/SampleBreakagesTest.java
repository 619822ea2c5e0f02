package benchtwin.samples;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bend.HoselLimits;
import benchtwin.club.Adjust;
import benchtwin.club.ClubRow;
import benchtwin.club.ClubState;
import benchtwin.club.Grip;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.HeadCondition;
import benchtwin.club.Inventory;
import benchtwin.club.Port;
import benchtwin.club.RecordedClub;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.Weight;
import benchtwin.mechanics.Assembler;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.ClubAngles;
import benchtwin.mechanics.Input;
import benchtwin.mechanics.SleeveSettings;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The three broken clubs of the sample workshop and what the drawers hold for them. */
class SampleBreakagesTest {

    private static final Inventory STOCK = SampleFolder.inventory();
    private static final RecordedClub OAKES = STOCK.club("OAKES-DR").orElseThrow();
    private static final ClubRow TARGET = OAKES.lastSound().orElseThrow();
    private static final Head OLD_HEAD = STOCK.head(TARGET.head().orElseThrow()).orElseThrow();
    private static final Shaft OAKES_SHAFT = STOCK.shaft(TARGET.shaft().orElseThrow()).orElseThrow();
    private static final Sleeve OAKES_SLEEVE = STOCK.sleeve(TARGET.sleeve().orElseThrow()).orElseThrow();
    private static final Grip OAKES_GRIP = STOCK.grip(TARGET.grip().orElseThrow()).orElseThrow();
    private static final Set<String> HEADS_IN_CLUBS = STOCK.clubs().stream()
        .map(club -> club.newest().head().orElseThrow()).collect(Collectors.toSet());

    @Test
    void oakessDriverHasACrackedFaceAndASoundShaftWithSleeveAndGripOn() {
        assertThat(OAKES.newest().state()).isEqualTo(ClubState.DAMAGED);
        assertThat(OAKES.newest().note()).hasValue("face cracked");
        assertThat(TARGET).isNotEqualTo(OAKES.newest());
        assertThat(TARGET.state()).isEqualTo(ClubState.IN_PLAY);
        assertThat(OLD_HEAD.condition()).isEqualTo(HeadCondition.CRACKED);
        assertThat(OAKES_SHAFT.sleeveOn()).hasValue(OAKES_SLEEVE.name());
        assertThat(OAKES_SHAFT.gripOn()).hasValue(OAKES_GRIP.tag());
        assertThat(OAKES_SLEEVE.rings()).extracting(ring -> ring.settings()).containsExactly(6, 5);
    }

    /** Within a tenth of a degree of every target angle at some setting, and within a screw's swap of the old mass. */
    @Test
    void oneFreeHeadIsNearPerfect() {
        List<Head> perfect = free().filter(head -> reaches(head, 0.1, 0.1, 0.1))
            .filter(head -> screwBringsMass(head, 0.2)).toList();
        assertThat(perfect).extracting(Head::tag).hasSize(1);
        assertThat(perfect.get(0).angles().faceDeg()).isNotEqualTo(OLD_HEAD.angles().faceDeg());
    }

    @Test
    void aFewMoreAreInsideToleranceAndManyAreNot() {
        assertThat(free().filter(head -> reaches(head, 0.25, 0.25, 0.5))).hasSizeBetween(3, 7);
        assertThat(free().filter(head -> !reaches(head, 0.25, 0.25, 0.5))).hasSizeGreaterThanOrEqualTo(5);
        assertThat(alder2(head -> head.hand() == Hand.LEFT)).hasSizeGreaterThanOrEqualTo(4);
        assertThat(alder2(head -> head.made().loftDeg().orElseThrow() > 9.5 && head.hand() == Hand.RIGHT))
            .hasSizeGreaterThanOrEqualTo(5);
        assertThat(alder2(head -> head.keeping().reservedFor().isPresent() && reaches(head, 0.25, 0.25, 0.5))).isNotEmpty();
        assertThat(alder2(head -> head.condition() == HeadCondition.CRACKED && !HEADS_IN_CLUBS.contains(head.tag())))
            .isNotEmpty();
        assertThat(alder2(head -> head.angles().faceDeg().isEmpty())).isNotEmpty();
        assertThat(STOCK.heads()).filteredOn(head -> head.model().equals("Alder")).hasSizeGreaterThan(5);
    }

    @Test
    void tolversFairwayWoodIsBondedAndBendableAndHasHeadsToReplaceIt() {
        RecordedClub club = STOCK.club("TOLVER-3W").orElseThrow();
        assertThat(club.newest().state()).isEqualTo(ClubState.DAMAGED);
        HeadAngles target = club.lastSound().orElseThrow().angles().orElseThrow();
        Head old = STOCK.head(club.newest().head().orElseThrow()).orElseThrow();
        assertThat(old.adjust()).isEqualTo(Adjust.BEND);
        assertThat(old.condition()).isEqualTo(HeadCondition.CRACKED);
        List<Head> same = STOCK.heads().stream().filter(head -> head.model().equals(old.model())
            && head.category() == old.category() && head.number().equals(old.number()) && head.hand() == old.hand()
            && !HEADS_IN_CLUBS.contains(head.tag())).toList();
        assertThat(same).hasSizeGreaterThanOrEqualTo(5);
        assertThat(same).anySatisfy(head -> {
            double lieUp = target.lieDeg().orElseThrow().value() - head.angles().lieDeg().orElseThrow().value();
            assertThat(Math.abs(head.angles().loftDeg().orElseThrow().value() - target.loftDeg().orElseThrow().value()))
                .isLessThan(0.25);
            assertThat(HoselLimits.of(head).uprightDeg()).isGreaterThan(lieUp);
            assertThat(head.bent().isComplete()).isTrue();
        });
    }

    @Test
    void harkwellsShaftBrokeAndTheRackHoldsOneAlreadyInTheRightSleeve() {
        RecordedClub club = STOCK.club("HARKWELL-DR").orElseThrow();
        assertThat(club.newest().state()).isEqualTo(ClubState.DAMAGED);
        Head head = STOCK.head(club.newest().head().orElseThrow()).orElseThrow();
        assertThat(head.condition()).isNotEqualTo(HeadCondition.CRACKED);
        Shaft broken = STOCK.shaft(club.newest().shaft().orElseThrow()).orElseThrow();
        List<Shaft> same = STOCK.shafts().stream()
            .filter(shaft -> shaft.model().equals(broken.model()) && !shaft.tag().equals(broken.tag())).toList();
        assertThat(same).hasSizeGreaterThanOrEqualTo(8);
        assertThat(same).filteredOn(shaft -> shaft.sleeveOn().equals(club.newest().sleeve())
            && Math.abs(shaft.lengthMm() - broken.lengthMm()) < 2).singleElement().satisfies(shaft -> {
                assertThat(shaft.gripOn()).isPresent();
                assertThat(shaft.keeping().reservedFor()).isEmpty();
            });
        assertThat(same).anyMatch(shaft -> shaft.lengthMm() < broken.lengthMm() - 2 * 25.4);
        assertThat(same).anyMatch(shaft -> shaft.sleeveOn().isPresent()
            && !shaft.sleeveOn().equals(club.newest().sleeve()));
    }

    /** Sound, right-handed, unpromised, measured Alder 2 drivers in the drawers. */
    private static Stream<Head> free() {
        return alder2(head -> head.hand() == Hand.RIGHT && head.condition() != HeadCondition.CRACKED
            && !HEADS_IN_CLUBS.contains(head.tag()) && head.keeping().reservedFor().isEmpty()
            && head.massG().isPresent() && head.angles().faceDeg().isPresent()).stream();
    }

    private static List<Head> alder2(Predicate<Head> which) {
        return STOCK.heads().stream().filter(head -> head.model().equals("Alder 2")).filter(which).toList();
    }

    private static boolean reaches(Head head, double loftDeg, double lieDeg, double faceDeg) {
        if (!OAKES_SLEEVE.fits(head)) {
            return false;
        }
        HeadAngles target = TARGET.angles().orElseThrow();
        Assembly assembly = assembled(head);
        return SleeveSettings.labels(OAKES_SLEEVE).stream().map(setting -> ClubAngles.of(assembly, SleeveSettings.aim(
            OAKES_SLEEVE, head.hand(), head.seat().orElseThrow().readAtSetting(), setting).orElseThrow()))
            .anyMatch(angles -> near(angles.loftDeg(), target.loftDeg().orElseThrow().value(), loftDeg)
                && near(angles.lieDeg(), target.lieDeg().orElseThrow().value(), lieDeg)
                && near(angles.faceDeg(), target.faceDeg().orElseThrow().value(), faceDeg));
    }

    private static boolean near(double value, double wanted, double within) {
        return Math.abs(value - wanted) <= within + 1e-9;
    }

    private static boolean screwBringsMass(Head head, double withinG) {
        double wanted = massG(OLD_HEAD, OLD_HEAD.ports().stream().mapToDouble(Port::massG).sum());
        double rest = head.ports().subList(0, head.ports().size() - 1).stream().mapToDouble(Port::massG).sum();
        return STOCK.weights().stream()
            .filter(weight -> weight.count() > 0 && weight.port().equals(head.ports().get(0).type()))
            .mapToDouble(Weight::massG).anyMatch(grams -> near(massG(head, rest + grams), wanted, withinG));
    }

    private static double massG(Head head, double portsG) {
        return assembled(head).get(Input.HEAD_MASS_G) + portsG;
    }

    private static Assembly assembled(Head head) {
        return Assembler.of(head, OAKES_SHAFT, Optional.of(OAKES_SLEEVE), Optional.of(OAKES_GRIP));
    }
}
