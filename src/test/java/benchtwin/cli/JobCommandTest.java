package benchtwin.cli;

import static benchtwin.cli.AtTheBook.list;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs from the order to the hand-over, as typed; after each the book is whole and the next plan starts from what is so. */
class JobCommandTest {

    @TempDir
    private Path folder;
    private AtTheBook book;

    @BeforeEach
    void theSampleWorkshop() {
        book = AtTheBook.samples(folder);
    }

    /** Types a line whose plan is promised; whether something is inside tolerance does not matter here. */
    private Typed promised(String line) {
        Typed typed = book.type(line);
        assertThat(typed.status()).as(typed.err()).isIn(Main.DONE, Main.NOTHING_SUITABLE);
        assertThat(typed.out()).as(line).contains("Promised to job");
        return typed;
    }

    private List<String> parts(String job) {
        return list(book.json("job show " + job).get("parts")).stream().map(part -> part.get("tag").asText()).toList();
    }

    private int count(String tag) {
        return book.part(tag).get("count").asInt();
    }

    @Test
    void jobsAreListedByTheDayTheyAreDue() {
        book.done("job add repair --player \"T. Tolver\" --note \"loose ferrule\"");
        book.done("job add twin --club OAKES-DR --due \"2030-05-21 14:20\"");
        book.done("job add change --club SANDROW-DR --due 2030-05-20");
        assertThat(book.done("job list").lines()).map(line -> line.strip().split(" ")[0]).containsExactly("3", "2", "1");
        assertThat(book.done("job list")).contains("2030-05-21 14:20  waiting      twin    N. Oakes", "no day set");
        assertThat(book.done("job show 1")).contains("Job 1: repair for T. Tolver, waiting", "No day set", "loose ferrule",
            "taken on by Jo");
        assertThat(book.json("job list").get("jobs").get(1).get("due").asText()).isEqualTo("2030-05-21 14:20");
        assertThat(book.done("job cancel 1 --why \"ferrule held\"")).isEqualTo("Job 1 is called off.\n");
        assertThat(book.done("job list").lines()).hasSize(2);
        assertThat(book.done("job list --all").lines()).hasSize(3);
        book.refused("job cancel 1", "job 1 is called off already");
    }

    @Test
    void whatCannotBeOrderedIsRefused() {
        book.refused("job add twin", "a job is for somebody: give the club with --club, or the player with --player");
        book.refused("job add twin --club OAKES-D", "no club is called OAKES-D in the book; nearest are OAKES-DR, OAKES-3W, TOLVER-DR");
        book.refused("job add twin --club OAKES-DR --due tomorrow", "\"tomorrow\" is no day; expected year-month-day, with an hour if "
            + "you like: 2026-05-21 or 2026-05-21 14:20");
        book.refused("job show 9", "there is no job 9; benchtwin job list --all lists them");
        book.refused("job plan 9", "there is no job 9; benchtwin job list --all lists them");
        book.refused("job done 9", "there is no job 9; benchtwin job list --all lists them");
        book.refused("match --club OAKES-DR --job 9", "there is no job 9; benchtwin job list --all lists them");
        book.refused("job plan 9 --pick 0", "--pick 0: expected the number of an option, 1 for the first");
        assertThat(book.type("job add twinn --club OAKES-DR").err()).contains("expected one of", "twin", "change", "set", "repair");
    }

    @Test
    void whatIsPromisedToOneJobStandsBelowTheLineForAnotherPlayer() {
        promised("match --club OAKES-DR --top 1 --promise");
        assertThat(parts("1")).containsExactly("H-110");
        JsonNode other = book.json("match --club SANDROW-DR --other-models --top 50");
        assertThat(list(other.get("belowTheLine"))).anySatisfy(option -> {
            assertThat(option.get("head").asText()).isEqualTo("H-110");
            assertThat(option.get("reason").asText()).contains("job 1, N. Oakes");
        });
        assertThat(book.type("match --club SANDROW-DR --other-models --top 50").out()).contains("promised to job 1, N. Oakes");
        assertThat(book.json("match --club OAKES-DR --top 1 --job 1").get("results").get(0).get("head").asText())
            .as("it is free for its own job").isEqualTo("H-110");
        assertThat(book.json("match --club OAKES-DR --top 1").get("results").get(0).get("head").asText())
            .as("and taken for a second job of the same player").isNotEqualTo("H-110");
        book.refused("stock reserve H-110 --for \"T. Tolver\"",
            "head H-110 is promised to job 1, N. Oakes; it has to be released first");
    }

