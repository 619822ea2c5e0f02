package benchtwin.club;

import benchtwin.measure.Reading;
import java.util.Optional;

/**
 * The hole a shaft is bonded into.
 * @param diameterMm its diameter, mm, above 0
 * @param kind       the tip it takes
 * @param depthMm    how far a shaft goes in, mm; a shaft sits on the bottom
 * @param toGroundMm bottom of the bore to where the shaft axis meets the ground, along the axis, mm
 */
public record Bore(double diameterMm, TipKind kind, Optional<Reading> depthMm, Optional<Reading> toGroundMm) {

    public Bore {
        if (!(diameterMm > 0)) {
            throw new IllegalArgumentException("a bore of %s mm cannot take a shaft".formatted(diameterMm));
        }
    }
}
