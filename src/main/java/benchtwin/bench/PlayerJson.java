package benchtwin.bench;

import benchtwin.club.Hand;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Players as JSON; the names are documented in docs/json.md and stay. */
public final class PlayerJson {

    private PlayerJson() {
    }

    /**
     * Every player.
     * @param players the players
     * @return JSON text, indented
     */
    public static String list(List<PlayerBook.Player> players) {
        ObjectNode root = Json.object();
        ArrayNode array = root.putArray("players");
        players.forEach(player -> array.add(node(player)));
        return Json.answer(root);
    }

    /**
     * One player.
     * @param player the player
     * @return JSON text, indented
     */
    public static String text(PlayerBook.Player player) {
        ObjectNode root = node(player);
        return Json.answer(root);
    }

    private static ObjectNode node(PlayerBook.Player player) {
        ObjectNode node = Json.object();
        node.put("name", player.name());
        player.hand().map(Hand::word).ifPresent(hand -> node.put("hand", hand));
        node.set("tolerances", Json.plain(player.tolerances()));
        ArrayNode clubs = node.putArray("clubs");
        player.clubs().forEach(club -> clubs.addObject().put("tag", club.tag()).put("what", club.what())
            .put("state", club.state()).put("parts", club.parts()));
        node.set("jobs", Json.texts(player.jobs().stream().map(PlayerBook.JobInShort::line).toList()));
        node.set("notes", Json.texts(player.notes()));
        return node;
    }
}
