package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bending sessions, typed. H-001 of the sample workshop is a 431 iron of 39.6° loft and 63.3° lie, never bent. */
class BendCommandTest {

    private static final String FINE = " --uncertainty loft=0.05,lie=0.05";

    @TempDir
    private Path folder;

    private String lines(String... typed) throws IOException {
        Path file = Files.createTempFile(folder, "typed", ".txt");
        Files.write(file, List.of(typed));
        return " --readings " + file;
    }

    private String session() {
        return " --session " + folder.resolve("bends.jsonl");
    }

    private Typed files(String line) {
        return Typed.line("bend " + line + session()).fitsThePage();
    }

    private Typed learned(String... more) {
        List<String> words = new ArrayList<>(List.of("bend", "learned", "--stock", Typed.STOCK, "--session",
            folder.resolve("bends.jsonl").toString()));
        words.addAll(List.of(more));
        return Typed.run(words).fitsThePage();
    }

    @Test
    void aHeadFromFilesIsBroughtToItsTargetAndEveryBendIsWrittenDown() throws IOException {
        Typed typed = files("H-001 --to lie=62.3" + FINE + lines("", "62.8", "62.3"));
        assertThat(typed.status()).as(typed.out() + typed.err()).isEqualTo(Main.DONE);
        assertThat(typed.out()).contains("Head H-001: iron, Sedge, 431, read edge", "Caution: Bending: wear eye protection",
            "Hosel tilt left: 3.00° upright, 3.00° flat, 3.00° weak, 3.00° strong", "Bend 1, lie: ask for ", " flat to get about ",
            "in 10 within tolerance", "rests on the metal alone: no bend of this model flat is on record",
            "rests on 1 bend of this model flat", "Within tolerance: lie 62.30°. Leave it.");
        assertThat(typed.out().indexOf("Caution")).isLessThan(typed.out().indexOf("Bend 1"));
        List<String> written = Files.readAllLines(folder.resolve("bends.jsonl"));
        assertThat(written).hasSize(2).allMatch(line -> line.contains("\"head\":\"H-001\"")).first().asString().contains("\"bent\"");
        assertThat(learned().out()).contains("Sedge", "flat", "from 2 bends");
    }

