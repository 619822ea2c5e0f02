package benchtwin.match;

import java.util.List;

/**
 * One shaft picked.
 * @param rungCpm      the rung it stands on, cpm from the target; 0 for the nearest
 * @param option       its plan and what the club will measure with it; differences are from the rung
 * @param tipTrimMm    off its tip, mm
 * @param buttCutMm    off its butt, mm
 * @param untrimmedCpm what the club would read with the butt cut to length and the tip left alone, cpm
 * @param marks        what a reader should know of it: a choice it is, a reading it lacks
 */
public record ShaftPick(double rungCpm, Ranked option, double tipTrimMm, double buttCutMm, double untrimmedCpm,
                        List<String> marks) {
}
