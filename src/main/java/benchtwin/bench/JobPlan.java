package benchtwin.bench;

import benchtwin.book.State;
import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.club.Sleeve;
import benchtwin.club.Step;
import benchtwin.match.Ranked;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A job's plan, as the book keeps it.
 * @param clubs one for every club it builds or changes
 */
record JobPlan(List<Club> clubs) {

    /** No plan yet. */
    static final JobPlan NONE = new JobPlan(List.of());
    private static final String FACT = "plan";

    JobPlan {
        clubs = List.copyOf(clubs);
    }

    /**
     * The plan of one club.
     * @param name      the club's tag, or what the set calls it
     * @param build     its parts and setting, by name as a club's facts have them
     * @param steps     what to do, in bench words
     * @param amounts   how much of what is cut, added, bent in all
     * @param weights   tags of weights that go in
     * @param predicted what it should measure
     * @param miss      distance from the target, in tolerances
     */
    record Club(String name, Map<String, String> build, List<String> steps, Map<String, Double> amounts, List<String> weights,
                Map<Quantity, Double> predicted, double miss) {

        Club {
            build = Collections.unmodifiableMap(new TreeMap<>(build));
            steps = List.copyOf(steps);
            amounts = Collections.unmodifiableMap(new TreeMap<>(amounts));
            weights = List.copyOf(weights);
            predicted = Collections.unmodifiableMap(new EnumMap<>(predicted.isEmpty() ? new EnumMap<>(Quantity.class)
                : new EnumMap<>(predicted)));
        }

        /** From an option of an answer. */
        static Club of(String name, Ranked option, Optional<Grip> grip) {
            Map<String, String> build = new TreeMap<>(Map.of("head", option.head().tag(), "shaft", option.shaft().tag()));
            option.sleeve().map(Sleeve::name).ifPresent(sleeve -> build.put("sleeve", sleeve));
            option.setting().ifPresent(setting -> build.put("setting", setting));
            grip.map(Grip::tag).ifPresent(tag -> build.put("grip", tag));
            Map<String, Double> amounts = new TreeMap<>();
            List<String> weights = new ArrayList<>();
            for (Step step : option.plan().steps()) {
                step.amounts().forEach((what, amount) -> amounts.merge(what, Json.rounded(amount), Double::sum));
                weights.addAll(step.parts());
            }
            return new Club(name, build, option.plan().steps().stream().map(Step::words).toList(), amounts, weights,
                option.predicted(), option.miss());
        }
    }

    /** What to do, the club's name before each step where there are several. */
    List<String> steps() {
        List<String> steps = new ArrayList<>();
        clubs.forEach(club -> club.steps().forEach(step -> steps.add(clubs.size() > 1 ? club.name() + ": " + step : step)));
        return steps;
    }

    /** The fact a job keeps it under. */
    Map<String, String> facts() {
        ArrayNode array = Json.MAPPER.createArrayNode();
        for (Club club : clubs) {
            ObjectNode node = array.addObject();
            node.put("name", club.name());
            ObjectNode build = node.putObject("build");
            club.build().forEach(build::put);
            ArrayNode steps = node.putArray("steps");
            club.steps().forEach(steps::add);
            ObjectNode amounts = node.putObject("amounts");
            club.amounts().forEach(amounts::put);
            ArrayNode weights = node.putArray("weights");
            club.weights().forEach(weights::add);
            ObjectNode predicted = node.putObject("predicted");
            club.predicted().forEach((quantity, value) -> predicted.put(quantity.jsonName(), Json.rounded(value)));
            node.put("miss", Json.rounded(club.miss()));
        }
        return Map.of(FACT, array.toString());
    }

    /** The plan a job has, if it has one. */
    static Optional<JobPlan> read(State job) {
        return job.fact(FACT).map(text -> {
            List<Club> clubs = new ArrayList<>();
            try {
                for (JsonNode node : Json.MAPPER.readTree(text)) {
                    clubs.add(club(node));
                }
            } catch (JsonProcessingException notOurs) {
                throw new IllegalStateException("a job's plan that this program did not write", notOurs);
            }
            return new JobPlan(clubs);
        });
    }

    private static Club club(JsonNode node) {
        Map<String, String> build = new LinkedHashMap<>();
        node.path("build").fields().forEachRemaining(field -> build.put(field.getKey(), field.getValue().asText()));
        Map<String, Double> amounts = new LinkedHashMap<>();
        node.path("amounts").fields().forEachRemaining(field -> amounts.put(field.getKey(), field.getValue().asDouble()));
        Map<Quantity, Double> predicted = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            if (node.path("predicted").has(quantity.jsonName())) {
                predicted.put(quantity, node.path("predicted").get(quantity.jsonName()).asDouble());
            }
        }
        return new Club(node.path("name").asText(), build, texts(node.path("steps")), amounts, texts(node.path("weights")),
            predicted, node.path("miss").asDouble());
    }

    private static List<String> texts(JsonNode array) {
        List<String> texts = new ArrayList<>();
        array.forEach(text -> texts.add(text.asText()));
        return texts;
    }
}
