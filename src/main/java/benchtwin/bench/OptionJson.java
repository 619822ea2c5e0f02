package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.Step;
import benchtwin.club.Target;
import benchtwin.match.FirstTimeRight;
import benchtwin.match.MatchAnswer;
import benchtwin.match.Ranked;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;

/** Targets and options as JSON, the same in every answer that has them. */
final class OptionJson {

    private OptionJson() {
    }

    static ObjectNode target(Target target) {
        ObjectNode node = Json.object();
        node.put("reading", target.reading().word());
        ObjectNode tolerance = Json.object();
        ObjectNode weight = Json.object();
        target.wanted().forEach((quantity, wanted) -> {
            Json.put(node, quantity, wanted.value());
            tolerance.put(quantity.jsonName(), wanted.tolerance());
            weight.put(quantity.jsonName(), wanted.weight());
        });
        node.set("tolerance", tolerance);
        node.set("weight", weight);
        return node;
    }

    /** Options below the line, each with its reason and without a rank. */
    static ArrayNode below(List<MatchAnswer.Below> belowTheLine, List<Ranked> results) {
        ArrayNode array = Json.MAPPER.createArrayNode();
        for (MatchAnswer.Below below : belowTheLine) {
            ObjectNode node = option(below.option());
            node.remove("rank");
            node.put("reason", below.reason());
            below.nearerThan(results).ifPresent(rank -> node.put("nearerThanRank", rank));
            array.add(node);
        }
        return array;
    }

    static ObjectNode option(Ranked option) {
        ObjectNode node = Json.object();
        node.put("rank", option.rank());
        node.put("head", option.head().tag());
        node.put("shaft", option.shaft().tag());
        option.sleeve().ifPresent(sleeve -> node.put("sleeve", sleeve.name()));
        option.setting().ifPresent(setting -> node.put("setting", setting));
        ObjectNode plan = node.putObject("plan");
        ArrayNode steps = plan.putArray("steps");
        for (Step step : option.plan().steps()) {
            ObjectNode one = steps.addObject();
            one.put("kind", step.kind().word());
            one.put("words", step.words());
            one.put("minutes", step.minutes());
            one.put("undo", step.kind().undo().word());
            if (!step.amounts().isEmpty()) {
                ObjectNode amounts = one.putObject("amounts");
                step.amounts().forEach((name, amount) -> amounts.put(name, Json.rounded(amount)));
            }
            if (!step.parts().isEmpty()) {
                ArrayNode parts = one.putArray("parts");
                step.parts().forEach(parts::add);
            }
        }
        plan.put("minutes", option.plan().minutes());
        plan.put("readyMinutes", option.plan().readyMinutes());
        plan.put("permanentSteps", option.plan().permanentSteps());
        node.set("predicted", Json.quantities(option.predicted()));
        node.set("uncertainty", Json.plain(option.uncertainty()));
        node.set("difference", Json.plain(option.difference()));
        node.put("cost", Json.rounded(option.cost()));
        node.put("miss", Json.rounded(option.miss()));
        node.put("effort", Json.rounded(option.effort()));
        node.set("firstTimeRight", chance(option.firstTimeRight()));
        ArrayNode out = node.putArray("outOfTolerance");
        option.outOfTolerance().stream().map(Quantity::jsonName).forEach(out::add);
        ArrayNode defaults = node.putArray("defaultsUsed");
        option.defaultsUsed().forEach(defaults::add);
        ArrayNode ties = node.putArray("tiedWith");
        option.tiedWith().forEach(ties::add);
        node.set("rulesWarnings", Json.texts(option.rulesWarnings()));
        return node;
    }

    private static ObjectNode chance(FirstTimeRight chance) {
        ObjectNode node = Json.object();
        node.put("all", Json.rounded(chance.all()));
        putAll(node, chance.byGroup());
        putAll(node.putObject("best"), chance.best());
        chance.measureNext().ifPresent(next -> {
            ObjectNode measure = node.putObject("measureNext");
            measure.put("what", next.what());
            measure.put("raisesTo", Json.rounded(next.raisesTo()));
        });
        return node;
    }

    private static void putAll(ObjectNode node, Map<String, Double> values) {
        values.forEach((name, value) -> node.put(name, Json.rounded(value)));
    }
}
