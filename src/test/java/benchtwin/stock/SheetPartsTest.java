package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import benchtwin.measure.Reading;
import benchtwin.measure.Taken;
import benchtwin.samples.SampleFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A row taken apart into readings and facts, and put together. */
class SheetPartsTest {

    private static final List<SheetRow> SAMPLE =
        InventoryReader.readSheets(StockFiles.inFolder(SampleFolder.PATH), false).rows();

    private static SheetRow head(String... cells) {
        Map<String, String> all = new LinkedHashMap<>(Map.of("tag", "H-1", "model", "Alder", "category", "driver", "hand", "right",
            "adjust", "bend"));
        for (String cell : cells) {
            all.put(cell.substring(0, cell.indexOf('=')), cell.substring(cell.indexOf('=') + 1));
        }
        return new SheetRow(StockKind.HEADS, all, Map.of());
    }

    private static SheetRow joinedAgain(SheetRow row) {
        return SheetRow.joined(row.kind(), row.naming(), row.facts(), row.readings(), row.extra());
    }

    @Test
    void anglesCarryHowTheyWereReadAndMassWhatWasOnIt() {
        SheetRow head = head("loft_deg=9.3", "bounce_deg=5", "reading=square", "read_at_setting=3/5", "mass_g=198.5",
            "weighed_with=screw", "place=drawer 3");
        assertThat(head.readings()).containsExactly(
            new SheetReading("loft_deg", Reading.of(9.3, 0.3), "degrees", Map.of("reading", "square", "read_at_setting", "3/5")),
            new SheetReading("bounce_deg", Reading.of(5, 0.2), "degrees", Map.of("reading", "square")),
            new SheetReading("mass_g", Reading.of(198.5, 0.1), "grams", Map.of("weighed_with", "screw")));
        assertThat(head.facts()).containsExactly(Map.entry("model", "Alder"), Map.entry("category", "driver"),
            Map.entry("hand", "right"), Map.entry("adjust", "bend"), Map.entry("place", "drawer 3"));
    }

    @Test
    void aBlankConditionIsNoneAndOneWithoutItsReadingIsAFact() {
        SheetRow unsaid = head("mass_g=198.5");
        assertThat(unsaid.readings().get(0).condition()).isEmpty();
        assertThat(joinedAgain(unsaid)).isEqualTo(unsaid);
        SheetRow unread = head("weighed_with=bare", "reading=soled");
        assertThat(unread.readings()).isEmpty();
        assertThat(unread.facts()).containsEntry("weighed_with", "bare").containsEntry("reading", "soled");
        assertThat(joinedAgain(unread)).isEqualTo(unread);
        assertThat(SheetRow.joined(StockKind.HEADS, unread.naming(), unread.facts(), unsaid.readings(), Map.of()))
            .as("weighed anew, and nobody noted with what").isEqualTo(head("mass_g=198.5", "reading=soled"));
    }

    @Test
    void aClubsReadingsCarryItsDayAndItsSettingIsAFactToo() {
        SheetRow club = SAMPLE.stream().filter(row -> row.kind() == StockKind.CLUBS).findFirst().orElseThrow();
        assertThat(club.cells()).containsEntry("tag", "OAKES-DR").containsEntry("measured_on", "2025-03-12");
        Taken taken = new Taken(Optional.of(LocalDate.of(2025, 3, 12)), Optional.of("bench 1"), Optional.of("Jo"));
        assertThat(club.readings()).extracting(SheetReading::column).containsExactly("loft_deg", "lie_deg", "face_deg",
            "length_mm", "swing_weight_points", "frequency_cpm", "total_mass_g");
        assertThat(club.readings()).allSatisfy(read -> assertThat(read.reading().taken()).isEqualTo(taken));
        assertThat(club.readings().get(4)).isEqualTo(new SheetReading("swing_weight_points", new Reading(32.2, 0.2, taken),
            "points above A0", Map.of()));
        assertThat(club.readings().get(5).condition()).containsExactly(Map.entry("clamp_mm", "127"),
            Map.entry("over_grip", "yes"));
        assertThat(club.readings().get(0).condition()).containsEntry("setting", "1/1");
        assertThat(club.facts()).containsEntry("setting", "1/1").containsEntry("state", "in play")
            .doesNotContainKeys("reading", "length_method", "clamp_mm", "measured_on", "measured_by", "gauge", "tag");
    }

