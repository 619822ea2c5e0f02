package benchtwin.club;

import benchtwin.measure.Reading;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One grip.
 * @param tag      its own tag
 * @param model    model name
 * @param massG    mass, g
 * @param lengthMm length, mm
 * @param capMm    thickness of the end wall, mm, if measured
 * @param coreMm   inner diameter, mm, if known
 * @param ribbed   whether it has a rib
 * @param cgMm     centre of gravity from the butt end, mm, if measured
 * @param keeping  where it is kept
 */
public record Grip(String tag, String model, Optional<Reading> massG, OptionalDouble lengthMm, OptionalDouble capMm,
                   OptionalDouble coreMm, boolean ribbed, Optional<Reading> cgMm, Keeping keeping) {
}
