package benchtwin.bench;

import benchtwin.bend.Bend;
import benchtwin.bend.BendAdvice;
import benchtwin.bend.BendDirection;
import benchtwin.bend.BendSession;
import benchtwin.bend.HoselLimits;
import benchtwin.bend.Springback;
import benchtwin.club.Quantity;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;

/** Bending sessions as JSON; the names are documented in docs/json.md and stay. */
public final class BendJson {

    private BendJson() {
    }

    /**
     * Sessions of several heads.
     * @param runs the sessions
     * @return JSON text, indented
     */
    public static String text(List<BendRun> runs) {
        ObjectNode root = Json.object();
        ArrayNode heads = root.putArray("heads");
        runs.forEach(run -> heads.add(head(run)));
        return Json.answer(root);
    }

    private static ObjectNode head(BendRun run) {
        ObjectNode node = Json.object();
        node.put("head", run.head().tag());
        node.put("model", run.head().model());
        node.put("material", run.head().material().word());
        node.put("reading", run.goal().reading().word());
        run.job().ifPresent(job -> node.put("job", job));
        node.set("target", Json.plain(run.goal().targetDeg()));
        node.set("tolerance", Json.plain(run.goal().toleranceDeg()));
        node.put("lifeLimitDeg", Json.rounded(run.lifeLimitDeg()));
        node.set("leftDeg", left(run.leftDeg()));
        node.put("bendsBefore", run.bentBefore());
        if (!run.hasBegun()) {
            node.set("now", Json.plain(run.recordedDeg()));
            node.put("state", "not read");
            return node;
        }
        BendSession session = run.session();
        node.put("working", session.working().word());
        node.set("now", Json.plain(session.nowDeg()));
        ArrayNode bends = node.putArray("bends");
        session.bends().forEach(bend -> bends.add(bend(bend, run.goal().isWood())));
        advice(node, run);
        return node;
    }

    private static ObjectNode left(HoselLimits left) {
        ObjectNode node = Json.object();
        for (BendDirection direction : BendDirection.values()) {
            node.put(direction.word(), Json.rounded(left.leftDeg(direction)));
        }
        return node;
    }

    private static ObjectNode bend(Bend bend, boolean wood) {
        ObjectNode node = Json.object();
        node.put("direction", bend.direction().word());
        node.put("quantity", bend.direction().quantity(wood).word());
        node.put("askedDeg", Json.rounded(bend.askedDeg()));
        node.put("tiltAskedDeg", Json.rounded(bend.trial().askedDeg()));
        node.put("tiltGotDeg", Json.rounded(bend.trial().gotDeg()));
        node.set("before", Json.plain(sorted(bend.beforeDeg())));
        node.set("after", Json.plain(sorted(bend.afterDeg())));
        return node;
    }

    private static Map<Quantity, Double> sorted(Map<Quantity, Double> angles) {
        return new java.util.TreeMap<>(angles);
    }

    private static void advice(ObjectNode node, BendRun run) {
        BendAdvice advice = run.advice();
        boolean wood = run.goal().isWood();
        if (advice instanceof BendAdvice.Ask ask) {
            node.put("state", "bend");
            ObjectNode next = node.putObject("next");
            next.put("direction", ask.direction().word());
            next.put("quantity", ask.direction().quantity(wood).word());
            next.put("askDeg", Json.rounded(ask.askedDeg()));
            next.put("expectedDeg", Json.rounded(ask.expectedDeg()));
            next.put("spreadDeg", Json.rounded(ask.spreadDeg()));
            next.put("withinChance", Json.rounded(ask.tilt().withinChance()));
            next.put("beyondChance", Json.rounded(ask.tilt().beyondChance()));
            next.set("foreseen", Json.plain(sorted(ask.foreseenDeg())));
            springback(next.putObject("springback"), ask.known());
        } else if (advice instanceof BendAdvice.PastLimit limit) {
            node.put("state", "limit");
            node.put("said", BendWords.stop(limit, wood));
        } else if (advice instanceof BendAdvice.TooRisky risky) {
            node.put("state", "risk");
            node.put("said", BendWords.stop(risky, wood));
        } else {
            node.put("state", "within tolerance");
        }
    }

    private static void springback(ObjectNode node, Springback known) {
        node.put("gain", Json.rounded(known.gain()));
        node.put("gainSpread", Json.rounded(known.gainSpread()));
        node.put("lossDeg", Json.rounded(known.lossDeg()));
        node.put("lossSpreadDeg", Json.rounded(known.lossSpreadDeg()));
        node.put("bends", known.trials());
    }

    /**
     * What bends on record taught.
     * @param learned by model and direction
     * @return JSON text, indented
     */
    public static String learned(List<BendService.Learned> learned) {
        ObjectNode root = Json.object();
        ArrayNode models = root.putArray("learned");
        learned.forEach(one -> {
            ObjectNode node = models.addObject();
            node.put("model", one.model());
            node.put("direction", one.direction().word());
            springback(node, one.known());
        });
        return Json.answer(root);
    }
}