    @Test
    void aPlanMadeAnewFreesThePartsOfTheOldOne() {
        book.done("job add twin --club OAKES-DR");
        assertThat(promised("job plan 1 --pick 1").out()).contains("Promised to job 1. See it with: benchtwin job show 1");
        assertThat(parts("1")).containsExactly("H-110");
        promised("job plan 1 --pick 2");
        assertThat(parts("1")).containsExactly("H-014", "W-04");
        assertThat(book.part("H-110").get("standing").asText()).isEqualTo("in stock");
        assertThat(book.done("stock show H-110")).contains("no longer promised to job 1: planned anew (Jo)");
        assertThat(book.done("job cancel 1")).isEqualTo("Job 1 is called off; free again: H-014, W-04.\n");
        assertThat(book.part("H-014").get("standing").asText()).isEqualTo("in stock");
        book.refused("job plan 1", "job 1 is called off already");
        book.isClean();
    }

    @Test
    void aPlanIsOnlyForTheJobsOwnClub() {
        book.done("job add twin --club OAKES-DR");
        Typed typed = book.type("match --club HARKWELL-DR --keep head --job 1 --promise");
        assertThat(typed.err()).contains("job 1 is about club OAKES-DR, not about HARKWELL-DR; leave out --job to take on a new one");
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(parts("1")).isEmpty();
        book.done("job add change --club SANDROW-DR");
        book.refused("job plan 2", "job 2 is a change; plan it with benchtwin change --club SANDROW-DR … --job 2 --promise 1");
        book.done("job add set --player \"J. Quillby\"");
        book.refused("job plan 3", "job 3 names no club; plan it with benchtwin match, change or set and --job 3");
    }

    @Test
    void aTwinOnTheOldShaftIsHandedOver() {
        book.done("job add twin --club OAKES-DR");
        promised("job plan 1 --pick 2");
        String plan = book.done("job show 1");
        assertThat(plan).contains("Promised to it:", "head    H-014, driver drawer 1", "weight  W-04, screw tray",
            "1. Change the weight in port M5: 8 g out, 5 g in (W-04).", "Should measure  loft 9.40°");
        assertThat(book.done("job done 1 loft=9.4 lie=58.3 face=-0.4 swing-weight=D2.3 --note \"a good one\""))
            .isEqualTo("Job 1 is handed over.\n");
        JsonNode club = book.club("OAKES-DR").get("facts");
        assertThat(club.get("head").asText()).isEqualTo("H-014");
        assertThat(club.get("shaft").asText()).isEqualTo("S-234");
        assertThat(club.get("setting").asText()).isEqualTo("3/3");
        assertThat(club.get("tape_g").asText()).isEqualTo("0.5");
        assertThat(club.get("state").asText()).isEqualTo("in play");
        assertThat(book.value("OAKES-DR", "loft", "loftDeg")).isEqualTo(9.4);
        assertThat(book.value("OAKES-DR", "frequency", "frequencyCpm")).as("the old head's frequency is not the new one's").isNull();
        assertThat(book.part("H-014").get("club").asText()).isEqualTo("OAKES-DR");
        assertThat(book.part("H-014").get("promisedTo")).isEmpty();
        assertThat(book.part("H-014").get("facts").get("port_g").asText()).as("3+8 before").isEqualTo("3+5");
        assertThat(count("W-04")).as("one of three went in").isEqualTo(2);
        assertThat(count("W-07")).as("the 8 g weight went back to its two").isEqualTo(3);
        assertThat(count("lock-2-335")).as("the sleeve was on the shaft").isEqualTo(4);
        assertThat(book.done("job show 1")).contains("twin of OAKES-DR for N. Oakes, handed over",
            "Measures        loft 9.40°, lie 58.30°, face −0.40°, swing weight D2.3", "handed over by Jo: a good one");
        book.isClean();
        book.refused("job done 1", "job 1 is handed over already");

        JsonNode change = book.json("change --club OAKES-DR loft=+0.5 --top 1");
        assertThat(change.get("now").get("loftDeg").asDouble()).isEqualTo(9.4);
        assertThat(change.get("workedOut").toString()).contains("frequencyCpm", "totalMassG");
        assertThat(book.json("match --club OAKES-DR --top 1").get("target").get("swingWeightText").asText()).isEqualTo("D2.3");
    }

