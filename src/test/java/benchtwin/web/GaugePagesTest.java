package benchtwin.web;

import static benchtwin.web.FormFiller.words;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.bench.BadInput;
import benchtwin.bench.GaugeBook;
import java.net.http.HttpResponse;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Gauges, by forms without scripts. */
class GaugePagesTest {

    private static final Pattern FOUND = Pattern.compile("name=\"found\" value=\"([^\"]*)\"");

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final FormFiller kim = new FormFiller(PAGES);

    @Test
    void aGaugeIsPutInAndDescribed() throws Exception {
        kim.open("/gauges");
        HttpResponse<String> put = kim.send("/gauges", "name", "bench <7>", "kind", "loft and lie gauge");
        assertThat(put.body()).doesNotContain("bench <7>").contains("bench &lt;7&gt;");
        assertThat(words(put)).contains("Gauge bench <7> is in the book.").contains("Nothing in the book was read on it");
        assertThat(kim.send("/gauges", "name", "BENCH <7>", "kind", "ruler").statusCode()).isEqualTo(400);
        assertThat(words(kim.send("/gauges", "name", "x", "kind", "thermometer"))).contains("what it is: \"thermometer\"; expected one of loft and lie gauge");

        String path = "/gauges/bench%20%3C7%3E";
        kim.open(path);
        HttpResponse<String> described = kim.send(path, "kind", "loft and lie gauge", "checked", "2026-04-01", "every", "3660", "u-loft", "0,15",
            "mark-loft", "0.5");
        assertThat(words(described)).contains("Last checked on 2026-04-01, to be checked every 3660 days").contains("0.15°").contains("stated");
        GaugeBook.Figures loft = GaugeBook.show(PAGES.book(), "bench <7>").figures().get("loft_deg");
        assertThat(loft.uncertainty()).isEqualTo(OptionalDouble.of(0.15));
        assertThat(loft.mark()).isEqualTo(OptionalDouble.of(0.5));
        kim.open(path);
        HttpResponse<String> wrong = kim.send(path, "every", "0", "u-lie", "0.1");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(words(wrong)).contains("how often it wants checking, 0: expected 1 to 3660 days").doesNotContain("--");
        assertThat(wrong.body()).as("what was typed is kept").contains("name=\"u-lie\" inputmode=\"decimal\" size=\"6\" autocomplete=\"off\" value=\"0.1\"");
        assertThat(words(kim.send(path, "u-lie", "-1"))).contains("the standard uncertainty of lie: -1 is not above 0");
        assertThat(words(kim.open("/find?q=bench+%3C7%3E"))).contains("What its readings show");
        assertThat(words(kim.open("/gauges/none"))).contains("no gauge is called none in the book");
    }

    @Test
    void aCheckThatIsDueIsSaidAndLeadsToTheGauge() {
        kim.open("/gauges");
        kim.send("/gauges", "name", "old scale", "kind", "scale");
        kim.open("/gauges/old%20scale");
        kim.send("/gauges/old%20scale", "checked", "2020-01-01", "every", "30");
        assertThat(words(kim.open("/gauges"))).contains("a check is due");
        assertThat(kim.open("/").body()).contains("href=\"/gauges/old%20scale\"");
    }

    /** By hand: squares about the mean 0.16 with 5 degrees of freedom, and 34.8 less the mean 34.2. */
    @Test
    void whatReadingsShowIsUsedOnceItIsAccepted() throws Exception {
        put("left one");
        put("right one");
        for (String loft : new String[] {"34.0", "34.2", "34.4", "34.2", "34.0", "34.4"}) {
            read("left one", loft);
        }
        read("right one", "34.8");
        assertThat(words(kim.open("/gauges/left%20one"))).contains("repeats to ±0.179").contains("from 6 readings of 1 part");
        HttpResponse<String> right = kim.open("/gauges/right%20one");
        assertThat(words(right)).contains("reads +0.60 ±").contains("more than left one, from 1 part read on both");
        String found = FormFiller.held(right, FOUND);
        read("right one", "34.9");
        kim.open("/gauges/right%20one");
        HttpResponse<String> told = kim.send("/gauges/right%20one/accept", "found", found, "against", "left one");
        assertThat(told.statusCode()).isEqualTo(400);
        assertThat(words(told)).contains("nothing was accepted: more was read since you opened the page");
        assertThat(GaugeBook.show(PAGES.book(), "right one").figures()).isEmpty();
        HttpResponse<String> accepted = kim.send("/gauges/right%20one/accept", "found", FormFiller.held(told, FOUND), "against", "left one");
        assertThat(words(accepted)).contains("1 figure is used from now on.").contains("loft reads +0.65 ±");
        assertThat(GaugeBook.show(PAGES.book(), "right one").figures().get("loft_deg").offset()).isPresent();
        assertThat(words(kim.open("/gauges"))).contains("loft reads +0.65 ±");
        HttpResponse<String> left = kim.open("/gauges/left%20one");
        assertThat(words(kim.send("/gauges/left%20one/accept", "found", FormFiller.held(left, FOUND)))).contains("found from its readings");
        assertThat(GaugeBook.show(PAGES.book(), "left one").figures().get("loft_deg").uncertainty().orElseThrow()).isCloseTo(Math.sqrt(0.16 / 5),
            within(1e-6));
    }

    @Test
    void theSecondOfTwoIsToldAndKeepsWhatWasTyped() throws BadInput {
        put("shared");
        FormFiller fern = new FormFiller(PAGES);
        FormFiller heath = new FormFiller(PAGES);
        fern.open("/gauges/shared");
        heath.open("/gauges/shared");
        fern.send("/gauges/shared", "u-loft", "0.2");
        HttpResponse<String> told = heath.send("/gauges/shared", "u-loft", "0.3");
        assertThat(told.statusCode()).isEqualTo(409);
        assertThat(words(told)).contains("Nothing was entered: this changed after you opened the page.");
        assertThat(told.body()).contains("value=\"0.3\"");
        assertThat(GaugeBook.show(PAGES.book(), "shared").figures().get("loft_deg").uncertainty()).isEqualTo(OptionalDouble.of(0.2));
    }

    private void put(String gauge) {
        kim.open("/gauges");
        kim.send("/gauges", "name", gauge, "kind", "loft and lie gauge");
    }

    private void read(String gauge, String loft) {
        kim.open("/clubs/QUILLBY-9I/read/loft");
        String page = words(kim.send("/clubs/QUILLBY-9I/read/loft", "loft", loft, "gauge", gauge, "so", "loft " + loft));
        assertThat(page).contains("is entered");
    }
}
