package benchtwin.web;

import static benchtwin.web.FormFiller.words;
import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.ClubViews;
import benchtwin.bench.JobBook;
import benchtwin.bench.PlayerBook;
import benchtwin.club.Quantity;
import java.net.http.HttpResponse;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Forms, sent without scripts. Values of the sample workshop. */
class EnteringTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final FormFiller kim = new FormFiller(PAGES);

    @Test
    void aReadingIsEnteredAsFoundAndTheClubSaysSo() throws Exception {
        assertThat(words(kim.open("/clubs/QUILLBY-9I/read/loft"))).contains("Last read 41.80° on 2023-05-13, should be 41.80°");
        HttpResponse<String> after = kim.send("/clubs/QUILLBY-9I/read/loft", "loft", "41,2", "as", "found");
        assertThat(after.statusCode()).isEqualTo(200);
        assertThat(after.uri().getPath()).isEqualTo("/clubs/QUILLBY-9I");
        assertThat(words(after)).contains("loft 41.20° is entered as found.");
        ClubViews.Club club = club("QUILLBY-9I");
        assertThat(club.values().get(Quantity.LOFT).value()).isEqualTo(41.2);
        assertThat(club.accepted().get(Quantity.LOFT).value()).as("what it should measure stays").isEqualTo(41.8);
    }

    @Test
    void aReadingCanBeTheRecord() throws Exception {
        kim.open("/clubs/QUILLBY-8I/read/lie");
        kim.send("/clubs/QUILLBY-8I/read/lie", "lie", "64.1", "as", "accept");
        assertThat(club("QUILLBY-8I").accepted().get(Quantity.LIE).value()).isEqualTo(64.1);
    }

    @Test
    void whatIsOddIsAskedAndWhatWasAskedIsTaken() throws Exception {
        kim.open("/clubs/QUILLBY-7I/read/loft");
        HttpResponse<String> asked = kim.send("/clubs/QUILLBY-7I/read/loft", "loft", "43.1", "as", "found");
        assertThat(words(asked)).contains("loft 43.10° is 9.00° from the 34.10° read on 2023-05-13.").contains("Yes, it is so");
        assertThat(asked.body()).as("what was typed is still there").contains("value=\"43.1\"");
        assertThat(club("QUILLBY-7I").values().get(Quantity.LOFT).value()).isEqualTo(34.1);

        HttpResponse<String> other = kim.send("/clubs/QUILLBY-7I/read/loft", "loft", "44.1", "as", "found", "so", "loft 43.1");
        assertThat(words(other)).as("a yes is for the value that was asked about").contains("loft 44.10° is 10.00° from");

        HttpResponse<String> taken = kim.send("/clubs/QUILLBY-7I/read/loft", "loft", "43.1", "as", "found", "so", "loft 43.1");
        assertThat(words(taken)).contains("loft 43.10° is entered as found.");
    }

    @Test
    void whatCannotBeIsRefusedWithTheRangeAndKept() throws Exception {
        kim.open("/clubs/QUILLBY-6I/read/loft");
        HttpResponse<String> refused = kim.send("/clubs/QUILLBY-6I/read/loft", "loft", "302", "so", "loft 302");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(words(refused)).contains("loft of 302.0°: expected -10.0° to 80.0°");
        assertThat(refused.body()).contains("value=\"302\"");
        HttpResponse<String> noValue = kim.send("/clubs/QUILLBY-6I/read/loft", "loft", "weak");
        assertThat(words(noValue)).contains("loft: \"weak\" is not a value; expected degrees, such as 9.4");
        assertThat(kim.send("/clubs/QUILLBY-6I/read/loft", "loft", " ").statusCode()).isEqualTo(400);
    }

    @Test
    void aBendIsInTheNameOfWhoReadIt() throws Exception {
        FormFiller fern = new FormFiller(PAGES);
        FormFiller heath = new FormFiller(PAGES);
        fern.open("/");
        fern.send("/who", "who", "Ms Fern", "back", "/");
        heath.open("/");
        heath.send("/who", "who", "Mr Heath", "back", "/");
        String path = "/bend/H-001?to-lie=62.3&u-lie=0.05";
        fern.open(path);
        fern.send(path, "read-lie", "63.3");
        fern.send(path, "bends", "0", "asked", "1.35", "read-lie", "62.8");
        heath.open(path);
        heath.send(path, "bends", "1", "asked", "1", "read-lie", "62.5");
        String history = words(heath.open("/stock/H-001"));
        assertThat(history).contains("measured: lie 63.30°").contains("bent 0.50° flat: asked 1.35° flat (Ms Fern)")
            .contains("bent 0.30° flat: asked 1.00° flat (Mr Heath)");
    }

    @Test
    void theSecondOfTwoIsToldAndKeepsWhatWasTyped() throws Exception {
        FormFiller fern = new FormFiller(PAGES);
        FormFiller heath = new FormFiller(PAGES);
        fern.open("/");
        fern.send("/who", "who", "Ms Fern", "back", "/");
        fern.open("/clubs/QUILLBY-5I/read/lie");
        heath.open("/clubs/QUILLBY-5I/read/lie");
        fern.send("/clubs/QUILLBY-5I/read/lie", "lie", "60.9", "as", "found");

        HttpResponse<String> told = heath.send("/clubs/QUILLBY-5I/read/lie", "lie", "61.0", "as", "found", "note", "second gauge");
        assertThat(told.statusCode()).isEqualTo(409);
        assertThat(words(told)).contains("Nothing was entered").containsPattern("by Ms Fern found: lie 60.90°");
        assertThat(told.body()).contains("value=\"61.0\"").contains("value=\"second gauge\"");
        assertThat(club("QUILLBY-5I").values().get(Quantity.LIE).value()).isEqualTo(60.9);

        assertThat(words(heath.send("/clubs/QUILLBY-5I/read/lie", "lie", "61.0", "as", "found"))).contains("lie 61.00° is entered");
    }

    @Test
    void aFormThatIsSentAgainFromAnOldPageIsToldSo() throws Exception {
        kim.open("/clubs/QUILLBY-4I/read/lie");
        String seen = kim.seen();
        kim.send("/clubs/QUILLBY-4I/read/lie", "lie", "60.7", "as", "found");
        assertThat(kim.send("/clubs/QUILLBY-4I/read/lie", "lie", "60.7", "as", "found", "seen", seen).statusCode()).isEqualTo(409);
        assertThat(kim.send("/clubs/QUILLBY-4I/read/lie", "lie", "60.7", "as", "found", "seen", "none").statusCode()).isEqualTo(400);
        assertThat(kim.send("/clubs/QUILLBY-4I/read/lie", "lie", "60.7", "as", "found", "seen", "").statusCode()).isEqualTo(400);
    }

    @Test
    void aJobIsTakenOnCalledOffAndToldToWhoWasLate() throws Exception {
        kim.open("/");
        HttpResponse<String> nobody = kim.send("/jobs", "what", "repair", "words", "a loose ferrule");
        assertThat(nobody.statusCode()).isEqualTo(400);
        assertThat(words(nobody)).contains("a job is for somebody");
        assertThat(nobody.body()).contains("value=\"a loose ferrule\"");

        HttpResponse<String> taken = kim.send("/jobs", "what", "repair", "club", "oakes-3w", "due", "2026-05-22T09:30", "words", "a loose ferrule");
        assertThat(words(taken)).contains("is taken on").contains("repair of OAKES-3W").contains("due 2026-05-22 09:30").contains("a loose ferrule");
        String path = taken.uri().getPath();
        assertThat(words(kim.open("/"))).contains("2026-05-22 09:30 overdue").contains("its plan");

        FormFiller late = new FormFiller(PAGES);
        late.open(path);
        kim.open(path);
        assertThat(words(kim.send(path + "/call-off", "why", "the player withdrew"))).contains("is called off");
        HttpResponse<String> told = late.send(path + "/call-off", "why", "no time");
        assertThat(told.statusCode()).isEqualTo(409);
        assertThat(words(told)).contains("the player withdrew");
    }

    @Test
    void aPlayerAClubAndANote() throws Exception {
        kim.open("/players");
        HttpResponse<String> player = kim.send("/players", "name", "<script>alert(1)</script>", "hand", "left");
        assertThat(player.statusCode()).isEqualTo(200);
        assertThat(player.body()).doesNotContain("<script>alert").contains("&lt;script>alert(1)");
        String path = player.uri().getRawPath();
        kim.open(path + "/clubs");
        HttpResponse<String> club = kim.send(path + "/clubs", "tag", "NEW-3H", "category", "hybrid", "number", "3", "hand", "left",
            "loft", "19.2", "length", "40 1/4");
        assertThat(words(club)).contains("NEW-3H is in the book.").contains("19.20°").contains("40 1/4 in");
        String grins = "😀".repeat(5000);
        kim.open("/clubs/NEW-3H");
        HttpResponse<String> note = kim.send("/notes", "about", "club:NEW-3H", "text", grins, "back", "/clubs/NEW-3H");
        assertThat(note.body()).contains(grins);
        HttpResponse<String> long1 = kim.send("/notes", "about", "club:NEW-3H", "text", "😀".repeat(10_001), "back", "/clubs/NEW-3H");
        assertThat(long1.statusCode()).as("20,002 UTF-16 letters").isEqualTo(400);
        assertThat(words(long1)).contains("expected 1 to 20000");
    }

    @Test
    void tolerancesAreKeptAndCompareAndTheClubUseThem() throws Exception {
        kim.open("/players/A.%20Penhollow");
        assertThat(words(kim.send("/players/A.%20Penhollow/tolerances", "tol-loft", "0.15"))).contains("loft ±0.15°");
        assertThat(PlayerBook.show(PAGES.book(), "A. Penhollow").tolerances()).containsEntry(Quantity.LOFT, 0.15);
        kim.open("/players/A.%20Penhollow");
        assertThat(words(kim.send("/players/A.%20Penhollow/tolerances", "tol-loft", "0"))).contains("is not above 0");
        assertThat(words(kim.send("/players/A.%20Penhollow/tolerances", "tol-loft", ""))).contains("no tolerance was typed");
    }

    @Test
    void aClubBesideAnotherAndBesideItself() throws Exception {
        assertThat(words(kim.open("/clubs/LARKFIELD-DR/compare?with=LARKFIELD-DR-2"))).contains("LARKFIELD-DR-2 against LARKFIELD-DR")
            .contains("What else differs");
        assertThat(words(kim.open("/clubs/QUILLBY-PW/compare?on=2023-03-01"))).contains("QUILLBY-PW on 2023-03-01 against QUILLBY-PW")
            .contains("as far as measuring tells");
        HttpResponse<String> none = kim.open("/clubs/QUILLBY-PW/compare?with=NONE-1");
        assertThat(none.statusCode()).isEqualTo(400);
        assertThat(words(none)).contains("no club is called NONE-1");
        assertThat(kim.open("/clubs/QUILLBY-PW/compare?on=yesterday").statusCode()).isEqualTo(400);
    }

    @Test
    void whatAPageSaysOfTheLastEntryCannotBeMadeUpInItsAddress() throws Exception {
        assertThat(words(kim.open("/clubs/OAKES-DR?said=Pay+at+the+desk"))).doesNotContain("Pay at the desk");
        assertThat(kim.open("/clubs/OAKES-DR?said=999999999999999999999").statusCode()).isEqualTo(200);
    }

    @Test
    void aJobWithoutAPlanIsHandedOverWithWhatWasRead() throws Exception {
        String number = JobBook.add(PAGES.book(), new JobBook.Order(JobBook.What.REPAIR, Optional.empty(), Optional.of("WEXCOMBE-7I"),
            Optional.empty(), "new ferrule"));
        kim.open("/jobs/" + number + "/hand-over");
        HttpResponse<String> odd = kim.send("/jobs/" + number + "/hand-over", "total-mass", "600");
        assertThat(words(odd)).contains("total mass 600.0 g is").contains("Yes, it is so");
        HttpResponse<String> done = kim.send("/jobs/" + number + "/hand-over", "total-mass", "600", "so", "total-mass 600");
        assertThat(words(done)).contains("is handed over").contains("handed over");
        assertThat(club("WEXCOMBE-7I").values().get(Quantity.TOTAL_MASS).value()).isEqualTo(600);
        assertThat(words(kim.open("/jobs/" + number + "/hand-over"))).contains("It is handed over already.");
    }

    private static ClubViews.Club club(String tag) throws Exception {
        return ClubViews.show(PAGES.book(), tag, ClubViews.When.NOW);
    }
}
