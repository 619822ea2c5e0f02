package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers that take longer than a page may. */
class WaitingTest {

    @RegisterExtension
    static final WebBook PAGES = WebBook.ofNoPatience();
    private static final int ACCEPTED = 202;
    private static final int NOTHING_NEW = 204;
    private static final Duration LONGEST = Duration.ofMinutes(2);

    private final Caller caller = Caller.here(PAGES);

    private HttpResponse<String> asks(String path, String... headers) throws Exception {
        return caller.send("GET", path, BodyPublishers.noBody(), headers);
    }

    /** Asks until there is an answer, as a page does each second. */
    private HttpResponse<String> untilThere(String path, int meanwhile, String... headers) throws Exception {
        Instant end = Instant.now().plus(LONGEST);
        HttpResponse<String> answer = asks(path, headers);
        while (answer.statusCode() == meanwhile && Instant.now().isBefore(end)) {
            Thread.sleep(100);
            answer = asks(path, headers);
        }
        return answer;
    }

    @ParameterizedTest
    @ValueSource(strings = {"/clubs/OAKES-DR/twin?keep=none", "/clubs/SANDROW-DR/change?ask=loft+%2B0.5", "/clubs/OAKES-DR/shafts?head=H-014"})
    void aPageSaysThatItIsBeingWorkedOutAndThenHasTheAnswer(String path) throws Exception {
        HttpResponse<String> waits = asks(path);
        assertThat(waits.statusCode()).isEqualTo(ACCEPTED);
        assertThat(waits.body()).contains("<h1>Working it out</h1>", "hx-get=\"" + path + "\"", "<a href=\"" + path + "\">Look again</a>");
        HttpResponse<String> there = untilThere(path, NOTHING_NEW, "HX-Request", "true", "X-Waiting", "page");
        assertThat(there.statusCode()).isEqualTo(200);
        assertThat(there.headers().firstValue("HX-Refresh")).as("the page is loaded anew").hasValue("true");
        HttpResponse<String> page = asks(path);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("id=\"ranking\"").doesNotContain("Look again");
    }

    @Test
    void aPartWaitsInItsPlaceAndIsReplacedByTheAnswer() throws Exception {
        String path = "/clubs/OAKES-DR/twin?keep=head";
        HttpResponse<String> waits = asks(path, "HX-Request", "true");
        assertThat(waits.statusCode()).isEqualTo(ACCEPTED);
        assertThat(waits.body()).contains("X-Waiting", "Look again").doesNotContain("<html");
        HttpResponse<String> there = untilThere(path, NOTHING_NEW, "HX-Request", "true", "X-Waiting", "part");
        assertThat(there.statusCode()).isEqualTo(200);
        assertThat(there.headers().firstValue("HX-Refresh")).isEmpty();
        assertThat(there.body()).doesNotContain("<html", "Look again").contains("twin");
    }

    @Test
    void withoutScriptsThePageIsAskedForAgain() throws Exception {
        HttpResponse<String> page = untilThere("/clubs/OAKES-DR/twin?top=4", ACCEPTED);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("<h1>Twin of OAKES-DR</h1>");
    }

    @Test
    void whatCannotBeIsSaidToWhoWaitsForIt() throws Exception {
        HttpResponse<String> there = untilThere("/clubs/NOSUCH/twin", NOTHING_NEW, "HX-Request", "true", "X-Waiting", "page");
        assertThat(there.statusCode()).isEqualTo(400);
        assertThat(there.headers().firstValue("HX-Refresh")).hasValue("true");
        assertThat(untilThere("/clubs/NOSUCH/twin", ACCEPTED).body()).contains("no club is ");
    }
}
