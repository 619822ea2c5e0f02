package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.StockViews;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
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

    @Test
    void aFileWithFaultsIsMendedBesideItsRowsAndImported(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("weights-spring.csv");
        Files.writeString(file, "tag,port,mass_g,count,place\nX-01,M5,4,3,tray\nX-02,M5,heavy,3,tray\n");
        BROWSER.open("/").press("Stock").press("Import a file");
        Look.asItStands(BROWSER, "import");
        BROWSER.field("CSV files").sendKeys(file.toString());
        BROWSER.press("Look at them").sees("1 fault: nothing is entered").sees("\"heavy\" is not a number");
        assertThat(BROWSER.seen(By.cssSelector("td.fault")).getText()).isEqualTo("fault heavy");
        Look.asItStands(BROWSER, "import-faults");
        Files.writeString(file, "tag,port,mass_g,count,place\nX-01,M5,4,3,tray\nX-02,M5,6,3,tray\n");
        BROWSER.press("Bring the mended files");
        BROWSER.field("CSV files").sendKeys(file.toString());
        BROWSER.press("Look at them").sees("2 new, 0 changed, 0 as before");
        Look.asItStands(BROWSER, "import-look");
        BROWSER.press("Enter 2 rows into the book").sees("Imported");
        Look.asItStands(BROWSER, "import-done");
        assertThat(StockViews.show(PAGES.book(), "X-02").part().place()).contains("tray");
    }
}
