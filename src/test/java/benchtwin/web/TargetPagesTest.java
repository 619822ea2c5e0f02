package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.ClubViews;
import benchtwin.bench.JobBook;
import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A build from a target written out: the numbers of the command line, and the way to a job and to a club of its own. */
class TargetPagesTest {

    private static final Pattern OPTION = Pattern.compile("name=\"option\" value=\"([0-9a-f]+)\"");
    private static final String DRIVER = "/target?want-loft=9.5&want-lie=58&want-face=0&want-length=45+1/4&want-swing-weight=D3"
        + "&want-frequency=250&grip=G-001";

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final Caller caller = Caller.here(PAGES);
    private final Caller visitor = Caller.here(PAGES);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        /target?want-loft=9.5&want-lie=58&want-length=45+1/4&want-swing-weight=D3&want-frequency=250&grip=G-001 | --keep none --category driver --hand right --grip G-001 --target loft=9.5,lie=58,length=45-1/4,swing-weight=D3,frequency=250
        /target?category=iron&number=7&want-loft=34&want-length=37&want-frequency=300&shaft=S-078&keep=shaft&grip=G-001&weight-loft=3 | --keep shaft --category iron --number 7 --hand right --shaft S-078 --grip G-001 --target loft=34,length=37,frequency=300 --weight loft=3
        /target?want-loft=10.5&want-length=45&want-frequency=255&head=H-014&keep=head&grip=G-001&top=3&tol-loft=1 | --keep head --category driver --hand right --head H-014 --grip G-001 --target loft=10.5,length=45,frequency=255 --top 3 --tolerance loft=1
        /target?hand=left&want-loft=10&want-length=45&want-swing-weight=D1&grip=G-001&reading=square | --keep none --category driver --hand left --grip G-001 --target loft=10,length=45,swing-weight=D1 --reading square
        """)
    void thePageShowsTheNumbersOfTheCommandLine(String path, String options) throws Exception {
        JsonNode answer = CommandLine.json(PAGES, ("match " + options).split(" "));
        List<String> expected = new ArrayList<>();
        answer.get("results").forEach(option -> expected.addAll(CommandLine.predicted(option, answer.get("target"))));
        HttpResponse<String> page = visitor.get(path);
        assertThat(page.statusCode()).as(page.body()).isEqualTo(200);
        assertThat(CommandLine.shown(page.body())).isEqualTo(expected);
        assertThat(expected.isEmpty()).isEqualTo(page.body().contains("Nothing in stock fits."));
    }

    @Test
    void theFirstTargetOfTheseHasOptionsThatExplainAndDrawThemselves() throws Exception {
        String page = visitor.get(DRIVER).body();
        assertThat(CommandLine.shown(page)).isNotEmpty();
        String query = "&option=" + Caller.first(OPTION, page);
        assertThat(visitor.part(DRIVER.replace("?", "/how?") + query + "&of=frequency").body()).startsWith("<details").contains("Handbook, section");
        assertThat(visitor.part(DRIVER.replace("?", "/sketch?") + query).body()).contains("<svg").contains("before and after");
        assertThat(visitor.get(DRIVER.replace("?", "/how?") + query + "&of=score").body()).contains("<h1>").contains("href=\"/target?");
    }

    @Test
    void whatIsStillNeededIsSaidAndIsNoFault() throws Exception {
        HttpResponse<String> empty = visitor.get("/target");
        assertThat(empty.statusCode()).isEqualTo(200);
        assertThat(empty.body()).contains("To be ranked it still needs a number that is wanted, such as loft, lie or frequency; the grip it is built with.");
        assertThat(visitor.get("/target?want-loft=9&want-frequency=250&grip=G-001").body())
            .contains("still needs the length its frequency is wanted at.");
        assertThat(visitor.get("/target?want-loft=9&keep=shaft&grip=G-001").body()).contains("still needs the tag of the shaft that is there already");
        assertThat(visitor.get("/target?want-loft=9&keep=head&grip=G-001").body()).contains("still needs the tag of the head that is there already");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        /target?want-loft=steep&grip=G-001          | want-loft | wanted: "steep" is not a value for loft; expected a number
        /target?want-length=long&grip=G-001         | want-length | wanted: "long" is not a value for length; expected inches such as 45.25
        /target?want-loft=9&grip=G-001&category=rod | category | category: "rod"; expected one of driver, fairway
        /target?want-loft=9&grip=G-001&weight-loft=-2 | weight-loft | a weight of -2 for loft is below 0
        /target?want-frequency=250&want-length=45&grip=G-001&weight-length=0 | weight-length | a frequency is wanted at a length
        /target?want-loft=9&grip=G-001&top=0        | top | how many: expected 1 to 20
        """)
    void aFaultIsSaidAtItsField(String path, String field, String words) throws Exception {
        HttpResponse<String> page = visitor.get(path);
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(CommandLine.read(page.body())).containsPattern("id=\"wrong-" + field + "\"[^>]*>" + Pattern.quote(words))
            .contains("value=\"G-001\"");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        /target?want-loft=9&grip=G-999              | no grip is tagged G-999
        /target?want-torque=4&grip=G-001            | a target needs at least one quantity that ranks, such as loft, lie or frequency
        /target?want-loft=9&shaft=S-9999            | no shaft is tagged S-9999
        /target?want-loft=9&grip=G-001&without=H-9999 | no head or shaft is tagged H-9999
        """)
    void whatTheStockCannotAnswerIsSaidAndTheFormKept(String path, String words) throws Exception {
        HttpResponse<String> page = visitor.get(path);
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(CommandLine.read(page.body())).contains(words).contains("name=\"want-loft\"").doesNotContain("--grip");
    }

    @ParameterizedTest
    @ValueSource(strings = {"want-loft", "grip", "number", "shaft", "player", "weight-lie", "due"})
    void whatIsTypedIsShownAsTyped(String field) throws Exception {
        String page = caller.get("/target?" + field + "=" + Caller.encoded("\"><img src=x>")).body();
        assertThat(page).doesNotContain("<img").contains("value=\"&#34;>&lt;img src=x>\"");
    }

    @Test
    void anOptionBecomesAPlayersJobAndThenAClub() throws Exception {
        String page = caller.get(DRIVER + "&player=N.+Oakes").body();
        assertThat(page).contains("name=\"player\" size=\"14\" required");
        String option = Caller.first(OPTION, page);
        HttpResponse<String> nobody = caller.post(DRIVER, Map.of("option", option));
        assertThat(nobody.statusCode()).isEqualTo(400);
        assertThat(CommandLine.read(nobody.body())).contains("The player's name is missing; nothing was made a job.");
        HttpResponse<String> done = caller.post(DRIVER, Map.of("option", option, "player", "N. Oakes", "due", "2031-05-21T14:20"));
        String number = done.headers().firstValue("Location").orElseThrow().substring("/jobs/".length());
        JobBook.Job job = JobBook.show(PAGES.book(), number);
        assertThat(job.player()).contains("N. Oakes");
        assertThat(job.club()).isEmpty();
        assertThat(job.status()).isEqualTo("planned");
        assertThat(job.parts()).extracting(JobBook.PartInShort::kind).contains("head", "shaft");
        assertThat(caller.get("/jobs/" + number + "/hand-over").body()).contains("Tag of the new club");
        assertThat(visitor.get("/jobs/" + number + "/ticket.pdf").statusCode()).isEqualTo(200);
        assertThat(CommandLine.shown(visitor.get(DRIVER).body())).as("promised parts stand below the line").isNotEqualTo(CommandLine.shown(page));
        HttpResponse<String> handed = caller.post("/jobs/" + number + "/hand-over", Map.of("as", "OAKES-NEW", "loft", "9.5", "seen",
            Long.toString(PAGES.book().lastEntry())));
        assertThat(handed.statusCode()).as(handed.body()).isEqualTo(302);
        assertThat(ClubViews.show(PAGES.book(), "OAKES-NEW", ClubViews.When.NOW).fact("player")).contains("N. Oakes");
    }

    @Test
    void aShaftThatIsKeptIsPromisedToo() throws Exception {
        String path = "/target?want-frequency=250&want-loft=10&shaft=S-135&keep=shaft&grip=G-001";
        String page = caller.get(path).body();
        HttpResponse<String> done = caller.post(path, Map.of("option", Caller.first(OPTION, page), "player", "N. Oakes"));
        assertThat(done.statusCode()).as(done.body()).isEqualTo(302);
        String number = done.headers().firstValue("Location").orElseThrow().substring("/jobs/".length());
        assertThat(JobBook.show(PAGES.book(), number).parts()).extracting(JobBook.PartInShort::tag).contains("S-135");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/stock", "/players/N.%20Oakes", "/players/N.%20Oakes/clubs"})
    void itIsReachedFromWhereATechnicianLooks(String path) throws Exception {
        assertThat(visitor.get(path).body()).contains("href=\"/target");
    }
}
