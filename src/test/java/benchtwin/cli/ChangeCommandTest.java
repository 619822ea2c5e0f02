package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code benchtwin change} as a technician types it, on the sample workshop and on copies of it with something missing. */
class ChangeCommandTest {

    /** JSON numbers are rounded to six decimals; three of them stand in one comparison. */
    private static final double ROUNDED = 3e-6;

    private static List<JsonNode> list(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }

    private static Typed change(String asked) {
        return Typed.line("change --club " + asked);
    }

    @Test
    void everyWayShowsWhatMovesAlong() {
        Typed typed = change("SANDROW-DR length=-1/4 swing-weight=D2").fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.DONE);
        assertThat(typed.err()).isEmpty();
        assertThat(typed.out()).contains("SANDROW-DR (M. Sandrow), right-handed driver, as last read on 2026-05-05", "Asked: length 45 1/4 in",
            "swing weight D2.0", "butt cut or extension", "Cut 6 mm off the butt.", "asked", "never read", "What does not reach it",
            "Caution: ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"SANDROW-DR loft=+0.5", "DUNMARSH-4H lie=+1 length=-10mm", "QUILLBY-5I lie=+1.5 loft=-1",
        "WEXCOMBE-DR face=+1", "PENHOLLOW-58 grip=+12", "PENHOLLOW-PT lie=+1", "SANDROW-DR loft=+0",
        "QUILLBY-3W loft=+9", "WEXCOMBE-60 loft=-12"})
    void plainOutputIsAsciiAndFitsThePage(String asked) {
        Typed typed = change(asked + " --plain").fitsThePage();
        assertThat(typed.out()).isNotBlank();
        assertThat(typed.out().chars()).allMatch(c -> c < 128);
        assertThat(typed.status()).isIn(Main.DONE, Main.NOTHING_SUITABLE);
    }

    @Test
    void theJsonHasItsNamesAndThePrintedNumbers() {
        JsonNode answer = change("QUILLBY-5I lie=+1.5 --json").json();
        assertThat(answer.fieldNames()).toIterable().contains("club", "measuredOn", "asked", "now", "workedOut", "target",
            "alreadySo", "ways", "moreWays", "shortfalls", "notes", "cautions", "version");
        assertThat(answer.get("measuredOn").asText()).isEqualTo("2026-05-13");
        assertThat(answer.get("asked").get("lieDeg").asDouble()).isCloseTo(60.6 + 1.5, within(ROUNDED));
        assertThat(answer.get("workedOut").toString()).contains("torqueDeg").doesNotContain("lieDeg");
        JsonNode first = answer.get("ways").get(0);
        assertThat(first.fieldNames()).toIterable().contains("rank", "head", "shaft", "plan", "predicted", "uncertainty",
            "difference", "cost", "miss", "firstTimeRight", "outOfTolerance", "changed", "grip", "tapeLayers", "change");
        String page = change("QUILLBY-5I lie=+1.5").out();
        assertThat(page).contains(String.format(Locale.ROOT, "miss %.2f tol", first.get("miss").asDouble()),
            String.format(Locale.ROOT, "%.1f cpm", first.get("predicted").get("frequencyCpm").asDouble()),
            String.format(Locale.ROOT, "%.2f°", first.get("predicted").get("lieDeg").asDouble()),
            first.get("predicted").get("swingWeightText").asText(),
            String.format(Locale.ROOT, "the first time: %.2f.", first.get("firstTimeRight").get("all").asDouble()));
        list(first.get("plan").get("steps")).forEach(step -> assertThat(page).contains(step.get("words").asText()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"SANDROW-DR length=-1/4 swing-weight=D2", "QUILLBY-7I length=+1/2", "SANDROW-DR grip=G-062",
        "PENHOLLOW-54 loft=+2 swing-weight=D6", "DUNMARSH-4H lie=+1 length=-10mm", "WEXCOMBE-DR face=+1"})
    void beforeAndWhatMovesMakeAfterAndWhatWasAskedIsReached(String asked) {
        JsonNode answer = change(asked + " --json --top 20").json();
        JsonNode now = answer.get("now");
        JsonNode tolerance = answer.get("target").get("tolerance");
        List<JsonNode> ways = list(answer.get("ways"));
        assertThat(ways).isNotEmpty();
        int steps = 0;
        Set<String> seen = new HashSet<>();
        for (JsonNode way : ways) {
            Iterator<Map.Entry<String, JsonNode>> moves = way.get("change").fields();
            assertThat(moves.hasNext()).isTrue();
            moves.forEachRemaining(move -> assertThat(now.get(move.getKey()).asDouble() + move.getValue().asDouble())
                .as(move.getKey()).isCloseTo(way.get("predicted").get(move.getKey()).asDouble(), within(ROUNDED)));
            answer.get("asked").fields().forEachRemaining(wish -> {
                if (wish.getValue().isNumber()) {
                    assertThat(way.get("predicted").get(wish.getKey()).asDouble()).as(wish.getKey()).isCloseTo(
                        wish.getValue().asDouble(), within(tolerance.get(wish.getKey()).asDouble() + ROUNDED));
                }
            });
            assertThat(way.get("plan").get("steps").size()).as("fewest steps first").isGreaterThanOrEqualTo(steps);
            steps = way.get("plan").get("steps").size();
            assertThat(seen.add(way.get("changed") + way.get("plan").get("steps").toString())).as("shown once").isTrue();
        }
    }

    /** The rules of thumb every bench knows (common practice, no source): what a change drags along, and which way. */
    @Test
    void whatDragsAlongGoesTheWayABenchExpects() {
        JsonNode bent = wayByOnly("QUILLBY-5I loft=-1", "bend");
        assertThat(bent.get("bounceDeg").asDouble()).as("a degree of loft takes a degree of bounce").isCloseTo(-1, within(0.1));
        JsonNode flatter = wayByOnly("WEXCOMBE-60 lie=-3", "bend");
        assertThat(flatter.get("lengthMm").asDouble()).as("flatter is longer").isPositive();
        assertThat(flatter.get("swingWeightPoints").asDouble()).as("and swings heavier").isPositive();
        JsonNode shorter = wayByOnly("SANDROW-DR length=-1/2", "butt cut or extension");
        assertThat(shorter.get("swingWeightPoints").asDouble()).as("half an inch is three points, less what came off the butt")
            .isBetween(-3.5, -2.0);
        assertThat(shorter.get("frequencyCpm").asDouble()).as("cutting the butt stiffens").isPositive();
        JsonNode grip = wayByOnly("SANDROW-DR grip=G-062", "grip");
        double heavier = 49.0 - 42.0;
        assertThat(grip.get("swingWeightPoints").asDouble() / heavier).as("four to five grams at the grip take a point")
            .isBetween(-1 / 4.0, -1 / 5.5);
        assertThat(grip.get("totalMassG").asDouble()).isCloseTo(heavier, within(0.05));
        JsonNode taped = wayByOnly("SANDROW-DR swing-weight=+2", "weight at the head");
        assertThat(taped.get("totalMassG").asDouble() / taped.get("swingWeightPoints").asDouble())
            .as("about two grams at the head make a point; 1.75 oz·in at 31.5 in from the fulcrum are 1.58 g")
            .isBetween(1.5, 2.2);
    }

    /** What the way that changes one thing alone moves. */
    private static JsonNode wayByOnly(String asked, String lever) {
        return list(change(asked + " --json --top 50").json().get("ways")).stream()
            .filter(way -> way.get("changed").size() == 1 && way.get("changed").get(0).asText().equals(lever))
            .findFirst().orElseThrow().get("change");
    }

    @Test
    void whatCannotBeReachedSaysHowNearEachComesAndExitsOne() {
        Typed typed = change("WEXCOMBE-60 loft=-12").fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(typed.out()).contains("Nothing in the workshop reaches it", "How near each comes", "Its hosel has ",
            "Its head takes no sleeve");
        JsonNode answer = change("WEXCOMBE-60 loft=-12 --json").json();
        assertThat(answer.get("ways")).isEmpty();
        JsonNode bend = list(answer.get("shortfalls")).stream().filter(s -> s.get("lever").asText().equals("bend")).findFirst().orElseThrow();
        assertThat(bend.get("missing").get("loftDeg").asDouble())
            .isCloseTo(bend.get("nearest").get("predicted").get("loftDeg").asDouble() - 48.4, within(ROUNDED));
    }

    @Test
    void whatHelpsOnlyBesideOtherThingsSaysHowNearItComesAlone() {
        JsonNode answer = change("PENHOLLOW-54 loft=+2 swing-weight=D6 --json").json();
        assertThat(answer.get("ways").get(0).get("changed").toString()).contains("bend", "weight at the head");
        List<JsonNode> alone = list(answer.get("shortfalls"));
        assertThat(alone).extracting(s -> s.get("lever").asText()).contains("bend", "weight at the head");
        assertThat(alone).filteredOn(s -> s.get("lever").asText().equals("bend"))
            .allSatisfy(s -> assertThat(s.get("missing").get("swingWeightPoints").asDouble()).isNegative());
    }

    @Test
    void oneIsNotWrittenAsMany() {
        JsonNode answer = change("WEXCOMBE-7I lie=+5 --json").json();
        assertThat(answer.get("shortfalls").toString()).contains("the one head that fits does not bring it");
        Typed typed = change("SANDROW-DR length=-1/4 swing-weight=D2 --top 3");
        assertThat(typed.out()).contains("1 more that takes as many steps or more: --top shows it.");
    }

    @Test
    void aClubThatMeasuresThatAlreadySaysSo() {
        for (String asked : List.of("SANDROW-DR loft=+0", "SANDROW-DR loft=9.9", "SANDROW-DR face=0", "SANDROW-DR length=45.5")) {
            Typed typed = change(asked);
            assertThat(typed.status()).isEqualTo(Main.DONE);
            assertThat(typed.out()).contains("The club measures that already: nothing to do.").doesNotContain("miss ", "1. ", "reach it");
        }
        assertThat(change("SANDROW-DR loft=9.9 --json").json().get("alreadySo").asBoolean()).isTrue();
    }

    @Test
    void aSleeveMovesTheLoftOnlyWithTheFaceSquare() {
        Typed soled = change("SANDROW-DR loft=+0.5");
        assertThat(soled.out()).contains("its soled loft stays", "ask for the loft read square");
        JsonNode square = change("SANDROW-DR --reading square loft=+0.5 --json").json();
        assertThat(square.get("target").get("reading").asText()).isEqualTo("square");
        assertThat(list(square.get("ways")).get(0).get("changed").toString()).contains("sleeve setting");
    }

    @Test
    void aNegativeFaceCanBeWhereToEnd() {
        assertThat(change("WEXCOMBE-DR face=to:-0.5 --json").json().get("asked").get("faceDeg").asDouble())
            .isCloseTo(-0.5, within(ROUNDED));
        assertThat(change("WEXCOMBE-DR face=-0.5 --json").json().get("asked").get("faceDeg").asDouble())
            .as("without to: it is a change, from -0.2").isCloseTo(-0.7, within(ROUNDED));
    }

    @Test
    void lengthsComeInInchesFractionsAndMillimetres() {
        for (String length : List.of("45.25", "\"length=45 1/4\"", "\"length=45-1/4 in\"", "\"length=1149.35 mm\"")) {
            String asked = length.contains("length") ? length : "length=" + length;
            assertThat(change("SANDROW-DR " + asked + " --json").json().get("asked").get("lengthMm").asDouble())
                .as(length).isCloseTo(45.25 * 25.4, within(ROUNDED));
        }
    }

    @Test
    void aMinusCopiedFromThePageIsAMinus() {
        assertThat(change("SANDROW-DR length=\u22121/4 --json").json().get("asked"))
            .isEqualTo(change("SANDROW-DR length=-1/4 --json").json().get("asked"));
    }

    private static void complains(Typed typed, String message) {
        assertThat(typed.err().lines().findFirst()).hasValue("benchtwin: " + message);
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.out()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        --club SANDROW-DR | Missing required parameter: 'QUANTITY=VALUE'
        loft=+0.5 | Missing required option: '--club=TAG'
        --club SANDRO-DR loft=+0.5 | no club is tagged SANDRO-DR; nearest are SANDROW-DR, SANDROW-7W, OAKES-DR
        --club SANDROW-DR loft=abc | loft=abc: "abc" is not a value for loft; expected a number, with a sign for a change
        --club SANDROW-DR loft=NaN | loft=NaN: "NaN" is not a value for loft; expected a number, with a sign for a change
        --club SANDROW-DR spin=3 | spin=3: "spin" is not a quantity; expected one of loft, lie, face, length, swing-weight, frequency, mass or grip
        --club SANDROW-DR --reading upside loft=+1 | Invalid value for option '--reading': expected one of soled, square, edge but was 'upside'
        --club SANDROW-DR --top many loft=+1 | Invalid value for option '--top': 'many' is not a whole number
        --club SANDROW-DR loft | "loft" is not of the form quantity=value, such as loft=+0.5, lie=58 or grip=G-12
        --club SANDROW-DR loft= | "loft=" is not of the form quantity=value, such as loft=+0.5, lie=58 or grip=G-12
        --club SANDROW-DR loft=+0.5 loft=+0.5 | loft is asked for twice
        --club SANDROW-DR mass=+1 total-mass=300 | total mass is asked for twice
        --club SANDROW-DR grip=+5 grip=G-062 | the grip is asked for twice
        --club SANDROW-DR grip=G-999 | no grip is tagged G-999; nearest are G-009, G-019, G-029
        --club SANDROW-DR grip=G-023 | grip G-023 is the one on SANDROW-DR
        --club SANDROW-DR grip=5 | a grip of 5.0 g: expected 10 to 300 g
        --club SANDROW-DR grip=NaN | grip=NaN: expected a grip's tag, or its mass in g such as 52 or +5
        --club QUILLBY-5I face=+0.5 | QUILLBY-5I is read by its leading edge and has no face angle: ask for loft or lie
        --club QUILLBY-5I --reading square loft=+1 | QUILLBY-5I is read by its leading edge; soled and square are a wood's readings
        --club DUNMARSH-4H --reading soled loft=+1 | DUNMARSH-4H is read by its leading edge; soled and square are a wood's readings
        --club OAKES-DR loft=+0.5 | club OAKES-DR is damaged: a change starts from a sound club; benchtwin match makes its twin
        --club SANDROW-DR swing-weight=Z9 | swing-weight=Z9: "Z9" is not a value for swing weight; expected a letter and a number such as D2.4, or points above A0, with a sign for a change
        --club SANDROW-DR loft=+90 | loft of 99.9°: expected -10.0° to 80.0°
        --club SANDROW-DR lie=20 | lie of 20.0°: expected 40.0° to 85.0°
        --club SANDROW-DR face=to:-15 | face of -15.0°: expected -10.0° to 10.0°
        --club SANDROW-DR length=+20 | length of 65 1/2 in: expected 18 in to 60 in
        --club SANDROW-DR swing-weight=+500 | swing weight of 533.2 points: expected -30.0 points to 100.0 points
        --club SANDROW-DR frequency=9000 | frequency of 9000.0 cpm: expected 100.0 cpm to 600.0 cpm
        --club SANDROW-DR mass=0 | total mass of 0.0 g: expected 150.0 g to 900.0 g
        --club SANDROW-DR --top 51 loft=+0.5 | --top 51: expected 1 to 50
        --club SANDROW-DR --top 0 loft=+0.5 | --top 0: expected 1 to 50
        --club SANDROW-DR --json --plain loft=+0.5 | --json is one object in any case; leave out --plain
        --club SANDROW-DR --tolerance loft=0 loft=+0.5 | --tolerance: a tolerance of 0.00 for loft is not above 0
        --club SANDROW-DR --weight loft=-2 loft=+0.5 | --weight: a weight of -2.00 for loft is below 0
        """)
    void whatCannotBeAskedGetsOneMessageThatSaysWhy(String options, String message) {
        complains(Typed.line("change " + options), message);
    }

    @Test
    void partsThatAreNotOnRecordAreNamed(@TempDir Path folder) throws IOException {
        Path stock = Typed.workshopWith(folder, "clubs.csv", Typed.cell("LARKFIELD-7I", "shaft", ""));
        Typed typed = Typed.on(stock, "change --club LARKFIELD-7I loft=+1");
        assertThat(typed.status()).isEqualTo(Main.BAD_INPUT);
        assertThat(typed.err()).contains("the parts of LARKFIELD-7I are not all on record");
    }

    @Test
    void aWishForWhatWasNeverReadStartsFromItsParts() {
        JsonNode answer = change("DUNMARSH-4H lie=+1 --json").json();
        assertThat(answer.get("workedOut").toString()).contains("lieDeg");
        assertThat(change("DUNMARSH-4H lie=+1").out()).contains("lie was never read on club DUNMARSH-4H", "*");
    }
}
