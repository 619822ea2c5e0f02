package benchtwin.bench;

import benchtwin.club.AngleReading;
import benchtwin.club.Quantity;
import benchtwin.club.StepKind;
import benchtwin.club.Wanted;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A job's plan as the text the book keeps. */
final class JobPlanJson {

    private JobPlanJson() {
    }

    static String write(JobPlan plan) {
        ArrayNode array = Json.MAPPER.createArrayNode();
        for (JobPlan.Club club : plan.clubs()) {
            ObjectNode node = array.addObject();
            node.put("name", club.name());
            ObjectNode build = node.putObject("build");
            club.build().forEach(build::put);
            node.put("sleeveFromTin", club.joins().sleeveFromTin());
            node.put("tipOut", club.joins().tipOut());
            node.put("anyGrip", club.joins().anyGrip());
            node.set("steps", Json.texts(club.steps()));
            ArrayNode work = node.putArray("work");
            club.tasks().forEach(task -> work.add(work(task)));
            ObjectNode amounts = node.putObject("amounts");
            club.amounts().forEach(amounts::put);
            ArrayNode weights = node.putArray("weights");
            club.weights().forEach(weight -> weights.addObject().put("tag", weight.tag()).put("moreG", weight.moreG()));
            club.reading().ifPresent(reading -> node.put("reading", reading.word()));
            ObjectNode wanted = node.putObject("wanted");
            club.wanted().forEach((quantity, one) -> wanted.putObject(quantity.jsonName()).put("value", Json.rounded(one.value()))
                .put("tolerance", Json.rounded(one.tolerance())).put("weight", one.weight()));
            node.set("predicted", Json.plain(club.predicted()));
            node.set("uncertainty", Json.plain(club.uncertainty()));
            node.put("miss", Json.rounded(club.miss()));
        }
        return array.toString();
    }

    private static ObjectNode work(JobPlan.Task task) {
        ObjectNode node = Json.object().put("inShort", task.inShort());
        task.kind().ifPresent(kind -> node.put("kind", kind.word()));
        task.minutes().ifPresent(minutes -> node.put("minutes", minutes));
        return node;
    }

    static JobPlan read(String text) {
        List<JobPlan.Club> clubs = new ArrayList<>();
        try {
            for (JsonNode node : Json.MAPPER.readTree(text)) {
                clubs.add(club(node));
            }
        } catch (JsonProcessingException notOurs) {
            throw new IllegalStateException("a job's plan that this program did not write", notOurs);
        }
        return new JobPlan(clubs);
    }

    private static JobPlan.Club club(JsonNode node) {
        Map<String, String> build = new LinkedHashMap<>();
        node.path("build").fields().forEachRemaining(field -> build.put(field.getKey(), field.getValue().asText()));
        List<JobPlan.Task> tasks = new ArrayList<>();
        node.path("steps").forEach(step -> tasks.add(task(step.asText(), node.path("work").path(tasks.size()))));
        Map<String, Double> amounts = new LinkedHashMap<>();
        node.path("amounts").fields().forEachRemaining(field -> amounts.put(field.getKey(), field.getValue().asDouble()));
        List<JobPlan.WeightIn> weights = new ArrayList<>();
        node.path("weights").forEach(weight -> weights.add(new JobPlan.WeightIn(weight.path("tag").asText(),
            weight.path("moreG").asDouble())));
        Optional<AngleReading> reading = Arrays.stream(AngleReading.values())
            .filter(one -> one.word().equals(node.path("reading").asText())).findFirst();
        return new JobPlan.Club(node.path("name").asText(), build, new JobPlan.Joins(node.path("sleeveFromTin").asBoolean(),
            node.path("tipOut").asBoolean(), node.path("anyGrip").asBoolean()), tasks, amounts, weights, reading,
            wanted(node.path("wanted")), quantities(node.path("predicted")), quantities(node.path("uncertainty")), node.path("miss").asDouble());
    }

    /** A step; plans of earlier programs have its words only. */
    private static JobPlan.Task task(String words, JsonNode work) {
        return new JobPlan.Task(words, work.path("inShort").asText(words),
            Arrays.stream(StepKind.values()).filter(kind -> kind.word().equals(work.path("kind").asText())).findFirst(),
            work.has("minutes") ? OptionalDouble.of(work.get("minutes").asDouble()) : OptionalDouble.empty());
    }

    private static Map<Quantity, Wanted> wanted(JsonNode node) {
        Map<Quantity, Wanted> wanted = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            JsonNode one = node.path(quantity.jsonName());
            if (one.has("value")) {
                wanted.put(quantity, new Wanted(one.get("value").asDouble(), one.get("tolerance").asDouble(),
                    one.get("weight").asDouble()));
            }
        }
        return wanted;
    }

    private static Map<Quantity, Double> quantities(JsonNode node) {
        Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            if (node.has(quantity.jsonName())) {
                values.put(quantity, node.get(quantity.jsonName()).asDouble());
            }
        }
        return values;
    }
}
