package benchtwin.match;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One shaft picked.
 * @param rungCpm      the rung it stands on, cpm from the target; 0 for the nearest
 * @param option       its plan and what the club will measure with it; differences are from the rung
 * @param tipTrimMm    off its tip, mm
 * @param buttCutMm    off its butt, mm
 * @param untrimmedCpm what the club would read with the butt cut to length and the tip left alone, cpm
 * @param rawCpm       what the bare shaft as it lies would read in the common condition, the usual clamp and tip mass; empty
 *                     when that cannot be worked out
 * @param marks        what a reader should know of it: a choice it is, a reading it lacks
 */
public record ShaftPick(double rungCpm, Ranked option, double tipTrimMm, double buttCutMm, double untrimmedCpm,
                        OptionalDouble rawCpm, List<String> marks) {
}
