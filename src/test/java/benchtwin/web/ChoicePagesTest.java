package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Find a head, choose shafts, change something: the same numbers as the command line, and the way to a job, without scripts. */
class ChoicePagesTest {

    private static final int FIRST_PAGE_BYTES = 150_000;
    private static final Pattern OPTION = Pattern.compile("name=\"option\" value=\"([0-9a-f]+)\"");
    private static final Pattern PARTS = Pattern.compile("name=\"part\" value=\"([^\"]+)\"");
    private static final Pattern HOW = Pattern.compile("href=\"(/clubs/[^\"]*/how\\?[^\"]*of=[a-z-]+)\"");

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final Caller visitor = Caller.here(PAGES);

    @ParameterizedTest
    @CsvSource({"twin, match --club OAKES-DR", "twin?keep=none, match --club OAKES-DR --keep none",
        "twin?otherModels=yes&tol-lie=0.1, match --club OAKES-DR --other-models --tolerance lie=0.1",
        "twin?read:H-014:loft=9.3&read:H-014:lie=58.4, 'match --club OAKES-DR --readings H-014:loft=9.3,lie=58.4'",
        "twin?without=H-110, match --club OAKES-DR --without H-110",
        "twin?weight-lie=9&weight-total-mass=0, 'match --club OAKES-DR --weight lie=9,total-mass=0'",
        "twin?lengthStep=1/16&cure=30, match --club OAKES-DR --length-step 1/16 --cure-minutes 30",
        "shafts?head=H-014&weight-torque=8&perModel=1&headAdded=4, 'shafts --club OAKES-DR --head H-014 --weight torque=8 --top 6 --per-model 1 --head-added 4'",
        "shafts?head=H-014&top=4, shafts --club OAKES-DR --head H-014 --top 4",
        "shafts?head=H-014&pick=ladder&step=2&rungs=3, shafts --club OAKES-DR --head H-014 --pick ladder --step 2 --rungs 3"})
    void thePageShowsTheNumbersOfTheCommandLine(String page, String command) throws Exception {
        JsonNode answer = CommandLine.json(PAGES, command.split(" "));
        List<String> expected = new ArrayList<>();
        JsonNode options = answer.has("results") ? answer.get("results") : answer.get("picks");
        options.forEach(option -> expected.addAll(CommandLine.predicted(option, answer.get("target"))));
        assertThat(expected).isNotEmpty();
        assertThat(CommandLine.shown(visitor.get("/clubs/OAKES-DR/" + page).body())).isEqualTo(expected);
    }

