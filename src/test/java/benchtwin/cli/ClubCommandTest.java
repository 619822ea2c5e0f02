package benchtwin.cli;

import static benchtwin.cli.AtTheBook.list;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Players' clubs as typed: added, read, found, put right, looked back at and held against each other. */
class ClubCommandTest {

    @TempDir
    private Path folder;
    private AtTheBook book;

    @BeforeEach
    void theSampleWorkshop() {
        book = AtTheBook.samples(folder);
    }

    @Test
    void aClubComesIntoTheBookWithItsPartsAndReadings() {
        String said = book.done("club add FENN-DR --player \"R. Fenn\" --category driver --hand right --head H-110 --shaft S-078 "
            + "--sleeve lock-2-335 --setting 3/3 --rib \"a touch left\" loft=9.4 lie=58.2 length=45 swing-weight=D2.4");
        assertThat(said).isEqualTo("FENN-DR is in the book, with 4 readings.\n");
        String page = book.done("club show FENN-DR");
        assertThat(page).contains("FENN-DR   driver, right-handed, R. Fenn, in play",
            "head H-110, shaft S-078, sleeve lock-2-335, setting 3/3", "rib a touch left", "loft          9.40°        0.30",
            "length        45 in", "swing weight  D2.4", "Read loft, lie soled, at setting 3/3; length along the axis.");
        assertThat(book.part("H-110").get("club").asText()).isEqualTo("FENN-DR");
        assertThat(book.part("lock-2-335").get("count").asInt()).as("its sleeve was never in the tin").isEqualTo(4);
        assertThat(book.json("player show \"R. Fenn\"").get("clubs").get(0).get("tag").asText()).isEqualTo("FENN-DR");
        book.refused("club add FENN-DR --player \"R. Fenn\" --category driver --hand right", "club FENN-DR is in the book already");
        book.refused("club add FENN-DR-2 --player \"R. Fenn\" --category driver --hand right --head H-110",
            "head H-110 sits in club FENN-DR");
        book.isClean();
    }

    @Test
    void aPartThatIsNotInTheBookIsRemarkedUpon() {
        assertThat(book.done("club add FENN-DR --player \"R. Fenn\" --category driver --hand right --head H-999"))
            .contains("head H-999 is not in the book: what is known of it is only that it is on FENN-DR.");
        assertThat(book.done("club show FENN-DR")).contains("head H-999",
            "Nothing is read of it. Enter readings with: benchtwin club record FENN-DR loft=…");
    }

    @Test
    void severalReadingsOfOneSittingGiveTheirMeanAndASmallerUncertainty() {
        book.done("club record SANDROW-DR loft=9.8 loft=10.0 loft=9.9 loft=10.1 --gauge \"bench 2\"");
        JsonNode loft = list(book.club("SANDROW-DR").get("measures")).get(0);
        assertThat(loft.get("loftDeg").asDouble()).isCloseTo((9.8 + 10.0 + 9.9 + 10.1) / 4, within(1e-9));
        // the standard uncertainty of a mean of n readings is that of one over the root of n: GUM (JCGM 100:2008), 4.2.3
        assertThat(loft.get("uncertainty").asDouble()).isCloseTo(0.3 / Math.sqrt(4), within(1e-9));
        assertThat(loft.get("readings")).hasSize(4);
        assertThat(loft.get("gauge").asText()).isEqualTo("bench 2");
    }

    @Test
    void whatIsFoundDoesNotBecomeWhatItShouldMeasure() {
        assertThat(book.done("club record SANDROW-DR loft=10.4 --found"))
            .isEqualTo("SANDROW-DR was found so; what it should measure is as before, with 1 reading.\n");
        assertThat(book.done("club show SANDROW-DR")).contains("10.40°").contains("9.90°, off by +0.50°");
        assertThat(book.json("match --club SANDROW-DR --top 1").get("target").get("loftDeg").asDouble()).isEqualTo(9.9);
        assertThat(book.json("change --club SANDROW-DR loft=-0.5 --top 1").get("now").get("loftDeg").asDouble()).isEqualTo(10.4);
        book.done("club record SANDROW-DR loft=10.4");
        assertThat(book.json("match --club SANDROW-DR --top 1").get("target").get("loftDeg").asDouble()).isEqualTo(10.4);
    }

