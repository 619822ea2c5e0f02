package benchtwin.gauge;

import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * How well values that should agree do agree within their uncertainties.
 *
 * <p>χ² is the sum of the squares of what each is off, in its own standard uncertainties. The Birge ratio √(χ²/ν) is the
 * uncertainty that the scatter shows (external) over the one that was put in (internal); about 1 where the
 * uncertainties are right. With few degrees of freedom it is itself uncertain, by about 1/√(2ν) of its size.
 * <p>Source: published, Birge, Physical Review 40 (1932) 207; Bodnar and Elster, Metrologia 51 (2014) 516, who show that
 * for few values even the external uncertainty is on the small side; see docs/accuracy.md.
 * @param chiSquared       χ², 0 or more
 * @param degreesOfFreedom ν, how many values more than were needed; 0 or more
 */
public record Agreement(double chiSquared, int degreesOfFreedom) {

    /** The chance with which χ² stays below the limit of what counts as consistent, if the uncertainties are right. */
    private static final double CONSISTENT = 0.95;

    public Agreement {
        if (!(chiSquared >= 0) || Double.isInfinite(chiSquared) || degreesOfFreedom < 0) {
            throw new IllegalArgumentException("chi squared %s with %d degrees of freedom"
                .formatted(chiSquared, degreesOfFreedom));
        }
    }

    /**
     * The Birge ratio.
     * @return √(χ²/ν), or empty where nothing is left over to compare
     */
    public OptionalDouble birgeRatio() {
        return degreesOfFreedom == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(chiSquared / degreesOfFreedom));
    }

    /**
     * Whether the values agree: χ² is below what right uncertainties pass one time in twenty. With nothing to compare
     * there is nothing to contradict either.
     * @return true when they agree
     */
    public boolean consistent() {
        return degreesOfFreedom == 0
            || chiSquared <= new ChiSquaredDistribution(degreesOfFreedom).inverseCumulativeProbability(CONSISTENT);
    }

    /** What an internal uncertainty is multiplied by to become the larger of the two. */
    double enlargement() {
        return Math.max(1, birgeRatio().orElse(1));
    }
}
