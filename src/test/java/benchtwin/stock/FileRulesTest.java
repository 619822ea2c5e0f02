package benchtwin.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import benchtwin.club.Inventory;
import benchtwin.club.Weight;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What any of the files may look like, and what each is told that cannot be read. Shown on weights.csv, the shortest. */
class FileRulesTest {

    private static final String HEADER = "tag,port,mass_g,count\n";
    private static final String CSV = "a text file saved as CSV (UTF-8)";

    @TempDir
    Path folder;

    private InventoryRead read(byte[] bytes) {
        Workshop.emptyIn(folder).write(StockKind.WEIGHTS, bytes);
        return InventoryReader.readFolder(folder, false);
    }

    private InventoryRead read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private List<Weight> weights(String text) {
        InventoryRead read = read(text);
        assertThat(read.faults()).extracting(Fault::text).isEmpty();
        return read.inventory().orElseThrow().weights();
    }

    private List<String> faults(String text) {
        return texts(read(text));
    }

    private static List<String> texts(InventoryRead read) {
        assertThat(read.inventory()).isEmpty();
        return read.faults().stream().map(Fault::text).toList();
    }

    @Test
    void aByteOrderMarkIsFine() {
        assertThat(weights("\uFEFF" + HEADER + "W,P,7,1\n")).extracting(Weight::tag).containsExactly("W");
    }

    @Test
    void anyLineEndWillDo() {
        List<Weight> weights = weights(HEADER + "W,P,7,1\nX,P,8,2");
        assertThat(weights).hasSize(2);
        assertThat(weights((HEADER + "W,P,7,1\nX,P,8,2").replace("\n", "\r\n"))).isEqualTo(weights);
        assertThat(weights((HEADER + "W,P,7,1\nX,P,8,2").replace("\n", "\r"))).isEqualTo(weights);
    }

    @Test
    void headerNamesMayBeCapitalSpacedQuotedAndInAnyOrder() {
        assertThat(weights(" Mass G ,COUNT,\"tag\", port \n7.5,2,W,P\n")).singleElement().satisfies(weight -> {
            assertThat(weight.massG()).isEqualTo(7.5);
            assertThat(weight.count()).isEqualTo(2);
        });
    }

    @Test
    void semicolonsAndTabsBringDecimalCommas() {
        assertThat(weights("tag;port;mass_g;count\nW;P;7,5;2\n").get(0).massG()).isEqualTo(7.5);
        assertThat(weights("tag\tport\tmass_g\tcount\nW\tP\t7,5\t2\n").get(0).massG()).isEqualTo(7.5);
        assertThat(weights("tag;port;mass_g;count\nW;P;7.5;2\n").get(0).massG()).isEqualTo(7.5);
    }

    @Test
    void separatorsInsideQuotesDoNotCount() {
        assertThat(weights("tag;port;mass_g;count;\"a,b,c,d,e,f\"\nW;P;7,5;2;x\n").get(0).keeping().extra())
            .isEqualTo(Map.of("a,b,c,d,e,f", "x"));
    }

    @Test
    void blankLinesAndTrailingEmptyColumnsAreSkipped() {
        assertThat(weights("\n" + "tag,port,mass_g,count,,\n\nW,P,7,1,,\n,,,,,\n   \n")).hasSize(1);
    }

    @Test
    void aCellUnderNoNameIsAFault() {
        assertThat(faults("tag,port,mass_g,count,\nW,P,7,1,spare\n")).containsExactly(
            "weights.csv line 2: \"spare\" stands in column 5, which has no name; expected a name for it in the header");
    }

    @Test
    void quotedCellsKeepSeparatorsQuotesAndLineBreaks() {
        Weight weight = weights("tag,port,mass_g,count,note\n\"W,1\",P,\"7\" , 1,\"two\nlines, \"\"quoted\"\"\"\n").get(0);
        assertThat(weight.tag()).isEqualTo("W,1");
        assertThat(weight.keeping().note()).contains("two\nlines, \"quoted\"");
    }

    @Test
    void aFaultNamesTheLineItsRowStartsOn() {
        String text = "\"tag\",port,mass_g,count,note\n\nW,P,7,1,\"a\nb\nc\"\nX,P,heavy,1,\"d\ne\"\nY,P,7,many,\n";
        for (String lineEnd : List.of("\n", "\r\n", "\r")) {
            assertThat(faults(text.replace("\n", lineEnd))).containsExactly(
                "weights.csv line 6, column mass_g: \"heavy\" is not a number; expected grams, such as 7",
                "weights.csv line 8, column count: \"many\" is not a number; expected a number, such as 3");
        }
    }

    @Test
    void rowsOfTheWrongLengthAreFaults() {
        assertThat(faults(HEADER + "W,P,7\nX,P,7,1,9\n")).containsExactly(
            "weights.csv line 2: has 3 cells; expected 4, one for each column of the header",
            "weights.csv line 3: has 5 cells; expected 4, one for each column of the header; a cell with a comma in it "
                + "needs quotes");
    }

