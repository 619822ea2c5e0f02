package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Adjust;
import benchtwin.club.AngleReading;
import benchtwin.club.Category;
import benchtwin.club.ClubRow;
import benchtwin.club.ClubState;
import benchtwin.club.FrequencyReading;
import benchtwin.club.Grip;
import benchtwin.club.Hand;
import benchtwin.club.Head;
import benchtwin.club.HeadCondition;
import benchtwin.club.HeadMaterial;
import benchtwin.club.Inventory;
import benchtwin.club.LengthMethod;
import benchtwin.club.MeasuredSetting;
import benchtwin.club.Port;
import benchtwin.club.RecordedClub;
import benchtwin.club.Ring;
import benchtwin.club.Shaft;
import benchtwin.club.ShaftCondition;
import benchtwin.club.Sleeve;
import benchtwin.club.TipKind;
import benchtwin.club.WeighedWith;
import benchtwin.measure.Reading;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clean files become the records they describe. Inches are checked against 25.4 mm (NIST SP 811). */
class InventoryReaderTest {

    private static final double ARITHMETIC = 1e-9;

    @TempDir
    Path folder;

    private Inventory clean() {
        InventoryRead read = Workshop.in(folder).read();
        assertThat(read.faults()).extracting(Fault::text).isEmpty();
        assertThat(read.warnings()).extracting(Fault::text).isEmpty();
        return read.inventory().orElseThrow();
    }

    @Test
    void aSleevedDriverHead() {
        Head head = clean().head("H-1").orElseThrow();
        assertThat(head.model()).isEqualTo("Alder");
        assertThat(head.category()).isEqualTo(Category.DRIVER);
        assertThat(head.hand()).isEqualTo(Hand.RIGHT);
        assertThat(head.angles().reading()).isEqualTo(AngleReading.SOLED);
        assertThat(head.angles().loftDeg()).contains(Reading.of(9.3, 0.3));
        assertThat(head.angles().lieDeg()).contains(Reading.of(58.5, 0.2));
        assertThat(head.angles().faceDeg()).contains(Reading.of(-0.5, 0.4));
        assertThat(head.angles().bounceDeg()).isEmpty();
        assertThat(head.massG()).contains(Reading.of(198.5, 0.1));
        assertThat(head.weighedWith()).containsExactlyInAnyOrder(WeighedWith.WEIGHTS, WeighedWith.SCREW);
        assertThat(head.bore()).isEmpty();
        assertThat(head.seat().orElseThrow().fit()).isEqualTo("Q2");
        assertThat(head.seat().orElseThrow().toGroundMm()).contains(Reading.of(62, 0.3));
        assertThat(head.seat().orElseThrow().readAtSetting()).contains("1");
        assertThat(head.material()).isEqualTo(HeadMaterial.TITANIUM);
        assertThat(head.ports()).containsExactly(new Port("P8", 4), new Port("P8", 7));
        assertThat(head.hotMeltMaxG()).isEqualTo(6);
        assertThat(head.condition()).isEqualTo(HeadCondition.NEW);
        assertThat(head.keeping().place()).contains("drawer 3");
        assertThat(head.keeping().reservedFor()).isEmpty();
    }

    @Test
    void aBoredIronHeadIsReadByTheEdge() {
        Head head = clean().head("H-2").orElseThrow();
        assertThat(head.number()).contains("7");
        assertThat(head.hand()).isEqualTo(Hand.LEFT);
        assertThat(head.angles().reading()).isEqualTo(AngleReading.EDGE);
        assertThat(head.angles().loftDeg()).contains(Reading.of(34, 0.2));
        assertThat(head.angles().bounceDeg()).contains(Reading.of(5, 0.2));
        assertThat(head.adjust()).isEqualTo(Adjust.BEND);
        assertThat(head.bore().orElseThrow().diameterMm()).isCloseTo(9.398, within(ARITHMETIC));
        assertThat(head.bore().orElseThrow().kind()).isEqualTo(TipKind.PARALLEL);
        assertThat(head.bore().orElseThrow().depthMm()).contains(Reading.of(32, 0.3));
        assertThat(head.condition()).isEqualTo(HeadCondition.USED);
        assertThat(head.bent().isComplete()).isFalse();
        assertThat(head.weighedWith()).isEmpty();
    }

