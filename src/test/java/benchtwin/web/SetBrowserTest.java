package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import java.time.Duration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A set is planned while somebody watches, and ended when it is good enough. */
@Tag("browser")
class SetBrowserTest {

    /** Tables of 27 clubs take their time on a busy machine. */
    private static final Duration LONG = Duration.ofMinutes(3);

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    void aLivePlanIsStoppedEarlyAndMadeAJob() throws Exception {
        BROWSER.open("/").press("Sets").sees("Whose clubs are built again");
        Look.asItStands(BROWSER, "sets");
        BROWSER.seen(By.cssSelector("input[value='L. Wexcombe']")).click();
        BROWSER.seen(By.cssSelector("input[value='J. Quillby']")).click();
        BROWSER.choose("Search at most", "10 minutes").press("Plan").landsOn("/sets/\\d+").sees("Working out what fits 27 clubs");
        Object loaded = BROWSER.driver().executeScript("return window.loadedOnce = Math.random()");
        new WebDriverWait(BROWSER.driver(), LONG).until(any -> BROWSER.text().contains("of 27 clubs built"));
        assertThat(BROWSER.driver().executeScript("return window.loadedOnce")).as("the page was told, and not loaded again").isEqualTo(loaded);
        assertThat(BROWSER.driver().findElements(By.cssSelector("svg.trace .cost"))).hasSize(1);
        Look.asItStands(BROWSER, "set-run");
        BROWSER.press("Good enough: stop");
        new WebDriverWait(BROWSER.driver(), LONG).until(any -> BROWSER.text().contains("clubs built from stock"));
        assertThat(BROWSER.driver().findElements(By.cssSelector(".picture svg"))).hasSize(2);
        Look.asItStands(BROWSER, "set-plan");
        BROWSER.press("Make them jobs, one a player").sees("Promised to job");
        assertThat(JobBook.list(PAGES.book(), false)).extracting(job -> job.player().orElse(""))
            .contains("L. Wexcombe", "J. Quillby");
    }
}