    @Test
    void aSessionBrokenOffGoesOnFromWhereItWas() throws IOException {
        Typed first = files("H-001 --to lie=62.3" + FINE + lines("63.4", "62.9"));
        assertThat(first.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(first.out()).contains("Stopped. What was typed is in ");
        Typed second = files("H-001" + FINE + lines("", "62.4"));
        assertThat(second.status()).as(second.out()).isEqualTo(Main.DONE);
        assertThat(second.out()).contains("1 bend toward this are on record", "62.90°", "Bend 2, lie", "rests on 1 bend of this model flat",
            "2.50° flat");
    }

    /** Whatever is mistyped is asked for again, and nothing typed before is lost. */
    @Test
    void badReadingsAreAskedForAgain() throws IOException {
        Typed typed = files("H-001 --to lie=62.3" + FINE + lines("x", "1 2 3", "face=1", "lie=83.3", "lie=-3", "39.6 63.3", "l", "", "82.9",
            "-62", "asked", "asked 99 62.9", "lie=62.9 lie=62.8", "62.9", "62.3"));
        assertThat(typed.status()).as(typed.out()).isEqualTo(Main.DONE);
        assertThat(typed.out()).contains("\"x\" is not a number of degrees; type 34.0 62.5, or only the one you bent: 34.0 (or loft=34.0).",
            "3 numbers, but loft and lie are read: type ", "Face is not read of this head; expected loft and lie.",
            "Lie 83.30° is 20.00° from 63.30°. Read again; type it once more if it is so.", "Lie of -3.0°: expected 40.0° to 85.0°.",
            "\"l\" is not a number of degrees", "Bend, read, and type the reading", "Lie 82.90° is 19.60° from 63.30°.",
            "\"asked\" wants the angle you asked for", "A bend of 99.00° asked: expected above 0 and at most 20.00°.",
            "Lie is named twice");
        assertThat(Files.readAllLines(folder.resolve("bends.jsonl"))).as("one reading, two bends").hasSize(3);
    }

    @Test
    void anOddReadingTypedTwiceIsTaken() throws IOException {
        Typed typed = files("H-001 --to lie=62.3" + FINE + lines("lie=66.9", "lie=66.9", "stop"));
        assertThat(typed.out()).contains("Lie 66.90° is 3.60° from 63.30°", "lie     66.90°", "Stop: this needs 4.60° more hosel tilt flat");
        assertThat(typed.status()).isEqualTo(Main.NOTHING_SUITABLE);
    }

    @Test
    void aMistypedReadingIsPutRightAndTeachesNothing() throws IOException {
        Typed typed = files("H-001 --to lie=62.3" + FINE + lines("", "61.9", "again 62.6", "62.35"));
        assertThat(typed.status()).as(typed.out()).isEqualTo(Main.DONE);
        assertThat(typed.out()).contains("Put right.", "rests on 1 bend of this model flat");
        JsonNode learned = learned("--json").json().get("learned");
        assertThat(learned).hasSize(1);
        assertThat(learned.get(0).get("bends").asInt()).isEqualTo(2);
        assertThat(files("H-001 --to lie=61" + FINE + lines()).out()).contains("2.05° flat", "3.00° upright");
    }

    /** A line that was cut short by a crash is left alone; one that is no entry at all is named. */
    @Test
    void aSessionFileCutShortIsReadAsFarAsItGoes() throws IOException {
        files("H-001 --to lie=62.3" + FINE + lines("", "62.9"));
        Path file = folder.resolve("bends.jsonl");
        String whole = Files.readString(file);
        Files.writeString(file, whole + whole.substring(0, 60));
        assertThat(files("H-001" + FINE + lines("", "62.4")).status()).isEqualTo(Main.DONE);
        assertThat(Files.readAllLines(file)).hasSize(3);
        assertThat(files("H-001 --to lie=61" + FINE + lines()).out()).contains("2.10° flat");
        Files.writeString(file, "head,lie\nH-001,62\n");
        Typed broken = files("H-001 --to lie=62.3" + lines());
        assertThat(broken.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(broken.err()).contains("bends.jsonl line 1 is not an entry of a bending session");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "H-001 | no angles were given for head H-001, no plan bends it, and none of its sessions is open: give them with --to, such as --to loft=34,lie=62.5",
        "H-001 --to face=1 | an iron is bent in loft and lie; it has no face angle",
        "H-001 --to bounce=7 | bounce follows the loft one for one: give the loft",
        "H-002 --to loft=15 | a wood's loft is not bent: soled it stays, square it follows the face. Give lie and face",
        "H-001 --to lie=62 --change lie=1 | lie is named with --to and with --change; leave one out",
        "H-001 --to lie=162 | lie of 162.0°: expected 40.0° to 85.0°",
        "H-001 --to lie=62 --limit 4 | a limit other than the usual is somebody's to answer for: say why with --although \"WORDS\"; they are written down",
        "H-001 --to length=45 | --to: length is not bent; expected loft, lie or face",
        "H-001 --to lie=62 --risk 0 | --risk 0.0: expected above 0 and at most 0.5",
        "H-001 --to lie=62 --readings nowhere.txt | --readings nowhere.txt: there is no such file",
        "H-999 --to lie=62 | no head is tagged H-999; nearest are "})
    void whatCannotBeDoneIsSaid(String line, String message) {
        Typed typed = files(line);
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.err().strip()).startsWith("benchtwin: " + message.substring(0, Math.min(60, message.length())));
    }