    @Test
    void theHeadThatCameOffLeavesTheStockOnlyWhenItIsCracked() {
        promised("change --club SANDROW-DR loft=+0.6 --other-models --top 50 --promise");
        book.done("job cancel 1");
        promised("match --club SANDROW-DR --top 1 --promise");
        String said = book.done("job done 2 loft=9.9");
        assertThat(said).contains("In stock again: head H-101.");
        assertThat(book.part("H-101").get("standing").asText()).isEqualTo("in stock");
        promised("match --club SANDROW-DR --top 1 --promise");
        String head = parts("3").get(0);
        String off = book.club("SANDROW-DR").get("facts").get("head").asText();
        assertThat(book.done("job done 3 loft=9.9 --old-cracked")).doesNotContain("In stock again");
        assertThat(book.club("SANDROW-DR").get("facts").get("head").asText()).isEqualTo(head);
        assertThat(book.part(off).get("standing").asText()).isEqualTo("retired");
        book.refused("stock return " + off, "head " + off + " is cracked and never returns to the stock");
        book.isClean();
    }

    @Test
    void aTwinOnTheOldHeadTakesASleeveFromTheTinAndLeavesTheBrokenShaft() {
        book.done("job add twin --club HARKWELL-DR");
        promised("job plan 1 --keep head --pick 2");
        assertThat(parts("1")).containsExactly("S-155", "quad-335", "W-13");
        book.refused("job done 1 --old-cracked", "no head came off club HARKWELL-DR, so none is cracked");
        String said = book.done("job done 1 loft=8.7 lie=59.1 face=-1.1 length=45 --old-broken");
        assertThat(said).contains("Which grip went on HARKWELL-DR is not known; enter it with benchtwin club record HARKWELL-DR --grip");
        assertThat(count("quad-335")).as("one of five was bonded on").isEqualTo(4);
        assertThat(book.part("S-220").get("standing").asText()).isEqualTo("retired");
        assertThat(book.part("S-220").get("facts").get("retired_why").asText()).isEqualTo("broken");
        JsonNode shaft = book.part("S-155");
        assertThat(shaft.get("facts").get("butt_cut_mm").asDouble()).isEqualTo(88);
        assertThat(shaft.get("facts").get("sleeve_on").asText()).isEqualTo("quad-335");
        assertThat(list(shaft.get("readings"))).as("read uncut, it tells nothing of the cut shaft").allSatisfy(reading ->
            assertThat(reading.get("note").asText()).isEqualTo("worked out for job 1, not read"));
        assertThat(list(shaft.get("readings"))).extracting(reading -> reading.get("quantity").asText())
            .containsExactlyInAnyOrder("mass_g", "balance_mm", "torque_deg");
        book.isClean();

        book.done("club record HARKWELL-DR --grip G-012 swing-weight=D3 frequency=245.5 total-mass=317.8 length=45 --clamp 5");
        JsonNode change = book.json("change --club HARKWELL-DR swing-weight=+1 --top 1");
        assertThat(change.get("now").get("swingWeightPoints").asDouble()).isEqualTo(33);
        assertThat(change.get("ways")).isNotEmpty();
        book.isClean();
    }

    @Test
    void aBackupFromStockIsANewClub() {
        promised("match --club SANDROW-DR --keep none --top 1 --promise --due 2030-05-01");
        assertThat(parts("1")).containsExactly("H-138", "S-069", "lock-1-335", "W-01");
        book.refused("job done 1 loft=9.9", "job 1 makes a new club; say its tag with --as TAG (--as SANDROW-DR lets it take the place "
            + "of the old one)");
        book.refused("job done 1 --as OAKES-DR", "club OAKES-DR is in the book already, N. Oakes's; expected a tag that is not");
        book.refused("job done 1 --as SANDROW-DR-2 --old-cracked", "job 1 makes a new club, so nothing came off an old one: leave out "
            + "--old-cracked");
        book.done("job done 1 --as SANDROW-DR-2 loft=10 lie=57.1 face=0.5 length=45.6 swing-weight=D3.2");
        JsonNode club = book.club("SANDROW-DR-2").get("facts");
        assertThat(club.get("state").asText()).isEqualTo("backup");
        assertThat(club.get("player").asText()).isEqualTo("M. Sandrow");
        assertThat(club.get("category").asText()).isEqualTo("driver");
        assertThat(club.get("sleeve").asText()).isEqualTo("lock-1-335");
        assertThat(club.get("tape_layers").asText()).isEqualTo("1");
        assertThat(count("lock-1-335")).as("one of two was bonded on").isEqualTo(1);
        assertThat(book.part("S-069").get("facts").get("butt_cut_mm").asDouble()).isEqualTo(76);
        assertThat(book.club("SANDROW-DR").get("facts").get("head").asText()).as("the old club is as it was").isEqualTo("H-101");
        book.isClean();
        assertThat(book.type("club compare SANDROW-DR SANDROW-DR-2").out()).contains("swing weight   D3.2         D3.2");
        assertThat(book.json("change --club SANDROW-DR-2 loft=+0.5 --top 1").get("now").get("loftDeg").asDouble()).isEqualTo(10);
    }

