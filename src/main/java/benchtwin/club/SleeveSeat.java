package benchtwin.club;

import benchtwin.measure.Reading;
import java.util.Optional;

/**
 * The seat of a head that takes an adjustable sleeve.
 * @param fit           the type of sleeve that fits; matched against what a sleeve lists
 * @param toGroundMm    seat to where the shaft axis meets the ground, along the axis, mm
 * @param readAtSetting the sleeve setting at which the head's angles were read; empty when not recorded, and then the
 *                      mean of all settings stands in
 */
public record SleeveSeat(String fit, Optional<Reading> toGroundMm, Optional<String> readAtSetting) {
}
