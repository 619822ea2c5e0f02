package benchtwin.bench;

import benchtwin.ticket.Ticket;
import benchtwin.ticket.TicketLine;
import benchtwin.ticket.TicketPart;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** A ticket as JSON; the names are documented in docs/json.md and stay. */
public final class TicketJson {

    private TicketJson() {
    }

    /**
     * What the ticket shows, as texts: it is a page, and the numbers behind it are the job's.
     * @param ticket the ticket
     * @return JSON text, indented
     */
    public static String text(Ticket ticket) {
        ObjectNode root = Json.object().put("job", ticket.job()).put("title", ticket.title());
        ticket.player().ifPresent(player -> root.put("player", player));
        ticket.due().ifPresent(due -> root.put("due", due));
        root.put("status", ticket.status());
        ticket.words().ifPresent(words -> root.put("words", words));
        root.set("parts", parts(ticket.parts()));
        ArrayNode steps = root.putArray("steps");
        ticket.steps().forEach(step -> {
            ObjectNode node = steps.addObject().put("title", step.title()).put("words", step.words());
            node.set("lines", lines(step.lines()));
            node.set("cautions", Json.texts(step.cautions()));
        });
        ArrayNode rows = root.putArray("rows");
        ticket.rows().forEach(row -> {
            ObjectNode node = rows.addObject().put("club", row.club());
            node.set("parts", parts(row.parts()));
            node.set("work", Json.texts(row.work()));
            node.set("lines", lines(row.lines()));
        });
        ObjectNode ready = root.putObject("ready");
        ticket.ready().handOver().ifPresent(when -> ready.put("handOver", when.toString()));
        ticket.ready().handling().ifPresent(when -> ready.put("handling", when.toString()));
        ready.put("late", ticket.ready().late()).put("words", ticket.ready().words());
        root.set("cautions", Json.texts(ticket.cautions()));
        root.set("notes", Json.texts(ticket.notes()));
        ticket.sketch().ifPresent(sketch -> root.put("sketch", sketch.inWords()));
        root.put("code", ticket.code()).put("made", ticket.made().toString());
        return Json.answer(root);
    }

    private static ArrayNode parts(List<TicketPart> parts) {
        ArrayNode array = Json.MAPPER.createArrayNode();
        parts.forEach(part -> {
            ObjectNode node = array.addObject().put("kind", part.kind()).put("tag", part.tag());
            part.model().ifPresent(model -> node.put("model", model));
            node.put("where", part.where()).put("count", part.count());
        });
        return array;
    }

    private static ArrayNode lines(List<TicketLine> lines) {
        ArrayNode array = Json.MAPPER.createArrayNode();
        lines.forEach(line -> {
            ObjectNode node = array.addObject().put("what", line.what());
            line.now().ifPresent(now -> node.put("now", now));
            line.comesTo().ifPresent(comesTo -> node.put("comesTo", comesTo));
            line.target().ifPresent(target -> node.put("target", target));
            line.tolerance().ifPresent(tolerance -> node.put("tolerance", tolerance));
        });
        return array;
    }
}
