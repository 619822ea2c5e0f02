package benchtwin.book;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.ConcurrentHashMap;

/** How a thing stands, as the file keeps it. Blank fields are left out, so that equal states are equal texts. */
final class StateJson {

    /** Stands in every state without a promise, and in no text of one: there its quotes would be written otherwise. */
    static final String NO_PROMISES = "\"promises\":[]";

    /** Days and hours repeat themselves thousands of times in one book. */
    private static final int MOST_MOMENTS = 4096;
    private static final Map<String, Moment> MOMENTS = new ConcurrentHashMap<>();

    private StateJson() {
    }

    /** Stands in every reading of a quantity. */
    static String ofQuantity(String quantity) {
        return "\"quantity\":\"" + quantity + "\"";
    }

    private static Moment moment(String text) {
        Moment known = MOMENTS.get(text);
        if (known == null) {
            known = new Moment(text);
            if (MOMENTS.size() < MOST_MOMENTS) {
                MOMENTS.put(text, known);
            }
        }
        return known;
    }

    /** Only what is known of the thing, which stands first. */
    static Map<String, String> facts(String text) {
        try (JsonParser json = FactsJson.FACTORY.createParser(text)) {
            json.nextToken();
            json.nextToken();
            json.nextToken();
            return Collections.unmodifiableMap(FactsJson.read(json));
        } catch (IOException notOurs) {
            throw new UncheckedIOException("not a state: " + text, notOurs);
        }
    }

    static String write(State state) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FactsJson.FACTORY.createGenerator(text)) {
            json.writeStartObject();
            json.writeFieldName("facts");
            FactsJson.write(json, state.facts());
            readings(json, state.readings());
            json.writeArrayFieldStart("promises");
            for (Promise promise : state.promises()) {
                json.writeStartObject();
                text(json, "job", promise.job());
                json.writeStringField("whom", promise.whom());
                json.writeNumberField("count", promise.count());
                json.writeEndObject();
            }
            json.writeEndArray();
            text(json, "club", state.club());
            if (state.accepted().isPresent()) {
                Accepted accepted = state.accepted().get();
                json.writeObjectFieldStart("accepted");
                json.writeStringField("since", accepted.since().text());
                json.writeFieldName("facts");
                FactsJson.write(json, accepted.facts());
                readings(json, accepted.readings());
                json.writeEndObject();
            }
            json.writeEndObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static void readings(JsonGenerator json, List<CurrentReading> readings) throws IOException {
        json.writeArrayFieldStart("readings");
        for (CurrentReading reading : readings) {
            NewReading read = reading.read();
            json.writeStartObject();
            json.writeNumberField("id", reading.id());
            json.writeNumberField("event", reading.event());
            json.writeStringField("since", reading.since().text());
            json.writeStringField("quantity", read.quantity());
            json.writeNumberField("value", read.value().orElseThrow());
            if (read.uncertainty().isPresent()) {
                json.writeNumberField("uncertainty", read.uncertainty().getAsDouble());
            }
            json.writeStringField("unit", read.unit());
            if (!read.condition().isEmpty()) {
                json.writeFieldName("condition");
                FactsJson.write(json, read.condition());
            }
            text(json, "gauge", read.gauge());
            text(json, "station", read.station());
            text(json, "measuredAt", read.measuredAt().map(Moment::text));
            text(json, "by", read.by());
            text(json, "note", read.note());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void text(JsonGenerator json, String name, Optional<String> value) throws IOException {
        if (value.isPresent()) {
            json.writeStringField(name, value.get());
        }
    }

    static State read(Standing standing, String text) {
        Map<String, String> facts = Map.of();
        List<CurrentReading> readings = List.of();
        List<Promise> promises = List.of();
        Optional<String> club = Optional.empty();
        Optional<Accepted> accepted = Optional.empty();
        try (JsonParser json = FactsJson.FACTORY.createParser(text)) {
            json.nextToken();
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                json.nextToken();
                switch (name) {
                    case "facts" -> facts = FactsJson.read(json);
                    case "readings" -> readings = readings(json);
                    case "promises" -> promises = promises(json);
                    case "club" -> club = Optional.of(json.getText());
                    default -> accepted = Optional.of(accepted(json));
                }
            }
        } catch (IOException notOurs) {
            throw new UncheckedIOException("not a state: " + text, notOurs);
        }
        return new State(standing, facts, readings, promises, club, accepted);
    }

    private static Accepted accepted(JsonParser json) throws IOException {
        Moment since = null;
        Map<String, String> facts = Map.of();
        List<CurrentReading> readings = List.of();
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String name = json.currentName();
            json.nextToken();
            switch (name) {
                case "since" -> since = new Moment(json.getText());
                case "facts" -> facts = FactsJson.read(json);
                default -> readings = readings(json);
            }
        }
        return new Accepted(since, facts, readings);
    }

    private static List<Promise> promises(JsonParser json) throws IOException {
        List<Promise> promises = new ArrayList<>();
        while (json.nextToken() == JsonToken.START_OBJECT) {
            Map<String, String> fields = FactsJson.read(json);
            promises.add(new Promise(Optional.ofNullable(fields.get("job")), fields.get("whom"),
                Integer.parseInt(fields.get("count"))));
        }
        return promises;
    }

    private static List<CurrentReading> readings(JsonParser json) throws IOException {
        List<CurrentReading> readings = new ArrayList<>();
        while (json.nextToken() == JsonToken.START_OBJECT) {
            readings.add(reading(json));
        }
        return readings;
    }

    private static CurrentReading reading(JsonParser json) throws IOException {
        long id = 0;
        long event = 0;
        double value = 0;
        OptionalDouble uncertainty = OptionalDouble.empty();
        Map<String, String> condition = Map.of();
        String since = "";
        String quantity = "";
        String unit = "";
        String gauge = null;
        String station = null;
        String measuredAt = null;
        String by = null;
        String note = null;
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String name = json.currentName();
            json.nextToken();
            switch (name) {
                case "id" -> id = json.getLongValue();
                case "event" -> event = json.getLongValue();
                case "value" -> value = json.getDoubleValue();
                case "uncertainty" -> uncertainty = OptionalDouble.of(json.getDoubleValue());
                case "condition" -> condition = FactsJson.read(json);
                case "since" -> since = json.getText();
                case "quantity" -> quantity = json.getText();
                case "unit" -> unit = json.getText();
                case "gauge" -> gauge = json.getText();
                case "station" -> station = json.getText();
                case "measuredAt" -> measuredAt = json.getText();
                case "by" -> by = json.getText();
                default -> note = json.getText();
            }
        }
        return new CurrentReading(id, event, moment(since), new NewReading(quantity, OptionalDouble.of(value), uncertainty,
            unit, condition, Optional.ofNullable(gauge), Optional.ofNullable(station),
            Optional.ofNullable(measuredAt).map(StateJson::moment), Optional.ofNullable(by), Optional.ofNullable(note),
            OptionalLong.empty()));
    }
}
