package benchtwin.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What came of an act at the book as JSON; the names are documented in docs/json.md and stay. */
public final class ActJson {

    private ActJson() {
    }

    /**
     * An act.
     * @param act     the command, such as {@code stock move}
     * @param of      tags, names or numbers of what it was done to
     * @param said    what was done, a sentence
     * @param remarks what else is worth knowing
     * @return JSON text, indented
     */
    public static String text(String act, List<String> of, String said, List<String> remarks) {
        ObjectNode root = Json.object();
        root.put("act", act);
        root.set("of", Json.texts(of));
        root.put("said", said);
        root.set("remarks", Json.texts(remarks));
        return Json.answer(root);
    }
}
