package benchtwin.web;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The workshop's own things are looked after: its gauges and its book; and what is known of a club. */
@Tag("browser")
class KeepingBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    void aGaugeFromItsNameToItsFigures() {
        BROWSER.open("/").press("Gauges").sees("Put a gauge into the book");
        BROWSER.type("Called", "bench 7").choose("It is a", "loft and lie gauge").press("Put it in").sees("Gauge bench 7 is in the book.");
        BROWSER.type("loft ±", "0.15").type("Check every", "30").press("Put it down").sees("0.15°");
        for (String loft : new String[] {"41.8", "41.9", "41.7", "41.8", "41.9", "41.7"}) {
            BROWSER.open("/clubs/QUILLBY-9I/read/loft").press("How it was read");
            BROWSER.type("loft now", loft).type("Gauge", "bench 7").press("Save").sees("is entered as found.");
        }
        BROWSER.open("/gauges/bench%207").sees("repeats to ±0.089");
        Look.asItStands(BROWSER, "gauge");
        BROWSER.press("Use this from now on").sees("found from its readings");
        Look.at(BROWSER, "gauges", "/gauges");
    }

    @Test
    void theBookIsCopiedAndChecked() {
        BROWSER.open("/players").press("The book").sees("No copy has been made here yet");
        BROWSER.press("Make a copy").sees("Last copied");
        Look.asItStands(BROWSER, "book");
        BROWSER.press("Check the book").sees("All is in order");
        Look.asItStands(BROWSER, "book-check");
    }

    @Test
    void whatHasChangedOfAClub() {
        BROWSER.open("/clubs/OAKES-3W").press("Put down what has changed of it").sees("Parts, by their tags");
        Look.asItStands(BROWSER, "club-made");
        BROWSER.type("ferrule", "black").press("Enter it").landsOn("/clubs/OAKES-3W\\?said=\\d+").sees("What has changed of OAKES-3W is entered.");
    }
}
