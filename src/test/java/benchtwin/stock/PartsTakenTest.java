package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.club.FrequencyReading;
import benchtwin.club.Grip;
import benchtwin.club.Head;
import benchtwin.club.Inventory;
import benchtwin.club.Shaft;
import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A part's row may say when, by whom and on what its values were read. */
class PartsTakenTest {

    private static final Taken TAKEN =
        new Taken(Optional.of(LocalDate.of(2026, 5, 3)), Optional.of("bench 1"), Optional.of("Kim"));

    @TempDir
    Path folder;

    private Workshop taken() {
        Workshop workshop = Workshop.in(folder).set(StockKind.HEADS, 0, "cg_up_mm", "28");
        for (StockKind kind : List.of(StockKind.HEADS, StockKind.SHAFTS, StockKind.GRIPS)) {
            workshop.set(kind, 0, "measured_on", "2026-05-03").set(kind, 0, "measured_by", " Kim ").set(kind, 0, "gauge", "bench 1");
        }
        return workshop;
    }

    @Test
    void allOfItsReadingsCarryIt() {
        InventoryRead read = taken().read();
        assertThat(read.faults()).isEmpty();
        assertThat(read.unknownColumns()).isEmpty();
        Inventory inventory = read.inventory().orElseThrow();
        Head head = inventory.heads().get(0);
        Shaft shaft = inventory.shafts().get(0);
        Grip grip = inventory.grips().get(0);
        assertThat(Stream.of(head.angles().loftDeg(), head.angles().lieDeg(), head.angles().faceDeg(), head.massG(),
            head.seat().orElseThrow().toGroundMm(), head.mass().cgUpMm(), shaft.massG(), shaft.balanceMm(), shaft.torqueDeg(),
            grip.massG(), grip.cgMm())).extracting(each -> each.map(Reading::taken)).containsOnly(Optional.of(TAKEN));
        assertThat(shaft.frequencies()).extracting(FrequencyReading::cpm).extracting(Reading::taken)
            .as("the further one has a row of its own").containsExactly(TAKEN, Taken.UNRECORDED);
        assertThat(inventory.heads().get(1).massG().map(Reading::taken)).as("a blank row says nothing")
            .contains(Taken.UNRECORDED);
    }

    @Test
    void itComesBackFromTheRows() {
        SheetRead sheets = taken().readSheets();
        assertThat(InventoryOfRows.read(sheets.rows().stream().map(RecordedRow::of).toList(), false).inventory())
            .isEqualTo(sheets.read().inventory());
        SheetRow head = sheets.rows().get(0);
        assertThat(head.readings()).extracting(read -> read.reading().taken()).containsOnly(TAKEN);
        assertThat(head.facts()).doesNotContainKeys("measured_on", "measured_by", "gauge");
        assertThat(SheetRow.joined(head.kind(), head.naming(), head.facts(), head.readings(), head.extra())).isEqualTo(head);
    }

    @ParameterizedTest
    @EnumSource(value = StockKind.class, names = {"HEADS", "SHAFTS", "GRIPS"})
    void aDayIsADay(StockKind kind) {
        assertThat(Workshop.in(folder).set(kind, 0, "measured_on", "3.5.2026").faults()).containsExactly(
            "%s line 2, column measured_on: \"3.5.2026\" is not a date; expected year-month-day, such as 2026-05-03"
                .formatted(kind.fileName()));
    }
}
