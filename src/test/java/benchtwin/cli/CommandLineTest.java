package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands on the sample workshop, as a technician types them. */
class CommandLineTest {

    private static final String STOCK = "inventory-samples";

    private record Ran(int status, String out, String err) {
    }

    private static Ran run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Main.run(new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8), args);
        Ran ran = new Ran(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        assertThat(ran.out() + ran.err()).as("no stack trace reaches a user").doesNotContain("\tat ", "Exception");
        return ran;
    }

    private static Ran match(String... more) {
        List<String> args = new ArrayList<>(List.of("match", "--stock", STOCK));
        args.addAll(Arrays.asList(more));
        return run(args.toArray(String[]::new));
    }

    private static JsonNode json(Ran ran) throws IOException {
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void theCrackedDriverFindsItsTwin() {
        Ran ran = match("--club", "OAKES-DR", "--why");
        assertThat(ran.status()).isEqualTo(Main.DONE);
        assertThat(ran.out()).contains("1  H-110", "Try these three: H-110", "Set the outer ring at 4 of 6, the inner ring at "
            + "4 of 5.", "Below the line", "promised to", "proven", "3 cracked", "Why in this order", "Caution: ");
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= Page.WIDTH);
    }

    @Test
    void plainOutputIsAscii() {
        Ran ran = match("--club", "OAKES-DR", "--plain", "--why");
        assertThat(ran.out().chars()).allMatch(c -> c < 128);
        assertThat(ran.out()).contains("[-----*-----]");
    }

    @Test
    void theJsonHasItsPromisedNames() throws IOException {
        JsonNode answer = json(match("--club", "OAKES-DR", "--json", "--top", "3"));
        assertThat(answer.fieldNames()).toIterable().contains("club", "target", "results", "belowTheLine", "ruledOut",
            "considered", "proven", "version");
        assertThat(answer.get("results")).hasSize(3);
        assertThat(answer.get("proven").asBoolean()).isTrue();
        JsonNode first = answer.get("results").get(0);
        assertThat(first.fieldNames()).toIterable().contains("rank", "head", "shaft", "plan", "predicted", "difference",
            "cost", "miss", "firstTimeRight", "outOfTolerance", "defaultsUsed", "tiedWith");
        assertThat(first.get("plan").fieldNames()).toIterable().contains("steps", "minutes", "readyMinutes",
            "permanentSteps");
        assertThat(first.get("predicted").fieldNames()).toIterable().contains("loftDeg", "lieDeg", "lengthMm",
            "frequencyCpm", "totalMassG", "swingWeightPoints", "swingWeightText", "moiKgCm2");
        double miss = first.get("miss").asDouble();
        assertThat(first.get("cost").asDouble()).isGreaterThan(miss * miss);
        assertThat(answer.get("belowTheLine").get(0).get("reason").asText()).startsWith("promised to ");
    }

    @Test
    void theBrokenShaftIsReplacedBySomethingAlreadyInTheRightSleeve() throws IOException {
        JsonNode first = json(match("--club", "HARKWELL-DR", "--keep", "head", "--json")).get("results").get(0);
        assertThat(first.get("plan").get("steps").findValuesAsText("kind")).doesNotContain("prepare and bond");
        assertThat(first.get("head").asText()).isEqualTo("H-125");
    }

    @Test
    void aBackupComesFromStockWhole() throws IOException {
        JsonNode answer = json(match("--club", "OAKES-DR", "--keep", "none", "--json"));
        assertThat(answer.get("results").get(0).get("shaft").asText()).isNotEqualTo("S-234");
        assertThat(answer.get("considered").asInt()).isGreaterThan(100);
    }

    @Test
    void nothingInsideToleranceShowsTheNearestAndExitsOne() {
        Ran ran = match("--club", "OAKES-DR", "--tolerance", "loft=0.01,lie=0.01,face=0.01,length=0.1 mm");
        assertThat(ran.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(ran.out()).contains("Nothing in stock is inside tolerance; the nearest misses", "Out of tolerance: ");
    }

    @Test
    void aClubWithoutALieSaysSoAndCarriesOn() {
        Ran ran = match("--club", "DUNMARSH-4H", "--top", "1");
        assertThat(ran.status()).isEqualTo(Main.DONE);
        assertThat(ran.out()).contains("lie was never read on club DUNMARSH-4H");
    }

    @Test
    void whatCannotBeReadyInTimeStandsBelowTheLine() throws IOException {
        JsonNode answer = json(match("--club", "TOLVER-3W", "--ready-by", "14:20", "--now", "13:50", "--json"));
        assertThat(answer.get("results")).isEmpty();
        assertThat(answer.get("belowTheLine").findValuesAsText("reason")).contains("cannot be ready in time");
    }

    @Test
    void typedReadingsRankAgain() throws IOException {
        JsonNode answer = json(match("--club", "OAKES-DR", "--json", "--readings", "H-026:loft=9.4,lie=58.3,face=-0.4",
            "--readings", "H-110:loft=9.9,lie=58.9"));
        assertThat(answer.get("results").get(0).get("head").asText()).isEqualTo("H-026");
    }

    @Test
    void aTargetWrittenOutNeedsNoRecord() {
        Ran ran = match("--keep", "none", "--category", "driver", "--hand", "right", "--grip", "G-001", "--other-models",
            "--target", "loft=9.5,lie=58,face=0,length=45 1/4,swing-weight=D3,frequency=250", "--top", "1");
        assertThat(ran.status()).isEqualTo(Main.DONE);
        assertThat(ran.out()).contains("Twin of the target");
    }

    @Test
    void aTypoNamesTheNearestThreeTags() {
        Ran ran = match("--club", "OAKS-DR");
        assertThat(ran.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(ran.err().strip())
            .isEqualTo("benchtwin: no club is tagged OAKS-DR; nearest are OAKES-DR, OAKES-3W, TOLVER-DR");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "match --stock nowhere --club X | is not a folder",
        "match --heads . --club X | is a folder",
        "match --heads nothere.csv --club X | is not there",
        "match | name the club with --club TAG",
        "match --club X | no stock was named",
        "match --stock inventory-samples --club X --target loft=9 | --club takes everything from the record",
        "match --stock inventory-samples --club OAKES-DR --tolerance loft=x | is not a value for loft",
        "match --stock inventory-samples --club OAKES-DR --tolerance loft=0 | is not above 0",
        "match --stock inventory-samples --club OAKES-DR --weight wobble=1 | is not a quantity",
        "match --stock inventory-samples --club OAKES-DR --ready-by 25:99 | is not a time",
        "match --stock inventory-samples --club OAKES-DR --top 0 | expected 1 to 200",
        "match --stock inventory-samples --club OAKES-DR --json --why | leave out --why",
        "match --stock inventory-samples --club OAKES-DR --keep leg | Invalid value",
        "match --stock inventory-samples --club OAKES-DR --readings H-110 | expected a head's tag",
        "predict --stock inventory-samples --head H-110 --shaft S-234 --setting 9/9 | has no setting 9/9",
        "predict --stock inventory-samples --head H-110 --shaft S-234 --bend-lie 1 | takes a sleeve and is never bent",
        "predict --stock inventory-samples --head H-110 --shaft S-234 --length 60 | the longest club these parts make",
        "predict --stock inventory-samples --head H-110 | needs --head TAG and --shaft TAG",
        "predict --stock inventory-samples --build nothere.json | is not a file",
        "frobnicate | Unmatched argument"})
    void badInputGetsOneClearMessageAndExitsTwo(String command, String message) {
        Ran ran = run(command.split(" "));
        assertThat(ran.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(ran.err()).contains(message);
        assertThat(ran.out()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\u0000\u0001\u0002binary", "colour,size\nred,4\n", "{\"not\": \"csv\"}"})
    void aFileThatIsNoStockIsRefusedWhole(String content, @TempDir Path folder) throws IOException {
        Path heads = folder.resolve("heads.csv");
        Files.writeString(heads, content);
        Ran ran = run("match", "--stock", STOCK, "--heads", heads.toString(), "--club", "OAKES-DR");
        assertThat(ran.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(ran.err()).contains("heads.csv", "Nothing was read");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void aHugeFileIsRefusedBeforeItIsRead(@TempDir Path folder) throws IOException {
        Path heads = folder.resolve("heads.csv");
        try (RandomAccessFile file = new RandomAccessFile(heads.toFile(), "rw")) {
            file.setLength(300L << 20);
        }
        Ran ran = run("stock", "check", heads.toString());
        assertThat(ran.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(ran.out()).contains("heads.csv: is too large (300 MiB) and was not read");
    }

    @Test
    void theGoodRowsCanBeTakenAlone(@TempDir Path folder) throws IOException {
        Path heads = folder.resolve("heads.csv");
        List<String> lines = new ArrayList<>(Files.readAllLines(Path.of(STOCK, "heads.csv")));
        lines.set(5, lines.get(5).replaceFirst(",right,|,left,", ",sideways,"));
        Files.write(heads, lines);
        Ran refused = run("match", "--stock", STOCK, "--heads", heads.toString(), "--club", "OAKES-DR");
        assertThat(refused.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(refused.err()).contains("heads.csv line 6, column hand: \"sideways\"");
        Ran taken = run("match", "--stock", STOCK, "--heads", heads.toString(), "--club", "OAKES-DR", "--good-rows");
        assertThat(taken.status()).isEqualTo(Main.DONE);
        assertThat(taken.out()).contains("left out: heads.csv line 6");
    }

    @Test
    void aBuildCanBeGivenAsJson(@TempDir Path folder) throws IOException {
        Path build = folder.resolve("build.json");
        Files.writeString(build, "{\"head\": \"H-110\", \"shaft\": \"S-234\", \"setting\": \"4/4\", \"overGrip\": true}");
        JsonNode values = json(run("predict", "--stock", STOCK, "--build", build.toString(), "--json")).get("predicted");
        assertThat(values.get("lieDeg").asDouble()).isBetween(57.0, 60.0);
        Files.writeString(build, "{\"head\": \"H-110\", \"shaft\": \"S-234\", \"seting\": \"4/4\"}");
        Ran typo = run("predict", "--stock", STOCK, "--build", build.toString());
        assertThat(typo.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typo.err()).contains("\"seting\" is not part of a build", "setting");
        Files.writeString(build, "{\"head\": ");
        assertThat(run("predict", "--stock", STOCK, "--build", build.toString()).err()).contains("line 1");
    }

    @Test
    void helpHasAnExampleEverywhere() {
        for (String[] command : new String[][] {{"--help"}, {"match", "--help"}, {"predict", "--help"},
            {"stock", "check", "--help"}}) {
            Ran ran = run(command);
            assertThat(ran.status()).isEqualTo(Main.DONE);
            assertThat(ran.out()).contains("Example", "benchtwin ");
        }
    }
}