    @Test
    void aBackupMayTakeTheOldClubsPlace() {
        promised("match --club SANDROW-DR --keep none --top 1 --promise");
        book.done("job done 1 --as SANDROW-DR loft=10 --old-cracked --old-broken");
        assertThat(book.club("SANDROW-DR").get("facts").get("head").asText()).isEqualTo("H-138");
        assertThat(book.part("H-101").get("standing").asText()).isEqualTo("retired");
        assertThat(book.part("S-035").get("standing").asText()).isEqualTo("retired");
        book.isClean();
    }

    @Test
    void aBendGoesIntoTheHeadsHistoryAndWhatNobodyReadIsWorkedOut() {
        promised("change --club QUILLBY-5I lie=+1.5 loft=-1 --top 1 --promise");
        assertThat(parts("1")).isEmpty();
        double before = book.part("H-183").get("facts").get("bent_upright_deg").asDouble();
        String said = book.done("job done 1 lie=62.0");
        assertThat(said).isEqualTo("Job 1 is handed over.\n");
        JsonNode head = book.part("H-183");
        assertThat(head.get("facts").get("bent_upright_deg").asDouble()).isCloseTo(before + 1.5, within(0.05));
        assertThat(head.get("facts").get("bent_back_deg").asDouble()).as("stronger is bent back").isPositive();
        assertThat(list(head.get("readings"))).anySatisfy(reading -> {
            assertThat(reading.get("quantity").asText()).isEqualTo("lie_deg");
            assertThat(reading.get("value").asDouble()).isEqualTo(62.0);
            assertThat(reading.get("note").asText()).isEqualTo("read on club QUILLBY-5I");
        }).anySatisfy(reading -> {
            assertThat(reading.get("quantity").asText()).isEqualTo("loft_deg");
            assertThat(reading.get("value").asDouble()).isEqualTo(26.0);
            assertThat(reading.get("note").asText()).isEqualTo("worked out for job 1, not read");
        });
        assertThat(book.value("QUILLBY-5I", "lie", "lieDeg")).isEqualTo(62.0);
        assertThat(book.value("QUILLBY-5I", "loft", "loftDeg")).as("it was bent and not read since").isNull();
        assertThat(list(book.club("QUILLBY-5I").get("unread"))).extracting(JsonNode::asText).contains("loft", "bounce")
            .doesNotContain("lie", "total-mass");
        assertThat(book.done("club show QUILLBY-5I")).contains("loft          changed by the work on it and not read since");
        assertThat(book.done("club history QUILLBY-5I")).contains("head H-183 bent 1.50° upright, ", " back for job 1.");
        book.isClean();

        JsonNode change = book.json("change --club QUILLBY-5I lie=+0.5 --top 1");
        assertThat(change.get("now").get("lieDeg").asDouble()).isEqualTo(62.0);
        assertThat(change.get("now").get("loftDeg").asDouble()).as("worked out from the bent head").isEqualTo(26.0);
        assertThat(change.get("workedOut").toString()).contains("loftDeg").doesNotContain("lieDeg");
        book.done("club record QUILLBY-5I loft=26.2 bounce=3.1 swing-weight=D2.3 frequency=295");
        assertThat(book.value("QUILLBY-5I", "loft", "loftDeg")).isEqualTo(26.2);
        assertThat(book.club("QUILLBY-5I").get("unread")).isEmpty();
    }

