package benchtwin.web;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A bag gets new grips. */
@Tag("browser")
class RegripBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    void fromTheBagToAJob() {
        BROWSER.open("/players/K.%20Larkfield/bag").press("New grips").sees("See what it changes");
        BROWSER.press("See what it changes").sees("of bench work");
        Look.asItStands(BROWSER, "regrip");
        BROWSER.press("Make it a job").landsOn("/jobs/\\d+\\?said=\\d+").sees("promised to it");
    }
}