    /** The page of the files says what a reading is trusted to. */
    @ParameterizedTest
    @CsvSource({"driver, , loft_deg, loft of a wood, 0.3°", "iron, , loft_deg, loft of an iron, 0.2°",
        "hybrid, edge, loft_deg, loft of an iron, 0.2°", "hybrid, soled, loft_deg, loft of a wood, 0.3°",
        "driver, , lie_deg, lie, 0.2°", "fairway, , face_deg, face angle, 0.4°", "wedge, , bounce_deg, bounce, 0.2°",
        "iron, , offset_mm, offset, 0.3 mm", "iron, , cg_up_mm, centre of gravity, 1 mm",
        "driver, , transverse_inertia_g_cm2, transverse inertia, 150 g·cm²",
        "driver, , vertical_inertia_g_cm2, vertical inertia, 240 g·cm²", "driver, , volume_cm3, volume, 2 cm³",
        "driver, , ct_us, characteristic time, 3 µs", "driver, , heel_toe_mm, outside dimension, 0.5 mm",
        "putter, , neck_mm, outside dimension, 0.5 mm", "iron, , bore_depth_mm, bore depth, 0.3 mm", "iron, , mass_g, mass, 0.1 g"})
    void trustedToWhatThePageSays(String category, String reading, String column, String named, String page) throws IOException {
        SheetRow head = reading == null ? head("category=" + category, column + "=10")
            : head("category=" + category, "reading=" + reading, column + "=10");
        String line = Files.readAllLines(Path.of("docs/files.md")).stream()
            .filter(row -> row.startsWith("| ") && row.contains(named) && row.split("\\|").length == 3).findFirst().orElseThrow();
        String trusted = line.split("\\|")[2].strip();
        assertThat(trusted).isEqualTo(page);
        assertThat(head.readings().get(0).reading().standardUncertainty())
            .isEqualTo(Double.parseDouble(trusted.replaceAll("[^0-9.].*", "")));
    }

    /** Nothing is declared under a name that no row has, and what is no number is no reading. */
    @ParameterizedTest
    @EnumSource(StockKind.class)
    void theDeclaredColumnsAreTheKinds(StockKind kind) {
        List<String> names = kind.columns().stream().map(Column::recordName).toList();
        assertThat(names).containsAll(MeasuredColumns.names(kind));
        MeasuredColumns.names(kind).forEach(column -> {
            assertThat(names).containsAll(MeasuredColumns.condition(kind, column));
            assertThat(Unit.of(column)).isNotIn(Unit.NONE, Unit.INCHES);
        });
        assertThat(MeasuredColumns.names(kind).isEmpty()).isEqualTo(!kind.isStock() || kind == StockKind.WEIGHTS);
    }

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 10);
    }

    /** Every row of the sample workshop, as it is and with cells struck out at random. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void thePartsOfARowGiveItBack(int seed) {
        Random random = new Random(seed);
        int rows = 0;
        for (SheetRow row : SAMPLE) {
            Map<String, String> cells = new LinkedHashMap<>(row.cells());
            cells.keySet().removeIf(column -> !row.naming().containsKey(column) && random.nextInt(4) == 0);
            SheetRow struck = new SheetRow(row.kind(), cells, Map.of("Shelf", "a"));
            for (SheetRow each : List.of(row, struck)) {
                assertThat(joinedAgain(each)).as("seed %d", seed).isEqualTo(each);
                assertThat(each.facts().keySet()).noneMatch(MeasuredColumns.names(row.kind())::contains);
                rows++;
            }
        }
        assertThat(rows).isGreaterThan(1000);
    }

    @Test
    void readingsOfDifferentDaysGoTogetherButNotReadingsOfOneKindReadApart() {
        SheetRow head = head("loft_deg=9.3", "lie_deg=58", "reading=square");
        List<SheetReading> readings = head.readings();
        SheetReading later = new SheetReading("lie_deg", new Reading(58.1, 0.2, Taken.on(LocalDate.of(2026, 5, 3))), "degrees",
            readings.get(1).condition());
        assertThat(SheetRow.joined(StockKind.HEADS, head.naming(), head.facts(), List.of(readings.get(0), later), Map.of()))
            .isEqualTo(head("loft_deg=9.3", "lie_deg=58.1", "reading=square"));
        SheetReading otherwise = new SheetReading("lie_deg", later.reading(), "degrees", Map.of("reading", "soled"));
        assertThatIllegalArgumentException().isThrownBy(() -> SheetRow.joined(StockKind.HEADS, head.naming(), head.facts(),
            List.of(readings.get(0), otherwise), Map.of()))
            .withMessage("lie_deg was read with reading soled, another value with square");
        assertThatIllegalArgumentException().isThrownBy(() -> head("mass_g=heavy").readings())
            .withMessage("mass_g of heads H-1 is \"heavy\", which is no plain number");
    }
}
