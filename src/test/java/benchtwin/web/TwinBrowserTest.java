package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A driver has cracked: from the first page to the job of its twin. */
@Tag("browser")
class TwinBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    void fromTheFirstPageToAJob() throws Exception {
        BROWSER.open("/").press("Players").press("N. Oakes").press("OAKES-DR").press("Find its twin");
        BROWSER.sees("1. H-110").sees("Why H-014 comes next");
        Look.asItStands(BROWSER, "twin");
        BROWSER.press("Make it a job with H-110").landsOn("/jobs/\\d+");
        assertThat(JobBook.list(PAGES.book(), false)).hasSize(1)
            .first().satisfies(job -> assertThat(job.club()).contains("OAKES-DR"));
    }

    @Test
    void tolerancesChangeTheRankingAtOnce() {
        BROWSER.open("/clubs/OAKES-DR/twin").press("Tolerances").type("loft", "0.01").sees("Out of tolerance: loft");
        assertThat(BROWSER.path()).contains("tol-loft=0.01");
    }
}
