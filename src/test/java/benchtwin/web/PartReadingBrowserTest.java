package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.StockViews;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A part on the scale: read in three touches, put right when it was a slip. */
@Tag("browser")
class PartReadingBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    void aReadingInThreeTouchesAndASlipPutRight() throws Exception {
        Look.at(BROWSER, "part", "/stock/H-002");
        BROWSER.press("15.20° loft").sees("Last read 15.20°");
        Look.asItStands(BROWSER, "part-read");
        for (String key : new String[] {"1", "5", ".", "6"}) {
            BROWSER.press(key);
        }
        BROWSER.press("Save").sees("loft 15.60° is entered.");
        long id = StockViews.show(PAGES.book(), "H-002").part().readings().stream().filter(read -> read.value() == 15.6).findFirst()
            .orElseThrow().id();
        BROWSER.press("Put right reading %d, loft".formatted(id)).sees("What it said stays in the history");
        Look.asItStands(BROWSER, "correct");
        BROWSER.type("It should have said", "15.3").type("Why", "read the wrong mark").press("Put right").sees("loft 15.60° is put right: 15.30°")
            .sees("which said 15.60°: read the wrong mark");
    }

    @Test
    void howAShaftWasClampedIsAsked() {
        BROWSER.open("/stock/S-001").choose("Read something else", "frequency, once more").press("Read it").sees("Butt in the clamp, in");
        Look.asItStands(BROWSER, "part-read-shaft");
        assertThat(BROWSER.field("Mass at the tip, g").getDomProperty("value")).isEqualTo("205");
    }
}