    @Test
    void aCorrectionTakesTheOldReadingsPlaceAndIsItselfCorrected() {
        long first = reading("loft");
        assertThat(book.done("club correct SANDROW-DR " + first + " 9.7 --why \"digits swapped\"")).isEqualTo("Reading " + first
            + " of club SANDROW-DR, loft 9.90°, is put right: 9.70°. The old one is kept.\n");
        assertThat(book.value("SANDROW-DR", "loft", "loftDeg")).isEqualTo(9.7);
        book.refused("club correct SANDROW-DR " + first + " 9.6 --why again", "reading " + first + " of club SANDROW-DR was corrected "
            + "already, by reading " + reading("loft") + "; correct that one");
        book.done("club correct SANDROW-DR " + reading("loft") + " 9.65 --why \"read the half\"");
        assertThat(book.value("SANDROW-DR", "loft", "loftDeg")).isEqualTo(9.65);
        assertThat(book.done("club history SANDROW-DR")).contains("loft           9.65°", "in place of loft 9.90°: digits swapped",
            "in place of loft 9.70°: read the half");
        assertThat(book.done("club correct SANDROW-DR " + reading("loft") + " --why \"another club\"")).contains("is taken back.");
        assertThat(book.value("SANDROW-DR", "loft", "loftDeg")).as("the day before it counts again").isEqualTo(10.0);
        book.isClean();
    }

    private long reading(String quantity) {
        return list(book.club("SANDROW-DR").get("measures")).stream().filter(one -> one.get("quantity").asText().equals(quantity))
            .findFirst().orElseThrow().get("readings").get(0).asLong();
    }

    @Test
    void valuesAreTypedAsABenchWritesThem() {
        book.done("club correct SANDROW-DR " + reading("length") + " \"45 1/4\" --why \"tape slipped\"");
        assertThat(book.value("SANDROW-DR", "length", "lengthMm")).isCloseTo(45.25 * 25.4, within(1e-6));
        book.done("club correct SANDROW-DR " + reading("swing-weight") + " D3.4 --why \"scale not level\"");
        assertThat(book.value("SANDROW-DR", "swing-weight", "swingWeightPoints")).isEqualTo(33.4);
        book.refused("club correct SANDROW-DR " + reading("loft") + " nine --why x",
            "\"nine\" is no loft; expected degrees, such as 9.4");
        book.refused("club correct SANDROW-DR " + reading("loft") + " 99 --why x", "loft of 99.0°: expected -10.0° to 80.0°");
        book.refused("club correct SANDROW-DR " + reading("length") + " 4x --why x",
            "\"4x\" is no length; expected inches such as 45.25 or 45 1/4, or millimetres such as 1149 mm");
        book.refused("club correct SANDROW-DR 1 9.4 --why x",
            "club SANDROW-DR has no reading 1; benchtwin club show SANDROW-DR lists them");
        book.refused("club correct SANDROW-DR " + reading("loft") + " 9.4 --why \" \"",
            "a correction needs a reason, such as --why \"digits swapped\"");
    }

    @Test
    void aLookBackTellsWhatWasKnownThenAndWhatWasSoThen() {
        book.done("club record SANDROW-DR loft=9.5 --on 2023-05-10");
        assertThat(book.done("club show SANDROW-DR --as-of 2023-05-12 --known-now")).contains("As it was on 2023-05-12, as it is known now",
            "9.50°");
        book.refused("club show SANDROW-DR --as-of 2023-05-12", "nothing of club SANDROW-DR was known on 2023-05-12; "
            + "--known-now shows what was so that day as it is known now");
        book.refused("club show SANDROW-DR --as-of 2022-01-01 --known-now", "nothing of club SANDROW-DR had happened on 2022-01-01");
        String today = LocalDate.now().toString();
        assertThat(book.done("club show SANDROW-DR --as-of " + today)).contains("As it was known on " + today, "9.50°");
        book.refused("club show SANDROW-DR --known-now", "--known-now goes with --as-of DATE");
        book.refused("club show SANDROW-DR --as-of 5/12", "--as-of \"5/12\" is not a day; expected year-month-day, such as 2026-05-03");
    }

    @Test
    void aNewGripOvertakesWhatItMoves() {
        assertThat(book.done("club record SANDROW-DR --grip G-012 swing-weight=D2.8")).isEqualTo("""
            SANDROW-DR is recorded, with 1 reading.
            Read before the change and so no longer counted: length, frequency, total mass of SANDROW-DR. Read
            them again.
            """);
        assertThat(book.value("SANDROW-DR", "loft", "loftDeg")).isEqualTo(9.9);
        assertThat(book.value("SANDROW-DR", "total-mass", "totalMassG")).isNull();
        assertThat(book.part("G-012").get("club").asText()).isEqualTo("SANDROW-DR");
        assertThat(book.part("G-023").get("standing").asText()).isEqualTo("in stock");
        book.isClean();
    }