    @Test
    void aPulledShaftWithItsFurtherReading() {
        Shaft shaft = clean().shaft("S-1").orElseThrow();
        assertThat(shaft.meantFor()).containsExactlyInAnyOrder(Category.DRIVER, Category.FAIRWAY);
        assertThat(shaft.rawLengthMm()).isCloseTo(1168.4, within(ARITHMETIC));
        assertThat(shaft.lengthMm()).isCloseTo(45 * 25.4, within(ARITHMETIC));
        assertThat(shaft.balanceMm().orElseThrow().value()).isCloseTo(596.9, within(ARITHMETIC));
        assertThat(shaft.tipMm()).isCloseTo(8.509, within(ARITHMETIC));
        assertThat(shaft.tipCutMm()).isCloseTo(12.7, within(ARITHMETIC));
        assertThat(shaft.buttCutMm()).isCloseTo(12.7, within(ARITHMETIC));
        assertThat(shaft.parallelTipMm()).isCloseTo(76.2, within(ARITHMETIC));
        assertThat(shaft.sleeveOn()).contains("Q2-335");
        assertThat(shaft.gripOn()).isEmpty();
        assertThat(shaft.pulls()).isEqualTo(1);
        assertThat(shaft.condition()).isEqualTo(ShaftCondition.PULLED);
        assertThat(shaft.frequencies()).extracting(reading -> reading.cpm().value()).containsExactly(255.0, 310.0);
        FrequencyReading further = shaft.frequencies().get(1);
        assertThat(further.freeLengthMm().getAsDouble()).isCloseTo(36 * 25.4, within(ARITHMETIC));
        assertThat(further.clampMm().getAsDouble()).as("worked out from the length").isCloseTo(9 * 25.4, within(ARITHMETIC));
        assertThat(further.tipMassG()).isEmpty();
        assertThat(further.cpm().standardUncertainty()).isEqualTo(0.5);
    }

    @Test
    void aNewShaftWithLittleWrittenDown() {
        Shaft shaft = clean().shaft("S-2").orElseThrow();
        assertThat(shaft.condition()).isEqualTo(ShaftCondition.NEW);
        assertThat(shaft.madeForNumber()).contains("7");
        assertThat(shaft.massG()).isEmpty();
        assertThat(shaft.balanceMm()).isEmpty();
        assertThat(shaft.torqueDeg()).isEmpty();
        assertThat(shaft.frequencies()).isEmpty();
        assertThat(shaft.parallelTipMm()).isZero();
        assertThat(shaft.pulls()).isZero();
        assertThat(shaft.gripOn()).contains("G-1");
    }

    @Test
    void aGripASleeveAndAWeight() {
        Inventory inventory = clean();
        Grip grip = inventory.grip("G-1").orElseThrow();
        assertThat(grip.massG()).contains(Reading.of(50, 0.1));
        assertThat(grip.lengthMm().getAsDouble()).isCloseTo(266.7, within(ARITHMETIC));
        assertThat(grip.capMm()).isEqualTo(OptionalDouble.of(3));
        assertThat(grip.ribbed()).isFalse();
        assertThat(grip.cgMm().orElseThrow().value()).isCloseTo(106.68, within(ARITHMETIC));
        Sleeve sleeve = inventory.sleeve("Q2-335").orElseThrow();
        assertThat(sleeve.fits()).containsExactlyInAnyOrder("Q2", "Q3");
        assertThat(sleeve.hand()).contains(Hand.RIGHT);
        assertThat(sleeve.boreMm()).isCloseTo(8.509, within(ARITHMETIC));
        assertThat(sleeve.turnsShaft()).isTrue();
        assertThat(sleeve.rings()).containsExactly(new Ring(1, 12, 0));
        assertThat(sleeve.measured()).containsExactly(
            new MeasuredSetting("1", 0.5, -0.4, OptionalDouble.of(-1.2), AngleReading.SQUARE));
        assertThat(sleeve.count()).hasValue(4);
        assertThat(sleeve.fits(inventory.head("H-1").orElseThrow())).isTrue();
        assertThat(inventory.weights()).singleElement().satisfies(weight -> {
            assertThat(weight.massG()).isEqualTo(7);
            assertThat(weight.count()).isEqualTo(3);
            assertThat(weight.port()).isEqualTo("P8");
        });
    }

    @Test
    void aClubIsItsRowsOverTime() {
        RecordedClub club = clean().club("C-1").orElseThrow();
        assertThat(club.player()).isEqualTo("Ansel Brook");
        assertThat(club.rows()).extracting(ClubRow::state).containsExactly(ClubState.IN_PLAY, ClubState.DAMAGED);
        ClubRow sound = club.lastSound().orElseThrow();
        assertThat(sound.measuredOn()).isEqualTo(LocalDate.of(2026, 5, 3));
        assertThat(sound.lengthMm().orElseThrow().value()).isCloseTo(1149.35, within(ARITHMETIC));
        assertThat(sound.lengthMm().orElseThrow().taken().on()).contains(LocalDate.of(2026, 5, 3));
        assertThat(sound.lengthMethod()).isEqualTo(LengthMethod.AXIS);
        assertThat(sound.swingWeightPoints().orElseThrow().value()).isCloseTo(32.4, within(ARITHMETIC));
        assertThat(sound.swingWeightPoints().orElseThrow().standardUncertainty()).isEqualTo(0.2);
        assertThat(sound.frequency().orElseThrow().overGrip()).isTrue();
        assertThat(sound.frequency().orElseThrow().clampMm().getAsDouble()).isCloseTo(127, within(ARITHMETIC));
        assertThat(sound.masses().tapeLayers()).as("blank is one layer").isEqualTo(1);
        assertThat(sound.masses().tapeG()).isEqualTo(1.5);
        assertThat(sound.setting()).contains("1");
        assertThat(sound.angles().orElseThrow().reading()).isEqualTo(AngleReading.SOLED);
        assertThat(club.newest().angles()).as("nothing was read that day").isEmpty();
        assertThat(club.newest().lengthMm()).isEmpty();
    }

