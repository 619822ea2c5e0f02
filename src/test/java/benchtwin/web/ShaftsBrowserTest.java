package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;

/** Shafts to test around a stiffness: a ladder, and a job of one of its rungs. */
@Tag("browser")
class ShaftsBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    void fromAClubToALadderToAJob() throws Exception {
        BROWSER.open("/clubs/OAKES-DR/shafts").sees("head H-106 is cracked");
        Look.asItStands(BROWSER, "shafts-head-broke");
        BROWSER.type("Head", "H-014").press("Choose").sees("Nearest first").sees("as stiff there as S-234");
        BROWSER.choose("Pick", "a ladder to test").sees("Softest rung first").sees("A ladder around");
        assertThat(BROWSER.path()).contains("pick=ladder").contains("head=H-014");
        Look.at(BROWSER, "shafts", BROWSER.path());
        String first = BROWSER.driver().findElement(By.cssSelector("table.numbers th[scope=row] a")).getText();
        BROWSER.press("Make it a job with " + first).landsOn("/jobs/\\d+");
        assertThat(JobBook.list(PAGES.book(), false)).hasSize(1).first().satisfies(job -> assertThat(job.club()).contains("OAKES-DR"));
    }
}
