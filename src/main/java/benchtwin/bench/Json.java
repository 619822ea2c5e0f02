package benchtwin.bench;

import benchtwin.club.Quantity;
import benchtwin.measure.SwingWeightText;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/** What every JSON answer shares: names that end in their unit, numbers without noise digits. */
final class Json {

    static final ObjectMapper MAPPER = new ObjectMapper();
    private static final double SIX_DECIMALS = 1e6;

    private Json() {
    }

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /** A whole answer: the object with the version it was made by. */
    static String answer(ObjectNode root) {
        root.put("version", BuildIdentity.text());
        return text(root);
    }

    private static String text(JsonNode node) {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        printer.indentArraysWith(new DefaultIndenter("  ", "\n"));
        try {
            return MAPPER.writer(printer).writeValueAsString(node);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a tree of plain values cannot fail to be written", impossible);
        }
    }

    static ArrayNode texts(Iterable<String> texts) {
        ArrayNode array = MAPPER.createArrayNode();
        texts.forEach(array::add);
        return array;
    }

    /** Values by quantity, the swing weight also as text. */
    static ObjectNode quantities(Map<Quantity, Double> values) {
        ObjectNode node = object();
        values.forEach((quantity, value) -> put(node, quantity, value));
        return node;
    }

    /** Values by quantity, numbers only: differences and uncertainties. */
    static ObjectNode plain(Map<Quantity, Double> values) {
        ObjectNode node = object();
        values.forEach((quantity, value) -> node.put(quantity.jsonName(), rounded(value)));
        return node;
    }

    static void put(ObjectNode node, Quantity quantity, double value) {
        node.put(quantity.jsonName(), rounded(value));
        if (quantity == Quantity.SWING_WEIGHT) {
            SwingWeightText.format(value).ifPresent(text -> node.put("swingWeightText", text));
        }
    }

    static double rounded(double value) {
        double rounded = Math.rint(value * SIX_DECIMALS) / SIX_DECIMALS;
        return rounded == 0 ? 0 : rounded;
    }
}
