package benchtwin.club;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One quantity of two clubs, or of one club on two dates, in the unit of the quantity it stands under. Both values are
 * carried to one gauge and one condition.
 * @param a                       the value of the first, which is the one held to; empty when it was not read
 * @param b                       the value of the second; empty when it was not read
 * @param uncertaintyOfDifference one standard deviation of b less a, 0 or more; there when both values are
 * @param tolerance               how far apart still counts as the same, above 0
 * @param gauges                  what the two were read on, each named once; may be empty
 */
public record ValueComparison(OptionalDouble a, OptionalDouble b, OptionalDouble uncertaintyOfDifference,
                              double tolerance, List<String> gauges) {

    public ValueComparison {
        for (OptionalDouble value : List.of(a, b)) {
            if (value.isPresent() && !Double.isFinite(value.getAsDouble())) {
                throw new IllegalArgumentException("a compared value must be a finite number, not " + value.getAsDouble());
            }
        }
        if (uncertaintyOfDifference.isPresent() != (a.isPresent() && b.isPresent())) {
            throw new IllegalArgumentException("the uncertainty of a difference is known when both values are, and only then");
        }
        if (!(tolerance > 0) || Double.isInfinite(tolerance)) {
            throw new IllegalArgumentException("a tolerance must be above 0 and finite, not " + tolerance);
        }
        gauges = gauges.stream().distinct().toList();
        if (uncertaintyOfDifference.isPresent()) {
            new MeasuredDifference(b.orElseThrow() - a.orElseThrow(), uncertaintyOfDifference.getAsDouble());
        }
    }

    /**
     * Two values that were both read.
     * @param a                       the first
     * @param b                       the second
     * @param uncertaintyOfDifference one standard deviation of b less a
     * @param tolerance               above 0
     * @param gauges                  what they were read on
     * @return the comparison
     */
    public static ValueComparison of(double a, double b, double uncertaintyOfDifference, double tolerance, List<String> gauges) {
        return new ValueComparison(OptionalDouble.of(a), OptionalDouble.of(b), OptionalDouble.of(uncertaintyOfDifference),
            tolerance, gauges);
    }

    /**
     * The second less the first.
     * @return empty when one of them was not read
     */
    public Optional<MeasuredDifference> difference() {
        return uncertaintyOfDifference.isEmpty() ? Optional.empty()
            : Optional.of(new MeasuredDifference(b.orElseThrow() - a.orElseThrow(), uncertaintyOfDifference.getAsDouble()));
    }

    /**
     * Whether they differ by more than measuring alone explains.
     * @return false also when one of them was not read
     */
    public boolean isBeyondUncertainty() {
        return difference().map(MeasuredDifference::isBeyondUncertainty).orElse(false);
    }
}
