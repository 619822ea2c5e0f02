package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What plans are told of the equipment limits they would cross or come too close to. */
class RulesWarningsTest {

    private static final String LOCAL = "at most 1168.4 mm (46 in), where that local rule is in force";
    private static final Pattern LENGTH = Pattern.compile("length ([\\d.]+) ±");

    @TempDir
    private Path folder;

    private static String text(Typed typed) {
        return typed.fitsThePage().out().replaceAll("\\s+", " ");
    }

    /** The one warning, whose length is the option's own. */
    private static String warning(JsonNode option) {
        assertThat(option.path("rulesWarnings")).hasSize(1);
        String warning = option.path("rulesWarnings").get(0).asText();
        Matcher length = LENGTH.matcher(warning);
        assertThat(length.find()).as(warning).isTrue();
        assertThat(Double.parseDouble(length.group(1))).isCloseTo(option.path("predicted").path("rulesLengthMm").asDouble(),
            within(0.051));
        return warning;
    }

    @Test
    void aChangeThatMakesAClubTooLongSaysSo() {
        String line = "change --club SANDROW-DR length=+1";
        assertThat(text(Typed.line(line))).contains("Rules: length", "is clearly beyond: the rules say " + LOCAL,
            "Rules: Advice only: the governing bodies decide");
        assertThat(warning(Typed.line(line + " --json").json().path("ways").get(0))).contains(LOCAL);
    }

    @Test
    void aChangeThatKeepsEveryLimitSaysNothing() {
        assertThat(text(Typed.line("change --club WEXCOMBE-7I loft=-1"))).doesNotContain("Rules:");
        assertThat(Typed.line("change --club WEXCOMBE-7I loft=-1 --json").json().path("ways").get(0).path("rulesWarnings")).isEmpty();
    }

    @Test
    void aClubReadByTheProcedureIsPredictedAtWhatItRead() {
        // 45 5/8 in by the 60-degree procedure on record; 0.1 mm: the sole's centre moves a little with the sleeve's setting.
        // What the model misses on this club is 0.23 mm, so that without carrying it over this would fail
        JsonNode now = Typed.line("change --club SANDROW-DR length=-1/4 --json").json().path("now");
        assertThat(now.path("rulesLengthMm").asDouble()).isCloseTo(45.625 * 25.4, within(0.1));
    }

    @Test
    void aMatchSaysSoOfEachOption() {
        String line = "match --target \"loft=9.5,lie=58,face=0,length=45 15/16,swing-weight=D3\" --category driver --hand right"
            + " --keep none --grip G-002 --top 2";
        assertThat(text(Typed.line(line))).contains("is too close to call: the rules say " + LOCAL, "may read up to 4 mm less",
            "the governing bodies decide");
        JsonNode results = Typed.line(line + " --json").json().path("results");
        assertThat(results).isNotEmpty().allSatisfy(option -> assertThat(warning(option)).contains("too close to call"));
    }

    @Test
    void shaftsForALongBuildSaySo() {
        String line = "shafts --head H-014 --grip G-002 --target \"frequency=245,length=46 1/4\" --top 2";
        assertThat(text(Typed.line(line))).contains("Rules: length", LOCAL);
        assertThat(warning(Typed.line(line + " --json").json().path("picks").get(0))).contains("clearly beyond");
    }

    @Test
    void aPredictionSaysSo() {
        String line = "predict --head H-014 --shaft S-162 --grip G-002 --sleeve lock-2-335 --length \"46 1/2\"";
        assertThat(text(Typed.line(line))).contains("Rules: length", "the governing bodies decide");
        JsonNode answer = Typed.line(line + " --json").json();
        assertThat(warning(answer)).contains("clearly beyond", LOCAL);
    }

    @Test
    void aClubOfASetSaysSo() throws IOException {
        Typed.workshopWith(folder, "set-targets.csv", lines -> List.of(lines.get(0), lines.get(1).replace(",45,D2.5", ",46.25,D2.5")));
        String line = "set --players \"J. Quillby\" --rounds 2";
        assertThat(text(Typed.on(folder, line))).contains("Rules: length", "is clearly beyond: the rules say " + LOCAL,
            "the governing bodies decide");
        JsonNode club = Typed.on(folder, line + " --json").json().path("players").get(0).path("clubs").get(0);
        assertThat(warning(club)).contains("clearly beyond");
    }

    @Test
    void aPutterIsToldOfItsLoftAndItsShaftNotOfItsLength() {
        Typed typed = Typed.line("predict --head H-012 --shaft S-032 --grip G-045 --bend-lie 9 --extension 16 --json");
        assertThat(typed.status()).as(typed.err()).isZero();
        assertThat(typed.json().path("predicted").path("lengthMm").asDouble()).as("longer than any other club may be")
            .isGreaterThan(1219.2);
        assertThat(typed.json().path("rulesWarnings")).extracting(JsonNode::asText).singleElement().asString()
            .contains("shaft off vertical 10.00", "too close to call", "at least 10°");
    }
}
