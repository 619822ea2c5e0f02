package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.StockViews;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;

/** The drawers: found, moved, labelled. */
@Tag("browser")
class StockBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    void fromTheFirstPageToPartsInAnotherDrawer() throws Exception {
        BROWSER.open("/").press("Stock").sees("612 parts");
        Look.asItStands(BROWSER, "stock");
        BROWSER.choose("Kind", "heads").type("Words", "H-01").sees("H-014").sees("10 parts");
        BROWSER.seen(By.cssSelector("input[value='head:H-014']")).click();
        BROWSER.seen(By.cssSelector("input[value='head:H-015']")).click();
        BROWSER.press("Move, promise or retire the ticked").sees("2 parts");
        Look.asItStands(BROWSER, "parts-ticked");
        BROWSER.type("Move to", "van, drawer 3").press("Move").sees("H-014, H-015 moved to van, drawer 3.");
        assertThat(StockViews.show(PAGES.book(), "H-014").part().place()).contains("van, drawer 3");
        BROWSER.press("H-014").sees("What befell it").sees("moved to van, drawer 3");
        Look.asItStands(BROWSER, "part");
    }

    @Test
    void aSheetOfLabelsOpensToBePrinted() {
        BROWSER.open("/stock/head:H-020").press("Label").sees("1 label on 1 sheet");
        Look.asItStands(BROWSER, "labels");
        BROWSER.press("Open the sheet to print").landsOn("/labels\\.pdf.*");
        assertThat(BROWSER.driver().executeScript("return document.contentType")).isEqualTo("application/pdf");
    }

    @Test
    void whatWasCountedIsPutDown() {
        Look.at(BROWSER, "count", "/stock/count?kind=weight");
        BROWSER.seen(By.cssSelector("input[name^='count-']")).sendKeys("17");
        BROWSER.press("Put the counts down").sees("Put down: 17 of");
    }
}
