package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.ClubViews;
import benchtwin.club.Quantity;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.interactions.Actions;

/** Clubs are read at the bench: gloves on, a number pad; two people at two screens. */
@Tag("browser")
class ReadingBrowserTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();
    @RegisterExtension
    static final Browser BROWSER = Browser.at(PAGES);
    @RegisterExtension
    static final Browser SECOND = Browser.at(PAGES);

    @Test
    void aReadingInThreeTouches() throws Exception {
        BROWSER.open("/clubs/QUILLBY-9I").press("41.80° loft").sees("Last read 41.80°");
        Look.asItStands(BROWSER, "read");
        keys("4", "1", ".", "9", "9", "Back", "2");
        BROWSER.press("Save").landsOn("/clubs/QUILLBY-9I\\?said=\\d+").sees("loft 41.92° is entered as found.");
        assertThat(loft("QUILLBY-9I")).isEqualTo(41.92);
        Look.asItStands(BROWSER, "club");
    }

    @Test
    void everyKeyOfThePadIsMadeForAGlove() {
        BROWSER.open("/clubs/OAKES-DR/read/length").on(Screen.TABLET);
        keys("4", "5", "space", "1", "/", "4");
        assertThat(BROWSER.driver().findElement(By.id("value")).getDomProperty("value")).isEqualTo("45 1/4");
        assertThat(BROWSER.driver().findElements(By.cssSelector(".pad button, button.save"))).hasSize(16).allSatisfy(key -> {
            assertThat(key.getSize().height).isGreaterThanOrEqualTo(64);
            assertThat(key.getSize().width).isGreaterThanOrEqualTo(64);
        });
    }

    @Test
    void anOddValueIsAskedAndTaken() throws Exception {
        BROWSER.open("/clubs/QUILLBY-8I/read/loft").type("loft now", "48.3").press("Save").sees("is 10.00° from the 38.30°");
        Look.asItStands(BROWSER, "read-odd");
        BROWSER.press("Yes, it is so").sees("loft 48.30° is entered as found.");
        assertThat(loft("QUILLBY-8I")).isEqualTo(48.3);
    }

    @Test
    void twoAtTheSameClub() throws Exception {
        SECOND.open("/").type("Who enters", "Ms Fern");
        SECOND.driver().findElement(By.cssSelector("form[action='/who'] button")).click();
        SECOND.open("/clubs/QUILLBY-7I").press("62.30° lie").sees("Last read 62.30°");
        BROWSER.open("/clubs/QUILLBY-7I").press("62.30° lie").sees("Last read 62.30°");
        SECOND.type("lie now", "62.5").press("Save").sees("lie 62.50° is entered as found.");
        BROWSER.type("lie now", "62.6").press("Save").sees("Nothing was entered").sees("by Ms Fern").sees("lie 62.50°");
        assertThat(BROWSER.field("lie now").getDomProperty("value")).as("what was typed is kept").isEqualTo("62.6");
        Look.asItStands(BROWSER, "read-overtaken");
        assertThat(club("QUILLBY-7I").values().get(Quantity.LIE).value()).isEqualTo(62.5);
        BROWSER.press("Save").sees("lie 62.60° is entered as found.");
        assertThat(club("QUILLBY-7I").values().get(Quantity.LIE).value()).isEqualTo(62.6);
    }

    @Test
    void twoClubsBesideEachOther() {
        Look.at(BROWSER, "compare-empty", "/clubs/LARKFIELD-DR/compare");
        BROWSER.open("/clubs/LARKFIELD-DR").press("Compare").type("Other club", "LARKFIELD-DR-2");
        BROWSER.press("Compare").sees("LARKFIELD-DR-2 against LARKFIELD-DR").sees("What else differs");
        Look.asItStands(BROWSER, "compare");
    }

    @Test
    void aScannerNeedsNoFieldAndAHandIsNotTakenForOne() {
        BROWSER.open("/players");
        new Actions(BROWSER.driver()).sendKeys("OAKES-3W").sendKeys(org.openqa.selenium.Keys.ENTER).perform();
        BROWSER.landsOn("/clubs/OAKES-3W");
    }

    private static void keys(String... keys) {
        for (String key : keys) {
            BROWSER.press(key);
        }
    }

    private static double loft(String tag) throws Exception {
        return club(tag).values().get(Quantity.LOFT).value();
    }

    private static ClubViews.Club club(String tag) throws Exception {
        return ClubViews.show(PAGES.book(), tag, ClubViews.When.NOW);
    }
}
