package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

@Tag("browser")
class TodayBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    void theFirstPageSaysWhatIsToDo() {
        BROWSER.open("/");
        assertThat(BROWSER.title()).isEqualTo("Today");
        Look.at(BROWSER, "today", "/");
    }

    @Test
    void aScannedTagLandsOnItsThing() {
        BROWSER.open("/").scan("Tag or name", "OAKES-DR").landsOn("/clubs/OAKES-DR").sees("What it measures");
        BROWSER.scan("Tag or name", "h-110").landsOn("/stock/head%3AH-110").sees("H-110");
    }

    @Test
    void aThemeIsKeptFromPageToPage() {
        BROWSER.open("/players").press("Dark").landsOn("/players");
        BROWSER.press("Stock").sees("parts");
        assertThat(BROWSER.driver().executeScript("return document.documentElement.dataset.theme")).isEqualTo("dark");
    }
}
