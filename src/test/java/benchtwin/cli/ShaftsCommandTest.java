package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code benchtwin shafts} as a technician types it, on the sample workshop and on copies of it with something missing. */
class ShaftsCommandTest {

    /** The trusted driver, whose face has cracked, around another head. */
    private static final String OAKES = "shafts --club OAKES-DR --head H-014 ";
    /** JSON numbers are rounded to six decimals. */
    private static final double ROUNDED = 1e-6;

    private static List<JsonNode> list(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }

    @Test
    void theTrustedDriversStiffnessIsFoundForAnotherHead() {
        Typed typed = Typed.line(OAKES + "--top 4 --why").fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.DONE);
        assertThat(typed.err()).isEmpty();
        assertThat(typed.out()).contains("Shafts for head H-014 (driver), as stiff there as S-234 is in OAKES-DR", "Wanted: length ",
            "over the grip, 5 in in", "Considered ", "Ruled out: ", "built into a club", "--assume-clamp 5", "Caution: ");
        List<String> rows = typed.out().lines().filter(line -> line.matches("[1-9] +S-\\d+ .*")).toList();
        assertThat(rows).hasSize(4);
        assertThat(rows).allMatch(row -> row.contains("[") && row.contains("±"));
    }

    @ParameterizedTest
    @ValueSource(strings = {OAKES + "--why --plain", OAKES + "--pick ladder --plain --assume-clamp 5",
        "shafts --profile S-001 --plain", "shafts --profile S-003 --plain",
        "shafts --club DUNMARSH-4H --plain --top 3", "shafts --club PENHOLLOW-54 --plain --top 3 --why"})
    void plainOutputIsAsciiAndFitsThePage(String line) {
        Typed typed = Typed.line(line).fitsThePage();
        assertThat(typed.out()).isNotBlank();
        assertThat(typed.out().chars()).allMatch(c -> c < 128);
    }

    /** ± is three characters in ASCII; the columns behind it must not move for that. */
    @Test
    void plainColumnsStandUnderTheirHeads() {
        List<String> lines = Typed.line(OAKES + "--top 3 --plain").out().lines().toList();
        String head = lines.stream().filter(line -> line.contains("shaft     tip")).findFirst().orElseThrow();
        List<String> rows = lines.stream().filter(line -> line.matches("[1-3] +S-\\d+ .*\\[.*")).toList();
        assertThat(rows).hasSize(3).allSatisfy(row -> {
            assertThat(row.substring(head.indexOf("mass"))).matches("\\d+\\.\\d .*");
            assertThat(row.substring(head.indexOf("swing"))).matches("[A-G]\\d\\.\\d .*");
            assertThat(row.charAt(head.indexOf("mass") - 1)).isEqualTo(' ');
        });
    }

    @Test
    void theJsonHasItsNamesAndThePrintedNumbers() {
        JsonNode answer = Typed.line(OAKES + "--top 3 --json").json();
        assertThat(answer.fieldNames()).toIterable().contains("club", "head", "pick", "headAddedG", "condition", "target",
            "oldShaftInThisBuild", "picks", "belowTheLine", "emptyRungsCpm", "ruledOut", "considered", "notes", "cautions",
            "version");
        assertThat(answer.get("condition").get("clampMm").asDouble()).isEqualTo(127);
        assertThat(answer.get("condition").get("overGrip").asBoolean()).isTrue();
        assertThat(answer.get("target").fieldNames()).toIterable().contains("lengthMm", "swingWeightPoints",
            "swingWeightText", "frequencyCpm", "torqueDeg", "shaftMassG", "shaftBalanceMm", "tolerance", "weight");
        List<JsonNode> picks = list(answer.get("picks"));
        assertThat(picks).hasSize(3);
        String page = Typed.line(OAKES + "--top 3").out();
        for (JsonNode pick : picks) {
            assertThat(pick.fieldNames()).toIterable().contains("rank", "shaft", "head", "sleeve", "plan", "predicted",
                "uncertainty", "difference", "cost", "miss", "effort", "firstTimeRight", "model", "rungCpm", "tipTrimMm",
                "buttCutMm", "untrimmedCpm", "rawCpm", "marks");
            String row = page.lines().filter(line -> line.startsWith(pick.get("rank").asInt() + " ")).findFirst().orElseThrow();
            JsonNode predicted = pick.get("predicted");
            assertThat(row).contains(pick.get("shaft").asText(),
                fixed(1, predicted.get("frequencyCpm")) + " ±" + fixed(1, pick.get("uncertainty").get("frequencyCpm")),
                fixed(1, predicted.get("shaftMassG")), predicted.get("swingWeightText").asText(),
                fixed(0, pick.get("buttCutMm")) + "mm", fixed(2, pick.get("firstTimeRight").get("all")));
            assertThat(row).contains(String.format(Locale.ROOT, "%.2f", predicted.get("shaftBalanceMm").asDouble() / 25.4));
        }
    }

    private static String fixed(int decimals, JsonNode number) {
        return String.format(Locale.ROOT, "%." + decimals + "f", number.asDouble());
    }

    /**
     * Every pick, built again by {@code predict} from the trims that were printed: what is the shaft's own comes out the
     * same, and length, swing weight and frequency differ by what the model misses on the old club, which is one number for
     * all of them and comes from {@code predict} on the old club.
     */
    @Test
    void everyPickIsWhatPredictMakesOfItsTrims() {
        JsonNode old = predict("--head H-106 --shaft S-234 --grip G-001 --sleeve lock-2-335 --setting 6/5 --clamp 5 --over-grip");
        double carriedCpm = 248.8 - old.get("frequencyCpm").asDouble();
        double carriedMm = 45.25 * 25.4 - old.get("lengthMm").asDouble();
        JsonNode answer = Typed.line(OAKES + "--top 5 --json").json();
        // the ports of H-014 hold 3 and 8 g in the sample workshop
        double portG = 3 + 8 + answer.get("headAddedG").asDouble();
        for (JsonNode pick : list(answer.get("picks"))) {
            JsonNode again = predict("--head H-014 --shaft " + pick.get("shaft").asText() + " --grip G-001 --sleeve "
                + pick.get("sleeve").asText() + " --tip-trim \"" + pick.get("tipTrimMm").asText() + " mm\" --butt-cut \""
                + pick.get("buttCutMm").asText() + " mm\" --ports " + portG + " --clamp 5 --over-grip");
            JsonNode predicted = pick.get("predicted");
            for (String own : List.of("shaftMassG", "shaftBalanceMm", "torqueDeg")) {
                assertThat(Optional.ofNullable(predicted.get(own)).map(JsonNode::asDouble)).as(own)
                    .isEqualTo(Optional.ofNullable(again.get(own)).map(JsonNode::asDouble));
            }
            // a rounding of each of the four numbers compared
            assertThat(predicted.get("frequencyCpm").asDouble() - again.get("frequencyCpm").asDouble())
                .isCloseTo(carriedCpm, within(4 * ROUNDED));
            assertThat(predicted.get("lengthMm").asDouble() - again.get("lengthMm").asDouble())
                .isCloseTo(carriedMm, within(4 * ROUNDED));
        }
    }

    private static JsonNode predict(String build) {
        Typed typed = Typed.line("predict --json " + build);
        assertThat(typed.err()).isEmpty();
        return typed.json().get("predicted");
    }

    @Test
    void aLaddersRungsAreEvenlyApartAndEveryShaftStandsOnOne() {
        JsonNode answer = Typed.line(OAKES + "--pick ladder --step 3 --json").json();
        List<JsonNode> picks = list(answer.get("picks"));
        assertThat(picks).extracting(p -> p.get("rungCpm").asDouble()).containsExactly(-6.0, -3.0, 0.0, 3.0, 6.0);
        Set<String> shafts = new HashSet<>();
        picks.forEach(p -> assertThat(shafts.add(p.get("shaft").asText())).isTrue());
        double target = answer.get("target").get("frequencyCpm").asDouble();
        for (JsonNode pick : picks) {
            double rung = target + pick.get("rungCpm").asDouble();
            assertThat(pick.get("predicted").get("frequencyCpm").asDouble() - rung)
                .isCloseTo(pick.get("difference").get("frequencyCpm").asDouble(), within(3 * ROUNDED));
        }
    }

    @Test
    void aTrimIsAWholeNumberOfStepsAndInsideTheParallelTip() {
        for (JsonNode pick : list(Typed.line(OAKES + "--tip-step \"5 mm\" --length-step 1/8 --json").json().get("picks"))) {
            assertThat(pick.get("tipTrimMm").asDouble() / 5).isCloseTo(Math.rint(pick.get("tipTrimMm").asDouble() / 5), within(1e-9));
            assertThat(pick.get("buttCutMm").asDouble() / 3.175)
                .isCloseTo(Math.rint(pick.get("buttCutMm").asDouble() / 3.175), within(1e-6));
            // 3 in of parallel tip in the sample drawer less the 34.5 mm that stay in sleeve lock-2-335
            assertThat(pick.get("tipTrimMm").asDouble()).isLessThanOrEqualTo(3 * 25.4 - 34.5);
        }
    }

    /** 40 mm are no whole number of sixteenths; written as 1 9/16 in, whoever cuts by the table takes 0.3 mm too little. */
    @Test
    void aTrimIsPrintedAsItIsToBeCut(@TempDir Path folder) throws IOException {
        Path svg = folder.resolve("trims.svg");
        String line = OAKES + "--tip-step \"5 mm\" --length-step 1/8 --top 3 ";
        String page = Typed.line(line + "--plot \"" + svg + "\"").fitsThePage().out();
        for (JsonNode pick : list(Typed.line(line + "--json").json().get("picks"))) {
            String row = page.lines().filter(l -> l.startsWith(pick.get("rank").asInt() + " ")).findFirst().orElseThrow();
            assertThat(row).contains(" " + fixed(0, pick.get("tipTrimMm")) + "mm ", " " + fixed(1, pick.get("buttCutMm")) + "mm ");
            assertThat(Files.readString(svg)).contains(fixed(0, pick.get("tipTrimMm")) + " mm tip");
        }
        assertThat(Typed.line(OAKES + "--top 1").out()).containsPattern("1 +S-250 +1 3/8 +47mm");
    }

    /** DUNMARSH-4H carries 5 g of tape on its head; that stays on when the shaft is changed, and is not added again. */
    @Test
    void whatIsOnTheClubsOwnHeadIsNotAddedAgain() {
        Typed typed = Typed.line("shafts --club DUNMARSH-4H --top 1").fitsThePage();
        assertThat(typed.out()).contains("The head is taken as it is.")
            .doesNotContain("lead tape");
        JsonNode answer = Typed.line("shafts --club DUNMARSH-4H --top 1 --json").json();
        assertThat(answer.get("headAddedG").asDouble()).isZero();
        assertThat(answer.get("target").get("swingWeightText").asText()).isEqualTo("D2.7");
        assertThat(answer.get("target").get("frequencyCpm").asDouble()).isCloseTo(272.0, within(ROUNDED));
        assertThat(Typed.line("shafts --club DUNMARSH-4H --top 1 --head-added 1").out())
            .contains("for every one of them: Add 1 g of lead tape to the head.");
    }

    @Test
    void aHeadThatSomebodyElseHasIsNotTakenWithoutAWord() {
        assertThat(Typed.line("shafts --club TOLVER-3W --head H-152 --top 1").out())
            .contains("Note: head H-152 is built into club OAKES-3W.");
        assertThat(Typed.line("shafts --club OAKES-DR --head H-245 --top 1").out())
            .contains("Note: head H-245 is promised to E. Ashcutter.");
        assertThat(Typed.line("shafts --club LARKFIELD-DR --top 1").out()).doesNotContain("is built into", "is promised to");
    }

    @Test
    void atMostSoManyOfAModelArePicked() {
        List<JsonNode> picks = list(Typed.line(OAKES + "--per-model 2 --top 8 --json").json().get("picks"));
        List<String> models = new ArrayList<>(picks.stream().map(p -> p.get("model").asText()).toList());
        assertThat(models).hasSize(8);
        Set.copyOf(models).forEach(model -> assertThat(models.stream().filter(model::equals)).hasSizeLessThanOrEqualTo(2));
    }

    @Test
    void assumedClampsAreMarkedAndLetTheShaftIn() {
        JsonNode without = Typed.line(OAKES + "--top 200 --json").json();
        JsonNode with = Typed.line(OAKES + "--top 200 --assume-clamp 5 --json").json();
        assertThat(with.get("considered").asInt()).isGreaterThan(without.get("considered").asInt());
        assertThat(without.get("ruledOut").fieldNames()).toIterable().anyMatch(reason -> reason.contains("with its clamp"));
        List<JsonNode> marked = list(with.get("picks")).stream()
            .filter(p -> p.get("marks").toString().contains("clamp was never recorded and is assumed")).toList();
        assertThat(marked).isNotEmpty();
        List<String> before = list(without.get("picks")).stream().map(p -> p.get("shaft").asText()).toList();
        assertThat(marked).noneMatch(p -> before.contains(p.get("shaft").asText()));
    }

    @Test
    void thePictureNamesEveryPick(@TempDir Path folder) throws IOException {
        Path svg = folder.resolve("drawer.svg");
        JsonNode picks = Typed.line(OAKES + "--top 5 --json --plot \"" + svg + "\"").json().get("picks");
        String drawn = Files.readString(svg);
        assertThat(drawn).startsWith("<").contains("cpm");
        list(picks).forEach(pick -> assertThat(drawn).contains(pick.get("shaft").asText()));
        Path png = folder.resolve("profile.PNG");
        assertThat(Typed.line("shafts --profile S-001 --plot \"" + png + "\"").status()).isEqualTo(Main.DONE);
        // the eight bytes every PNG file begins with: W3C, Portable Network Graphics, section 5.2
        assertThat(Files.readAllBytes(png)).startsWith(0x89, 'P', 'N', 'G', 0x0d, 0x0a, 0x1a, 0x0a);
    }

    @Test
    void aShaftReadAtFourLengthsShowsItsProfile() {
        JsonNode answer = Typed.line("shafts --profile S-001 --json").json();
        assertThat(answer.fieldNames()).toIterable().contains("shaft", "model", "rawCpm", "rawUncertaintyCpm", "readings",
            "profile", "gripFactor", "notes", "version");
        String page = Typed.line("shafts --profile s-001").fitsThePage().out();
        List<JsonNode> readings = list(answer.get("readings"));
        assertThat(readings).hasSize(4);
        for (JsonNode reading : readings) {
            // 0.5 cpm is what the sample gauge repeats to, and a fit with as many knots as this must come as near as twice that
            assertThat(reading.get("computedCpm").asDouble()).isCloseTo(reading.get("readCpm").asDouble(), within(1.0));
            assertThat(page).contains(fixed(1, reading.get("readCpm")), fixed(1, reading.get("computedCpm")));
        }
        list(answer.get("profile")).forEach(knot -> assertThat(page).contains(fixed(2, knot.get("stiffnessNm2"))));
    }

    @Test
    void aShaftReadOnceHasNoProfileOfItsOwn() {
        Typed typed = Typed.line("shafts --profile S-003").fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(typed.out()).contains("371.6", "takes readings at three or more free lengths");
        JsonNode answer = Typed.line("shafts --profile S-003 --json").json();
        assertThat(answer.get("profile")).isEmpty();
        assertThat(answer.get("readings")).hasSize(1);
    }

    @Test
    void whatIsNotDrawnIsSaid(@TempDir Path folder) {
        Path svg = folder.resolve("one.svg");
        assertThat(Typed.line("shafts --profile S-003 --plot \"" + svg + "\"").err().strip())
            .isEqualTo(svg + " was not drawn: the shaft has no profile of its own");
        assertThat(Typed.line(OAKES + "--material steel --plot \"" + svg + "\"").err().strip())
            .isEqualTo(svg + " was not drawn: no shaft was picked");
        assertThat(svg).doesNotExist();
    }

    @Test
    void nothingInsideToleranceShowsTheNearestAndExitsOne() {
        Typed typed = Typed.line(OAKES + "--top 3 --tolerance frequency=0.01,mass=0.01").fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(typed.out()).contains("No shaft is inside every tolerance", "Out of tolerance: ");
    }

    @Test
    void aDrawerWithNothingThatFitsExitsOne() {
        Typed typed = Typed.line(OAKES + "--material steel").fitsThePage();
        assertThat(typed.status()).isEqualTo(Main.NOTHING_SUITABLE);
        assertThat(typed.out()).contains("No shaft in stock fits.");
        assertThat(Typed.line(OAKES + "--material steel --json").json().get("ruledOut").get("other material").asInt()).isPositive();
        assertThat(Typed.line(OAKES + "--material steel --pick ladder").out())
            .contains("No shaft is left for the rung at −6 cpm.");
    }

    @Test
    void anAnswerIsTheSameEveryTime() {
        Typed once = Typed.line(OAKES + "--pick ladder --json");
        assertThat(Typed.line(OAKES + "--pick ladder --json").out().getBytes(StandardCharsets.UTF_8))
            .isEqualTo(once.out().getBytes(StandardCharsets.UTF_8));
    }
}
