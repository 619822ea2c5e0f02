package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.StockViews;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ImportPagesTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    private static final Visit VISIT = new Visit(PAGES);
    private static final Pattern SHOWN = Pattern.compile("name=\"shown\" value=\"([^\"]+)\"");

    private static String weights(String... rows) {
        return "tag,port,mass_g,count,place\n" + String.join("\n", rows) + "\n";
    }

    private static boolean isKnown(String tag) throws Exception {
        return !StockViews.list(PAGES.book(), new StockViews.Asked(List.of(), List.of(tag), false, true)).isEmpty();
    }

    private static HttpResponse<String> enter(HttpResponse<String> look) {
        Matcher shown = SHOWN.matcher(look.body());
        return VISIT.post(look.uri().getPath(), "shown", shown.find() ? shown.group(1) : "", "good",
            look.body().contains("name=\"good\"") ? "yes" : "");
    }

    @Test
    void aFaultStandsBesideItsRowAndNothingIsEntered() throws Exception {
        HttpResponse<String> look = VISIT.upload("/stock/import", "weights-new.csv", weights("X-01,M5,4,3,tray", "X-02,M5,heavy,3,tray"));
        assertThat(look.uri().getPath()).matches("/stock/import/[\\w-]+");
        assertThat(look.body()).contains("1 fault: nothing is entered", "2 rows of weights")
            .contains("column mass_g: \"heavy\" is not a number; expected ")
            .contains("<td class=\"fault\"><strong>fault</strong> heavy</td>").doesNotContain("into the book</button>");
        assertThat(isKnown("X-01")).isFalse();
    }

    @Test
    void theGoodRowsAreTakenWhereSomebodyAsksForThem() throws Exception {
        HttpResponse<String> look = VISIT.upload("/stock/import", "weights-new.csv", weights("X-11,M5,4,3,tray", "X-12,M5,heavy,3,tray"));
        HttpResponse<String> done = enter(VISIT.get(look.uri().getPath() + "?good=yes"));
        assertThat(done.body()).contains("1 new, 0 changed, 0 as before");
        assertThat(isKnown("X-11")).isTrue();
        assertThat(isKnown("X-12")).isFalse();
    }

    @Test
    void whatWouldChangeIsShownFirstAndTheSameFileTwiceChangesNothing() throws Exception {
        HttpResponse<String> look = VISIT.upload("/stock/import", "weights-new.csv", weights("X-21,M5,4,3,tray"));
        assertThat(look.body()).contains("1 new, 0 changed, 0 as before");
        assertThat(isKnown("X-21")).as("only looked at").isFalse();
        assertThat(enter(look).body()).contains("<h1>Imported</h1>");
        HttpResponse<String> again = VISIT.upload("/stock/import", "weights-new.csv", weights("X-21,M5,4,3,tray"));
        assertThat(again.body()).contains("0 new, 0 changed, 1 as before", "there is nothing to enter");
        HttpResponse<String> moved = VISIT.upload("/stock/import", "weights-new.csv", weights("X-21,M5,4,3,van"));
        assertThat(moved.body()).contains("0 new, 1 changed, 0 as before", "X-21", "van");
    }

    @Test
    void whatSomebodyEnteredMeanwhileIsShownBeforeAnythingIsEntered() throws Exception {
        VISIT.upload("/stock/import", "weights-new.csv", weights("X-31,M5,4,3,tray"));
        HttpResponse<String> first = VISIT.upload("/stock/import", "weights-new.csv", weights("X-31,M5,4,3,tray"));
        HttpResponse<String> second = VISIT.upload("/stock/import", "weights-new.csv", weights("X-31,M5,4,9,drawer"));
        enter(first);
        HttpResponse<String> refused = enter(second);
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("Somebody entered something meanwhile", "0 new, 1 changed");
        assertThat(StockViews.show(PAGES.book(), "X-31").part().place()).contains("tray");
    }

    @Test
    void filesThatBelongTogetherAreReadTogether() {
        HttpResponse<String> look = VISIT.upload("/stock/import", "shafts.csv", "tag\n", "lines.csv", "tag,x\n1,2\n");
        assertThat(look.body()).contains("shafts.csv", "lines.csv", "not stock");
    }

    @Test
    void whatIsNoTableIsRefusedByItsName() {
        HttpResponse<String> refused = VISIT.upload("/stock/import", "..\\..\\stock.exe", "MZ");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("stock.exe is no CSV file; expected a name ending in .csv or .txt");
        assertThat(VISIT.upload("/stock/import").body()).contains("no file was chosen");
    }

    /** Under a name that tells the kind, under one that does not, and where sets are planned. */
    @ParameterizedTest
    @CsvSource({"/stock/import, weights.csv", "/stock/import, new things.csv", "/sets, set-targets.csv"})
    void whatIsNoTextIsRefusedInWordsThatSayWhatToDo(String path, String name) {
        String saved = "open it in the program it was made with and save the table as CSV";
        assertThat(refusal(path, name, new byte[] {'P', 'K', 3, 4, 20, 0, 6, 0})).contains(name + ": is a workbook or archive, not text", saved);
        assertThat(refusal(path, name, new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0})).contains(
            name + ": is a picture (PNG), not a table", saved);
        assertThat(refusal(path, name, weights("X-51,M5,4,3,tray").getBytes(StandardCharsets.UTF_16))).contains(name + ": is saved as UTF-16", saved);
        assertThat(refusal(path, name, weights("X-51,M5,4,3,tray").getBytes(StandardCharsets.UTF_16LE))).contains(name + ": is saved as UTF-16", saved);
        assertThat(refusal(path, name, new byte[0])).contains(name + ": is empty; expected a ");
        assertThat(refusal(path, name, new byte[] {0, 1, 2, 3})).contains("holds a zero byte", "not a binary file");
    }

    private static String refusal(String path, String name, byte[] content) {
        String body = VISIT.upload(path, name, content).body();
        assertThat(body).doesNotContain("into the book</button>");
        return body.replaceAll("\\s+", " ").replaceAll("<[^>]+>", "");
    }

    @Test
    void filesArePutAwayAfterAWhile() {
        HttpResponse<String> gone = VISIT.get("/stock/import/nosuchname");
        assertThat(gone.statusCode()).isEqualTo(400);
        assertThat(gone.body()).contains("put away");
    }

    @Test
    void aCellIsShownAsTyped() {
        HttpResponse<String> look = VISIT.upload("/stock/import", "weights.csv", weights("X-41,<script>alert(1)</script>,x,3,tray"));
        assertThat(look.body()).contains("&lt;script").doesNotContain("<script>alert");
    }
}
