package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.BendService;
import benchtwin.bench.StockViews;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A head is bent at the page. H-001 of the sample workshop is a 431 iron of 39.6° loft and 63.3° lie, never bent. */
@Tag("browser")
class BendBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    private static final String FINE = "&u-lie=0.05&u-loft=0.05";

    @Test
    void aHeadIsBroughtToItsTargetBendByBend() throws Exception {
        BROWSER.open("/").press("Bend").type("Head or club", "H-001").press("Bend it");
        BROWSER.sees("Where is it to go?").type("lie", "62.3").press("How it is worked and read").type("lie read to", "0.05");
        Look.asItStands(BROWSER, "bend-target");
        BROWSER.press("Begin").sees("Bending: wear eye protection").sees("63.30°");
        Look.asItStands(BROWSER, "bend-read");
        BROWSER.press("Begin").sees("flat").sees("in 10 within tolerance").type("lie reads now", "83").press("Bent and read");
        BROWSER.sees("Read again; type it once more if it is so").type("lie reads now", "62.8").press("It is so");
        BROWSER.sees("Bend 2, lie: ask for").sees("62.80°");
        Look.asItStands(BROWSER, "bend");
        BROWSER.press("How this was worked out").sees("rests on 1 bend of this model flat");
        BROWSER.type("lie reads now", "62.4").press("Bent and read").sees("Leave it").sees("Within tolerance");
        StockViews.Part head = StockViews.show(PAGES.book(), "H-001").part();
        assertThat(head.fact("bent_flat_deg")).contains("0.9");
    }

    @Test
    void aMistypedReadingIsPutRightAndASecondPersonIsTold() throws Exception {
        String path = "/bend/H-004?to-lie=60.2" + FINE;
        BROWSER.open(path).press("Begin").type("lie reads now", "60.4").press("Bent and read").sees("Leave it");
        BROWSER.press("The last reading was mistyped").type("lie, °", "60.9").press("Put it right").sees("Bend 2, lie: ask for");
        long before = BendService.lastEvent(PAGES.book(), "H-004");
        BROWSER.driver().executeScript("document.querySelector('input[name=bends]').value = '0'");
        BROWSER.type("lie reads now", "60.3").press("Bent and read").sees("Something was entered of this head meanwhile");
        assertThat(BendService.lastEvent(PAGES.book(), "H-004")).as("nothing was entered").isEqualTo(before);
    }

    @Test
    void whatIsNeverBentIsRefusedWithTheReason() {
        BROWSER.open("/bend/H-101?to-lie=57&sent=yes").sees("takes a sleeve: its angles are set with that, and its hosel is never bent");
    }

    @Test
    void aJobsHeadsAreListed() throws Exception {
        BROWSER.open("/bend?job=99").sees("there is no job 99");
        Look.at(BROWSER, "bend-begin", "/bend");
    }
}