    @Test
    void aDecimalCommaBetweenCommasIsAFault() {
        assertThat(faults(HEADER + "W,P,\"7,5\",1\n")).containsExactly("weights.csv line 2, column mass_g: 7,5 is written "
            + "with a comma, which is a decimal comma only in a file separated by semicolons or tabs; expected grams, such as 7");
    }

    @Test
    void thousandsSeparatorsAreFaults() {
        for (String number : List.of("1.234,5", "1,234,567", "1 234", "1'234")) {
            assertThat(faults("tag;port;mass_g;count\nW;P;%s;1\n".formatted(number))).singleElement().asString()
                .contains("is written with a thousands separator; expected grams, such as 7");
        }
    }

    @Test
    void onlyFiniteNumbersAreNumbers() {
        assertThat(faults(HEADER + "A,P,NaN,1\nB,P,Infinity,1\nC,P,1e400,1\nD,P,0x10,1\nE,P,7f,1\nF,P,1/2,1\n"))
            .containsExactly(
                "weights.csv line 2, column mass_g: \"NaN\" is not a number; expected grams, such as 7",
                "weights.csv line 3, column mass_g: \"Infinity\" is not a number; expected grams, such as 7",
                "weights.csv line 4, column mass_g: \"1e400\" is too large for a number; expected grams, such as 7",
                "weights.csv line 5, column mass_g: \"0x10\" is not a number; expected grams, such as 7",
                "weights.csv line 6, column mass_g: \"7f\" is not a number; expected grams, such as 7",
                "weights.csv line 7, column mass_g: \"1/2\" is not a number; expected grams, such as 7");
    }

    @Test
    void aLongCellIsShownShortAndAnEndlessOneRefused() {
        assertThat(faults(HEADER + "W,P," + "9".repeat(4000) + ",1\n")).containsExactly(
            "weights.csv line 2, column mass_g: \"" + "9".repeat(60) + "…\" is not a number; expected grams, such as 7");
        assertThat(faults(HEADER + "W,P," + "9".repeat(1_000_000) + ",1\n")).containsExactly(
            "weights.csv line 2: has a cell of 1000000 characters; expected at most 4000; a quote may be missing");
        assertThat(faults("x".repeat(1_000_000) + "\n1\n")).containsExactly("weights.csv line 1: has a column name of more "
            + "than 200 characters; expected a header line, such as tag,port,mass_g,count");
    }

    @Test
    void aDuplicateColumnIsAFault() {
        assertThat(faults("tag,port,mass_g,Mass G,count\nW,P,7,7,1\n")).containsExactly("weights.csv line 1, column mass_g: "
            + "stands twice in the header, as columns 3 and 4; expected every column once");
        assertThat(faults("tag,port,mass_g,count,shelf,Shelf\nW,P,7,1,a,b\n")).containsExactly(
            "weights.csv line 1, column shelf: stands twice in the header, as columns 5 and 6; expected every column once");
    }

    @Test
    void aMissingColumnIsAFaultThatListsThoseFoundAndGuesses() {
        assertThat(faults("tag,port,masss_g,count\nW,P,7,1\n")).containsExactly("weights.csv line 1, column mass_g: is "
            + "missing from the header; expected it beside those found: tag, port, masss_g, count; is \"masss_g\" meant for it?");
    }

    @Test
    void aFileUnderAnotherKindsNameIsToldSo() {
        String heads = Workshop.in(folder).text(StockKind.HEADS);
        assertThat(faults(heads)).hasSize(1).allSatisfy(
            text -> assertThat(text).endsWith("; the columns look like those of heads.csv"));
    }

    @Test
    void anUnclosedQuoteEndsTheReading() {
        assertThat(faults(HEADER + "W,P,7,1\n\"X,P,7,1\nY,P,7,1\n")).containsExactly("weights.csv line 3: has a quote that "
            + "is never closed, or text after a closing quote; nothing after it was read; expected quotes in pairs around a "
            + "cell, and a quote inside one written twice");
        assertThat(faults(HEADER + "\"W\"x,P,7,1\n")).singleElement().asString().startsWith(
            "weights.csv line 2: has a quote that is never closed, or text after a closing quote");
    }

    @Test
    void anEmptyFileIsAFault() {
        for (String text : List.of("", "\uFEFF", "\n\n", ",,,\n")) {
            assertThat(faults(text)).containsExactly(
                "weights.csv: is empty; expected a header line with the columns tag, port, mass_g, count");
        }
    }

    @Test
    void aHeaderAloneIsAWarning() {
        InventoryRead read = read(HEADER);
        assertThat(read.inventory()).isPresent();
        assertThat(read.warnings()).extracting(Fault::text)
            .containsExactly("weights.csv: has a header and no rows; expected a row for each part");
    }

