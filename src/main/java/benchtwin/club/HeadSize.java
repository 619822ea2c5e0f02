package benchtwin.club;

import benchtwin.measure.Reading;
import java.util.Optional;

/**
 * How large a head is, as far as it was measured: what the equipment rules limit.
 * @param heelToeMm   from heel to toe, mm, above 0
 * @param faceBackMm  from the face to the back, mm, above 0
 * @param soleCrownMm from the sole to the top of the crown, mm, above 0
 * @param neckMm      of a putter: from the top of the neck to the sole along the axis, mm, above 0
 */
public record HeadSize(Optional<Reading> heelToeMm, Optional<Reading> faceBackMm, Optional<Reading> soleCrownMm,
                       Optional<Reading> neckMm) {

    /** Nothing measured. */
    public static final HeadSize UNMEASURED =
        new HeadSize(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
