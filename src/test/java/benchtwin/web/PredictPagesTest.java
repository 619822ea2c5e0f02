package benchtwin.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a build would measure: the numbers of the command line, each with its uncertainty and what it rests on. */
class PredictPagesTest {

    @RegisterExtension
    static final WebBook PAGES = new WebBook();

    private final Caller visitor = Caller.here(PAGES);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        head=H-101&shaft=S-035&grip=G-023&setting=4/3 | --head H-101 --shaft S-035 --grip G-023 --setting 4/3
        head=H-101&shaft=S-001&sleeve=lock-1-335&grip=G-001&length=43.5&tipTrim=1/2&headMass=2,5&tapeLayers=2 | --head H-101 --shaft S-001 --sleeve lock-1-335 --grip G-001 --length 43.5 --tip-trim 1/2 --head-mass 2.5 --tape-layers 2
        head=H-101&shaft=S-035&grip=G-023&extension=1&ports=6&tipWeight=3&clamp=4&overGrip=yes&reading=square | --head H-101 --shaft S-035 --grip G-023 --extension 1 --ports 6 --tip-weight 3 --clamp 4 --over-grip --reading square
        """)
    void thePageShowsTheNumbersOfTheCommandLine(String query, String options) throws Exception {
        JsonNode answer = CommandLine.json(PAGES, ("predict " + options).split(" "));
        HttpResponse<String> answered = visitor.get("/predict?" + query);
        assertThat(answered.statusCode()).as(answered.body()).isEqualTo(200);
        String page = CommandLine.read(answered.body());
        assertThat(answer.get("predicted").size()).isGreaterThan(10);
        StringBuilder inOrder = new StringBuilder();
        for (Quantity quantity : Quantity.values()) {
            JsonNode value = answer.get("predicted").get(quantity.jsonName());
            if (value != null) {
                String u = QuantityText.size(quantity, answer.get("uncertainty").get(quantity.jsonName()).asDouble());
                inOrder.append("<th scope=\"row\">%s</th><td class=\"n big\">%s</td><td class=\"n\">%s</td>".formatted(
                    QuantityText.name(quantity), QuantityText.value(quantity, value.asDouble()), u));
            }
        }
        assertThat(page.replaceAll("</?tr>|\\n", "")).contains(inOrder.toString());
        assertThat(answer.get("inputs").size()).isGreaterThan(10);
        for (JsonNode input : answer.get("inputs")) {
            assertThat(page).contains("<th scope=\"row\">%s</th><td class=\"n\">%s</td><td class=\"n\">%s</td>".formatted(
                input.get("what").asText(), two(input.get("value")), two(input.get("standardUncertainty"))));
        }
        long defaults = StreamSupport.stream(answer.get("inputs").spliterator(), false)
            .filter(input -> input.get("origin").asText().equals("default")).count();
        assertThat(page.split("class=\"warn\">default").length - 1L).isEqualTo(defaults);
        answer.get("notes").forEach(note -> assertThat(page).contains(note.asText()));
    }

    private static String two(JsonNode number) {
        return String.format(Locale.ROOT, "%.2f", number.asDouble()).replace('-', '−');
    }

    @Test
    void aBendOfAnIronMovesItsLoftByAsMuchAndIsDrawn() throws Exception {
        String iron = ironOfTheStock();
        JsonNode bent = CommandLine.json(PAGES, "predict", "--head", iron, "--shaft", "S-078", "--grip", "G-001", "--bend-loft", "1.5");
        JsonNode straight = CommandLine.json(PAGES, "predict", "--head", iron, "--shaft", "S-078", "--grip", "G-001");
        assertThat(bent.get("predicted").get("loftDeg").asDouble() - straight.get("predicted").get("loftDeg").asDouble())
            .isCloseTo(1.5, within(0.01));
        String query = "head=" + iron + "&shaft=S-078&grip=G-001&bendLoft=%2B1.5";
        assertThat(visitor.get("/predict?" + query).body()).contains(QuantityText.value(Quantity.LOFT,
            bent.get("predicted").get("loftDeg").asDouble()));
        assertThat(visitor.part("/predict/sketch?" + query).body()).contains("<svg").contains("Head " + iron + " before and after");
        assertThat(visitor.get("/predict/sketch?" + query).body()).contains("<h1>").contains("/predict?head=" + iron);
    }

    /** An iron's head that can be bent. */
    private String ironOfTheStock() throws Exception {
        JsonNode parts = CommandLine.json(PAGES, "stock", "list", "--kind", "head");
        for (JsonNode part : parts.findParents("tag")) {
            if (part.toString().contains("\"iron\"") && part.toString().contains("\"7\"")) {
                return part.get("tag").asText();
            }
        }
        throw new AssertionError("no 7-iron in stock");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        tipTrim=x     | tipTrim   | tip trim "x" is not a length; expected inches such as 45.25 or 45 1/4
        length=0      | length    | playing length 0 is not above 0
        buttCut=-1    | buttCut   | butt cut -1 is below 0
        headMass=some | headMass  | tape or hot melt: "some" is not a number
        tapeLayers=-1 | tapeLayers | layers of tape -1 is below 0
        reading=flat  | reading   | how the loft is read: "flat"; expected one of soled, square, edge
        """)
    void aFaultIsSaidAtItsField(String typed, String field, String words) throws Exception {
        HttpResponse<String> page = visitor.get("/predict?head=H-101&shaft=S-035&" + typed);
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(CommandLine.read(page.body())).containsPattern("id=\"wrong-" + field + "\"[^>]*>" + Pattern.quote(words))
            .contains("value=\"H-101\"");
        assertThat(CommandLine.read(visitor.part("/predict?head=H-101&shaft=S-035&" + typed).body())).contains("hx-swap-oob=\"true\">" + words);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        head=H-9999&shaft=S-035               | no head is tagged H-9999
        head=H-101&shaft=S-001                | takes a sleeve and shaft S-001 has none on: fill in its sleeve
        head=H-101&shaft=S-035&setting=9      | has no setting 9; it has
        head=H-101&shaft=S-035&bendLie=1      | takes a sleeve and is never bent; give a setting
        head=H-101&shaft=S-035&length=44&buttCut=1 | give a length or a butt cut, not both
        head=H-101&shaft=S-035&length=60      | the longest club these parts make is
        """)
    void whatDoesNotGoTogetherIsSaidAndTheFormKept(String query, String words) throws Exception {
        HttpResponse<String> page = visitor.get("/predict?" + query);
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(CommandLine.read(page.body())).contains(words).contains("name=\"tipTrim\"");
    }

    @Test
    void whatIsStillNeededIsNoFault() throws Exception {
        HttpResponse<String> page = visitor.get("/predict?shaft=S-035");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("To be worked out it still needs a head.").contains("value=\"S-035\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"head", "grip", "length", "sleeve"})
    void whatIsTypedIsShownAsTyped(String field) throws Exception {
        String page = visitor.get("/predict?" + field + "=" + Caller.encoded("\"><img src=x>")).body();
        assertThat(page).doesNotContain("<img").contains("value=\"&#34;>&lt;img src=x>\"");
    }

    @Test
    void partsAndClubsLeadToItWithTheirFieldsFilled() throws Exception {
        assertThat(visitor.get("/stock/H-110").body()).contains("href=\"/predict?head=H-110\"");
        assertThat(visitor.get("/stock/S-035").body()).contains("href=\"/predict?shaft=S-035\"");
        String club = CommandLine.read(visitor.get("/clubs/SANDROW-DR").body());
        String address = Caller.first(Pattern.compile("href=\"(/predict[^\"]*)\""), club);
        assertThat(address).isEqualTo("/predict?head=H-101&shaft=S-035&grip=G-023&sleeve=lock-1-335&setting=4%2F3&tapeLayers=1");
        assertThat(visitor.get(address).statusCode()).isEqualTo(200);
    }
}
