package benchtwin.bench;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A prediction as JSON; the names are documented in docs/json.md and stay. */
public final class PredictJson {

    private PredictJson() {
    }

    /**
     * One object.
     * @param answer the prediction
     * @return JSON text, indented
     */
    public static String text(PredictService.Answer answer) {
        ObjectNode root = Json.object();
        root.put("head", answer.spec().head());
        root.put("shaft", answer.spec().shaft());
        root.put("reading", answer.reading().word());
        root.put("buttCutMm", Json.rounded(answer.buttCutMm()));
        root.set("predicted", Json.quantities(answer.values()));
        root.set("uncertainty", Json.plain(answer.uncertainty()));
        ArrayNode inputs = root.putArray("inputs");
        for (PredictService.InputLine line : answer.inputs()) {
            ObjectNode one = inputs.addObject();
            one.put("key", line.key());
            one.put("what", line.what());
            one.put("value", Json.rounded(line.value()));
            one.put("standardUncertainty", Json.rounded(line.u()));
            one.put("origin", line.origin());
        }
        ArrayNode notes = root.putArray("notes");
        answer.notes().forEach(notes::add);
        root.set("rulesWarnings", Json.texts(answer.rulesWarnings()));
        return Json.answer(root);
    }
}
