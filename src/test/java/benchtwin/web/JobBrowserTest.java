package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.ClubViews;
import benchtwin.bench.JobBook;
import benchtwin.club.Quantity;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** From a head chosen to the club handed over, and a new repair taken on. */
@Tag("browser")
class JobBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    @Test
    void aTwinIsHandedOver() throws Exception {
        BROWSER.open("/clubs/OAKES-DR/twin").press("Make it a job with H-110").landsOn("/jobs/\\d+");
        String path = BROWSER.path().replaceAll("\\?.*", "");
        BROWSER.sees("Screw head H-110 on sleeve").sees("What OAKES-DR should measure").sees("Lead tape: wash hands");
        Look.at(BROWSER, "job", path);
        Look.at(BROWSER, "today-with-jobs", "/");
        BROWSER.open(path).press("Hand it over").sees("What the finished club measures");
        Look.asItStands(BROWSER, "hand-over");
        BROWSER.type("loft", "9.5").type("lie", "58.2").type("swing weight", "D2.3").press("the head that came off is cracked");
        BROWSER.press("Hand the job over").landsOn(path + "\\?said=\\d+").sees("is handed over.").sees("What OAKES-DR measured when it was handed over");
        Look.asItStands(BROWSER, "job-done");
        ClubViews.Club club = ClubViews.show(PAGES.book(), "OAKES-DR", ClubViews.When.NOW);
        assertThat(club.fact("head")).contains("H-110");
        assertThat(club.fact("state")).contains("in play");
        assertThat(club.values().get(Quantity.LIE).value()).isEqualTo(58.2);
        assertThat(JobBook.list(PAGES.book(), false)).noneMatch(job -> job.club().filter("OAKES-DR"::equals).isPresent());
    }

    @Test
    void aRepairIsTakenOnFromTheFirstPage() {
        BROWSER.open("/").choose("What", "repair").type("Club's tag", "TOLVER-3W").type("What is wanted", "crown cracked");
        BROWSER.press("Take it on").landsOn("/jobs/\\d+\\?said=\\d+").sees("is taken on.").sees("Not planned yet.").sees("crown cracked");
        BROWSER.press("Today").sees("its plan");
        BROWSER.press("Take it on").sees("a job is for somebody");
        Look.asItStands(BROWSER, "today-refused");
    }
}
