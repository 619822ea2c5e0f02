package benchtwin.bench;

import benchtwin.rules.EquipmentRules;
import benchtwin.rules.Finding;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Clubs held against the equipment limits, as JSON; the names are documented in docs/json.md and stay. */
public final class RulesJson {

    private RulesJson() {
    }

    /**
     * One object.
     * @param answer the answer
     * @return JSON text, indented
     */
    public static String text(RulesService.Answer answer) {
        ObjectNode root = Json.object();
        answer.player().ifPresent(player -> root.put("player", player));
        answer.inPlay().ifPresent(inPlay -> {
            root.put("clubsInPlay", inPlay);
            root.put("mostClubs", EquipmentRules.MOST_CLUBS);
        });
        root.put("localRulesInForce", answer.localInForce());
        root.put("doubtful", answer.isDoubtful());
        ArrayNode clubs = root.putArray("clubs");
        answer.clubs().forEach(club -> clubs.add(club(club)));
        ArrayNode information = root.putArray("information");
        EquipmentRules.information().forEach(each -> information.add(sourced(each)));
        root.put("howJudged", EquipmentRules.HOW_JUDGED);
        root.put("whoDecides", EquipmentRules.WHO_DECIDES);
        return Json.answer(root);
    }

    private static ObjectNode club(RulesService.Checked checked) {
        ObjectNode node = Json.object();
        node.put("club", checked.club().tag());
        node.put("player", checked.club().player());
        node.put("category", checked.club().category().word());
        checked.club().number().ifPresent(number -> node.put("number", number));
        node.put("hand", checked.club().hand().word());
        node.put("state", checked.club().newest().state().word());
        node.put("verdict", checked.verdict().word());
        ArrayNode findings = node.putArray("findings");
        checked.findings().forEach(finding -> findings.add(finding(finding, checked.counts(finding))));
        checked.list().ifPresent(list -> node.set("publishedList", sourced(list)));
        if (checked.isLengthNearALimit()) {
            node.put("lengthNote", EquipmentRules.READS_LESS);
        }
        return node;
    }

    private static ObjectNode finding(Finding finding, boolean counts) {
        ObjectNode node = Json.object();
        node.put("limit", finding.limit().word());
        node.put("quantity", finding.limit().quantity().word());
        node.put("unit", finding.limit().quantity().unit());
        finding.value().ifPresent(value -> {
            node.put("value", Json.rounded(value.value()));
            node.put("standardUncertainty", Json.rounded(value.standardUncertainty()));
            if (value.mayReadLess() > 0) {
                node.put("mayReadLess", Json.rounded(value.mayReadLess()));
            }
            node.put("from", value.from());
        });
        finding.lacking().ifPresent(lacking -> node.put("toMeasure", lacking));
        node.put("side", finding.limit().side().word());
        node.put("limitValue", Json.rounded(finding.limit().value()));
        node.put("allowance", Json.rounded(finding.limit().allowance()));
        finding.margin().ifPresent(margin -> node.put("margin", Json.rounded(margin)));
        finding.marginWithAllowance().ifPresent(margin -> node.put("marginWithAllowance", Json.rounded(margin)));
        finding.chanceWithin().ifPresent(chance -> node.put("chanceWithin", Json.rounded(chance)));
        node.put("verdict", finding.verdict().word());
        node.put("verdictOfLimitAlone", finding.verdictOfLimitAlone().word());
        node.put("local", finding.limit().isLocal());
        node.put("counts", counts);
        node.put("source", finding.limit().source().title());
        node.put("mark", finding.limit().source().mark());
        return node;
    }

    private static ObjectNode sourced(EquipmentRules.Information information) {
        return Json.object().put("text", information.text()).put("source", information.source());
    }
}
