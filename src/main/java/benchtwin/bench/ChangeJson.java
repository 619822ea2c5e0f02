package benchtwin.bench;

import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import benchtwin.match.ChangeAnswer;
import benchtwin.match.Way;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/** The ways to change a club as JSON; the names are documented in docs/json.md and stay. */
public final class ChangeJson {

    private ChangeJson() {
    }

    /**
     * One object.
     * @param answer the answer
     * @return JSON text, indented
     */
    public static String text(ChangeService.Answer answer) {
        ChangeAnswer change = answer.change();
        ObjectNode root = Json.object();
        root.put("club", change.request().club().name());
        root.put("measuredOn", answer.measuredOn().toString());
        ObjectNode asked = Json.quantities(change.request().wished());
        change.request().grip().ifPresent(grip -> asked.put("grip", grip.tag()));
        change.request().gripMassG().ifPresent(grams -> asked.put("gripMassG", Json.rounded(grams)));
        root.set("asked", asked);
        root.set("now", Json.quantities(change.now()));
        ArrayNode workedOut = root.putArray("workedOut");
        change.now().keySet().stream().filter(q -> !change.measured().contains(q)).map(Quantity::jsonName)
            .forEach(workedOut::add);
        root.set("target", OptionJson.target(change.target()));
        root.put("alreadySo", change.alreadySo());
        ArrayNode ways = root.putArray("ways");
        change.ways().forEach(way -> ways.add(way(way, change.now())));
        root.put("moreWays", change.more());
        ArrayNode shortfalls = root.putArray("shortfalls");
        for (ChangeAnswer.Shortfall shortfall : change.shortfalls()) {
            ObjectNode node = shortfalls.addObject();
            node.put("lever", shortfall.lever().word());
            node.set("missing", Json.plain(shortfall.missing()));
            node.put("why", shortfall.why());
            shortfall.nearest().ifPresent(way -> node.set("nearest", way(way, change.now())));
        }
        ArrayNode notes = root.putArray("notes");
        change.notes().forEach(notes::add);
        ArrayNode cautions = root.putArray("cautions");
        Cautions.of(change).forEach(cautions::add);
        return Json.answer(root);
    }

    private static ObjectNode way(Way way, Map<Quantity, Double> now) {
        ObjectNode node = OptionJson.option(way.option());
        if (way.option().rank() == 0) {
            node.remove("rank");
        }
        ArrayNode changed = node.putArray("changed");
        way.changed().forEach(lever -> changed.add(lever.word()));
        way.grip().map(Grip::tag).ifPresent(tag -> node.put("grip", tag));
        node.put("tapeLayers", Json.rounded(way.tapeLayers()));
        ObjectNode moved = node.putObject("change");
        way.option().predicted().forEach((quantity, after) -> {
            if (now.containsKey(quantity)) {
                moved.put(quantity.jsonName(), Json.rounded(after - now.get(quantity)));
            }
        });
        return node;
    }
}
