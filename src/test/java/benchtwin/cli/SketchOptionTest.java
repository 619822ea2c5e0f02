package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code --plot} of {@code match}, {@code predict} and {@code change}: the head before and after. */
class SketchOptionTest {

    private static final double WRITTEN_DEG = 0.0051;

    @TempDir
    private Path folder;

    private String drawn(String command) throws IOException {
        Path file = folder.resolve("head.svg");
        Typed typed = Typed.line(command + " --plot " + file);
        assertThat(typed.err()).isEmpty();
        return Files.readString(file);
    }

    @Test
    void aChangeDrawsTheBendOfItsFirstWay() throws IOException {
        String svg = drawn("change --club WEXCOMBE-7I loft=-1");
        assertThat(svg).contains("<title id=\"picture-title\">Head H-058, left-handed iron 7: loft 1.0° strong, bounce 1.0° less</title>");
    }

    /** Sketch and prediction reach the angles by different code: the head alone, and the whole club. */
    @ParameterizedTest
    @ValueSource(strings = {"--head H-110 --shaft S-234 --setting 4/4", "--head H-110 --shaft S-234 --setting 1/1",
        "--head H-001 --shaft S-150 --grip G-001 --bend-lie=1 --bend-loft=-0.5"})
    void aPredictionsHeadIsDrawnAtThePredictedAngles(String build) throws IOException {
        String svg = drawn("predict " + build);
        JsonNode predicted = Typed.line("predict " + build + " --json").json().get("predicted");
        for (String angle : new String[] {"Loft", "Lie"}) {
            Matcher after = Pattern.compile(angle + ": (?:[\\d.]+° before, )?([\\d.]+)°(?: after|, stays)").matcher(svg);
            assertThat(after.find()).as(angle + " in " + svg.substring(0, 900)).isTrue();
            assertThat(Double.parseDouble(after.group(1))).as(angle)
                .isCloseTo(predicted.get(angle.toLowerCase(Locale.ROOT) + "Deg").asDouble(), within(WRITTEN_DEG));
        }
    }

    @Test
    void aMatchDrawsItsFirstOption() throws IOException {
        String first = Typed.line("match --club OAKES-DR --json").json().get("results").get(0).get("head").asText();
        assertThat(drawn("match --club OAKES-DR")).contains(">Head " + first + ", driver, set at ");
    }

    @Test
    void aFileThatCannotBeIsRefusedBeforeAnythingIsWorkedOut() {
        assertThat(Typed.line("match --club OAKES-DR --plot " + folder.resolve("head.pdf")).err())
            .contains("expected a name ending in .svg or .png");
        Typed typed = Typed.line("predict --head H-110 --shaft S-234 --plot " + folder.resolve("none/head.png"));
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.err()).contains("there is no folder");
        assertThat(typed.out()).isEmpty();
    }

    @Test
    void whereNothingFitsNothingIsDrawnAndItSaysSo() {
        Path file = folder.resolve("head.png");
        Typed typed = Typed.line("change --club WEXCOMBE-60 loft=-12 --plot " + file);
        assertThat(typed.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(typed.err()).contains("was not drawn: there is no option whose head it could show");
        assertThat(file).doesNotExist();
    }
}
