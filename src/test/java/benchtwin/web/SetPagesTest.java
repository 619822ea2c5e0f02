package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import benchtwin.samples.PastWorkshop;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class SetPagesTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    private static final Visit VISIT = new Visit(PAGES);
    /** Two clubs: the tables are worked out in a moment. */
    private static final String PLAYER = "M. Sandrow";
    private static final Pattern PLANNED = Pattern.compile("href=\"/stock/(head|shaft)%3A([^\"]+)\"");

    private HttpResponse<String> page;

    private void start(String... fields) {
        page = VISIT.post("/sets", Stream.concat(Stream.of("seconds", "20"), Stream.of(fields)).toArray(String[]::new));
    }

    private String planned() throws InterruptedException {
        assertThat(page.uri().getPath()).matches("/sets/\\d+");
        while (page.body().contains("data-live")) {
            Thread.sleep(200);
            page = VISIT.get(page.uri().getPath());
        }
        return page.body();
    }

    private List<String> parts() {
        return PLANNED.matcher(page.body()).results().map(found -> found.group(2)).collect(Collectors.toList());
    }

    @AfterEach
    void nothingIsLeftSearching() throws Exception {
        Matcher running = Pattern.compile("being planned: <a href=\"(/sets/\\d+)\"").matcher(VISIT.get("/sets").body());
        if (running.find()) {
            page = VISIT.post(running.group(1) + "/stop");
            planned();
        }
    }

    @Test
    void aPlanHasItsTableItsPicturesAndItsProof() throws Exception {
        start("player", PLAYER);
        assertThat(planned()).contains("2 of 2 clubs built from stock", "A set for M. Sandrow", "squared tolerances; proven", "<svg",
            "Frequency against length", "Make it a job");
        assertThat(parts()).hasSize(4);
    }

    @Test
    void aPlanBecomesOneJobHoweverOftenItIsAskedFor() throws Exception {
        start("player", "T. Tolver");
        planned();
        int before = JobBook.list(PAGES.book(), false).size();
        page = VISIT.post(page.uri().getPath() + "/jobs", "due", "2027-05-21T14:20");
        VISIT.post(page.uri().getPath() + "/jobs", "due", "2027-05-21T14:20");
        List<JobBook.Job> jobs = JobBook.list(PAGES.book(), false);
        assertThat(jobs).hasSize(before + 1);
        JobBook.Job job = jobs.stream().filter(one -> one.player().equals(Optional.of("T. Tolver"))).findFirst().orElseThrow();
        assertThat(job.due()).contains("2027-05-21 14:20");
        assertThat(job.parts()).isNotEmpty();
        assertThat(page.body()).contains("Promised to job", "href=\"/jobs/%s\"".formatted(job.number()));
    }

    @Test
    void aSecondPersonIsToldWhatTheMachineIsBusyWith() throws Exception {
        start("player", "L. Wexcombe", "player", "J. Quillby");
        HttpResponse<String> first = page;
        start("player", PLAYER);
        assertThat(page.statusCode()).isEqualTo(409);
        assertThat(page.body()).contains("One plan at a time", "L. Wexcombe", "are being planned");
        page = VISIT.post(first.uri().getPath() + "/stop");
        assertThat(planned()).as("the best plan so far is kept").containsPattern("\\d+ of 27 clubs built from stock");
    }

    @Test
    void thePlanIsToldAsItGetsBetterUntilItIsOver() throws Exception {
        start("player", PLAYER, "player", "K. Larkfield");
        HttpResponse<Stream<String>> told = VISIT.client().send(HttpRequest.newBuilder(VISIT.uri(page.uri().getPath() + "/events"))
            .header("Accept", "text/event-stream").build(), HttpResponse.BodyHandlers.ofLines());
        assertThat(told.headers().firstValue("Content-Type").orElse("")).startsWith("text/event-stream");
        List<String> lines = told.body().takeWhile(line -> !line.equals("event: over")).toList();
        assertThat(lines).contains("event: now").anyMatch(line -> line.startsWith("data: ") && line.contains("data-sentence"));
        assertThat(planned()).contains("5 of 5 clubs");
    }

    @Test
    void aLockedPartStaysAndABannedOneGoes() throws Exception {
        start("player", PLAYER);
        planned();
        String club = Pattern.compile("name=\"head\" value=\"([^\"]+)\"").matcher(page.body()).results().findFirst().orElseThrow().group(1);
        List<String> before = parts();
        page = VISIT.post(page.uri().getPath() + "/again", "head", club, "banned", before.get(1), "seconds", "20");
        planned();
        assertThat(parts().get(0)).isEqualTo(before.get(0));
        assertThat(parts()).doesNotContain(before.get(1));
        assertThat(page.body()).contains("1 part locked, without " + before.get(1), "the plan before", "The pins together cost");
        assertThat(page.body()).containsPattern("name=\"head\" value=\"%s\" form=\"again\" checked".formatted(Pattern.quote(club)));
    }

    @Test
    void aPartSwappedByHandShowsWhatItCosts() throws Exception {
        start("player", "A. Penhollow");   // two wedges, whose shafts fit both
        planned();
        String club = Pattern.compile("<option value=\"([^\"]+/[^\"]+)\"").matcher(page.body()).results().findFirst().orElseThrow().group(1);
        String plan = page.uri().getPath();
        List<String> before = parts();
        HttpResponse<String> refused = VISIT.post(plan + "/swap", "club", club, "part", "shaft", "tag", "S-9999");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("no shaft is tagged S-9999; nearest are").doesNotContain("--pin");
        page = VISIT.post(plan + "/swap", "club", club, "part", "shaft", "tag", before.get(3));
        planned();
        assertThat(parts().get(1)).as("the other club's shaft").isEqualTo(before.get(3));
        assertThat(page.body()).contains("by hand", "the plan before", "href=\"" + plan + "\"");
    }

    @Test
    void setsOutOfFilesArePlannedAndTheirFaultsStandBesideTheirRows() throws Exception {
        String targets = Files.readString(PastWorkshop.folder().resolve("set-targets.csv"));
        String lines = Files.readString(PastWorkshop.folder().resolve("lines.csv"));
        HttpResponse<String> refused = VISIT.upload("/sets", "set-targets.csv", targets.replaceFirst(",driver,driver,", ",driver,drover,"), "lines.csv", lines);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("nothing is planned", "<td class=\"fault\"><strong>fault</strong> drover</td>");
        assertThat(VISIT.upload("/sets", "heads.csv", Files.readString(PastWorkshop.folder().resolve("heads.csv"))).body())
            .contains("none of these files says which clubs are wanted");
        page = VISIT.upload("/sets", "set-targets.csv", targets, "lines.csv", lines);
        assertThat(page.uri().getPath()).matches("/sets/\\d+");
        page = VISIT.post(page.uri().getPath() + "/stop");
        assertThat(planned()).contains("clubs built from stock");
    }

    @Test
    void whatCannotBePlannedIsSaid() {
        start();
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.body()).contains("nobody is chosen");
        start("player", "Nobody");
        assertThat(page.body()).contains("no club of \"Nobody\" is on record").doesNotContain("--from-record");
        start("player", PLAYER, "seconds", "0");
        assertThat(VISIT.get("/sets/999").statusCode()).isEqualTo(400);
    }
}
