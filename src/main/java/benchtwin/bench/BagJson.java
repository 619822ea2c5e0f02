package benchtwin.bench;

import benchtwin.club.Grip;
import benchtwin.club.Quantity;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** A bag as JSON; the names are documented in docs/json.md and stay. */
public final class BagJson {

    private BagJson() {
    }

    /**
     * The bag.
     * @param bag what its clubs should and do measure
     * @return JSON text, indented
     */
    public static String text(BagGrid.Bag bag) {
        ObjectNode root = Json.object();
        root.put("player", bag.player());
        ArrayNode clubs = root.putArray("clubs");
        for (BagGrid.Club club : bag.clubs()) {
            ObjectNode node = clubs.addObject();
            node.put("tag", club.tag());
            node.put("what", club.what());
            node.put("state", club.state());
            club.readOn().ifPresent(day -> node.put("readOn", day.toString()));
            ArrayNode values = node.putArray("values");
            club.values().forEach((quantity, value) -> values.add(ClubJson.value(quantity, value)));
            ArrayNode drifted = node.putArray("drifted");
            club.drifted().stream().map(Quantity::word).forEach(drifted::add);
            club.plan().ifPresent(way -> node.set("plan", OptionJson.option(way.option())));
            club.cannot().ifPresent(why -> node.put("cannot", why));
        }
        root.set("remarks", Json.texts(bag.remarks()));
        return Json.answer(root);
    }

    /**
     * New grips.
     * @param plan the plan
     * @param job  the job they are promised to
     * @return JSON text, indented
     */
    public static String regrip(Regrip.Plan plan, Optional<String> job) {
        ObjectNode root = Json.object();
        root.put("player", plan.player());
        root.put("model", plan.model());
        ArrayNode clubs = root.putArray("clubs");
        for (Regrip.Club club : plan.clubs()) {
            ObjectNode node = clubs.addObject();
            node.put("club", club.club());
            club.old().map(Grip::tag).ifPresent(tag -> node.put("gripNow", tag));
            club.fresh().map(Grip::tag).ifPresent(tag -> node.put("gripThen", tag));
            club.massChangeG().ifPresent(change -> node.put("massChangeG", Json.rounded(change)));
            club.swingChange().ifPresent(change -> node.put("swingWeightChangePoints", Json.rounded(change)));
            club.swingAfter().ifPresent(after -> node.put("swingWeightPoints", Json.rounded(after)));
        }
        root.put("minutes", plan.minutes());
        root.put("dryMinutes", plan.dryMinutes());
        job.ifPresent(number -> root.put("job", number));
        root.set("notes", Json.texts(plan.notes()));
        return Json.answer(root);
    }
}
