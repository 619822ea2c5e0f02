package benchtwin.match;

import benchtwin.mechanics.Factor;
import java.util.Optional;

/**
 * What one uncertain thing does to a prediction: one standard deviation of it moves each quantity by so much.
 * @param key      identity; equal keys are the same thing, shared between builds
 * @param label    what it is, for people
 * @param perSigma change of each quantity, by quantity, in its unit
 * @param factor   the model's factor behind it; empty for a gauge, a bend or the model itself
 * @param judging  whether it is the reading that will judge the finished club
 */
record Contribution(String key, String label, double[] perSigma, Optional<Factor> factor, boolean judging) {

    Contribution scaled(double by) {
        double[] copy = perSigma.clone();
        for (int q = 0; q < copy.length; q++) {
            copy[q] *= by;
        }
        return new Contribution(key, label, copy, factor, judging);
    }
}
