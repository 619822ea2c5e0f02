package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.rules.Limit;
import benchtwin.rules.RuledQuantity;
import benchtwin.rules.RuledValue;
import benchtwin.rules.RulesText;
import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clubs against the equipment limits: the values, margins and verdicts of the command line, with their sources. */
class RulesPagesTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final Caller visitor = Caller.here(PAGES);

    private static String row(JsonNode finding) {
        RuledQuantity quantity = Arrays.stream(RuledQuantity.values()).filter(one -> one.word().equals(finding.get("quantity").asText()))
            .findFirst().orElseThrow();
        RuledValue value = new RuledValue(finding.get("value").asDouble(), finding.get("standardUncertainty").asDouble(), 0, "");
        Limit limit = Arrays.stream(Limit.values()).filter(one -> one.word().equals(finding.get("limit").asText())).findFirst().orElseThrow();
        return "<td class=\"n\">%s</td><td class=\"whole\">%s</td><td class=\"n\">%s</td><td><strong%s>%s</strong>".formatted(
            RulesText.value(quantity, value), RulesText.limit(limit), RulesText.margin(quantity, finding.get("marginWithAllowance").asDouble()),
            "", finding.get("verdict").asText());
    }

    @ParameterizedTest
    @CsvSource({"/clubs/OAKES-DR/rules, rules OAKES-DR", "/clubs/OAKES-DR/rules?localRule=yes, rules OAKES-DR --local-rule",
        "/clubs/SANDROW-DR/rules?localRule=yes, rules SANDROW-DR --local-rule"})
    void thePageShowsTheNumbersOfTheCommandLine(String path, String command) throws Exception {
        JsonNode answer = CommandLine.json(PAGES, command.split(" "));
        String page = CommandLine.read(visitor.get(path).body());
        JsonNode club = answer.get("clubs").get(0);
        assertThat(page).contains("<p class=\"big\">" + club.get("verdict").asText().substring(0, 1).toUpperCase() + club.get("verdict")
            .asText().substring(1));
        int measured = 0;
        for (JsonNode finding : club.get("findings")) {
            assertThat(page).contains(finding.get("source").asText());
            if (finding.has("value")) {
                measured++;
                assertThat(page.replace(" class=\"stop\"", "")).contains(row(finding)).contains(finding.get("from").asText());
            } else {
                assertThat(page).contains(finding.get("toMeasure").asText());
            }
        }
        assertThat(measured).isGreaterThan(1);
        assertThat(page.contains("not counted")).isEqualTo(!path.contains("localRule"));
        assertThat(page).contains(answer.get("howJudged").asText()).contains(answer.get("whoDecides").asText())
            .contains("<a href=\"" + path.split("\\?")[0] + "\" aria-current=\"page\">Rules</a>");
        answer.get("information").forEach(each -> assertThat(page).contains(each.get("text").asText()).contains(each.get("source").asText()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        /players/J.%20Quillby/rules | --player;J. Quillby
        /players/j.%20quillby/rules?localRule=yes | --player;J. Quillby;--local-rule
        /rules | --all
        /rules?localRule=yes | --all;--local-rule
        """)
    void aBagIsShownClubByClub(String path, String options) throws Exception {
        JsonNode answer = CommandLine.json(PAGES, ("rules;" + options).split(";"));
        String page = CommandLine.read(visitor.get(path).body());
        assertThat(answer.get("clubs").size()).isGreaterThan(1);
        for (JsonNode club : answer.get("clubs")) {
            assertThat(page).containsPattern("/clubs/" + club.get("club").asText() + "/rules[^>]*>" + club.get("club").asText()
                + "</a></th>(<td>[^<]*</td>){1,2}<td><span[^>]*>" + club.get("verdict").asText() + "</span>");
        }
        if (answer.has("clubsInPlay")) {
            assertThat(page).contains(answer.get("clubsInPlay").asInt() + " clubs in play; a bag holds at most 14");
        }
        assertThat(page.contains("Nothing that was measured is beyond a limit or too close to one.")).isEqualTo(!answer.get("doubtful").asBoolean());
    }

    @Test
    void nobodyOfThatNameIsSaidInWordsAndAsTyped() throws Exception {
        HttpResponse<String> page = visitor.get("/players/" + FindPages.encoded("<script>alert(1)</script>") + "/rules");
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.body()).contains("no player &lt;script").doesNotContain("<script>alert");
        assertThat(visitor.get("/clubs/NOBODY/rules").body()).contains("no club is tagged NOBODY");
    }

    @Test
    void aPlayerAndTheListOfPlayersLeadToIt() throws Exception {
        assertThat(visitor.get("/players/N.%20Oakes").body()).contains("href=\"/players/N.%20Oakes/rules\"");
        assertThat(visitor.get("/players").body()).contains("href=\"/rules\"");
    }
}
