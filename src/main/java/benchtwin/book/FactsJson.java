package benchtwin.book;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** Names and texts as one JSON object, the way they stand in the file. */
final class FactsJson {

    static final JsonFactory FACTORY = new JsonFactory();

    private FactsJson() {
    }

    static String write(Map<String, String> facts) {
        if (facts.isEmpty()) {
            return "{}";
        }
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            write(json, facts);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    static void write(JsonGenerator json, Map<String, String> facts) throws IOException {
        json.writeStartObject();
        for (Map.Entry<String, String> fact : facts.entrySet()) {
            json.writeStringField(fact.getKey(), fact.getValue());
        }
        json.writeEndObject();
    }

    static Map<String, String> read(String text) {
        if (text.equals("{}")) {
            return Map.of();
        }
        try (JsonParser json = FACTORY.createParser(text)) {
            json.nextToken();
            return read(json);
        } catch (IOException notOurs) {
            throw new UncheckedIOException("not an object of names and texts: " + text, notOurs);
        }
    }

    /** Reads from the object's start, which the parser stands on, to its end. */
    static Map<String, String> read(JsonParser json) throws IOException {
        Map<String, String> facts = new LinkedHashMap<>();
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String name = json.currentName();
            json.nextToken();
            facts.put(name, json.getText());
        }
        return facts;
    }
}
