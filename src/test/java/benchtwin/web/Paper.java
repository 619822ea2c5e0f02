package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.openqa.selenium.chrome.ChromeDriver;

/** The page that is open, as it would be printed on A4 from a browser in the dark. */
final class Paper {

    /** A4 less a margin of 10 mm each side, at 96 px an inch. */
    private static final int WIDTH_PX = 718;
    private static final int HEIGHT_PX = 1046;

    private final ChromeDriver driver;

    private Paper(ChromeDriver driver) {
        this.driver = driver;
    }

    /**
     * Holds it to what paper needs: black on white, nothing cut off at its side, nothing to press.
     * @param name of the page, for what is said when it fails
     */
    static void holds(ChromeDriver driver, String name) {
        Paper paper = new Paper(driver);
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        driver.executeCdpCommand("Emulation.setDeviceMetricsOverride",
            Map.of("width", WIDTH_PX, "height", HEIGHT_PX, "deviceScaleFactor", 1, "mobile", false));
        try {
            paper.isBlackOnWhite(name);
            paper.cutsNothingOff(name);
            paper.hasNothingToPress(name);
        } finally {
            driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
            driver.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
        }
    }

    private void isBlackOnWhite(String name) {
        assertThat(driver.executeScript("return getComputedStyle(document.body).color")).as("%s on paper: ink", name)
            .isEqualTo("rgb(0, 0, 0)");
    }

    /** Rows of somebody's own file are as many columns wide as it has: those alone may be too wide. */
    private void cutsNothingOff(String name) {
        Object wide = driver.executeScript("""
            return [...document.querySelectorAll('main *')]
              .filter(one => one.checkVisibility() && !one.closest('.typedRows') && !one.closest('svg'))
              .filter(one => one.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
              .map(one => one.outerHTML.slice(0, 160));""");
        assertThat((List<?>) wide).as("%s on paper: cut off at the side", name).isEmpty();
    }

    /** A field in a table is a box to write in, as on a sheet for counting. */
    private void hasNothingToPress(String name) {
        Object pressed = driver.executeScript("""
            return [...document.querySelectorAll('button, input, select, textarea, summary, nav')]
              .filter(one => one.checkVisibility() && !one.matches('td input[inputmode]')).map(one => one.outerHTML.slice(0, 160));""");
        assertThat((List<?>) pressed).as("%s on paper: things to press", name).isEmpty();
    }
}
