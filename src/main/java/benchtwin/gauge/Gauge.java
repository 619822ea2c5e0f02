package benchtwin.gauge;

import java.util.OptionalDouble;

/**
 * A gauge, as far as one quantity is concerned.
 * @param name          what the workshop calls it
 * @param repeatability standard deviation of a single reading about the mean of many of the same thing, in the
 *                      quantity's unit, above 0: found from readings and accepted, or a default
 * @param scaleMark     the distance of two marks, or the step of the last digit, same unit, above 0, if known
 */
public record Gauge(String name, double repeatability, OptionalDouble scaleMark) {

    /** The share of its own mark that no uncertainty of a gauge falls below. Memory. */
    static final double LEAST_SHARE_OF_MARK = 1.0 / 3;

    public Gauge {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a gauge needs a name");
        }
        if (!(repeatability > 0) || Double.isInfinite(repeatability)) {
            throw new IllegalArgumentException("the repeatability of %s must be above 0 and finite, not %s"
                .formatted(name, repeatability));
        }
        checkMark(name, scaleMark);
    }

    /**
     * Standard uncertainty of the mean of several readings: repeatability/√count, but never less than a third of the
     * scale's mark, because readings that fall on the same mark again and again say nothing of what lies between marks.
     */
    double uncertaintyOfMean(int count) {
        return Math.max(repeatability / Math.sqrt(count), leastUncertainty(scaleMark));
    }

    static double leastUncertainty(OptionalDouble scaleMark) {
        return scaleMark.isPresent() ? scaleMark.getAsDouble() * LEAST_SHARE_OF_MARK : 0;
    }

    static void checkMark(String gauge, OptionalDouble scaleMark) {
        if (scaleMark.isPresent() && (!(scaleMark.getAsDouble() > 0) || Double.isInfinite(scaleMark.getAsDouble()))) {
            throw new IllegalArgumentException("the scale mark of %s must be above 0 and finite, not %s"
                .formatted(gauge, scaleMark.getAsDouble()));
        }
    }
}
