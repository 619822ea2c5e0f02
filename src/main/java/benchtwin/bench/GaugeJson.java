package benchtwin.bench;

import benchtwin.gauge.Finding;
import benchtwin.gauge.Offset;
import benchtwin.gauge.Repeatability;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/** Gauges as JSON; the names are documented in docs/json.md and stay. */
public final class GaugeJson {

    private GaugeJson() {
    }

    /**
     * Every gauge.
     * @param gauges the gauges
     * @return JSON text, indented
     */
    public static String list(List<GaugeBook.Standing> gauges) {
        ObjectNode root = Json.object();
        ArrayNode array = root.putArray("gauges");
        for (GaugeBook.Standing gauge : gauges) {
            ObjectNode node = array.addObject();
            node.put("name", gauge.name());
            gauge.kind().ifPresent(kind -> node.put("kind", kind));
            gauge.checkedOn().ifPresent(day -> node.put("checkedOn", day));
            node.put("checkIsDue", gauge.isDue());
            ArrayNode figures = node.putArray("figures");
            gauge.figures().forEach((column, used) -> {
                ObjectNode one = figures.addObject();
                one.put("quantity", column);
                used.uncertainty().ifPresent(u -> one.put("uncertainty", Json.rounded(u)).put("accepted", used.isAccepted()));
                used.offset().ifPresent(offset -> one.put("offset", Json.rounded(offset)));
                used.offsetU().ifPresent(u -> one.put("offsetUncertainty", Json.rounded(u)));
                used.offsetFrom().ifPresent(other -> one.put("offsetFrom", other));
            });
        }
        return Json.answer(root);
    }

    /**
     * What a gauge's readings show.
     * @param checked  what was found
     * @param accepted how many figures are used from now on, if any were accepted
     * @return JSON text, indented
     */
    public static String checked(GaugeCheck.Checked checked, Optional<Integer> accepted) {
        ObjectNode root = Json.object();
        root.put("gauge", checked.gauge());
        ArrayNode array = root.putArray("quantities");
        checked.repeatability().forEach((column, finding) -> {
            ObjectNode node = array.addObject();
            node.put("quantity", column);
            node.set("repeatability", repeatability(finding));
            ArrayNode offsets = node.putArray("offsets");
            checked.offsets().getOrDefault(column, List.of()).forEach(offset -> offsets.add(offset(offset)));
        });
        accepted.ifPresent(count -> root.put("accepted", count));
        return Json.answer(root);
    }

    private static ObjectNode repeatability(Finding<Repeatability> finding) {
        ObjectNode node = Json.object();
        if (finding.found().isEmpty()) {
            return node.put("whyNot", finding.whyNot());
        }
        Repeatability found = finding.found().get();
        node.put("standardUncertainty", Json.rounded(found.standardUncertainty()));
        node.put("standardDeviation", Json.rounded(found.standardDeviation()));
        node.put("lowest", Json.rounded(found.lowest())).put("highest", Json.rounded(found.highest()));
        node.put("degreesOfFreedom", found.degreesOfFreedom()).put("parts", found.parts()).put("readings", found.readings());
        found.largest().ifPresent(largest -> node.put("looksLikeASlip", largest.looksLikeASlip()));
        return node;
    }

    private static ObjectNode offset(Finding<Offset> finding) {
        ObjectNode node = Json.object();
        if (finding.found().isEmpty()) {
            return node.put("whyNot", finding.whyNot());
        }
        Offset found = finding.found().get();
        return node.put("against", found.reference()).put("offset", Json.rounded(found.value()))
            .put("standardUncertainty", Json.rounded(found.standardUncertainty())).put("parts", found.parts())
            .put("consistent", found.agreement().consistent());
    }
}
