package benchtwin.bench;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Jobs as JSON; the names are documented in docs/json.md and stay. */
public final class JobJson {

    private JobJson() {
    }

    /**
     * Several jobs.
     * @param jobs the jobs
     * @return JSON text, indented
     */
    public static String list(List<JobBook.Job> jobs) {
        ObjectNode root = Json.object();
        ArrayNode array = root.putArray("jobs");
        jobs.forEach(job -> array.add(node(job)));
        return Json.answer(root);
    }

    /**
     * One job.
     * @param job the job
     * @return JSON text, indented
     */
    public static String text(JobBook.Job job) {
        ObjectNode root = node(job);
        return Json.answer(root);
    }

    private static ObjectNode node(JobBook.Job job) {
        ObjectNode node = Json.object();
        node.put("number", job.number());
        node.put("what", job.what());
        job.player().ifPresent(player -> node.put("player", player));
        job.club().ifPresent(club -> node.put("club", club));
        job.due().ifPresent(due -> node.put("due", due));
        node.put("status", job.status());
        job.words().ifPresent(words -> node.put("words", words));
        node.set("steps", Json.texts(job.steps()));
        node.set("expected", clubs(job.expected()));
        node.set("measured", clubs(job.measured()));
        ArrayNode parts = node.putArray("parts");
        job.parts().forEach(part -> {
            ObjectNode one = parts.addObject();
            one.put("kind", part.kind()).put("tag", part.tag()).put("count", part.count());
            part.place().ifPresent(place -> one.put("place", place));
        });
        node.set("history", Json.texts(job.history()));
        node.set("notes", Json.texts(job.notes()));
        return node;
    }

    private static ArrayNode clubs(List<JobBook.OfClub> clubs) {
        ArrayNode array = Json.MAPPER.createArrayNode();
        clubs.forEach(one -> {
            ObjectNode club = Json.object();
            club.put("club", one.club());
            club.setAll(Json.quantities(one.values()));
            array.add(club);
        });
        return array;
    }
}