    @Test
    void aChangeShowsTheNumbersOfTheCommandLine() throws Exception {
        JsonNode answer = CommandLine.json(PAGES, "change", "--club", "SANDROW-DR", "loft=+0.5");
        String page = visitor.get("/clubs/SANDROW-DR/change?ask=loft+%2B0.5").body();
        assertThat(answer.get("ways")).isNotEmpty();
        for (JsonNode way : answer.get("ways")) {
            assertThat(CommandLine.shown(page)).containsSubsequence(CommandLine.predicted(way, answer.get("target")));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/clubs/OAKES-DR/twin", "/clubs/OAKES-DR/shafts?head=H-014", "/clubs/SANDROW-DR/change?ask=lie+%2B0.5"})
    void aFirstPageIsSmallAndEveryNumberOpensHowItWasComputed(String path) throws Exception {
        String page = visitor.get(path).body();
        assertThat(page.length()).isLessThan(FIRST_PAGE_BYTES);
        List<String> addresses = new ArrayList<>();
        Matcher how = HOW.matcher(page);
        while (how.find() && addresses.size() < 12) {
            addresses.add(how.group(1).replace("&amp;", "&"));
        }
        assertThat(addresses).isNotEmpty();
        for (String address : addresses) {
            assertThat(visitor.part(address).body()).as(address).startsWith("<details").contains("Handbook, section");
            HttpResponse<String> whole = visitor.get(address);
            assertThat(whole.statusCode()).isEqualTo(200);
            assertThat(whole.body()).contains("<h1>").contains("Back to the options");
        }
    }

    private HttpResponse<String> choose(Caller who, String path, String page) throws Exception {
        List<Map.Entry<String, String>> fields = new ArrayList<>();
        fields.add(Map.entry("option", Caller.first(OPTION, page)));
        Matcher part = PARTS.matcher(page);
        for (int k = 0; k < 2 && part.find(); k++) {
            fields.add(Map.entry("part", part.group(1)));
        }
        fields.add(Map.entry("due", "2031-05-21T14:20"));
        return who.post(path, fields);
    }

    private static JobBook.Job job(HttpResponse<String> answer) throws Exception {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(302);
        String location = answer.headers().firstValue("Location").orElseThrow();
        assertThat(location).matches("/jobs/\\d+");
        return JobBook.show(PAGES.book(), location.substring("/jobs/".length()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/clubs/SANDROW-DR/twin?keep=none", "/clubs/SANDROW-DR/shafts?pick=ladder&rungs=3",
        "/clubs/SANDROW-DR/change?ask=swing+weight+D2"})
    void whatIsChosenIsAJobWithItsPlan(String path) throws Exception {
        JobBook.Job job = job(choose(visitor, path, visitor.get(path).body()));
        assertThat(job.club()).contains("SANDROW-DR");
        assertThat(job.due()).contains("2031-05-21 14:20");
        assertThat(job.status()).isEqualTo("planned");
    }

    @Test
    void aJobSaysWhoChoseIt() throws Exception {
        Caller fern = Caller.here(PAGES);
        fern.get("/");
        fern.post("/who", Map.of("who", "Ms Fern", "back", "/"));
        String path = "/clubs/QUILLBY-3W/change?ask=swing+weight+-2";
        JobBook.Job job = job(choose(fern, path, fern.get(path).body()));
        assertThat(fern.get("/jobs/" + job.number()).body()).contains("taken on by Ms Fern");
    }

    @Test
    void whoComesSecondIsToldWhoHasTheHead() throws Exception {
        Caller second = Caller.here(PAGES);
        String path = "/clubs/OAKES-DR/twin?tol-face=0.6";
        String page = visitor.get(path).body();
        String samePage = second.get(path).body();
        JobBook.Job job = job(choose(visitor, path, page));
        HttpResponse<String> refused = choose(second, path, samePage);
        assertThat(refused.statusCode()).isEqualTo(409);
        Matcher part = PARTS.matcher(samePage);
        assertThat(part.find()).isTrue();
        assertThat(refused.body()).contains("head %s is promised to job %s".formatted(part.group(1), job.number()))
            .contains("Nothing was made a job").contains("Below the line");
        assertThat(JobBook.list(PAGES.book(), false)).filteredOn(one -> one.club().equals(job.club())).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        /clubs/OAKES-DR/twin?tol-loft=x            | tolerance of loft: "x" is not a number
        /clubs/OAKES-DR/twin?tol-loft=0            | a tolerance of 0 for loft is not above 0
        /clubs/OAKES-DR/twin?weight-lie=much       | weight of lie: "much" is not a number
        /clubs/OAKES-DR/twin?weight-lie=-1         | a weight of -1 for lie is below 0
        /clubs/OAKES-DR/twin?lengthStep=0          | least butt cut "0": expected a length from 0.1 mm to 1 in
        /clubs/OAKES-DR/shafts?head=H-014&weight-torque=x | weight of torque: "x" is not a number
        /clubs/OAKES-DR/shafts?head=H-014&headAdded=99 | added to the head: expected grams from -30 to 60
        /clubs/SANDROW-DR/change?ask=loft+1&weight-lie=x | weight of lie: "x" is not a number
        /clubs/OAKES-DR/twin?keep=both             | keep: "both"; expected one of shaft, head, none
        /clubs/OAKES-DR/twin?top=99                | how many: expected 1 to 20
        /clubs/OAKES-DR/twin?due=2020-01-01T10:00  | 2020-01-01 10:00 is over
        /clubs/OAKES-DR/twin?without=H-9999        | no head or shaft is tagged H-9999
        /clubs/OAKES-DR/twin?without=S-234         | S-234 is what the twin keeps and cannot be left out
        /clubs/OAKES-DR/twin?read:H-014:loft=high  | "high" is not a value for loft
        /clubs/OAKES-DR/twin/how?option=00&of=loft | that option is not in the answer any more
        /clubs/NOBODY/twin                         | no club is tagged NOBODY
        /clubs/OAKES-DR/shafts?head=H-014&step=0   | step: expected cpm above 0
        /clubs/OAKES-DR/shafts?head=H-014&clamp=5  | say how a frequency written out is read
        /clubs/SANDROW-DR/change?ask=loft          | is not of the form quantity=value
        """)
    void whatCannotBeAnsweredSaysWhy(String path, String words) throws Exception {
        HttpResponse<String> answer = visitor.get(path);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body().replace("&#34;", "\"").replace("&quot;", "\"")).contains(words);
    }

    @Test
    void aClubWhoseHeadBrokeIsAskedForAnotherHead() throws Exception {
        HttpResponse<String> answer = visitor.get("/clubs/OAKES-DR/shafts");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("head H-106 is cracked").contains("name the one it is built with, by its tag, under Head").contains("name=\"head\"")
            .doesNotContain("--head");
    }

    @Test
    void whatIsLeftOutByItsButtonStaysLeftOut() throws Exception {
        HttpResponse<String> part = visitor.part("/clubs/OAKES-DR/twin?leaveOut=H-026&tol-loft=");
        assertThat(part.headers().firstValue("HX-Push-Url")).contains("/clubs/OAKES-DR/twin?without=H-026");
        assertThat(part.body()).contains("hx-swap-oob=\"true\"").contains("1 left out by hand").doesNotContain("Numbers of H-026");
    }

    @Test
    void weightsStandInTheAddressAndChangeTheOrder() throws Exception {
        JsonNode usual = CommandLine.json(PAGES, "match", "--club", "OAKES-DR");
        JsonNode weighted = CommandLine.json(PAGES, "match", "--club", "OAKES-DR", "--weight", "face=50");
        assertThat(weighted.get("results").get(0).get("miss").asDouble()).isNotEqualTo(usual.get("results").get(0).get("miss").asDouble());
        HttpResponse<String> part = visitor.part("/clubs/OAKES-DR/twin?tol-loft=&weight-face=50");
        assertThat(part.headers().firstValue("HX-Push-Url")).contains("/clubs/OAKES-DR/twin?weight-face=50");
        assertThat(part.body()).contains("Miss %.2f tol".formatted(weighted.get("results").get(0).get("miss").asDouble()));
        assertThat(visitor.get("/clubs/OAKES-DR/twin?weight-face=50").body()).contains("name=\"weight-face\"").contains("value=\"50\"");
    }

    @ParameterizedTest
    @CsvSource({"/clubs/OAKES-DR/twin, weight-face, tol-loft", "/clubs/OAKES-DR/shafts?head=H-014, weight-torque, tol-frequency",
        "/clubs/SANDROW-DR/change?ask=loft+1, weight-lie, tol-loft"})
    void eachFaultStandsAtItsFieldAndNothingTypedIsLost(String path, String weight, String tolerance) throws Exception {
        String address = path + (path.contains("?") ? "&" : "?") + weight + "=%3Cb%3Ex&" + tolerance + "=0.3.1";
        HttpResponse<String> answer = visitor.get(address);
        assertThat(answer.statusCode()).isEqualTo(400);
        for (String field : List.of(weight, tolerance)) {
            assertThat(answer.body()).containsPattern("id=\"wrong-" + field + "\"[^>]*>[^<]*is not a number");
        }
        assertThat(answer.body()).contains("value=\"&lt;b>x\"").contains("value=\"0.3.1\"").doesNotContain("<b>x");
        HttpResponse<String> part = visitor.part(address);
        assertThat(part.statusCode()).isEqualTo(400);
        assertThat(part.body()).containsPattern("id=\"wrong-" + weight + "\" hx-swap-oob=\"true\">[^<]*is not a number");
    }

    @Test
    void whatWasTypedAsReadIsAskedForAgain() throws Exception {
        String page = visitor.get("/clubs/OAKES-DR/twin?read:H-014:loft=high").body();
        assertThat(page).contains("read on H-014, loft").contains("name=\"read:H-014:loft\"").contains("value=\"high\"");
    }

    @Test
    void aJobThatWaitsForItsPlanIsPlannedAndNoOtherIsTakenOn() throws Exception {
        String number = JobBook.add(PAGES.book(), new JobBook.Order(JobBook.What.TWIN, Optional.empty(), Optional.of("SANDROW-DR"),
            Optional.of("2031-06-01"), ""));
        assertThat(visitor.get("/").body()).contains("/clubs/SANDROW-DR/twin?job=" + number);
        int before = JobBook.list(PAGES.book(), false).size();
        String path = "/clubs/SANDROW-DR/twin?job=" + number + "&keep=none";
        String page = visitor.get(path).body();
        assertThat(page).contains("to plan <a href=\"/jobs/" + number + "\">");
        JobBook.Job job = job(choose(visitor, path, page));
        assertThat(job.number()).isEqualTo(number);
        assertThat(job.status()).isEqualTo("planned");
        assertThat(job.due()).contains("2031-06-01");
        assertThat(JobBook.list(PAGES.book(), false)).hasSize(before);
        assertThat(visitor.get("/clubs/SANDROW-DR/twin?job=999").body()).contains("999");
    }
}
