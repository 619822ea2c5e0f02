package benchtwin.picture;

import java.util.Optional;

/**
 * What one club of a set should measure, in the unit of the picture it is in.
 * @param value     the target
 * @param tolerance how far from it is still right, either way, 0 or more
 * @param line      name of the line through the set that the target lies on, if it lies on one
 */
public record SetTarget(double value, double tolerance, Optional<String> line) {

    /**
     * Checks the numbers and makes the name printable.
     * @throws IllegalArgumentException naming what cannot be
     */
    public SetTarget {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a target of %s is no number".formatted(value));
        }
        Words.notNegative("a tolerance", tolerance);
        line = line.map(name -> Words.required("line", name));
    }

    double low() {
        return value - tolerance;
    }

    double high() {
        return value + tolerance;
    }
}