    @Test
    void bytesThatAreNotUtf8AreOneFaultWithTheirLine() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write((HEADER + "W,P,7,1\r\nX,Gr").getBytes(StandardCharsets.UTF_8));
        bytes.write(0xFC);
        bytes.write("n,7,1\n".getBytes(StandardCharsets.UTF_8));
        assertThat(texts(read(bytes.toByteArray()))).containsExactly(
            "weights.csv line 3: holds a byte that is not UTF-8 (hex FC); expected " + CSV);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"504B0304000001 | is a workbook or archive, not text", "504B0506000000 | is an empty archive, not text",
        "D0CF11E0A1B11AE100 | is a workbook or document of an older kind, not text", "1F8B0800 | is a compressed file (gzip), not text",
        "255044462D312E37 | is a PDF, not a table", "89504E470D0A1A0A0000 | is a picture (PNG), not a table",
        "FFD8FFE0 | is a picture (JPEG), not a table", "474946383961 | is a picture (GIF), not a table",
        "FFFE000074000000 | is saved as UTF-32", "FFFE740061006700 | is saved as UTF-16", "FEFF007400610067 | is saved as UTF-16",
        "740061006700 | is saved as UTF-16", "007400610067 | is saved as UTF-16"})
    void whatIsNoTextIsOneFaultThatSaysWhatItIsAndWhatToDo(String hex, String words) {
        assertThat(texts(read(HexFormat.of().parseHex(hex)))).containsExactly("weights.csv: " + words + "; expected " + CSV
            + ": open it in the program it was made with and save the table as CSV");
    }

    @Test
    void binaryFilesAreOneFault() {
        assertThat(faults(HEADER + "W,P\0,7,1\n")).containsExactly(
            "weights.csv line 2: holds a zero byte; expected " + CSV + ", not a binary file");
        assertThat(faults(HEADER + "W,P\u0001,7,1\n")).containsExactly(
            "weights.csv line 2: holds a control character (hex 01); expected " + CSV + ", not a binary file");
    }

    @Test
    void aLineOfEndlessSeparatorsIsOneFault() {
        assertThat(faults(HEADER + ",".repeat(5001) + "\n")).containsExactly(
            "weights.csv line 2: holds more than 5000 separators; expected one cell for each column");
    }

    @Test
    void missingFilesFoldersAndUnreadableFiles() throws IOException {
        Path absent = folder.resolve("shafts.csv");
        assertThat(faultsOf(absent)).containsExactly("shafts.csv: is not there; expected a CSV file at " + absent);
        assertThat(faultsOf(Files.createDirectory(folder.resolve("drawer")))).containsExactly(
            "drawer: is a folder; expected a CSV file");
    }

    @Test
    void aFileThatCannotBeReadIsAFault() {
        Path memory = Path.of("/proc/self/mem");    // an ordinary file to look at, whose first byte cannot be read
        assumeTrue(Files.isRegularFile(memory) && Files.isReadable(memory));
        assertThat(faultsOf(memory)).containsExactly(
            "mem: cannot be read; expected a file this user may open and a disk that answers");
    }

    @Test
    void aDeviceIsNotRead() {
        Path zeros = Path.of("/dev/zero");          // endless: reading it would never come back
        assumeTrue(Files.exists(zeros));
        assertThat(faultsOf(zeros)).containsExactly("zero: is not a plain file; expected a CSV file");
    }

    @Test
    void aFileOverTheLimitIsRefusedBeforeItIsRead() throws IOException {
        Path large = folder.resolve("shafts.csv");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(300L * 1024 * 1024);     // sparse: were it read, its zero bytes would be the fault
        }
        assertThat(faultsOf(large)).containsExactly(
            "shafts.csv: is too large (300 MiB) and was not read; expected at most 64 MiB");
    }

    @Test
    void theLimitItselfIsStillRead() throws IOException {
        Path large = folder.resolve("shafts.csv");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(FileText.LARGEST_BYTES);
        }
        assertThat(faultsOf(large)).singleElement().asString().contains("holds a zero byte");
    }

    @Test
    void twoFilesOfOneNameAreToldApartByTheirPaths() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other")).resolve("weights.csv");
        Files.writeString(other, "tag,model\n");
        Files.writeString(folder.resolve("weights.csv"), HEADER + "W,P,x,1\n");
        InventoryRead read = InventoryReader.read(StockFiles.of(Map.of(StockKind.WEIGHTS, folder.resolve("weights.csv"),
            StockKind.GRIPS, other)), false);
        assertThat(read.warnings()).singleElement().satisfies(fault -> assertThat(fault.file()).isEqualTo(other.toString()));
        assertThat(read.faults()).singleElement()
            .satisfies(fault -> assertThat(fault.file()).isEqualTo(folder.resolve("weights.csv").toString()));
    }

    @Test
    void noFilesAreAnEmptyWorkshop() {
        assertThat(InventoryReader.readFolder(folder, false).inventory()).isEqualTo(Optional.of(Inventory.EMPTY));
    }

    private static List<String> faultsOf(Path shafts) {
        return texts(InventoryReader.read(StockFiles.of(Map.of(StockKind.SHAFTS, shafts)), false));
    }
}