    @Test
    void aRegripBringsTheNewGripInAndTheOldOneOut() {
        promised("change --club SANDROW-DR grip=G-062 --top 1 --promise");
        assertThat(parts("1")).containsExactly("G-062");
        assertThat(book.done("job done 1 swing-weight=D1.8 total-mass=299.7")).contains("In stock again: grip G-023.");
        assertThat(book.club("SANDROW-DR").get("facts").get("grip").asText()).isEqualTo("G-062");
        assertThat(book.part("G-062").get("club").asText()).isEqualTo("SANDROW-DR");
        assertThat(book.part("S-035").get("facts").get("grip_on").asText()).isEqualTo("G-062");
        assertThat(book.value("SANDROW-DR", "loft", "loftDeg")).as("a grip moves no loft").isEqualTo(9.9);
        assertThat(book.value("SANDROW-DR", "frequency", "frequencyCpm")).isNull();
        book.isClean();
        JsonNode change = book.json("change --club SANDROW-DR swing-weight=+1 --top 1");
        assertThat(change.get("now").get("swingWeightText").asText()).isEqualTo("D1.8");
    }

    @Test
    void whatWasDoneOtherwiseThanPlannedIsWhatIsSo() {
        book.done("job add twin --club OAKES-DR");
        promised("job plan 1 --pick 1");
        book.done("job done 1 --head H-026 --setting 5/5 --tape 2 loft=9.3");
        assertThat(book.club("OAKES-DR").get("facts").get("head").asText()).isEqualTo("H-026");
        assertThat(book.club("OAKES-DR").get("facts").get("setting").asText()).isEqualTo("5/5");
        assertThat(book.club("OAKES-DR").get("facts").get("tape_g").asText()).isEqualTo("2");
        assertThat(book.part("H-110").get("standing").asText()).as("the planned head was not used").isEqualTo("in stock");
        book.isClean();
    }

    @Test
    void aJobWithoutAPlanRecordsWhatWasDone() {
        book.done("job add repair --club SANDROW-DR");
        book.refused("job done 1 --as X-1", "job 1 has no plan, so it makes no new club: leave out --as, or enter it with benchtwin club "
            + "add");
        book.refused("job done 1 loft=94", "loft of 94.0°: expected -10.0° to 80.0°");
        book.refused("job done 1 --on 2023-05-01 --ferrule black", "club SANDROW-DR has an entry of 2023-05-05 already: what it is made "
            + "of cannot be changed on 2023-05-01");
        book.done("job done 1 --ferrule black swing-weight=D3.1");
        assertThat(book.club("SANDROW-DR").get("facts").get("ferrule").asText()).isEqualTo("black");
        book.done("job add repair --player \"T. Tolver\"");
        book.refused("job done 2 loft=9", "job 2 has neither a plan nor a club, so nothing can be entered of one; leave out the readings, "
            + "and enter them with benchtwin club record");
        book.done("job done 2");
        book.done("job add repair --club SANDROW-DR");
        assertThat(book.done("job done 3")).contains("club SANDROW-DR was handed over unmeasured; what it measures is as last read.");
        book.isClean();
    }

    @Test
    @Tag("slow")
    void aWholeSetIsPromisedAtOnceAndHandedOverAsNewClubs() throws Exception {
        String line = "set --targets %s --players \"J. Quillby\" --rounds 1 --promise"
            .formatted(AtTheBook.workshop().resolve("set-targets.csv"));
        book.done("job add set --player \"T. Tolver\"");
        assertThat(book.type(line + " --job 1").err()).contains("job 1 is for T. Tolver, not for J. Quillby");
        book.done("job add set --player \"J. Quillby\"");
        Typed typed = book.type(line + " --job 2");
        assertThat(typed.err()).isEmpty();
        List<String> parts = parts("2");
        assertThat(parts).as("put aside for the player by name, the job's now").contains("S-239");
        book.refused("job done 2 loft=30", "job 2 makes 13 clubs: hand it over without readings and parts, then enter each club's with "
            + "benchtwin club record");
        String said = book.done("job done 2 --as QUILLBY2");
        assertThat(said).contains("New in the book, and not read yet: QUILLBY2-driver, QUILLBY2-3-wood");
        assertThat(book.club("QUILLBY2-7-iron").get("facts").get("player").asText()).isEqualTo("J. Quillby");
        assertThat(parts.stream().filter(tag -> tag.startsWith("H-"))).allSatisfy(tag ->
            assertThat(book.part(tag).get("standing").asText()).isEqualTo("built in"));
        book.isClean();
    }
}
