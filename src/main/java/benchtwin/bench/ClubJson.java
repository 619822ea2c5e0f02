package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.club.Timeline;
import benchtwin.club.TimelineEntry;
import benchtwin.club.ValueComparison;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/** Clubs of the book as JSON; the names are documented in docs/json.md and stay. */
public final class ClubJson {

    private ClubJson() {
    }

    /**
     * One club.
     * @param club the club
     * @return JSON text, indented
     */
    public static String text(ClubViews.Club club) {
        ObjectNode root = Json.object();
        root.put("tag", club.tag());
        ObjectNode facts = root.putObject("facts");
        club.facts().forEach(facts::put);
        root.set("measures", values(club.values()));
        root.set("should", values(club.accepted()));
        root.set("unread", Json.texts(club.unread().stream().map(Quantity::word).toList()));
        root.set("notes", Json.texts(club.notes()));
        return Json.answer(root);
    }

    private static ArrayNode values(Map<Quantity, ClubViews.ReadValue> values) {
        ArrayNode array = Json.MAPPER.createArrayNode();
        values.forEach((quantity, value) -> {
            ObjectNode node = array.addObject();
            node.put("quantity", quantity.word());
            Json.put(node, quantity, value.value());
            node.put("uncertainty", Json.rounded(value.uncertainty()));
            node.put("day", value.day().toString());
            value.gauge().ifPresent(gauge -> node.put("gauge", gauge));
            ObjectNode condition = node.putObject("condition");
            value.condition().forEach(condition::put);
            ArrayNode readings = node.putArray("readings");
            value.readings().forEach(readings::add);
        });
        return array;
    }

    /**
     * A club's history.
     * @param timeline what befell it
     * @return JSON text, indented
     */
    public static String history(Timeline timeline) {
        ObjectNode root = Json.object();
        root.put("of", timeline.of());
        ArrayNode entries = root.putArray("entries");
        for (TimelineEntry entry : timeline.entries()) {
            ObjectNode node = entries.addObject();
            node.put("when", entry.when().text());
            node.put("what", entry.text());
            ArrayNode values = node.putArray("values");
            entry.values().forEach((quantity, value) -> {
                ObjectNode one = values.addObject();
                one.put("quantity", quantity.word());
                Json.put(one, quantity, value.value());
                one.put("uncertainty", Json.rounded(value.standardUncertainty()));
                value.gauge().ifPresent(gauge -> one.put("gauge", gauge));
                value.sinceBefore().ifPresent(moved -> one.put("sinceBefore", Json.rounded(moved.value()))
                    .put("beyondUncertainty", moved.isBeyondUncertainty()));
            });
            ArrayNode corrections = node.putArray("corrections");
            entry.corrections().forEach(correction -> corrections.addObject().put("quantity", correction.quantity().word())
                .put("was", Json.rounded(correction.was())).put("entered", correction.entered().text())
                .put("why", correction.why()));
        }
        return Json.answer(root);
    }

    /**
     * A comparison.
     * @param compared two clubs, or one on two days
     * @return JSON text, indented
     */
    public static String compared(ClubViews.Compared compared) {
        ObjectNode root = Json.object();
        root.put("a", compared.values().a());
        root.put("b", compared.values().b());
        ArrayNode values = root.putArray("values");
        compared.values().values().forEach((quantity, value) -> values.add(value(quantity, value)));
        ArrayNode facts = root.putArray("differs");
        compared.facts().forEach((name, pair) -> facts.addObject().put("name", name).put("a", pair.get(0)).put("b", pair.get(1)));
        root.set("remarks", Json.texts(compared.remarks()));
        return Json.answer(root);
    }

    static ObjectNode value(Quantity quantity, ValueComparison value) {
        ObjectNode node = Json.object();
        node.put("quantity", quantity.word());
        node.put("unit", quantity.unit());
        value.a().ifPresent(a -> node.put("a", Json.rounded(a)));
        value.b().ifPresent(b -> node.put("b", Json.rounded(b)));
        node.put("tolerance", Json.rounded(value.tolerance()));
        value.difference().ifPresent(difference -> node.put("difference", Json.rounded(difference.value()))
            .put("uncertainty", Json.rounded(difference.standardUncertainty()))
            .put("beyondUncertainty", difference.isBeyondUncertainty()));
        node.set("gauges", Json.texts(value.gauges()));
        return node;
    }
}
