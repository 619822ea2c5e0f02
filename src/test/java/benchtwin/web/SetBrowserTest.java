package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import benchtwin.samples.PastWorkshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A set is planned while somebody watches, and ended when it is good enough. */
@Tag("browser")
class SetBrowserTest {

    /** Tables of a hundred clubs take their time on a busy machine. */
    private static final Duration LONG = Duration.ofMinutes(4);

    @TempDir
    private Path folder;
    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    private static void sees(String words) {
        new WebDriverWait(BROWSER.driver(), LONG).until(any -> BROWSER.text().contains(words));
    }

    /** Everybody's sets at once: nothing proves the best of those in ten minutes on two cores. */
    @Test
    void aLivePlanIsStoppedEarly() {
        BROWSER.open("/").press("Sets").sees("Whose clubs are built again").press("Or sets out of files");
        Look.asItStands(BROWSER, "sets");
        BROWSER.field("set-targets.csv").sendKeys(PastWorkshop.folder().resolve("set-targets.csv") + "\n"
            + PastWorkshop.folder().resolve("lines.csv"));
        BROWSER.choose("Search at most", "10 minutes").press("Plan").landsOn("/sets/\\d+").sees("Working out what fits 95 clubs");
        Object loaded = BROWSER.driver().executeScript("return window.loadedOnce = Math.random()");
        sees("of 95 clubs built");
        assertThat(BROWSER.driver().executeScript("return window.loadedOnce")).as("the page was told, and not loaded again").isEqualTo(loaded);
        assertThat(BROWSER.driver().findElements(By.cssSelector("svg.trace .cost"))).hasSize(1);
        Look.asItStands(BROWSER, "set-run");
        BROWSER.press("Good enough: stop");
        sees("clubs built from stock");
        assertThat(BROWSER.driver().findElements(By.cssSelector(".picture svg"))).hasSize(8);
    }

    @Test
    void aPlanOfOnePlayerIsMadeAJob() throws Exception {
        BROWSER.open("/sets");
        BROWSER.seen(By.cssSelector("input[value='M. Sandrow']")).click();
        BROWSER.press("Plan").landsOn("/sets/\\d+");
        sees("2 of 2 clubs built from stock");
        assertThat(BROWSER.driver().findElements(By.cssSelector(".picture svg"))).hasSize(1);
        Look.asItStands(BROWSER, "set-plan");
        BROWSER.press("Make it a job").sees("Promised to job");
        JobBook.Job job = JobBook.list(PAGES.book(), false).stream().filter(one -> one.player().equals(Optional.of("M. Sandrow"))).findFirst()
            .orElseThrow();
        BROWSER.open("/jobs/" + job.number()).sees("7-wood");
        BROWSER.press("Draw the head of driver before and after").seen(By.cssSelector("details.opened svg"));
        Look.asItStands(BROWSER, "job-of-a-set");
        Look.at(BROWSER, "hand-over-set", "/jobs/" + job.number() + "/hand-over");
        Look.at(BROWSER, "ticket-wish", "/jobs/" + job.number() + "/ticket");
    }

    @Test
    void aFileOfSetsThatCannotBeReadIsSaidOnThePage() throws Exception {
        Path file = Files.writeString(folder.resolve("set-targets.csv"), "player,hand,club,category,loft_deg\nA. New,right,driver,driver,steep\n");
        BROWSER.open("/sets").press("Or sets out of files").field("set-targets.csv").sendKeys(file.toString());
        BROWSER.press("Plan").sees("\"steep\" is not a number");
        Look.asItStands(BROWSER, "sets-refused");
    }
}
