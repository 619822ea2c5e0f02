package benchtwin.samples;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.Category;
import benchtwin.club.ClubRow;
import benchtwin.club.Grip;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadAngles;
import benchtwin.club.Inventory;
import benchtwin.club.LengthMethod;
import benchtwin.club.Port;
import benchtwin.club.Quantity;
import benchtwin.club.RecordedClub;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.measure.Reading;
import benchtwin.mechanics.Assembler;
import benchtwin.mechanics.Assembly;
import benchtwin.mechanics.ClubModel;
import benchtwin.mechanics.FrequencyCondition;
import benchtwin.mechanics.Setup;
import benchtwin.mechanics.SleeveSettings;
import benchtwin.mechanics.Stiffness;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The players' clubs of the sample workshop: who has what, that its parts exist, and that it measures what they make. */
class SampleClubsTest {

    private static final Inventory STOCK = SampleFolder.inventory();

    /** What a club may differ by from the mechanics of its parts: its own and the gauge's scatter. */
    private static final double ANGLE_DEG = 0.21;
    private static final double LENGTH_MM = 1;
    private static final double SWING_WEIGHT_POINTS = 0.45;
    private static final double FREQUENCY_CPM = 3;
    private static final double TOTAL_MASS_G = 0.5;

    @Test
    void atLeastEightPlayersHaveClubsAndSomeWereMeasuredMoreThanOnce() {
        assertThat(STOCK.clubs().stream().map(RecordedClub::player).distinct()).hasSizeGreaterThanOrEqualTo(8);
        assertThat(STOCK.clubs()).filteredOn(club -> club.rows().size() >= 2).hasSizeGreaterThan(10);
        assertThat(STOCK.clubs()).anyMatch(club -> club.hand() == Hand.LEFT);
    }

    @Test
    void twoPlayersHaveAWholeBagWithAWholeSetOfIrons() {
        Map<String, List<RecordedClub>> bags = STOCK.clubs().stream().collect(Collectors.groupingBy(RecordedClub::player));
        List<List<RecordedClub>> whole = bags.values().stream().filter(bag -> bag.size() >= 13).toList();
        assertThat(whole).hasSize(2).allSatisfy(bag -> {
            assertThat(bag).hasSizeLessThanOrEqualTo(14);
            assertThat(bag).extracting(RecordedClub::category).contains(Category.values());
            assertThat(bag).filteredOn(club -> club.category() == Category.IRON)
                .extracting(club -> club.number().orElseThrow()).contains("5", "6", "7", "8", "9", "PW");
        });
    }

    @Test
    void oneClubHasNoLieReading() {
        assertThat(STOCK.club("DUNMARSH-4H").orElseThrow().newest().angles().orElseThrow().lieDeg()).isEmpty();
        assertThat(STOCK.clubs()).extracting(club -> club.lastSound().orElseThrow().angles().orElseThrow())
            .filteredOn(angles -> angles.lieDeg().isEmpty()).hasSize(1);
    }

    @Test
    void noPartIsInTwoClubsAtOnce() {
        for (List<String> tags : List.of(newest().flatMap(row -> row.head().stream()).toList(),
            newest().flatMap(row -> row.shaft().stream()).toList(),
            newest().flatMap(row -> row.grip().stream()).toList())) {
            assertThat(tags).hasSameSizeAs(STOCK.clubs()).doesNotHaveDuplicates();
        }
    }

    private static Stream<ClubRow> newest() {
        return STOCK.clubs().stream().map(RecordedClub::newest);
    }

