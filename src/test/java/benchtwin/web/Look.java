package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;

/**
 * Holds a page to what every page must be, in the light on a laptop, in the dark on a tablet, and on paper, and keeps its pictures in
 * {@code target/screens}.
 */
final class Look {

    private static final Path SCREENS = Path.of("target", "screens");
    private static final String THEME = "document.documentElement.dataset.theme";

    private final Browser browser;

    private Look(Browser browser) {
        this.browser = browser;
    }

    /**
     * Opens a page and holds it to all of the below.
     * @param name of its pictures
     * @param path of the page
     */
    static void at(Browser browser, String name, String path) {
        browser.open(path);
        asItStands(browser, name);
    }

    /** The same for the page as it stands: for what is only there after something was typed or pressed. */
    static void asItStands(Browser browser, String name) {
        Object before = browser.driver().executeScript("return " + THEME);
        Look look = new Look(browser);
        look.at(name, "light", Screen.LAPTOP);
        look.at(name, "dark", Screen.TABLET);
        Paper.holds(browser.driver(), name);
        browser.driver().executeScript(THEME + " = arguments[0]", before);
        browser.on(Screen.LAPTOP);
        look.comesFromHereAlone();
        look.saysNothingInTheConsole();
    }

    private void at(String name, String theme, Screen screen) {
        browser.driver().executeScript(THEME + " = arguments[0]", theme);
        browser.on(screen);
        isAccessible("%s, %s, %s".formatted(name, theme, screen));
        fitsTheScreen(name, screen);
        photograph(name, screen, theme);
    }

    private void isAccessible(String where) {
        List<Rule> violations = new AxeBuilder().setLegacyMode().analyze(browser.driver()).getViolations();
        assertThat(violations.stream().map(rule -> "%s: %s: %s".formatted(rule.getId(), rule.getHelp(),
            rule.getNodes().stream().map(node -> node.getHtml() + " " + node.getTarget()).toList())))
            .as("%s: what the rules of accessibility find", where).isEmpty();
    }

    /** Nothing to scroll sideways but inside a box made for it; nothing to press smaller than a gloved finger. */
    private void fitsTheScreen(String name, Screen screen) {
        Object wide = browser.driver().executeScript("return document.documentElement.scrollWidth");
        assertThat(((Number) wide).intValue()).as("%s: width of the page on a %s", name, screen).isLessThanOrEqualTo(screen.widthPx());
        Object small = browser.driver().executeScript("""
            return [...document.querySelectorAll('button, input:not([type=hidden]), select, textarea, summary, nav a, a.button')]
              .map(one => one.closest('label.tick') ?? one)
              .filter(one => one.checkVisibility())
              .filter(one => { const box = one.getBoundingClientRect(); return box.height < 43.5 || box.width < 43.5; })
              .map(one => one.outerHTML.slice(0, 200));""");
        assertThat((List<?>) small).as("%s: targets under 44 px on a %s", name, screen).isEmpty();
    }

    private void photograph(String name, Screen screen, String theme) {
        String file = "%s-%dx%d%s.png".formatted(name, screen.widthPx(), screen.heightPx(), "dark".equals(theme) ? "-dark" : "");
        Map<String, Object> shot = browser.driver().executeCdpCommand("Page.captureScreenshot", Map.of("format", "png"));
        try {
            Files.createDirectories(SCREENS);
            Files.write(SCREENS.resolve(file), Base64.getDecoder().decode((String) shot.get("data")));
        } catch (IOException cannot) {
            throw new UncheckedIOException(cannot);
        }
    }

    private void comesFromHereAlone() {
        Object elsewhere = browser.driver().executeScript(
            "return performance.getEntriesByType('resource').map(one => one.name).filter(name => !name.startsWith(location.origin))");
        assertThat((List<?>) elsewhere).as("fetched from elsewhere").isEmpty();
    }

    /** A breach of the content policy is reported there too. Answers that a test asked for (a page that is not there) are none. */
    private void saysNothingInTheConsole() {
        List<String> said = browser.driver().manage().logs().get(LogType.BROWSER).getAll().stream()
            .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue()).map(LogEntry::getMessage)
            .filter(message -> !message.contains("Failed to load resource")).toList();
        assertThat(said).as("complaints in the browser's console").isEmpty();
    }
}
