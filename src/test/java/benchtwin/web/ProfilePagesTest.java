package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.bench.HowText;
import benchtwin.measure.Units;
import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A shaft's stiffness along it, and a bend asked for by an amount: as the command line has them. */
class ProfilePagesTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final Caller visitor = Caller.here(PAGES);

    @ParameterizedTest
    @CsvSource({"S-001, '', ''", "S-001, ?assumeClamp=5, --assume-clamp 5", "S-135, '', ''"})
    void thePageShowsTheNumbersOfTheCommandLine(String tag, String query, String options) throws Exception {
        JsonNode answer = CommandLine.json(PAGES, ("shafts --profile " + tag + " " + options).strip().split(" "));
        String page = CommandLine.read(visitor.get("/stock/" + tag + "/profile" + query).body());
        assertThat(page).contains(HowText.fixed(answer.get("rawCpm").asDouble(), 1) + " ±"
            + HowText.fixed(answer.get("rawUncertaintyCpm").asDouble(), 1) + " cpm").contains(answer.get("gripFactor").asText());
        assertThat(answer.get("readings")).isNotEmpty();
        for (JsonNode reading : answer.get("readings")) {
            assertThat(page).contains("%s in</th><td class=\"n\">%s g</td><td>%s</td><td class=\"n\">%s ±%s</td><td class=\"n\">%s</td>".formatted(
                HowText.fixed(Units.inches(reading.get("freeLengthMm").asDouble()), 2), HowText.fixed(reading.get("tipMassG").asDouble(), 0),
                reading.get("overGrip").asBoolean() ? "grip" : "bare butt", HowText.fixed(reading.get("readCpm").asDouble(), 1),
                HowText.fixed(reading.get("standardUncertaintyCpm").asDouble(), 1), HowText.fixed(reading.get("computedCpm").asDouble(), 1)));
        }
        for (JsonNode knot : answer.get("profile")) {
            assertThat(page).contains("<td class=\"n\">%s ±%s</td><td class=\"n\">×%s</td>".formatted(HowText.fixed(knot.get("stiffnessNm2").asDouble(), 2),
                HowText.fixed(knot.get("standardUncertaintyNm2").asDouble(), 2), HowText.fixed(knot.get("factorOnDefault").asDouble(), 2)));
        }
        assertThat(page.contains("A profile of its own takes readings")).isEqualTo(answer.get("profile").isEmpty());
    }

    @Test
    void aClampThatIsNoneIsSaidAtItsField() throws Exception {
        HttpResponse<String> page = visitor.get("/stock/S-001/profile?assumeClamp=99");
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(CommandLine.read(page.body())).containsPattern("id=\"wrong-assumeClamp\"[^>]*>clamp assumed: \"99\" is not a clamp from 2 to 12 in")
            .contains("value=\"99\"");
        assertThat(visitor.get("/stock/NONE/profile").body()).contains("no shaft is tagged NONE");
    }

    @Test
    void aBendByAnAmountEndsWhereTheAngleReadAndTheAmountSay() throws Exception {
        String page = visitor.get("/bend/H-004?sent=yes&by-lie=-1&risk=0.2").body();
        Matcher lie = Pattern.compile("lie</th><td class=\"n\">([0-9.]+)°</td><td class=\"n big\">([0-9.]+)°").matcher(page);
        assertThat(lie.find()).as(page).isTrue();
        assertThat(Double.parseDouble(lie.group(2))).isCloseTo(Double.parseDouble(lie.group(1)) - 1, within(1e-9));
        assertThat(CommandLine.json(PAGES, "stock", "show", "H-004").toString()).contains("\"value\":" + Double.parseDouble(lie.group(1)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        sent=yes&by-lie=-1&risk=2           | risk: expected above 0 and at most 0.5
        sent=yes&by-lie=-1&limit=4          | say why; the words are written down
        sent=yes&by-lie=flat                | lie: "flat" is not a number
        """)
    void whatCannotBeBentSoIsSaidAndTheFormKept(String query, String words) throws Exception {
        String page = CommandLine.read(visitor.get("/bend/H-004?" + query).body());
        assertThat(page).contains(words).contains("name=\"by-lie\"").contains("name=\"although\"");
    }
}
