package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A touch on a number says where it comes from, on every page that has numbers. */
@Tag("browser")
class HowBrowserTest {

    private static final Duration LONG = Duration.ofMinutes(2);

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);

    /** Touches the first number whose label begins so; its account opens in place and can be seen. */
    private static void touch(String label, String told) {
        String page = BROWSER.path();
        BROWSER.seen(By.cssSelector("a.how[aria-label^='%s']".formatted(label))).click();
        BROWSER.sees(told);
        assertThat(BROWSER.path()).as("it opens on the same page").isEqualTo(page);
        WebElement panel = BROWSER.seen(By.cssSelector(".panel details"));
        Object top = BROWSER.driver().executeScript("return arguments[0].getBoundingClientRect().top < window.innerHeight", panel);
        assertThat(top).as("it is brought into sight").isEqualTo(true);
    }

    @Test
    void aClub() {
        BROWSER.open("/clubs/QUILLBY-9I");
        touch("loft ±", "Where the loft of QUILLBY-9I comes from");
        BROWSER.sees("on gauge bench 1").sees("default (memory)");
        Look.asItStands(BROWSER, "club-how");
    }

    @Test
    void aPart() {
        BROWSER.open("/stock/shaft:S-001");
        touch("frequency", "Where the frequency of shaft S-001 comes from");
        BROWSER.sees("In the condition in which shafts are compared").sees("Thomson");
        Look.asItStands(BROWSER, "part-how");
        touch("butt diameter", "Where the butt diameter of shaft S-001 comes from");
    }

    @Test
    void aBagAndAComparison() {
        BROWSER.open("/players/J.%20Quillby/bag");
        touch("QUILLBY-7I, loft", "Where the loft of QUILLBY-7I comes from");
        Look.asItStands(BROWSER, "bag-how");
        BROWSER.open("/clubs/LARKFIELD-DR/compare?with=LARKFIELD-DR-2");
        touch("loft differs", "Difference of two readings");
        Look.asItStands(BROWSER, "compare-how");
    }

    @Test
    void shafts() {
        BROWSER.open("/clubs/OAKES-DR/shafts?head=H-014&top=2");
        touch("torque", "Torque of the trimmed shaft");
        Look.asItStands(BROWSER, "shafts-how");
    }

    @Test
    void belowTheLineAndTheChance() {
        CommandLine.run(PAGES, "stock", "reserve", "H-110", "--for", "Ms Fern");
        BROWSER.open("/clubs/OAKES-DR/twin?top=1");
        touch("miss", "What adds up to the cost");
        touch("Right first time", "Each quantity by itself");
        Look.asItStands(BROWSER, "twin-chance-how");
    }

    @Test
    void aPlanOfSets() {
        BROWSER.open("/sets");
        BROWSER.seen(By.cssSelector("input[value='M. Sandrow']")).click();
        BROWSER.press("Plan").landsOn("/sets/\\d+");
        new WebDriverWait(BROWSER.driver(), LONG).until(any -> BROWSER.text().contains("2 of 2 clubs built from stock"));
        BROWSER.seen(By.cssSelector("table.set a.how[aria-label*='frequency']")).click();
        BROWSER.sees("First mode of a clamped shaft");
        Look.asItStands(BROWSER, "set-how");
        touch("What is proven", "Lagrangian relaxation");
        Look.asItStands(BROWSER, "set-gap-how");
    }

    @Test
    void aJobAndItsTicket() throws Exception {
        String job = JobBook.add(PAGES.book(), new JobBook.Order(JobBook.What.TWIN, Optional.empty(), Optional.of("SANDROW-7W"),
            Optional.of("2031-05-21"), ""));
        CommandLine.run(PAGES, "job", "plan", job, "--keep", "none", "--pick", "1");
        BROWSER.open("/jobs/" + job);
        touch("loft", "Worked out on ");
        Look.asItStands(BROWSER, "job-how");
        BROWSER.open("/jobs/" + job + "/ticket");
        touch("How that was worked out", "Step by step");
        Look.asItStands(BROWSER, "ticket-how");
    }

    /** Without scripts the same number is a link to a page of its own. */
    @Test
    void thePageOfANumber() {
        BROWSER.open("/clubs/QUILLBY-9I");
        List<WebElement> numbers = BROWSER.driver().findElements(By.cssSelector("a.how[href]"));
        Look.at(BROWSER, "how-page", numbers.get(0).getAttribute("href").substring(PAGES.url("").length()));
        BROWSER.press("Back to QUILLBY-9I").landsOn("/clubs/QUILLBY-9I");
    }
}
