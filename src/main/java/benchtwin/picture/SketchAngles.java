package benchtwin.picture;

import benchtwin.club.Quantity;
import java.util.OptionalDouble;

/**
 * A head's angles at one moment; what was not measured is empty.
 * @param loftDeg   loft as it is read, degrees, weak positive, −45 to 95
 * @param lieDeg    lie, degrees, upright positive, 20 to 95
 * @param faceDeg   soled face angle of a wood, degrees, open positive, −60 to 60
 * @param bounceDeg bounce of an iron, degrees, −60 to 60
 */
public record SketchAngles(OptionalDouble loftDeg, OptionalDouble lieDeg, OptionalDouble faceDeg,
                           OptionalDouble bounceDeg) {

    /**
     * Checks that every angle can be drawn.
     * @throws IllegalArgumentException naming the angle that cannot
     */
    public SketchAngles {
        check("a loft", loftDeg, -45, 95);
        check("a lie", lieDeg, 20, 95);
        check("a face angle", faceDeg, -60, 60);
        check("a bounce", bounceDeg, -60, 60);
    }

    /** One of the four. */
    OptionalDouble of(Quantity angle) {
        return switch (angle) {
            case LOFT -> loftDeg;
            case LIE -> lieDeg;
            case FACE -> faceDeg;
            case BOUNCE -> bounceDeg;
            default -> throw new IllegalArgumentException(angle + " is no angle of a head");
        };
    }

    private static void check(String what, OptionalDouble deg, double least, double most) {
        if (deg.isPresent() && !(deg.getAsDouble() >= least && deg.getAsDouble() <= most)) {
            throw new IllegalArgumentException("%s of %s° cannot be drawn; expected %s to %s".formatted(what,
                deg.getAsDouble(), Words.fixed(least, 0), Words.fixed(most, 0)));
        }
    }
}
