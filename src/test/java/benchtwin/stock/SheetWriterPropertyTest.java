package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import benchtwin.samples.SampleFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rows that are written are read again as they were. */
class SheetWriterPropertyTest {

    private static final List<String> HOSTILE = List.of("=1+1", "=cmd|' /C x'!A0", "+49 170", "-1+2", "@SUM(A1)", "'=1+1", "''",
        "'tis", "\"quoted\"", "\"", "a,b;c\td", "two\nlines", "two\r\nlines\rmore", "=HYPERLINK(\"x\";\"y\")", "-0.5", "+5", "1e400",
        "\uD83D\uDE00 \uD83C\uDFCC\uFE0F", "\u05D3\u05E8\u05D9\u05D9\u05D1\u05E8", "\u202Egnp.exe", "a\u2028b", "\uFEFF", "'; DROP TABLE heads; --",
        "3/5", "2026-05-03", "<b>&amp;</b>", "%s%n", "\\", "\uFF1D1+1", "x".repeat(4000), "=" + "y".repeat(3999));
    private static final Set<String> FREE_TEXT = Set.of("model", "grind", "reserved_for", "place", "note", "orientation",
        "made_for_number", "measured_by", "gauge");

    @TempDir
    Path folder;

    private List<SheetRow> readBack(List<SheetRow> rows) throws IOException {
        for (StockKind kind : StockKind.values()) {
            List<SheetRow> ofKind = rows.stream().filter(row -> row.kind() == kind).toList();
            Files.deleteIfExists(folder.resolve(kind.fileName()));
            if (!ofKind.isEmpty()) {
                Files.writeString(folder.resolve(kind.fileName()), SheetWriter.text(kind, ofKind));
            }
        }
        SheetRead read = InventoryReader.readSheets(StockFiles.inFolder(folder), false);
        assertThat(read.read().faults()).extracting(Fault::text).isEmpty();
        return read.rows();
    }

    private static List<SheetRow> sample() {
        return InventoryReader.readSheets(StockFiles.inFolder(SampleFolder.PATH), false).rows();
    }

    @Test
    void theSampleWorkshopIsReadAgainAsItWas() throws IOException {
        assertThat(readBack(sample())).isEqualTo(sample());
    }

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 10);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void hostileTextComesBackAndIsNoFormula(int seed) throws IOException {
        Random random = new Random(seed);
        List<SheetRow> hostile = new ArrayList<>();
        for (SheetRow row : sample()) {
            Map<String, String> cells = new LinkedHashMap<>(row.cells());
            for (Column column : row.kind().columns()) {
                if (FREE_TEXT.contains(column.name()) && random.nextBoolean()) {
                    cells.put(column.recordName(), hostile(random).strip());
                }
            }
            cells.computeIfPresent("player", (column, player) -> "=" + player + "\"");
            Map<String, String> extra = new LinkedHashMap<>();
            for (String name : List.of("=Shelf", "two\nlines", "'-x", "a;b,c", "\uD83D\uDE00")) {
                if (random.nextInt(5) == 0) {
                    extra.put(name, random.nextInt(4) == 0 ? " " + HOSTILE.get(random.nextInt(20)) + "\u2003" : hostile(random));
                }
            }
            hostile.add(new SheetRow(row.kind(), cells, extra));
        }
        hostile.add(new SheetRow(StockKind.WEIGHTS, Map.of("tag", "=W\"1", "port", "'@P", "mass_g", "7", "count", "3"), Map.of()));
        hostile.sort((one, other) -> one.kind().compareTo(other.kind()));
        assertThat(readBack(hostile)).as("seed %d", seed).isEqualTo(hostile);
        for (StockKind kind : StockKind.values()) {
            Path file = folder.resolve(kind.fileName());
            if (Files.exists(file)) {
                assertThat(Arrays.stream(Files.readString(file).split("(?<=[\n])"))).allSatisfy(
                    line -> assertThat(line).doesNotContainPattern("(?:^|,)\"?[=@]"));
            }
        }
    }

    private static String hostile(Random random) {
        return HOSTILE.get(random.nextInt(HOSTILE.size()));
    }

    @Test
    void onlyColumnsThatAreFilledAndThoseThatMustBeThere() {
        List<SheetRow> rows = List.of(
            new SheetRow(StockKind.GRIPS, Map.of("tag", "G-1", "model", "Moss", "length_mm", "266.7"), Map.of("Shop", "3")),
            new SheetRow(StockKind.GRIPS, Map.of("tag", "G-2", "model", "Fern, wide", "note", "=1"), Map.of("shop", "=4", "Own", "x")));
        assertThat(SheetWriter.text(StockKind.GRIPS, rows)).isEqualTo("""
            tag,model,length_mm,note,Shop,Own
            G-1,Moss,266.7,,3,
            G-2,"Fern, wide",,'=1,'=4,x
            """);
        assertThat(SheetWriter.text(StockKind.SHAFTS, List.of()))
            .isEqualTo("tag,model,material,meant_for,raw_length_mm,tip_mm,tip_kind,butt_mm\n");
    }

    @Test
    void whatNoFileCanHoldIsRefused() {
        for (String odd : List.of("bell \u0007", "half \uD83D", "z".repeat(4001))) {
            SheetRow row = new SheetRow(StockKind.GRIPS, Map.of("tag", "G-1", "model", odd), Map.of());
            assertThatIllegalArgumentException().isThrownBy(() -> SheetWriter.text(StockKind.GRIPS, List.of(row)))
                .withMessageStartingWith("grips G-1 holds a text no file can");
        }
        assertThatIllegalArgumentException().isThrownBy(() -> SheetWriter.text(StockKind.HEADS,
            List.of(new SheetRow(StockKind.GRIPS, Map.of("tag", "G-1"), Map.of()))))
            .withMessage("a row of grips.csv among those of heads.csv");
    }

    /** By hand in a spreadsheet as well as by this program. */
    @Test
    void theOrdinaryReaderTakesTheApostropheOff() {
        Workshop workshop = Workshop.in(folder).set(StockKind.HEADS, 0, "note", "'=SUM(A1)").set(StockKind.HEADS, 0, "place", "'tis")
            .set(StockKind.HEADS, 0, "'@Shelf", "''+3x");
        assertThat(workshop.read().inventory().orElseThrow().heads().get(0).keeping()).satisfies(keeping -> {
            assertThat(keeping.note()).contains("=SUM(A1)");
            assertThat(keeping.place()).contains("'tis");
            assertThat(keeping.extra()).containsExactly(Map.entry("@Shelf", "'+3x"));
        });
        assertThat(Workshop.in(folder).set(StockKind.HEADS, 0, "face_deg", "'-0.5").faults()).containsExactly(
            "heads.csv line 2, column face_deg: \"'-0.5\" is not a number; expected degrees, such as -0.5");
    }
}