    private static List<RecordedClub> clubs() {
        return STOCK.clubs();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("clubs")
    void itsPartsExistAndFitTogether(RecordedClub club) {
        for (ClubRow row : club.rows()) {
            Head head = STOCK.head(row.head().orElseThrow()).orElseThrow();
            Shaft shaft = STOCK.shaft(row.shaft().orElseThrow()).orElseThrow();
            assertThat(STOCK.grip(row.grip().orElseThrow())).isPresent();
            assertThat(head.category()).isEqualTo(club.category());
            assertThat(head.hand()).isEqualTo(club.hand());
            assertThat(head.number()).isEqualTo(club.number());
            assertThat(shaft.meantFor()).contains(club.category());
            assertThat(shaft.sleeveOn()).isEqualTo(row.sleeve());
            assertThat(shaft.gripOn()).isEqualTo(row.grip());
            assertThat(row.sleeve().isPresent()).isEqualTo(head.seat().isPresent());
            row.sleeve().ifPresent(name -> assertThat(STOCK.sleeve(name).orElseThrow().fits(head)).isTrue());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("clubs")
    void itMeasuresWhatTheMechanicsSayOfItsParts(RecordedClub club) {
        SoftAssertions softly = new SoftAssertions();
        for (ClubRow row : club.rows()) {
            if (row.lengthMm().isEmpty()) {
                continue;
            }
            double[] model = model(row);
            String day = "%s on %s, ".formatted(club.tag(), row.measuredOn());
            HeadAngles angles = row.angles().orElseThrow();
            angles.loftDeg().ifPresent(r -> close(softly, day, model, Quantity.LOFT, r, ANGLE_DEG));
            angles.lieDeg().ifPresent(r -> close(softly, day, model, Quantity.LIE, r, ANGLE_DEG));
            angles.faceDeg().ifPresent(r -> close(softly, day, model, Quantity.FACE, r, ANGLE_DEG));
            angles.bounceDeg().ifPresent(r -> close(softly, day, model, Quantity.BOUNCE, r, ANGLE_DEG));
            Quantity length = row.lengthMethod() == LengthMethod.RULES60 ? Quantity.RULES_LENGTH : Quantity.LENGTH;
            close(softly, day, model, length, row.lengthMm().orElseThrow(), LENGTH_MM);
            close(softly, day, model, Quantity.SWING_WEIGHT, row.swingWeightPoints().orElseThrow(), SWING_WEIGHT_POINTS);
            close(softly, day, model, Quantity.FREQUENCY, row.frequency().orElseThrow().cpm(), FREQUENCY_CPM);
            close(softly, day, model, Quantity.TOTAL_MASS, row.totalMassG().orElseThrow(), TOTAL_MASS_G);
        }
        softly.assertAll();
    }

    private static void close(SoftAssertions softly, String day, double[] model, Quantity quantity, Reading read,
                              double most) {
        softly.assertThat(Math.abs(read.value() - model[quantity.ordinal()])).as(day + quantity.word())
            .isLessThanOrEqualTo(most);
    }

    /** The club of a row as its parts alone predict it: the raw shaft reading sets the stiffness. */
    private static double[] model(ClubRow row) {
        Head head = STOCK.head(row.head().orElseThrow()).orElseThrow();
        Shaft shaft = STOCK.shaft(row.shaft().orElseThrow()).orElseThrow();
        Optional<Sleeve> sleeve = row.sleeve().flatMap(STOCK::sleeve);
        Optional<Grip> grip = row.grip().flatMap(STOCK::grip);
        Assembly assembly = Assembler.of(head, shaft, sleeve, grip);
        Setup.Aim aim = sleeve.map(on -> SleeveSettings.aim(on, head.hand(), head.seat().orElseThrow().readAtSetting(),
            row.setting().orElseThrow()).orElseThrow()).orElse(Setup.AS_READ);
        double inPorts = head.ports().stream().mapToDouble(Port::massG).sum();
        double atHead = inPorts + row.masses().tapeG() + row.masses().meltG();
        Setup setup = new Setup(0, 0, 0, 0, row.masses().tapeLayers(), atHead, row.masses().tipWeightG(), aim);
        FrequencyCondition condition = new FrequencyCondition(
            row.frequency().orElseThrow().clampMm().orElseThrow(), row.frequency().orElseThrow().overGrip());
        return ClubModel.predict(assembly, setup, condition, Stiffness.rootFromRaw(assembly),
            row.angles().orElseThrow().reading());
    }

    /** Common practice, no source: what finished clubs of each kind weigh and balance like. */
    @Test
    void theClubsLookLikeClubs() {
        for (RecordedClub club : STOCK.clubs()) {
            ClubRow row = club.lastSound().orElseThrow();
            double points = row.swingWeightPoints().orElseThrow().value();
            double mass = row.totalMassG().orElseThrow().value();
            if (club.category() == Category.DRIVER) {
                assertThat(mass).as(club.tag()).isBetween(290.0, 325.0);
                assertThat(row.lengthMm().orElseThrow().value()).as(club.tag()).isBetween(44.5 * 25.4, 46 * 25.4);
            }
            if (club.category() != Category.PUTTER) {
                assertThat(points).as(club.tag()).isBetween(30.0, 35.0);
            }
        }
    }
}
