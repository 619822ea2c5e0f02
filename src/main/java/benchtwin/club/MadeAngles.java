package benchtwin.club;

import java.util.OptionalDouble;

/**
 * A head's angles as it left its maker, when they are known.
 * @param loftDeg loft, degrees
 * @param lieDeg  lie, degrees
 * @param faceDeg face angle, degrees, open positive
 */
public record MadeAngles(OptionalDouble loftDeg, OptionalDouble lieDeg, OptionalDouble faceDeg) {

    /** Nothing known. */
    public static final MadeAngles UNKNOWN =
        new MadeAngles(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
}
