package benchtwin.sets;

import java.util.Arrays;
import java.util.OptionalDouble;

/** How far values scatter. */
final class Spread {

    private Spread() {
    }

    /**
     * The sum of their squares about their mean.
     * @param values any
     * @return 0 or more, in their unit squared
     */
    static double squares(double[] values) {
        double mean = Arrays.stream(values).average().orElse(0);
        return Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum();
    }

    /**
     * Their standard deviation, of the sample.
     * @param values any
     * @return in their unit; empty with fewer than two
     */
    static OptionalDouble of(double[] values) {
        return values.length < 2 ? OptionalDouble.empty()
            : OptionalDouble.of(Math.sqrt(squares(values) / (values.length - 1)));
    }
}