    @Test
    void aDamagedClubKeepsWhatItShouldMeasure() {
        book.done("club record SANDROW-DR --state damaged --note \"face cracked on the range\"");
        assertThat(book.done("club show SANDROW-DR")).contains("M. Sandrow, damaged");
        assertThat(book.json("match --club SANDROW-DR --top 1").get("target").get("loftDeg").asDouble()).isEqualTo(9.9);
        assertThat(book.type("change --club SANDROW-DR loft=+1").err()).contains("club SANDROW-DR is damaged: a change starts from a "
            + "sound club; benchtwin match makes its twin");
        assertThat(book.done("club history SANDROW-DR")).contains("recorded by Jo: damaged, face cracked on the range.");
    }

    @Test
    void partsThatChangeHandsLeaveOneClubBeforeTheyComeIntoAnother() {
        String grip = book.club("OAKES-3W").get("facts").get("grip").asText();
        book.refused("club record SANDROW-DR --grip " + grip, "grip " + grip + " sits in club OAKES-3W");
        book.done("club record OAKES-3W --grip \"\"");
        book.done("club record SANDROW-DR --grip " + grip);
        assertThat(book.part(grip).get("club").asText()).isEqualTo("SANDROW-DR");
        book.isClean();
    }

    @Test
    void theSleeveOfAClubIsPutDownWithoutTouchingTheTin() {
        book.done("club record SANDROW-DR --sleeve lock-2-335 --setting 2/2 loft=9.8");
        assertThat(book.club("SANDROW-DR").get("facts").get("sleeve").asText()).isEqualTo("lock-2-335");
        assertThat(book.part("lock-2-335").get("count").asInt()).isEqualTo(4);
        assertThat(book.part("lock-1-335").get("count").asInt()).isEqualTo(2);
        assertThat(book.done("club history SANDROW-DR").lines().filter(line -> line.contains("lock-2-335"))).hasSize(1);
        book.isClean();
    }

    @Test
    void twoClubsStandSideBySide() {
        String page = book.done("club compare OAKES-DR SANDROW-DR --tolerance loft=1");
        assertThat(page).contains("A: OAKES-DR", "B: SANDROW-DR", "loft           9.40°        9.90°        +0.50°",
            "Differs by more than measuring explains: lie, length, swing weight, frequency, total mass.", "state", "damaged");
        JsonNode json = book.json("club compare OAKES-DR SANDROW-DR");
        JsonNode lie = list(json.get("values")).stream().filter(one -> one.get("quantity").asText().equals("lie")).findFirst().orElseThrow();
        assertThat(lie.get("difference").asDouble()).isCloseTo(57.1 - 58.3, within(1e-6));
        // independent readings: the variances add, GUM (JCGM 100:2008), 5.1.2
        assertThat(lie.get("uncertainty").asDouble()).isCloseTo(Math.hypot(0.2, 0.2), within(1e-6));
        assertThat(lie.get("beyondUncertainty").asBoolean()).isTrue();
        assertThat(list(json.get("differs"))).extracting(one -> one.get("name").asText()).contains("head", "sleeve");
    }

    @Test
    void oneClubStandsBesideItselfOnAnotherDay() {
        String page = book.done("club compare OAKES-DR --as-of 2022-04-01 --known-now");
        assertThat(page).contains("A: OAKES-DR on 2022-04-01", "B: OAKES-DR", "face           −1.00°       −0.40°       +0.60°",
            "setting              1/1                                  6/5");
        book.refused("club compare OAKES-DR", "one club and no day: give a second club, or a day with --as-of");
        book.refused("club compare OAKES-DR SANDROW-DR --known-now", "--known-now goes with --as-of DATE or --and-of DATE");
        book.refused("club compare OAKES-DR --and-of soon",
            "--and-of \"soon\" is not a day; expected year-month-day, such as 2026-05-03");
    }

    @Test
    void whatWasReadInAnotherWayIsCarriedWhereThatCanBeDone() {
        add("A", "loft=10 lie=58 face=-1 length=45 frequency=250 --reading soled");
        add("B", "loft=10 lie=58 face=-1 length=45 frequency=250 --reading square --length-method rules60 --bare");
        JsonNode json = book.json("club compare A B");
        JsonNode loft = list(json.get("values")).get(0);
        // soled, a closed face takes loft off: what was read square is less soled (common practice, no source for the sign)
        assertThat(loft.get("b").asDouble()).isNotEqualTo(10.0).isBetween(9.0, 11.0);
        JsonNode lie = list(json.get("values")).get(1);
        assertThat(lie.get("difference").asDouble()).as("lie is that of the sole lying flat in either").isZero();
        JsonNode length = list(json.get("values")).stream().filter(one -> one.get("quantity").asText().equals("length")).findFirst()
            .orElseThrow();
        assertThat(length.get("b").asDouble()).as("a few millimetres lie between the axis and the 60-degree plane of a driver that "
            + "lies two degrees flatter").isNotEqualTo(45 * 25.4).isCloseTo(45 * 25.4, within(5.0));
        assertThat(list(json.get("values"))).extracting(one -> one.get("quantity").asText()).doesNotContain("frequency");
        assertThat(list(json.get("remarks")).get(0).asText()).isEqualTo(
            "frequency was read over the grip and on the bare butt, and cannot be carried from one to the other");
        add("C", "loft=10 --reading soled");
        add("D", "loft=10 --reading square");
        book.refused("club compare C D", "loft was read soled and square, and cannot be carried from one to the other");
        add("E", "");
        add("F", "");
        book.refused("club compare E F", "neither E nor F was read, so there is nothing to compare");
    }

