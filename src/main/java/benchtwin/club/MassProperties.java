package benchtwin.club;

import benchtwin.measure.Reading;
import java.util.Optional;

/**
 * Where a head's mass lies, as far as it was measured.
 * @param cgToeMm                centre of gravity toward the toe from the ground point, mm
 * @param cgUpMm                 centre of gravity above the ground, mm
 * @param transverseInertiaGCm2  inertia about the axis through the centre of gravity square to the shaft, g·cm²
 * @param verticalInertiaGCm2    inertia about the vertical axis, the rules' figure, g·cm²; no formula uses it
 * @param volumeCm3              volume, cm³
 * @param ctUs                   characteristic time, microseconds
 */
public record MassProperties(Optional<Reading> cgToeMm, Optional<Reading> cgUpMm,
                             Optional<Reading> transverseInertiaGCm2, Optional<Reading> verticalInertiaGCm2,
                             Optional<Reading> volumeCm3, Optional<Reading> ctUs) {

    /** Nothing measured. */
    public static final MassProperties UNMEASURED = new MassProperties(Optional.empty(), Optional.empty(),
        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
