package benchtwin;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.gauge.GaugeChecks;
import benchtwin.match.MatchChecks;
import benchtwin.mechanics.MechanicsChecks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published value we are held to, and the page that lists them. */
class AccuracyPageTest {

    private static final Path PAGE = Path.of("docs", "accuracy.md");

    static List<PublishedCheck> checks() {
        List<PublishedCheck> checks = new ArrayList<>(MechanicsChecks.all());
        checks.addAll(MatchChecks.all());
        checks.addAll(GaugeChecks.all());
        return checks;
    }

    @ParameterizedTest
    @MethodSource("checks")
    void oursAgreesWithThePrintedValue(PublishedCheck check) {
        assertThat(check.ours()).as("%s (%s)", check.what(), check.source())
            .isCloseTo(check.printed(), org.assertj.core.data.Offset.offset(check.tolerance()));
        assertThat(check.holds()).isTrue();
    }

    /** Run with -Dbenchtwin.writePages=true to write the page anew after a check was added. */
    @Test
    void thePageSaysWhatWeCompute() throws IOException {
        if (Boolean.getBoolean("benchtwin.writePages")) {
            Files.writeString(PAGE, page());
        }
        assertThat(Files.readString(PAGE)).isEqualTo(page());
    }

    private static String page() {
        StringBuilder page = new StringBuilder("""
            # Accuracy: our numbers against printed ones

            Each row is a value printed elsewhere, what this program computes for it, and how far apart the two are. A
            test computes the rows again and fails when a difference leaves its tolerance or when this page no longer says
            what was computed. How the mechanics work is in [handbook.md](handbook.md).

            | what | printed | ours | difference | tolerance, and why | source |
            |---|---|---|---|---|---|
            """);
        for (PublishedCheck check : checks()) {
            page.append(String.format(Locale.ROOT, "| %s | %s | %.7g | %s | %s | %s |%n", check.what(),
                number(check.printed()), check.ours(), String.format(Locale.ROOT, "%.1e", check.difference()),
                tolerance(check), check.source()));
        }
        return page.toString().replace(System.lineSeparator(), "\n");
    }

    private static String tolerance(PublishedCheck check) {
        return check.tolerance() == 0 ? check.reason()
            : String.format(Locale.ROOT, "%.1e: %s", check.tolerance(), check.reason());
    }

    private static String number(double value) {
        String text = Double.toString(value);
        return text.length() > 12 ? String.format(Locale.ROOT, "%.7g", value) : text;
    }
}
