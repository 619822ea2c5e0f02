package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import benchtwin.bench.StockViews;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class StockPagesTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    private static final Visit VISIT = new Visit(PAGES);

    private static StockViews.Part part(String tag) throws Exception {
        return StockViews.show(PAGES.book(), tag).part();
    }

    /** An act by somebody who has just looked. */
    private static HttpResponse<String> act(String act, String... fields) throws Exception {
        return VISIT.post("/stock/acts/" + act, Stream.concat(Stream.of("seen", Long.toString(PAGES.book().lastEntry())),
            Stream.of(fields)).toArray(String[]::new));
    }

    @Test
    void whoSendsSecondIsToldWhatCameFirstAndNothingIsOverwritten() throws Exception {
        String before = Long.toString(PAGES.book().lastEntry());
        act("move", "tag", "head:H-026", "place", "van");
        HttpResponse<String> second = VISIT.post("/stock/acts/move", "seen", before, "tag", "head:H-026", "place", "tray 9");
        assertThat(second.statusCode()).isEqualTo(409);
        assertThat(second.body()).contains("somebody else entered something first", "moved to van", "value=\"tray 9\"");
        assertThat(part("H-026").place()).contains("van");
    }

    @Test
    void aWordAndAKindNarrowTheList() {
        String all = VISIT.get("/stock?kind=shaft").body();
        assertThat(all).contains("shaft:S-001").doesNotContain("head:H-001");
        assertThat(VISIT.get("/stock?q=H-014").body()).contains("head:H-014", "1 part").doesNotContain("head:H-013");
        assertThat(VISIT.get("/stock?q=nosuchword").body()).contains("No part is like that");
    }

    @Test
    void aLongListGoesOnOnTheNextPage() {
        String first = VISIT.get("/stock").body();
        assertThat(first).contains("1 to 200 shown").contains("from=200");
        assertThat(VISIT.get("/stock?from=200").body()).contains("201 to 400 shown");
        assertThat(first.length()).as("a page stays below 150 kB").isLessThan(150_000);
    }

    @Test
    void severalPartsMoveTogetherAndThePageSaysSo() throws Exception {
        HttpResponse<String> moved = act("move", "tag", "head:H-020", "tag", "head:H-021", "place", "van <3>");
        assertThat(moved.statusCode()).isEqualTo(200);
        assertThat(moved.body()).contains("H-020, H-021 moved to van &lt;3&gt;.").doesNotContain("van <3>");
        assertThat(part("H-020").place()).contains("van <3>");
        assertThat(part("H-021").place()).contains("van <3>");
    }

    @Test
    void wherePartsCannotAllBePromisedNoneIsAndWhatWasTypedStays() throws Exception {
        HttpResponse<String> refused = act("reserve", "tag", "head:H-022", "tag", "head:H-245", "whom", "Quincy");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("head H-245 is promised to E. Ashcutter", "value=\"Quincy\"");
        assertThat(part("H-022").promises()).isEmpty();
    }

    @Test
    void aPartIsPromisedReleasedRetiredAndBroughtBack() throws Exception {
        act("reserve", "tag", "head:H-023", "whom", "A. Tester");
        assertThat(part("H-023").promises()).hasSize(1);
        act("release", "tag", "head:H-023", "why", "");
        assertThat(part("H-023").promises()).isEmpty();
        assertThat(act("retire", "tag", "head:H-023", "why", "sold").body()).contains("H-023 out of the stock.");
        assertThat(part("H-023").standing()).isEqualTo("retired");
        assertThat(VISIT.get("/stock/head:H-023").body()).contains("Back in stock");
        act("return", "tag", "head:H-023", "why", "found");
        assertThat(part("H-023").standing()).isEqualTo("in stock");
    }

    @Test
    void aCrackedPartNeverComesBack() throws Exception {
        act("retire", "tag", "head:H-024", "cracked", "yes");
        assertThat(VISIT.get("/stock/head:H-024").body()).doesNotContain("Back in stock");
        assertThat(act("return", "tag", "head:H-024").statusCode()).isEqualTo(400);
    }

    @Test
    void countsArePutDownAndAWrongOneChangesNothing() throws Exception {
        StockViews.Part weight = StockViews.list(PAGES.book(), new StockViews.Asked(List.of("weight"), List.of(), false,
            false)).get(0);
        assertThat(VISIT.post("/stock/count", "count-" + weight.fullTag(), "41").body()).contains("Put down: 41 of " + weight.tag());
        assertThat(part(weight.fullTag()).count()).hasValue(41);
        HttpResponse<String> wrong = VISIT.post("/stock/count", "count-" + weight.fullTag(), "many");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body()).contains("expected how many were counted");
        assertThat(part(weight.fullTag()).count()).hasValue(41);
    }

    @Test
    void aNoteIsShownAsTyped() throws Exception {
        act("note", "tag", "head:H-025", "note", "<script>alert(1)</script>");
        assertThat(VISIT.get("/stock/head:H-025").body()).contains("&lt;script&gt;alert(1)&lt;/script&gt;").doesNotContain("<script>alert");
    }

    @Test
    void labelsComeAsAPdfShownInTheBrowser() {
        assertThat(VISIT.get("/labels?tag=head:H-014&tag=shaft:S-001").body()).contains("2 labels on 1 sheet a4-3x7");
        HttpResponse<byte[]> pdf = VISIT.bytes("/labels.pdf?tag=head:H-014&tag=shaft:S-001");
        assertThat(pdf.headers().firstValue("Content-Type").orElse("")).startsWith("application/pdf");
        assertThat(pdf.headers().firstValue("Content-Disposition")).contains("inline; filename=\"labels.pdf\"");
        assertThat(new String(pdf.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        HttpResponse<String> wrong = VISIT.get("/labels?tag=head:H-014&copies=0");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body()).contains("copies 0: expected 1 to 100");
    }

    @Test
    void labelsPutDownAsPrintedAreNewNoMore() {
        assertThat(VISIT.get("/labels?kind=grip&new=yes").body()).contains("grip:");
        VISIT.post("/labels/printed", "tag", "head:H-030");
        assertThat(VISIT.get("/labels?kind=head&new=yes").body()).contains("value=\"head:H-031\"").doesNotContain("value=\"head:H-030\"");
    }

    @Test
    void aTicketComesAsAPdfAndAsAPageWithoutScripts() throws Exception {
        String job = JobBook.add(PAGES.book(), new JobBook.Order(JobBook.What.REPAIR, Optional.of("J. Quillby"), Optional.empty(),
            Optional.of("2026-05-21"), "regrip"));
        HttpResponse<byte[]> pdf = VISIT.bytes("/jobs/" + job + "/ticket.pdf");
        assertThat(new String(pdf.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        assertThat(pdf.headers().firstValue("Content-Disposition")).contains("inline; filename=\"job-%s.pdf\"".formatted(job));
        HttpResponse<String> page = VISIT.get("/jobs/" + job + "/ticket.html");
        assertThat(page.body()).contains("J. Quillby");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElse("")).contains("default-src 'none'").doesNotContain("script-src");
        assertThat(VISIT.get("/jobs/" + job + "/ticket").body()).contains("Ticket to print");
        assertThat(VISIT.get("/jobs/" + job + "/ticket.pdf?start=teatime").statusCode()).isEqualTo(400);
        assertThat(VISIT.get("/jobs/9999/ticket.pdf").statusCode()).isEqualTo(400);
    }
}
