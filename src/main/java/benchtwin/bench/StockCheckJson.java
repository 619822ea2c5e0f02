package benchtwin.bench;

import benchtwin.stock.Fault;
import benchtwin.stock.StockCheck;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** A check of stock files as JSON; the names are documented in docs/json.md and stay. */
public final class StockCheckJson {

    private StockCheckJson() {
    }

    /**
     * One object.
     * @param check what was found
     * @return JSON text, indented
     */
    public static String text(StockCheck check) {
        ObjectNode root = Json.object();
        root.put("clean", check.isClean());
        root.put("faultCount", check.faultCount());
        root.put("warningCount", check.warningCount());
        ArrayNode files = root.putArray("files");
        for (StockCheck.CheckedFile file : check.files()) {
            ObjectNode one = files.addObject();
            one.put("file", file.file());
            file.kind().ifPresent(kind -> one.put("kind", kind.word()));
            one.put("rows", file.rows());
            ArrayNode unknown = one.putArray("unknownColumns");
            file.unknownColumns().forEach(unknown::add);
        }
        add(root.putArray("faults"), check.faults());
        add(root.putArray("warnings"), check.warnings());
        return Json.answer(root);
    }

    private static void add(ArrayNode array, List<Fault> faults) {
        for (Fault fault : faults) {
            ObjectNode one = array.addObject();
            one.put("file", fault.file());
            one.put("line", fault.line());
            fault.column().ifPresent(column -> one.put("column", column));
            fault.value().ifPresent(value -> one.put("value", value));
            one.put("problem", fault.problem());
            one.put("expected", fault.expected());
        }
    }
}
