package benchtwin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import benchtwin.bench.SetJson;
import benchtwin.bench.SetService;
import benchtwin.bench.WantedSets;
import benchtwin.club.Inventory;
import benchtwin.club.SetTargets;
import benchtwin.match.ShopSettings;
import benchtwin.sets.Alikeness;
import benchtwin.sets.CostLine;
import benchtwin.sets.OrderLine;
import benchtwin.sets.PlanLimits;
import benchtwin.sets.PlanScore;
import benchtwin.sets.SetAnswer;
import benchtwin.sets.SetRequest;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands below the sets: how good the plan is, what to order, what the pins cost. Answers are made up here. */
class SetPageTest {

    private static SetService.Answer answer(OptionalDouble bound, double cost, OptionalDouble pinCost) {
        SetTargets none = new SetTargets(List.of(), List.of());
        SetRequest request = new SetRequest(none, Inventory.EMPTY, ShopSettings.DEFAULT, Optional.empty(), List.of(),
            Set.of("S-2", "H-1"), Alikeness.DEFAULT);
        return new SetService.Answer(request, new PlanLimits(Duration.ZERO, 1, OptionalInt.of(120), 7), new SetAnswer(List.of(),
            new PlanScore(95, 11, cost, bound, 0.084, 15_944, 1_234_567, 120, 7),
            List.of(new CostLine("R. Fenn", "irons", "distance from target", 1.5),
                new CostLine("R. Fenn", "irons", "work and metal used", 0.25),
                new CostLine("R. Fenn", "driver", "work and metal used", 2)),
            List.of(new OrderLine("a left-handed 4 hybrid head near 22 degrees", "R. Fenn's 4-hybrid", Double.POSITIVE_INFINITY),
                new OrderLine("a shaft of 308 cpm", "R. Fenn's 7-iron", 1.234)), pinCost, List.of("one sleeve short")));
    }

    private static String page(SetService.Answer answer, boolean why) {
        StringWriter text = new StringWriter();
        new SetPage(new Page(new PrintWriter(text), false), answer, why, false).print(List.of());
        assertThat(text.toString().lines()).allMatch(line -> line.length() <= Page.WIDTH);
        return text.toString().replaceAll("\\s+", " ");
    }

    private static JsonNode json(SetService.Answer answer) throws JsonProcessingException {
        return new ObjectMapper().readTree(SetJson.text(answer, new WantedSets(answer.request().targets(),
            Optional.of(Path.of("wanted.csv")),
            Optional.of(Path.of("lines.csv")), List.of())));
    }

    /** A gap is shown rounded up: 100 · (58 − bound) / 58 %. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        58     | proven: no choice of parts among the 15,944 pairs worked out costs less;
        57.826 | proven within 0.30 % of the best choice of parts among the 15,944 pairs worked out;
        57.825 | proven within 0.31 % of the best choice of parts among the 15,944 pairs worked out;
        55.1   | proven within 5.0 % of the best choice of parts among the 15,944 pairs worked out;
        55.09  | proven within 5.1 % of the best choice of parts among the 15,944 pairs worked out;
        """)
    void theProofIsNeverShownStrongerThanItIs(double bound, String words) {
        assertThat(page(answer(OptionalDouble.of(bound), 58, OptionalDouble.empty()), false)).contains(
            "84 of 95 clubs built; cost 58.00 squared tolerances; " + words
                + " 120 rounds, seed 7; planning groups jointly took off another 0.08.");
    }

    @Test
    void withoutABoundThePageSaysSo() throws JsonProcessingException {
        SetService.Answer answer = answer(OptionalDouble.empty(), 58, OptionalDouble.empty());
        assertThat(page(answer, false)).contains("how near that is to the best choice was not shown; 120 rounds");
        assertThat(json(answer).get("score").has("bound")).isFalse();
        assertThat(json(answer).get("score").has("gapPercent")).isFalse();
    }

    @Test
    void whatToOrderAndWhatPinsCostStandBelow() throws JsonProcessingException {
        SetService.Answer answer = answer(OptionalDouble.of(58), 58, OptionalDouble.of(0.456));
        assertThat(page(answer, false)).contains("Worth ordering, most useful first",
            "a left-handed 4 hybrid head near 22 degrees, for R. Fenn's 4-hybrid: builds a club that cannot be built now.",
            "a shaft of 308 cpm, for R. Fenn's 7-iron: takes off about 1.23.", "The pins together cost 0.46 squared tolerances.",
            "Note: one sleeve short.");
        JsonNode json = json(answer);
        assertThat(json.get("order").get(0).get("buildsAClub").asBoolean()).isTrue();
        assertThat(json.get("order").get(0).has("gain")).isFalse();
        assertThat(json.get("order").get(1).get("gain").asDouble()).isEqualTo(1.234);
        assertThat(json.get("pinCost").asDouble()).isEqualTo(0.456);
        assertThat(json.get("pinsLeaveAClubOut").asBoolean()).isFalse();
        assertThat(json.get("asked")).hasToString("{\"targets\":\"wanted.csv\",\"lines\":\"lines.csv\",\"players\":[],\"pins\":[],"
            + "\"banned\":[\"H-1\",\"S-2\"],\"gapPercent\":1.0,\"rounds\":120}");
    }

    @Test
    void pinsThatLeaveAClubOutHaveNoCostInFigures() throws JsonProcessingException {
        SetService.Answer answer = answer(OptionalDouble.empty(), 58, OptionalDouble.of(Double.POSITIVE_INFINITY));
        assertThat(page(answer, false)).contains("The pins leave a club out that could be built without them.");
        assertThat(json(answer).get("pinsLeaveAClubOut").asBoolean()).isTrue();
        assertThat(json(answer).has("pinCost")).isFalse();
    }

    /** 1.5 + 0.25 for the irons, 2 for the driver, which stands first; 3.75 in all. */
    @Test
    void whyAddsUpWhatTheRulesCost() {
        assertThat(page(answer(OptionalDouble.empty(), 58, OptionalDouble.empty()), true)).contains(
            "R. Fenn, driver 2.000: work and metal used 2.000 R. Fenn, irons 1.750: distance from target 1.500, work and metal "
                + "used 0.250 In all: 3.750");
    }
}
