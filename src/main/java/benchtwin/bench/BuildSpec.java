package benchtwin.bench;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A build written out: parts by tag and what is done to them. Everything but the three parts may be missing.
 * @param head           head tag
 * @param shaft          shaft tag
 * @param grip           grip tag
 * @param sleeve         sleeve name; where missing, the one on the shaft
 * @param setting        sleeve setting
 * @param lengthMm       playing length wanted, mm; the butt is cut to it
 * @param buttCutMm      off the butt, mm
 * @param tipTrimMm      off the tip, mm
 * @param extensionMm    added at the butt, mm
 * @param lieChangeDeg   bend of the lie, upright positive
 * @param faceChangeDeg  bend of a wood's face, open positive
 * @param loftChangeDeg  bend of an iron's loft, weak positive
 * @param headMassG      lead tape or hot melt at the head, g
 * @param portG          what is in the ports, g in all; where missing, what is recorded
 * @param tipWeightG     weight in the tip, g
 * @param tapeLayers     layers of tape under the grip; 1 where missing
 * @param clampMm        clamp of the frequency reading, mm; 127 where missing
 * @param overGrip       whether the clamp closes over the grip; false where missing
 * @param reading        in which reading a wood's loft is wanted; the head's own where missing
 */
public record BuildSpec(@JsonProperty(required = true) String head, @JsonProperty(required = true) String shaft,
                        String grip, String sleeve, String setting, Double lengthMm, Double buttCutMm,
                        Double tipTrimMm, Double extensionMm, Double lieChangeDeg, Double faceChangeDeg,
                        Double loftChangeDeg, Double headMassG, Double portG, Double tipWeightG, Double tapeLayers,
                        Double clampMm, Boolean overGrip, String reading) {

    private static final long MOST_BYTES = 1 << 20;

    /**
     * A club as it is put together now.
     * @param club from the book
     * @return the build; an empty tag where the book does not say the part
     */
    public static BuildSpec of(ClubViews.Club club) {
        Double headMassG = sum(club, "tape_g", "melt_g");
        return new BuildSpec(club.fact("head").orElse(""), club.fact("shaft").orElse(""), club.fact("grip").orElse(null),
            club.fact("sleeve").orElse(null), club.fact("setting").orElse(null), null, null, null, null, null, null, null, headMassG, null,
            sum(club, "tip_weight_g"), club.fact("tape_layers").map(Double::valueOf).orElse(null), null, null, null);
    }

    /** What a club carries beside its parts, g; null for nothing. */
    private static Double sum(ClubViews.Club club, String... facts) {
        double sum = Stream.of(facts).flatMap(fact -> club.fact(fact).stream()).mapToDouble(Double::parseDouble).sum();
        return sum == 0 ? null : (Double) sum;
    }

    /**
     * Reads a build from a JSON file.
     * @param file the file
     * @return the build
     * @throws BadInput saying what in the file was not expected
     */
    public static BuildSpec read(Path file) throws BadInput {
        try {
            if (!Files.isRegularFile(file)) {
                throw new BadInput("%s is not a file; expected a build as JSON".formatted(file));
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new BadInput("%s is over 1 MB; a build is a few lines of JSON".formatted(file));
            }
            return Json.MAPPER.readValue(Files.readString(file), BuildSpec.class);
        } catch (UnrecognizedPropertyException unknown) {
            throw new BadInput("%s: \"%s\" is not part of a build; expected any of %s".formatted(file,
                unknown.getPropertyName(), unknown.getKnownPropertyIds().stream().map(Object::toString).sorted()
                    .collect(Collectors.joining(", "))));
        } catch (JsonProcessingException malformed) {
            String where = malformed.getLocation() == null ? "" : " line %d, column %d"
                .formatted(malformed.getLocation().getLineNr(), malformed.getLocation().getColumnNr());
            throw new BadInput("%s%s: %s".formatted(file, where, malformed.getOriginalMessage()));
        } catch (IOException unreadable) {
            throw new BadInput("%s cannot be read: %s".formatted(file, unreadable.getMessage()));
        }
    }
}
