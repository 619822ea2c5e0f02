package benchtwin.club;

import java.util.OptionalDouble;

/**
 * What one sleeve setting was measured to do, against the sleeve's neutral.
 * @param setting  the setting's label
 * @param dLoftDeg change of loft, degrees
 * @param dLieDeg  change of lie, degrees
 * @param dFaceDeg change of soled face angle, degrees; empty where it was not read
 * @param reading  how the angles were read
 */
public record MeasuredSetting(String setting, double dLoftDeg, double dLieDeg, OptionalDouble dFaceDeg,
                              AngleReading reading) {
}
