package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A person at the pages: opens, types, presses and reads by the words on the screen. One Chromium a test class; every test begins
 * without cookies, on a laptop's screen. Registered after the {@link WebBook} whose pages it looks at:
 * {@code @RegisterExtension static final Browser BROWSER = Browser.at(PAGES);}
 */
final class Browser implements BeforeAllCallback, BeforeEachCallback, AfterAllCallback {

    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final WebBook pages;
    private ChromeDriver driver;

    private Browser(WebBook pages) {
        this.pages = pages;
    }

    static Browser at(WebBook pages) {
        return new Browser(pages);
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        driver = Chromium.start();
    }

    @Override
    public void beforeEach(ExtensionContext context) {
        driver.get(pages.url("/"));
        driver.manage().deleteAllCookies();
        on(Screen.LAPTOP);
    }

    @Override
    public void afterAll(ExtensionContext context) {
        if (driver != null) {
            driver.quit();
        }
    }

    /** For what has no word here. */
    ChromeDriver driver() {
        return driver;
    }

    /** Changes the size of the screen. */
    Browser on(Screen screen) {
        driver.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", screen.widthPx(), "height", screen.heightPx(),
            "deviceScaleFactor", 1, "mobile", false));
        return this;
    }

    /** Goes to a page by its path. */
    Browser open(String path) {
        driver.get(pages.url(path));
        return this;
    }

    /** Presses the first link, button or opener with just these words. */
    Browser press(String words) {
        String quoted = quoted(words);
        seen(By.xpath("//*[self::a or self::button or self::summary or self::label][normalize-space()=%s or @aria-label=%s]"
            .formatted(quoted, quoted))).click();
        return this;
    }

    /** Types into the field with this label, in place of what it holds. */
    Browser type(String label, String text) {
        WebElement field = field(label);
        field.clear();
        field.sendKeys(text);
        return this;
    }

    /** Types into the field with this label and ends with the enter key, as a scanner does. */
    Browser scan(String label, String text) {
        type(label, text);
        field(label).sendKeys(Keys.ENTER);
        return this;
    }

    /** Chooses what a list offers under these words. */
    Browser choose(String label, String words) {
        new Select(field(label)).selectByVisibleText(words);
        return this;
    }

    /** The field whose label begins with these words. */
    WebElement field(String label) {
        String quoted = quoted(label);
        return seen(By.xpath("(//label[starts-with(normalize-space(), %s)]//*[self::input or self::select or self::textarea] | //*[@id = //label[starts-with(normalize-space(), %s)]/@for])"
            .formatted(quoted, quoted)));
    }

    /** Waits until the page says this somewhere a person can see it. */
    Browser sees(String words) {
        try {
            patiently().until(any -> text().contains(words));
        } catch (org.openqa.selenium.TimeoutException never) {
            assertThat(text()).as(driver.getCurrentUrl()).contains(words);
        }
        return this;
    }

    /** What a person reads on the page, without what stands around every page. */
    String text() {
        try {
            return driver.findElement(By.tagName("main")).getText();
        } catch (StaleElementReferenceException | org.openqa.selenium.NoSuchElementException swapped) {
            return "";
        }
    }

    /** The heading. */
    String title() {
        return driver.findElement(By.tagName("h1")).getText();
    }

    /** Waits until it has landed on a page whose path matches. */
    Browser landsOn(String pattern) {
        patiently().until(any -> path().matches(pattern));
        return this;
    }

    /** Where it is, from the first slash. */
    String path() {
        return driver.getCurrentUrl().substring(pages.url("").length());
    }

    WebDriverWait patiently() {
        return new WebDriverWait(driver, PATIENCE);
    }

    /** The first element of these that can be seen; waits for it. */
    WebElement seen(By what) {
        return patiently().ignoring(StaleElementReferenceException.class)
            .until(any -> driver.findElements(what).stream().filter(WebElement::isDisplayed).findFirst().orElse(null));
    }

    private static String quoted(String words) {
        return words.contains("'") ? '"' + words + '"' : "'" + words + "'";
    }
}
