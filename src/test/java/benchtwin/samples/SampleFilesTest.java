package benchtwin.samples;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.stock.Fault;
import benchtwin.stock.StockKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The files of the sample workshop: that they are all there, read without a fault, and are what the generator writes. */
class SampleFilesTest {

    /** Columns of clubs.csv that rest on the program's mechanics; their values are held by {@link SampleClubsTest}. */
    private static final Set<String> COMPUTED = Set.of("loft_deg", "lie_deg", "face_deg", "bounce_deg", "length_in",
        "swing_weight", "frequency_cpm", "total_mass_g");

    @Test
    void theFolderHoldsTheStockFilesAndNothingElse() throws IOException {
        try (Stream<Path> files = Files.list(SampleFolder.PATH)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrderElementsOf(
                Arrays.stream(StockKind.values()).map(StockKind::fileName).toList());
        }
    }

    @Test
    void everyRowIsReadWithoutAFaultAndEveryColumnIsKnown() {
        assertThat(SampleFolder.read().faults()).isEmpty();
        assertThat(SampleFolder.read().unknownColumns().values()).allSatisfy(columns -> assertThat(columns).isEmpty());
        assertThat(SampleFolder.read().rowsRead()).as("all but the two files of wishes and the resins")
            .hasSize(StockKind.values().length - 3);
    }

    @Test
    void onlyTheMisfiledHeadDrawsAWarning() throws IOException {
        List<Fault> warnings = SampleFolder.read().warnings();
        assertThat(warnings).hasSize(1);
        assertThat(warnings.get(0).file()).isEqualTo("heads.csv");
        assertThat(warnings.get(0).column()).hasValue("volume_cm3");
        CSVRecord misfiled = rows(SampleFolder.PATH.resolve("heads.csv")).get((int) warnings.get(0).line() - 2);
        assertThat(misfiled.get("category")).isEqualTo("driver");
        assertThat(misfiled.get("place")).startsWith("fairway drawer");
    }

    @ParameterizedTest
    @ValueSource(strings = {"heads.csv", "shafts.csv", "grips.csv", "sleeves.csv", "sleeve-settings.csv", "weights.csv",
        "frequencies.csv", "set-targets.csv", "lines.csv", "resins.csv"})
    void thePartsAreByteForByteWhatTheGeneratorWrites(String file, @TempDir Path folder) throws IOException {
        SampleWorkshop.committed().write(folder);
        assertThat(folder.resolve(file)).hasSameTextualContentAs(SampleFolder.PATH.resolve(file));
    }

    @Test
    void theClubsAreTheGeneratorsButForWhatIsComputed(@TempDir Path folder) throws IOException {
        SampleWorkshop.committed().write(folder);
        assertThat(withoutComputed(SampleFolder.PATH.resolve("clubs.csv")))
            .isEqualTo(withoutComputed(folder.resolve("clubs.csv")));
    }

    @Test
    void noTagIsUsedTwiceInTheWholeWorkshop() throws IOException {
        List<String> tags = new ArrayList<>();
        for (String file : List.of("heads.csv", "shafts.csv", "grips.csv", "weights.csv", "sleeves.csv")) {
            rows(SampleFolder.PATH.resolve(file)).forEach(row -> tags.add(row.get(0)));
        }
        Set<String> clubs = new HashSet<>();
        rows(SampleFolder.PATH.resolve("clubs.csv")).forEach(row -> clubs.add(row.get("tag")));
        tags.addAll(clubs);
        assertThat(tags).hasSizeGreaterThan(500).doesNotHaveDuplicates();
    }

    @Test
    void someLengthsAreWrittenAsFractionsAndSomeAsDecimals() throws IOException {
        List<String> lengths = rows(SampleFolder.PATH.resolve("clubs.csv")).stream()
            .map(row -> row.get("length_in")).toList();
        assertThat(lengths).anyMatch(length -> length.contains("/")).anyMatch(length -> length.contains("."));
    }

    private static List<Map<String, String>> withoutComputed(Path file) throws IOException {
        return rows(file).stream().map(row -> {
            Map<String, String> cells = row.toMap();
            cells.keySet().removeAll(COMPUTED);
            return cells;
        }).toList();
    }

    private static List<CSVRecord> rows(Path file) throws IOException {
        try (CSVParser parser = CSVParser.parse(Files.newBufferedReader(file),
            CSVFormat.Builder.create().setHeader().setSkipHeaderRecord(true).get())) {
            return parser.getRecords();
        }
    }
}
