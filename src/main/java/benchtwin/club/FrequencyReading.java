package benchtwin.club;

import benchtwin.measure.Reading;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A frequency and the condition it was read in.
 * @param cpm          cycles per minute
 * @param clampMm      length of butt in the clamp, mm, if recorded
 * @param freeLengthMm clamp face to tip, mm, if recorded
 * @param tipMassG     mass hung on the tip, g, if recorded
 * @param overGrip     whether the clamp closed over a grip
 * @param planeDeg     plane of vibration from the shaft's mark, degrees, if recorded
 */
public record FrequencyReading(Reading cpm, OptionalDouble clampMm, OptionalDouble freeLengthMm, OptionalDouble tipMassG,
                               boolean overGrip, OptionalDouble planeDeg) {

    public FrequencyReading {
        if (!(cpm.value() > 0)) {
            throw new IllegalArgumentException("a frequency of %s cpm is not above 0".formatted(cpm.value()));
        }
    }
}
