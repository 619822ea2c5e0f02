package benchtwin.bench;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A shaft's stiffness as JSON; the names are documented in docs/json.md and stay. */
public final class ProfileJson {

    private ProfileJson() {
    }

    /**
     * One object.
     * @param answer the stiffness
     * @return JSON text, indented
     */
    public static String text(ProfileService.Answer answer) {
        ObjectNode root = Json.object();
        root.put("shaft", answer.shaft().tag());
        root.put("model", answer.shaft().model());
        answer.rawCpm().ifPresent(cpm -> root.put("rawCpm", Json.rounded(cpm)));
        answer.rawUCpm().ifPresent(u -> root.put("rawUncertaintyCpm", Json.rounded(u)));
        ArrayNode readings = root.putArray("readings");
        for (ProfileService.ReadingLine line : answer.readings()) {
            ObjectNode node = readings.addObject();
            node.put("freeLengthMm", Json.rounded(line.freeLengthMm()));
            node.put("tipMassG", Json.rounded(line.tipMassG()));
            node.put("overGrip", line.overGrip());
            node.put("readings", line.readings());
            node.put("readCpm", Json.rounded(line.readCpm()));
            node.put("standardUncertaintyCpm", Json.rounded(line.uCpm()));
            if (!Double.isNaN(line.computedCpm())) {
                node.put("computedCpm", Json.rounded(line.computedCpm()));
            }
        }
        ArrayNode profile = root.putArray("profile");
        for (ProfileService.KnotLine knot : answer.knots()) {
            ObjectNode node = profile.addObject();
            node.put("fromTipMm", Json.rounded(knot.fromTipMm()));
            node.put("stiffnessNm2", Json.rounded(knot.stiffnessNm2()));
            node.put("standardUncertaintyNm2", Json.rounded(knot.uNm2()));
            node.put("factorOnDefault", Json.rounded(knot.factor()));
        }
        root.put("gripFactor", answer.grip());
        ArrayNode notes = root.putArray("notes");
        answer.notes().forEach(notes::add);
        return Json.answer(root);
    }
}
