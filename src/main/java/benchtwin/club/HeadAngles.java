package benchtwin.club;

import benchtwin.measure.Reading;
import java.util.Optional;

/**
 * A head's angles as read.
 * @param reading   how they were read
 * @param loftDeg   loft, degrees, weak positive; with reading {@code square} the square loft
 * @param lieDeg    lie, degrees, upright positive
 * @param faceDeg   soled face angle of a wood, degrees, open positive
 * @param bounceDeg bounce, degrees
 */
public record HeadAngles(AngleReading reading, Optional<Reading> loftDeg, Optional<Reading> lieDeg,
                         Optional<Reading> faceDeg, Optional<Reading> bounceDeg) {
}
