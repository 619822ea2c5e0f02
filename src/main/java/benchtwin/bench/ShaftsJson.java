package benchtwin.bench;

import benchtwin.match.ShaftAnswer;
import benchtwin.match.ShaftPick;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The answer to a choice of shafts as JSON; the names are documented in docs/json.md and stay. */
public final class ShaftsJson {

    private ShaftsJson() {
    }

    /**
     * One object.
     * @param answer the answer
     * @return JSON text, indented
     */
    public static String text(ShaftAnswer answer) {
        ObjectNode root = Json.object();
        root.put("club", answer.request().club().name());
        root.put("head", answer.request().head().tag());
        root.put("pick", answer.request().picking().pick().word());
        root.put("headAddedG", Json.rounded(answer.headAddedG()));
        ObjectNode condition = root.putObject("condition");
        condition.put("clampMm", Json.rounded(answer.clampMm()));
        condition.put("overGrip", answer.readOverGrip());
        root.set("target", OptionJson.target(answer.target()));
        answer.reference().ifPresent(values -> root.set("oldShaftInThisBuild", Json.quantities(values)));
        ArrayNode picks = root.putArray("picks");
        answer.picks().forEach(pick -> picks.add(pick(pick)));
        root.set("belowTheLine", OptionJson.below(answer.belowTheLine(), answer.nearest()));
        ArrayNode empty = root.putArray("emptyRungsCpm");
        answer.emptyRungs().forEach(empty::add);
        ObjectNode ruledOut = root.putObject("ruledOut");
        answer.ruledOut().forEach(ruledOut::put);
        root.put("considered", answer.considered());
        ArrayNode notes = root.putArray("notes");
        answer.notes().forEach(notes::add);
        ArrayNode cautions = root.putArray("cautions");
        Cautions.of(answer).forEach(cautions::add);
        return Json.answer(root);
    }

    private static ObjectNode pick(ShaftPick pick) {
        ObjectNode node = OptionJson.option(pick.option());
        node.put("model", pick.option().shaft().model());
        node.put("rungCpm", Json.rounded(pick.rungCpm()));
        node.put("tipTrimMm", Json.rounded(pick.tipTrimMm()));
        node.put("buttCutMm", Json.rounded(pick.buttCutMm()));
        node.put("untrimmedCpm", Json.rounded(pick.untrimmedCpm()));
        pick.rawCpm().ifPresent(cpm -> node.put("rawCpm", Json.rounded(cpm)));
        ArrayNode marks = node.putArray("marks");
        pick.marks().forEach(marks::add);
        return node;
    }
}
