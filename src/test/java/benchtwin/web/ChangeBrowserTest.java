package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;

/** Half a degree more loft, typed as one says it. */
@Tag("browser")
class ChangeBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    void fromAWordToAJob() throws Exception {
        Look.at(BROWSER, "change-empty", "/clubs/SANDROW-DR/change");
        BROWSER.scan("What should change", "loft +0.5").sees("Asked: loft").sees("Ways to get it").sees("What does not reach it by itself");
        assertThat(BROWSER.path()).contains("ask=loft");
        Look.asItStands(BROWSER, "change");
        BROWSER.seen(By.cssSelector("#option-1 form button")).click();
        BROWSER.landsOn("/jobs/\\d+");
        assertThat(JobBook.list(PAGES.book(), false)).hasSize(1).first().satisfies(job -> assertThat(job.club()).contains("SANDROW-DR"));
    }

    @Test
    void whatCannotBeReadIsSaidInItsPlace() {
        BROWSER.open("/clubs/SANDROW-DR/change").scan("What should change", "colour red").sees("is not of the form quantity=value");
    }
}