    @ParameterizedTest
    @CsvSource({"condition, cracked, is cracked: it goes out of play", "material, zinc, is made of zinc", "material, aluminium, is made of aluminium",
        "adjust, fixed, is recorded as one that is not bent"})
    void aHeadThatIsNeverBentIsRefusedWhateverIsSaid(String column, String value, String reason) throws IOException {
        Path stock = Typed.workshopWith(folder, "heads.csv", Typed.cell("H-001", column, value));
        Typed typed = Typed.on(stock, "bend H-001 --to lie=62 --limit 2 --although \"I know it\"" + session());
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.err()).contains("head H-001 " + reason);
        assertThat(folder.resolve("bends.jsonl")).doesNotExist();
    }

    @Test
    void anUnknownMetalIsBentOnlyWhenSomebodyAnswersForIt() throws IOException {
        Path stock = Typed.workshopWith(folder, "heads.csv", Typed.cell("H-001", "material", ""));
        Typed refused = Typed.on(stock, "bend H-001 --to lie=62.9" + session());
        assertThat(refused.err()).contains("is of a metal that nobody has put down", "--limit 1 --although");
        Typed bent = Typed.on(stock, "bend H-001 --to lie=62.9 --limit 1 --although \"file shows steel\"" + FINE + session()
            + lines("", "63.0"));
        assertThat(bent.status()).as(bent.out() + bent.err()).isEqualTo(Main.DONE);
        assertThat(bent.out()).contains("1.00° strong; of 1.00° each");
        assertThat(Files.readString(folder.resolve("bends.jsonl"))).contains("although: file shows steel");
    }

    @Test
    void severalHeadsAreBentOneAfterTheOtherAndOneIsSkipped() throws IOException {
        Typed typed = files("H-001 H-004 H-101 --change lie=-0.8" + FINE + lines("", "skip", "", "60.6"));
        assertThat(typed.status()).as(typed.err()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(typed.out()).contains("Head H-001", "Head H-004", "Within tolerance: lie 60.60°");
        assertThat(typed.out().split("Caution: Bending", -1)).as("said once").hasSize(2);
        assertThat(typed.err()).contains("left out: head H-101 takes a sleeve");
    }

    @Test
    void jsonTellsEveryBendAndTheNextAsk() throws IOException {
        JsonNode head = Typed.line("bend H-001 --to loft=39.6,lie=62.3 --json" + FINE + session() + lines()).json()
            .get("heads").get(0);
        assertThat(head.get("state").asText()).isEqualTo("not read");
        JsonNode again = Typed.line("bend H-001 --to loft=39.6,lie=62.3 --json" + FINE + session() + lines("", "39.7 62.9")).json()
            .get("heads").get(0);
        assertThat(again.get("state").asText()).isEqualTo("bend");
        assertThat(again.get("bends").get(0).get("tiltGotDeg").asDouble()).isCloseTo(0.4, within(1e-3));
        assertThat(again.get("leftDeg").get("flat").asDouble()).isCloseTo(2.6, within(1e-3));
        JsonNode next = again.get("next");
        assertThat(next.get("direction").asText()).isEqualTo("flat");
        assertThat(next.get("withinChance").asDouble()).isBetween(0.3, 1.0);
        assertThat(next.get("beyondChance").asDouble()).isLessThanOrEqualTo(0.05);
        assertThat(next.get("springback").get("bends").asInt()).isEqualTo(1);
    }

    @Test
    void feelSpeaksOfTheLastPush() throws IOException {
        Typed typed = files("H-001 --to lie=62 --working feel" + FINE + lines("", "63.0", "why"));
        assertThat(typed.out()).contains("Bend 2, lie: ask for ", " the last push that way.", "a bend scatters by 0.3 of what is asked");
    }

    @Test
    void aJobsPlanIsBentAndNotEnteredASecondTime() throws IOException {
        AtTheBook book = AtTheBook.samples(folder);
        book.done("change --club LARKFIELD-7I loft=-0.8 --promise 1");
        Typed typed = book.type("bend --job 1 --uncertainty loft=0.05,lie=0.05" + lines("", "29.6", "again 29.5", "29.2"));
        assertThat(typed.status()).as(typed.out() + typed.err()).isEqualTo(Main.DONE);
        assertThat(typed.out()).contains("Head H-225: iron, Kiln, hollow, read edge, for job 1", "Within tolerance: loft 29.20°, lie 62.40°");
        assertThat(book.done("stock show H-225")).contains("bent back              0.71°", "loft                   29.20°",
            "3.60°", "not read after the", "in place of the entry before");
        assertThat(book.value("LARKFIELD-7I", "loft", "loftDeg")).isEqualTo(29.2);
        assertThat(book.done("club show LARKFIELD-7I")).contains("bounce        changed by the work on it and not read since");
        book.type("job done 1");
        assertThat(book.done("stock show H-225")).contains("bent back              0.71°", "loft                   29.20°");
        assertThat(book.done("bend learned")).contains("Kiln", "back", "from 2 bends");
        book.isClean();
    }

    @Test
    void aHeadOfTheBookIsFoundByItsClubAndGoesOnAfterItWasBrokenOff() throws IOException {
        AtTheBook book = AtTheBook.samples(folder);
        String bend = "bend LARKFIELD-7I --uncertainty loft=0.05,lie=0.05";
        assertThat(book.type(bend + " --to lie=61.9" + lines("30.0 62.4", "62.2")).status()).isEqualTo(Main.NOTHING_SUITABLE);
        Typed second = book.type(bend + lines("", "62.0"));
        assertThat(second.out()).contains("Head H-225", "1 bend toward this", "Bend 2, lie");
        assertThat(second.status()).isEqualTo(Main.DONE);
        book.isClean();
    }

    @Test
    void theSimulationPrintsBothHabitsAndDrawsThem() throws IOException {
        Path plot = folder.resolve("bends.svg");
        Typed typed = Typed.run(List.of("bend", "simulate", "--models", "20", "--plot", plot.toString())).fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.DONE);
        assertThat(typed.out().split("as advised", -1)).hasSize(9);
        assertThat(Files.readString(plot)).contains("ask for what is left", "as advised");
        JsonNode json = Typed.run(List.of("bend", "simulate", "--models", "20", "--json")).json();
        assertThat(json.get("scenes")).hasSize(8);
        List<Double> shares = new ArrayList<>();
        json.get("scenes").get(0).get("advised").get("shareByBends").forEach(share -> shares.add(share.asDouble()));
        assertThat(shares.stream().mapToDouble(Double::doubleValue).sum()).isCloseTo(1, within(1e-5));
        assertThat(Typed.run(List.of("bend", "simulate", "--models", "0")).err()).contains("--models 0: expected 1 to 100000");
    }
}