    @Test
    void whoReadAClubAndOnWhatStaysWithTheReading() {
        Workshop workshop = Workshop.in(folder).set(StockKind.CLUBS, 0, "measured_by", "Kim")
            .set(StockKind.CLUBS, 0, "gauge", "bench 1");
        Reading length = workshop.read().inventory().orElseThrow().club("C-1").orElseThrow().rows().get(0).lengthMm()
            .orElseThrow();
        assertThat(length.taken().by()).contains("Kim");
        assertThat(length.taken().gauge()).contains("bench 1");
    }

    @Test
    void unknownColumnsStayWithTheirRowsAndAreListed() {
        InventoryRead read = Workshop.in(folder)
            .set(StockKind.HEADS, 1, "Shelf Colour", "=A1+B2").set(StockKind.CLUBS, 0, "weather", "rain")
            .set(StockKind.SLEEVE_SETTINGS, 0, "who", "Kim").set(StockKind.FREQUENCIES, 0, "room_c", "21").read();
        Inventory inventory = read.inventory().orElseThrow();
        assertThat(inventory.head("H-2").orElseThrow().keeping().extra()).isEqualTo(Map.of("Shelf Colour", "=A1+B2"));
        assertThat(inventory.head("H-1").orElseThrow().keeping().extra()).isEmpty();
        assertThat(inventory.club("C-1").orElseThrow().rows().get(0).extra()).isEqualTo(Map.of("weather", "rain"));
        assertThat(inventory.sleeves().get(0).keeping().extra()).isEqualTo(Map.of("setting 1, who", "Kim"));
        assertThat(inventory.shaft("S-1").orElseThrow().keeping().extra()).isEqualTo(Map.of("frequency 1, room_c", "21"));
        assertThat(read.unknownColumns()).isEqualTo(Map.of("heads.csv", List.of("Shelf Colour"),
            "clubs.csv", List.of("weather"), "sleeve-settings.csv", List.of("who"), "frequencies.csv", List.of("room_c")));
    }

    @Test
    void rowsAreCountedByFile() {
        assertThat(Workshop.in(folder).read().rowsRead()).containsEntry("heads.csv", 2).containsEntry("clubs.csv", 2)
            .containsEntry("weights.csv", 1).hasSize(8);
    }

    @Test
    void aFolderGivesTheFilesItHas() {
        StockFiles files = Workshop.in(folder).onlyKinds(StockKind.HEADS, StockKind.WEIGHTS).write();
        assertThat(files.heads()).contains(folder.resolve("heads.csv"));
        assertThat(files.weights()).contains(folder.resolve("weights.csv"));
        assertThat(files.shafts()).isEmpty();
        assertThat(files.byKind()).hasSize(2);
        assertThat(InventoryReader.readFolder(folder, false).inventory().orElseThrow().heads()).hasSize(2);
        assertThat(StockFiles.inFolder(folder.resolve("nowhere")).byKind()).isEmpty();
    }

    @Test
    void oneFaultKeepsEverythingOutUnlessTheGoodRowsAreAskedFor() {
        Workshop workshop = Workshop.in(folder).set(StockKind.HEADS, 0, "lie_deg", "flat")
            .set(StockKind.WEIGHTS, 0, "count", "");
        InventoryRead refused = workshop.read();
        assertThat(refused.inventory()).isEmpty();
        assertThat(refused.isClean()).isFalse();
        InventoryRead taken = workshop.readGoodRows();
        assertThat(taken.faults()).isEqualTo(refused.faults()).hasSize(2);
        assertThat(taken.inventory().orElseThrow().heads()).extracting(Head::tag).containsExactly("H-2");
        assertThat(taken.inventory().orElseThrow().weights()).isEmpty();
        assertThat(taken.inventory().orElseThrow().shafts()).hasSize(2);
    }

    @Test
    void aFurtherReadingWithAFaultIsLeftOutOfItsShaft() {
        InventoryRead taken = Workshop.in(folder).set(StockKind.FREQUENCIES, 0, "free_length_in", "46").readGoodRows();
        assertThat(taken.faults()).extracting(Fault::text).containsExactly("frequencies.csv line 2, column free_length_in: "
            + "46 is as long as the shaft or longer; expected inches above 0 and below 45, the shaft as it lies");
        assertThat(taken.inventory().orElseThrow().shaft("S-1").orElseThrow().frequencies()).hasSize(1);
    }

    @Test
    void aThousandFaultsAreListedAndAllCounted() {
        Workshop workshop = Workshop.emptyIn(folder);
        for (int i = 0; i < 1200; i++) {
            workshop.row(StockKind.WEIGHTS, "tag=W-" + i, "port=P8", "mass_g=heavy", "count=1");
        }
        InventoryRead read = workshop.read();
        assertThat(read.faults()).hasSize(1000);
        assertThat(read.faultCount()).isEqualTo(1200);
        assertThat(read.inventory()).isEqualTo(Optional.empty());
    }
}
