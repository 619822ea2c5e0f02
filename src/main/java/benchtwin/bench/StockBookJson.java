package benchtwin.bench;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Parts of the book and checks of it as JSON; the names are documented in docs/json.md and stay. */
public final class StockBookJson {

    private StockBookJson() {
    }

    /**
     * Several parts.
     * @param parts the parts
     * @return JSON text, indented
     */
    public static String list(List<StockViews.Part> parts) {
        ObjectNode root = Json.object();
        ArrayNode array = root.putArray("parts");
        parts.forEach(part -> array.add(node(part)));
        return Json.answer(root);
    }

    /**
     * One part and what befell it.
     * @param shown the part
     * @return JSON text, indented
     */
    public static String text(StockViews.PartHistory shown) {
        ObjectNode root = node(shown.part());
        root.set("history", Json.texts(shown.history()));
        root.set("notes", Json.texts(shown.notes()));
        return Json.answer(root);
    }

    /**
     * Counts by model.
     * @param tallies the counts
     * @return JSON text, indented
     */
    public static String tallies(List<StockViews.Tally> tallies) {
        ObjectNode root = Json.object();
        ArrayNode array = root.putArray("counts");
        tallies.forEach(one -> array.addObject().put("kind", one.kind()).put("what", one.what()).put("free", one.free())
            .put("promised", one.promised()).put("builtIn", one.builtIn()).put("retired", one.retired()));
        return Json.answer(root);
    }

    /**
     * A check.
     * @param check what was found
     * @return JSON text, indented
     */
    public static String check(BookCare.Check check) {
        ObjectNode root = Json.object();
        root.put("clean", check.findings().isEmpty());
        root.put("things", check.things());
        root.put("events", check.events());
        root.put("readings", check.readings());
        root.set("findings", Json.texts(check.findings()));
        return Json.answer(root);
    }

    /**
     * What came of reading files into the book.
     * @param imported what came of it
     * @return JSON text, indented
     */
    public static String imported(StockImport.Imported imported) {
        ObjectNode root = Json.object();
        root.put("added", imported.added());
        root.put("changed", imported.changed());
        root.put("same", imported.same());
        root.set("changes", Json.texts(imported.changes()));
        root.set("remarks", Json.texts(imported.remarks()));
        return Json.answer(root);
    }

    private static ObjectNode node(StockViews.Part part) {
        ObjectNode node = Json.object();
        node.put("kind", part.kind());
        node.put("tag", part.tag());
        node.put("standing", part.standing());
        part.club().ifPresent(club -> node.put("club", club));
        part.place().ifPresent(place -> node.put("place", place));
        part.count().ifPresent(count -> node.put("count", count));
        node.set("promisedTo", Json.texts(part.promises()));
        ObjectNode facts = node.putObject("facts");
        part.facts().forEach(facts::put);
        ArrayNode readings = node.putArray("readings");
        for (StockViews.PartReading reading : part.readings()) {
            ObjectNode one = readings.addObject();
            one.put("id", reading.id());
            one.put("quantity", reading.quantity());
            one.put("value", Json.rounded(reading.value()));
            reading.uncertainty().ifPresent(uncertainty -> one.put("uncertainty", Json.rounded(uncertainty)));
            ObjectNode condition = one.putObject("condition");
            reading.condition().forEach(condition::put);
            reading.gauge().ifPresent(gauge -> one.put("gauge", gauge));
            reading.day().ifPresent(day -> one.put("day", day));
            one.put("entered", reading.entered());
            reading.note().ifPresent(note -> one.put("note", note));
        }
        return node;
    }
}
