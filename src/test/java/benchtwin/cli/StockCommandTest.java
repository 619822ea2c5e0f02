package benchtwin.cli;

import static benchtwin.cli.AtTheBook.list;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The parts in the book as typed. */
class StockCommandTest {

    @TempDir
    private Path folder;
    private AtTheBook book;

    @BeforeEach
    void theSampleWorkshop() {
        book = AtTheBook.samples(folder);
    }

    @Test
    void theSameFilesAgainChangeNothing() throws Exception {
        assertThat(book.type("stock import " + AtTheBook.workshop()).out())
            .contains("726 rows: 0 new, 0 changed, 726 as before.");
    }

    @Test
    void anImportThatCannotBeReadMakesNoBook() {
        AtTheBook none = AtTheBook.none(folder);
        none.refused("stock import nosuch", "nosuch is not a folder");
        none.refused("stock import inventory-samples/heads.csv", "inventory-samples/heads.csv is a file, not a folder; name a file by what "
            + "is in it, such as --heads inventory-samples/heads.csv");
        none.refused("stock import inventory-samples --stock inventory-samples",
            "two folders, inventory-samples and --stock inventory-samples: leave one out");
        none.refused("stock import " + folder.resolve("."), folder.resolve(".") + " holds none of the files it should, such as heads.csv");
        assertThat(none.book()).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"stock list", "stock find x", "stock show x", "stock count", "stock move x --to y", "stock audit",
        "player list", "club show x", "job list", "job show 1", "note find x", "book check", "job done 1", "club record x loft=9"})
    void whatLooksIntoABookThatIsNotThereDoesNotMakeOne(String line) {
        AtTheBook none = AtTheBook.none(folder);
        none.refused(line, "there is no book %s; benchtwin stock import DIR --book %1$s makes one".formatted(none.book()));
        assertThat(none.book()).doesNotExist();
    }

    @Test
    void partsAreListedAndFound() {
        assertThat(book.done("stock list --kind sleeve")).contains("sleeve  lock-2-335       right lock-2       sleeve tin  4 there",
            "7 parts.");
        assertThat(book.done("stock find titanium \"drawer 1\" driver --free")).contains("head    H-110").doesNotContain("H-245");
        assertThat(book.done("stock find ashcutter")).contains("H-245", "promised to E. Ashcutter");
        assertThat(book.done("stock find OAKES-DR --kind shafts,grips")).contains("S-234", "in OAKES-DR", "2 parts.");
        assertThat(book.done("stock list --kind head --retired")).contains("retired: cracked");
        assertThat(book.type("stock find unobtainium").out()).isEqualTo("No part of the book is like that.\n");
        assertThat(book.type("stock find unobtainium").status()).isEqualTo(Main.NOTHING_SUITABLE);
        book.refused("stock list --kind club", "\"club\" is no kind of part; expected one of head, shaft, grip, sleeve, weight");
    }

    @ParameterizedTest
    @ValueSource(strings = {"stock list --retired", "stock show H-110", "stock show S-001", "stock show lock-2-335", "stock show notch-335",
        "stock count", "club show OAKES-DR", "club history OAKES-DR", "club compare OAKES-DR SANDROW-DR", "player list",
        "player show \"N. Oakes\"", "stock audit", "book check"})
    void pagesFitAndPlainOnesAreAscii(String line) {
        assertThat(book.done(line)).isNotBlank();
        assertThat(book.done(line + " --plain").chars()).as(line).allMatch(c -> c < 128);
        assertThat(book.json(line).get("version").asText()).isNotBlank();
        book.refused(line + " --json --plain", "--json is one object in any case; leave out --plain");
    }

    @Test
    void aPartIsShownInBenchWords() {
        String head = book.done("stock show H-110");
        assertThat(head).contains("head H-110   driver right Alder 2 M5+M5", "in stock, driver drawer 1",
            "loft                   9.40°          0.30°", "at setting 1/1, soled", "mass                   190.6 g",
            "in the ports           3 + 7 g", "came into the book, with 8 readings");
        assertThat(book.done("stock show S-234")).contains("balance                21.09 in", "length as made         46 in",
            "tip diameter           0.335 in", "butt cut               2.24 in (56.9 mm)", "built into OAKES-DR");
        assertThat(flat(book.done("stock show S-234"))).contains("5 in in the clamp, on the bare butt, 205 g at the tip");
        for (String page : new String[] {head, book.done("stock show S-234"), book.done("stock show notch-335")}) {
            assertThat(page).as("no names of columns").doesNotContain("_", " deg", " mm:", "g cm2", "raw length", "ring1", "ct us");
        }
    }

    private static String flat(String page) {
        return page.replaceAll("\\s+", " ");
    }

    @Test
    void partsAreMovedAllOrNone() {
        assertThat(book.done("stock move H-110 h-014 --to \"van, drawer 3\"")).isEqualTo("H-110, H-014 moved to van, drawer 3.\n");
        assertThat(book.part("H-014").get("place").asText()).isEqualTo("van, drawer 3");
        assertThat(book.done("stock show H-110")).contains("moved to van, drawer 3 (Jo)");
        book.refused("stock move H-110 H-9999 --to bench", "no part is tagged H-9999 in the book; nearest are H-099, H-199, H-009");
        assertThat(book.part("H-110").get("place").asText()).isEqualTo("van, drawer 3");
        book.refused("stock move H-110 --to \" \"", "head H-110: expected the place it lies in, such as drawer 3");
    }

    @Test
    void partsArePromisedAndReleased() {
        assertThat(book.done("stock reserve H-110 S-078 --for \"R. Fenn\"")).isEqualTo("H-110, S-078 promised to R. Fenn.\n");
        assertThat(book.done("stock reserve lock-2-335 --count 2 --for \"R. Fenn\"")).isEqualTo("2 of lock-2-335 promised to R. Fenn.\n");
        assertThat(book.done("stock show lock-2-335")).contains("4 there, promised to R. Fenn (2)", "promised to R. Fenn (2 of them)");
        book.refused("stock reserve lock-2-335 --count 3 --for X",
            "sleeve lock-2-335: 3 wanted; 4 there, 2 of them promised (R. Fenn)");
        book.refused("stock reserve H-110 --for X", "head H-110 is promised to R. Fenn; it has to be released first");
        book.refused("stock reserve H-014", "a promise is to somebody: give a job with --job, or a name with --for");
        book.refused("stock reserve H-014 --job 4", "there is no job 4; benchtwin job list --all lists them");
        book.refused("stock reserve S-234 --for X", "shaft S-234 sits in club OAKES-DR");
        book.refused("stock reserve H-014 --count 2 --for X", "head H-014 is one part; 2 of it cannot be promised");
        assertThat(book.done("stock release H-110 S-078")).isEqualTo("H-110, S-078 no longer promised to anybody.\n");
        book.refused("stock release H-110", "head H-110 is not promised to anybody");
        book.done("job add repair --player \"R. Fenn\"");
        book.done("job cancel 1");
        book.refused("stock reserve H-014 --job 1", "job 1 is called off already");
        book.isClean();
    }

    @Test
    void partsLeaveTheStockAndComeBackUnlessCracked() {
        book.done("stock reserve H-014 --for \"R. Fenn\"");
        assertThat(book.done("stock retire H-014 --why sold")).isEqualTo(
            "H-014 out of the stock.\nhead H-014 was promised to R. Fenn, who needs another.\n");
        book.refused("stock move H-014 --to bench", "head H-014 is retired: sold");
        assertThat(book.done("stock return H-014 --why \"sale fell through\"")).isEqualTo("H-014 in stock again.\n");
        assertThat(book.done("stock show H-014")).contains("retired: sold (Jo)", "back in stock: sale fell through (Jo)");
        assertThat(book.done("stock retire H-014 --cracked")).isEqualTo("H-014 out of the stock for good.\n");
        book.refused("stock return H-014", "head H-014 is cracked and never returns to the stock");
        book.refused("stock retire S-078", "shaft S-078: expected why it is retired, such as sold or lost");
        book.refused("stock retire lock-2-335 --cracked", "sleeve lock-2-335 is a kind of which there are several: put down how many are "
            + "left with benchtwin stock count lock-2-335=N");
        assertThat(book.done("stock retire H-101 --cracked")).contains("head H-101 sits in club SANDROW-DR: enter what became of the club "
            + "with benchtwin");
        book.isClean();
    }

    @Test
    void countsArePutDown() {
        assertThat(book.done("stock count lock-2-335=3 w-04=12")).isEqualTo("Put down: 3 of lock-2-335, 12 of W-04.\n");
        assertThat(book.part("W-04").get("count").asInt()).isEqualTo(12);
        book.refused("stock count H-110=1", "head H-110 is one part and is not counted");
        book.refused("stock count lock-2-335", "\"lock-2-335\": expected a tag and how many were counted, such as lock-2-335=3");
        book.refused("stock count W-04=1 W-04=2", "W-04 is counted twice");
        book.done("stock reserve W-04 --count 5 --for X");
        book.refused("stock count W-04=4", "weight W-04: 4 counted, and 5 are promised (X); release some first");
        String tally = book.done("stock count --kind sleeve,head");
        assertThat(tally).contains("head    driver left Adze", "all heads", "sleeve  right lock-2");
        var counts = list(book.json("stock count --kind weight").get("counts"));
        assertThat(counts).anySatisfy(one -> {
            assertThat(one.get("what").asText()).isEqualTo("M5 5 g");
            assertThat(one.get("free").asInt()).isEqualTo(7);
            assertThat(one.get("promised").asInt()).isEqualTo(5);
        });
    }

    @Test
    void aPartIsReadAnewTheWayItWasReadLast() {
        assertThat(book.done("stock read H-110 loft=9.6 --gauge \"bench 1\"")).isEqualTo("H-110: loft 9.60° is entered.\n");
        assertThat(list(book.part("H-110").get("readings"))).anySatisfy(read -> {
            assertThat(read.get("value").asDouble()).isEqualTo(9.6);
            assertThat(read.get("condition").toString()).contains("soled").contains("1/1");
        });
        assertThat(flat(book.done("stock read S-001 frequency=280.1"))).contains("S-001: frequency 280.1 cpm is entered. Look again: frequency "
            + "280.1 cpm is 31.4 cpm from the 248.7 cpm read on").contains("put it right: benchtwin stock correct S-001.");
        book.done("stock read S-001 frequency=251 --how clamp=6 --how over-grip=yes");
        book.refused("stock read H-110 loft=95", "loft: 95 is not possible; expected degrees from -20 to 90");
        book.refused("stock read H-110 bounce=5", "\"bounce\" is not read of H-110; expected one of loft, lie, face, offset, mass, seat-to-ground, "
            + "cg-toe, cg-up, transverse-inertia, vertical-inertia, volume, ct, heel-toe, face-back, sole-crown, neck");
        book.refused("stock read H-110 loft=9.4 --how clamp=5", "--how clamp: expected reading, read-at-setting");
        book.refused("stock read H-110 loft", "\"loft\": expected a quantity and what was read, such as loft=9.4");
        book.refused("stock read H-110 mass=230 --refuse-odd", "mass 230 g is 39.4 g from the 190.6 g read on " + java.time.LocalDate.now()
            + ": nothing was entered; read again, or leave out --refuse-odd if it is so");
        book.isClean();
    }

    @Test
    void aReadingOfAPartIsPutRightAndTheOldOneKept() {
        long loft = list(book.part("H-110").get("readings")).stream().filter(one -> one.get("quantity").asText().equals("loft_deg"))
            .findFirst().orElseThrow().get("id").asLong();
        assertThat(book.done("stock correct H-110 " + loft + " 9.5 --why \"digits swapped\"")).isEqualTo(
            "Reading " + loft + " of head H-110, loft 9.40°, is put right: 9.50°. The old one is kept.\n");
        assertThat(flat(book.done("stock show H-110"))).contains("corrected: loft 9.50° (reading ",
            ") in place of reading " + loft + ", which said 9.40°: digits swapped (Jo)");
        book.refused("stock correct H-110 1 9.5 --why x", "head H-110 has no reading 1; benchtwin stock show H-110 lists them");
        book.isClean();
    }

    @Test
    void aTagOfSeveralPartsHasToBeSaidWhich() throws Exception {
        Path grips = folder.resolve("grips.csv");
        Files.writeString(grips, "tag,model\nW-04,Moss round\n");
        book.done("stock import --grips " + grips);
        book.refused("stock show W-04", "W-04 may be grip W-04 or weight W-04; say which, such as grip:W-04");
        assertThat(book.done("stock show weight:W-04")).contains("weight W-04");
        assertThat(book.done("stock count weight:W-04=9")).isEqualTo("Put down: 9 of W-04.\n");
    }
}
