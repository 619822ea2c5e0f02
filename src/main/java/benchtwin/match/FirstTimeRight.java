package benchtwin.match;

import java.util.Map;
import java.util.Optional;

/**
 * The chance that the built club will measure within tolerance at the first try.
 * @param all          everything at once, swing weight left out: a last touch of tape sets it
 * @param byGroup      angles, length, balance, stiffness, each on its own, in that order; groups without a target missing
 * @param best         the best any parts could score with these gauges, same order and with the key {@code all}
 * @param measureNext  the one measurement that would raise it most, if any does by half a per cent
 */
public record FirstTimeRight(double all, Map<String, Double> byGroup, Map<String, Double> best,
                             Optional<MeasureNext> measureNext) {

    /**
     * A measurement worth taking.
     * @param what     what to measure, in bench words
     * @param raisesTo the chance of everything at once after it, if it confirms what is predicted
     */
    public record MeasureNext(String what, double raisesTo) {
    }
}
