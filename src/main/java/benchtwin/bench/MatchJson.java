package benchtwin.bench;

import benchtwin.match.MatchAnswer;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The answer to a match as JSON; the names are documented in docs/json.md and stay. */
public final class MatchJson {

    private MatchJson() {
    }

    /**
     * One object.
     * @param answer the answer
     * @return JSON text, indented
     */
    public static String text(MatchAnswer answer) {
        ObjectNode root = Json.object();
        root.put("club", answer.favourite().name());
        root.put("keep", answer.keep().word());
        root.set("target", OptionJson.target(answer.favourite().target()));
        ArrayNode results = root.putArray("results");
        answer.results().forEach(option -> results.add(OptionJson.option(option)));
        root.set("belowTheLine", OptionJson.below(answer.belowTheLine(), answer.results()));
        ObjectNode ruledOut = root.putObject("ruledOut");
        answer.ruledOut().forEach(ruledOut::put);
        root.put("considered", answer.considered());
        root.put("pastBendLimit", answer.pastLimit());
        root.put("proven", answer.proven());
        root.set("carriedOver", Json.quantities(answer.carried()));
        ArrayNode notes = root.putArray("notes");
        answer.notes().forEach(notes::add);
        ArrayNode cautions = root.putArray("cautions");
        Cautions.of(answer).forEach(cautions::add);
        return Json.answer(root);
    }
}
