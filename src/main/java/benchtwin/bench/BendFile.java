package benchtwin.bench;

import benchtwin.bend.Bend;
import benchtwin.bend.BendDirection;
import benchtwin.bend.BendTrial;
import benchtwin.club.Quantity;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Bends in a file, for stock that is in files: one JSON object a line, each on the disk before the next is asked for. A last
 * line that was cut short is left alone, and the next entry begins a line of its own.
 */
final class BendFile implements BendJournal {

    private static final String HEAD = "head";
    private static final String WHAT = "what";
    private static final String BENT = "bent";
    private static final String READ = "readDeg";
    private static final String INSTEAD_OF = "insteadOfLine";
    private static final String METAL = "metalUsedDeg";

    private final Path file;
    private final UnaryOperator<String> modelOf;

    /**
     * @param file    where it lies; made with the first entry
     * @param modelOf gives a head's model by its tag; an empty text where it is not known
     */
    BendFile(Path file, UnaryOperator<String> modelOf) {
        this.file = file;
        this.modelOf = modelOf;
    }

    @Override
    public String place() {
        return file.toString();
    }

    /** An entry with the number of its line. */
    private record Line(long number, JsonNode entry) {
    }

    private List<Line> lines() throws BadInput {
        if (!Files.exists(file)) {
            return List.of();
        }
        List<Line> lines = new ArrayList<>();
        long number = 0;
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            for (String line : text.split("\n")) {
                number++;
                if (!line.isBlank()) {
                    entry(line, number, !text.endsWith("\n") && text.endsWith(line), lines);
                }
            }
        } catch (IOException cannot) {
            throw new BadInput("%s cannot be read: %s".formatted(file, cannot.getMessage()));
        }
        Set<Long> putRight = new HashSet<>();
        lines.forEach(line -> number(line.entry()).ifPresent(putRight::add));
        lines.removeIf(line -> putRight.contains(line.number()));
        return lines;
    }

    private void entry(String line, long number, boolean maybeCut, List<Line> lines) throws BadInput {
        try {
            JsonNode entry = Json.MAPPER.readTree(line);
            if (!entry.path(HEAD).isTextual() || !entry.path(WHAT).isTextual()) {
                throw new BadInput("%s line %d is not an entry of a bending session: no head or no word of what was done".formatted(file,
                    number));
            }
            lines.add(new Line(number, entry));
        } catch (JsonProcessingException notJson) {
            boolean cut = maybeCut || line.startsWith("{\"") && line.contains(HEAD);
            if (!cut) {
                throw new BadInput(("%s line %d is not an entry of a bending session; name another file with --session, or mend the "
                    + "line").formatted(file, number));
            }
        }
    }

    private static OptionalLong number(JsonNode entry) {
        return entry.path(INSTEAD_OF).canConvertToLong() ? OptionalLong.of(entry.get(INSTEAD_OF).asLong()) : OptionalLong.empty();
    }

    @Override
    public List<Kept> bends() throws BadInput {
        List<Kept> kept = new ArrayList<>();
        for (Line line : lines()) {
            JsonNode entry = line.entry();
            if (entry.get(WHAT).asText().equals(BENT)) {
                String head = entry.get(HEAD).asText();
                kept.add(new Kept(line.number(), head, modelOf.apply(head), BendWords.direction(entry.path("direction").asText()),
                    new BendTrial(entry.path("tiltAskedDeg").asDouble(), entry.path("tiltGotDeg").asDouble(),
                        entry.path("tiltReadingDeg").asDouble(), BendWords.working(entry.path("working").asText())),
                    angles(entry.path("targetDeg"))));
            }
        }
        return kept;
    }

    @Override
    public Since since(String head) throws BadInput {
        Map<Quantity, Double> read = new EnumMap<>(Quantity.class);
        Map<BendDirection, Double> bent = new EnumMap<>(BendDirection.class);
        for (Line line : lines()) {
            if (line.entry().get(HEAD).asText().equals(head)) {
                read.putAll(angles(line.entry().path(READ)));
                for (BendDirection direction : BendDirection.values()) {
                    bent.merge(direction, line.entry().path(METAL).path(direction.word()).asDouble(0), Double::sum);
                }
            }
        }
        return new Since(read, bent);
    }

    private static Map<Quantity, Double> angles(JsonNode node) {
        Map<Quantity, Double> angles = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            if (quantity.isAngle() && node.path(quantity.word()).isNumber()) {
                angles.put(quantity, node.get(quantity.word()).asDouble());
            }
        }
        return angles;
    }

    private static ObjectNode angles(Map<Quantity, Double> anglesDeg) {
        ObjectNode node = Json.object();
        anglesDeg.entrySet().stream().sorted(Map.Entry.comparingByKey())
            .forEach(one -> node.put(one.getKey().word(), Json.rounded(one.getValue())));
        return node;
    }

    @Override
    public void read(Of of, Map<Quantity, Double> readDeg) throws BadInput {
        append(entry(of, "read").set(READ, angles(readDeg)));
    }

    @Override
    public void answered(Of of, String words) throws BadInput {
        append(entry(of, "answered").put("words", words));
    }

    @Override
    public long bent(Of of, Bend bend, Map<Quantity, Double> readDeg, Optional<Mistyped> insteadOf) throws BadInput {
        ObjectNode entry = entry(of, BENT);
        entry.put("direction", bend.direction().word());
        entry.put("askedDeg", Json.rounded(bend.askedDeg()));
        entry.put("tiltAskedDeg", Json.rounded(bend.trial().askedDeg()));
        entry.put("tiltGotDeg", Json.rounded(bend.trial().gotDeg()));
        entry.put("tiltReadingDeg", Json.rounded(bend.trial().readingDeg()));
        entry.put("working", bend.trial().working().word());
        ObjectNode metal = Json.object();
        for (BendDirection direction : BendDirection.values()) {
            double used = direction.part(bend.used());
            if (used > 0) {
                metal.put(direction.word(), Json.rounded(used));
            }
        }
        entry.set(METAL, metal);
        entry.set("targetDeg", angles(of.targetDeg()));
        entry.set(READ, angles(readDeg));
        insteadOf.ifPresent(mistyped -> entry.put(INSTEAD_OF, mistyped.id()));
        return append(entry);
    }

    private static ObjectNode entry(Of of, String what) {
        return Json.object().put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString())
            .put(HEAD, of.head()).put(WHAT, what);
    }

    /** The number of the line it became. */
    private long append(JsonNode entry) throws BadInput {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ,
            StandardOpenOption.WRITE)) {
            long size = channel.size();
            ByteBuffer last = ByteBuffer.allocate(1);
            boolean cut = size > 0 && channel.read(last, size - 1) == 1 && last.get(0) != '\n';
            ByteBuffer text = ByteBuffer.wrap(((cut ? "\n" : "") + entry + "\n").getBytes(StandardCharsets.UTF_8));
            channel.position(size);
            while (text.hasRemaining()) {
                channel.write(text);
            }
            channel.force(true);
            return Files.readString(file, StandardCharsets.UTF_8).chars().filter(c -> c == '\n').count();
        } catch (IOException cannot) {
            throw new BadInput("%s cannot be written: %s".formatted(file, cannot.getMessage()));
        }
    }
}