    private void add(String tag, String read) {
        book.done("club add %s --player \"R. Fenn\" --category driver --hand right %s".formatted(tag, read));
    }

    @Test
    void whatCannotBeEnteredIsRefusedAndLeavesNothing() {
        book.refused("club record SANDROW-DR", "nothing to record: give what was read, such as loft=9.3 lie=58.5, or what has changed");
        book.refused("club record SANDROW-D loft=9", "no club is called SANDROW-D in the book; nearest are SANDROW-DR, SANDROW-7W, "
            + "OAKES-DR");
        book.refused("club record SANDROW-DR loft=94", "loft of 94.0°: expected -10.0° to 80.0°");
        book.refused("club record SANDROW-DR loft", "reading: \"loft\" is not of the form quantity=value, such as loft=0.25");
        book.refused("club record SANDROW-DR weight=9", "reading: \"weight\" is not a quantity; expected one of loft, lie, face, bounce, "
            + "length, swing-weight, frequency, mass, torque");
        book.refused("club record SANDROW-DR torque=4", "torque is not read of a whole club; expected loft, lie, face, bounce, length, "
            + "swing-weight, frequency or total-mass");
        book.refused("club record SANDROW-DR --state lost", "\"lost\" is no state of a club; expected gamer (in play), backup, test, "
            + "damaged, stripped or retired");
        book.refused("club record SANDROW-DR loft=9.9 --on 2999-01-01", "--on 2999-01-01 is still to come; expected today, "
            + LocalDate.now(java.time.ZoneId.systemDefault()) + ", or a day before");
        book.refused("club record SANDROW-DR --head H-110 --on 2023-01-01",
            "club SANDROW-DR has an entry of 2023-05-05 already: what it is made of cannot be changed on 2023-01-01");
        book.refused("club record SANDROW-DR --tape -1", "--tape -1.0: expected 0 to 60");
        book.refused("club record SANDROW-DR --head H-106", "head H-106 is retired: cracked");
    }

    @Test
    void readingsOfADayLongPastAreHistoryOnly() {
        book.done("club record SANDROW-DR loft=11 --on 2022-01-01");
        assertThat(book.value("SANDROW-DR", "loft", "loftDeg")).isEqualTo(9.9);
        assertThat(book.done("club history SANDROW-DR")).contains("2022-01-01  recorded by Jo.");
    }

    /** As the pages ask: QUILLBY-7I was last read at 34.10°, and no putter is swung at 65°. */
    @Test
    void anOddReadingIsEnteredAndNamedOrRefused() throws Exception {
        assertThat(book.done("club record QUILLBY-7I loft=43.1 --found").replaceAll("\\s+", " ")).contains("with 1 reading.").contains(
            "Look again: loft 43.10° is 9.00° from the 34.10° read on 2023-05-13. It is entered; if it was a slip, put it right: benchtwin club "
            + "correct QUILLBY-7I.");
        assertThat(book.done("club record QUILLBY-8I loft=38.2 --found")).doesNotContain("Look again");
        book.refused("club record QUILLBY-8I loft=83.2 --found", "loft of 83.2°: expected -10.0° to 80.0°");
        String so = ": nothing was entered; read again, or leave out --refuse-odd if it is so";
        book.refused("club record QUILLBY-9I loft=48.3 --found --refuse-odd", "loft 48.30° is 6.50° from the 41.80° read on 2023-05-13" + so);
        book.refused("club add NEW-P --player \"N. Oakes\" --category putter --hand right lie=79 loft=20 --refuse-odd",
            "loft 20.00° is unusual for a club of this kind (putter); as a rule it is −4.00° to 8.00°" + so);
        assertThat(book.done("club show QUILLBY-8I")).contains("38.20°").doesNotContain("48.30°");
    }
}
