package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.JobBook;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A driver has cracked: from the first page to the job of its twin. */
@Tag("browser")
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class TwinBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);
    @RegisterExtension
    static final Browser OTHER = Browser.at(PAGES);

    @Test
    @Order(1)
    void tolerancesChangeTheRankingAtOnce() {
        BROWSER.open("/clubs/OAKES-DR/twin").press("Tolerances and weights").type("tolerance of loft", "0.01").sees("Out of tolerance: loft");
        assertThat(BROWSER.path()).contains("tol-loft=0.01");
    }

    @Test
    @Order(1)
    void weightsChangeTheRankingAtOnceAndABadOneIsSaidAtItsField() {
        BROWSER.open("/clubs/OAKES-DR/twin").press("Tolerances and weights");
        String before = BROWSER.seen(By.cssSelector("#option-1 a.how[aria-label^='Miss']")).getText();
        BROWSER.type("weight of lie", "40");
        BROWSER.field("weight of face").click();
        BROWSER.patiently().until(any -> BROWSER.path().contains("weight-lie=40")
            && !BROWSER.seen(By.cssSelector("#option-1 a.how[aria-label^='Miss']")).getText().equals(before));
        BROWSER.type("weight of face", "much");
        BROWSER.field("weight of lie").click();
        BROWSER.sees("weight of face: \"much\" is not a number");
        assertThat(BROWSER.seen(By.id("wrong-weight-face")).getText()).isEqualTo("weight of face: \"much\" is not a number");
        Look.asItStands(BROWSER, "twin-weights");
        BROWSER.type("weight of face", "2");
        BROWSER.field("weight of lie").click();
        BROWSER.sees("1. H-");
        assertThat(BROWSER.driver().findElement(By.id("wrong-weight-face")).getText()).isEmpty();
    }

    @Test
    @Order(2)
    void whatAHeadReadOnTheShaftRanksIt() {
        BROWSER.open("/clubs/OAKES-DR/twin").sees("1. H-110");
        BROWSER.seen(By.name("read:H-026:loft")).sendKeys("9.4");
        BROWSER.seen(By.name("read:H-026:face")).sendKeys("-0.4");
        BROWSER.press("Rank by what it read").sees("1. H-026");
        assertThat(BROWSER.driver().findElement(By.name("read:H-026:loft")).getAttribute("value")).isEqualTo("9.4");
    }

    @Test
    @Order(3)
    void aHeadThatIsLeftOutIsGoneAndComesBackWhenItsTagIsTakenAway() {
        BROWSER.open("/clubs/OAKES-DR/twin").press("Leave H-110 out").sees("1. H-014").sees("1 left out by hand");
        assertThat(BROWSER.field("Left out").getAttribute("value")).isEqualTo("H-110");
        BROWSER.field("Left out").clear();
        BROWSER.scan("Left out", "").sees("1. H-110");
    }

    @Test
    @Order(4)
    void theKeyboardAloneOpensHowANumberWasComputed() {
        BROWSER.open("/clubs/OAKES-DR/twin").sees("1. H-110");
        WebElement number = BROWSER.seen(By.cssSelector("#option-1 a.how[aria-label^='frequency']"));
        number.sendKeys(Keys.ENTER);
        BROWSER.sees("How the frequency of H-110 was computed").sees("condition: 5 in in the clamp, over the grip")
            .sees("the old club's frequency").sees("default");
        Look.asItStands(BROWSER, "twin-how");
        WebElement summary = BROWSER.seen(By.cssSelector("#option-1-how summary"));
        summary.sendKeys(Keys.ENTER);
        BROWSER.patiently().until(any -> !BROWSER.text().contains("condition: 5 in in the clamp"));
    }

    @Test
    @Order(5)
    void fromTheFirstPageToAJobAndTheSecondIsToldWhoHasTheHead() throws Exception {
        BROWSER.open("/").press("Players").press("N. Oakes").press("OAKES-DR").press("Find its twin");
        BROWSER.sees("1. H-110").sees("Why H-014 comes next").sees("Head H-110, driver");
        Look.asItStands(BROWSER, "twin");
        OTHER.open("/clubs/OAKES-DR/twin").sees("1. H-110");
        BROWSER.press("Make it a job with H-110").landsOn("/jobs/\\d+");
        assertThat(JobBook.list(PAGES.book(), false)).hasSize(1)
            .first().satisfies(job -> assertThat(job.club()).contains("OAKES-DR"));
        OTHER.press("Make it a job with H-110").sees("head H-110 is promised to job 1").sees("Nothing was made a job").sees("1. H-014");
        assertThat(JobBook.list(PAGES.book(), false)).hasSize(1);
        Look.asItStands(OTHER, "twin-taken");
    }
}
