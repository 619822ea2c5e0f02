package benchtwin.web;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The system's own Chromium, without a window, driven by the system's own driver. Nothing is ever fetched for it. */
final class Chromium {

    private static final String ABSENT = "the tests in a browser need Chromium and its driver: install Debian's packages chromium and "
        + "chromium-driver, or run src/test/verify, which does";
    /** Kept, or the logger and its level would be collected. */
    private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");

    private Chromium() {
    }

    /** Starts one; the test is left out where there is none, but fails where everything has to run ({@code CI=true}). */
    static ChromeDriver start() {
        Optional<Path> browser = onPath("chromium");
        Optional<Path> driver = onPath("chromedriver");
        if (browser.isEmpty() || driver.isEmpty()) {
            if ("true".equals(System.getenv("CI"))) {
                throw new AssertionError(ABSENT);
            }
            Assumptions.abort(ABSENT);
        }
        SELENIUM.setLevel(Level.SEVERE);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.get().toFile());
        options.addArguments("--headless=new", "--disable-gpu", "--disable-dev-shm-usage", "--hide-scrollbars", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-default-apps",
            "--force-device-scale-factor=1", "--lang=en");
        if ("root".equals(System.getProperty("user.name"))) {
            options.addArguments("--no-sandbox");
        }
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        return new ChromeDriver(new ChromeDriverService.Builder().usingDriverExecutable(driver.get().toFile()).usingAnyFreePort().build(),
            options);
    }

    private static Optional<Path> onPath(String program) {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator)).map(folder -> Path.of(folder, program))
            .filter(Files::isExecutable).findFirst();
    }
}
