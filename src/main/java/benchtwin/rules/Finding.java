package benchtwin.rules;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.special.Erf;

/**
 * One club held against one limit.
 *
 * <p>The verdict is clear when the value with its expanded uncertainty U = 2u lies wholly on one side of the limit: guarded
 * acceptance and guarded rejection with a guard band of U, so that a club called clearly within (or beyond) is so with a
 * probability of at least Φ(2) = 0.977 for a normal density. Between the two it is too close to call. Where the published
 * procedure may read less by an amount that is no chance (a length near the 60-degree plane), that amount widens the value
 * toward less before it is judged.
 * <p>Source: published, JCGM 106:2012 (conformance probability for a normal density; guarded acceptance and rejection). The
 * factor of two is this program's choice, the one by which it calls any difference beyond what measuring explains.
 * @param limit   the limit
 * @param value   what the club measures; empty where that is not known
 * @param lacking what is to be done to know it; empty where it is known
 */
public record Finding(Limit limit, Optional<RuledValue> value, Optional<String> lacking) {

    /** Expanded uncertainty over standard uncertainty. */
    public static final double COVERAGE_FACTOR = 2;
    /** What a margin is settled to: arithmetic leaves less, no gauge reads finer. */
    private static final double SETTLED = 1e6;

    /**
     * How far inside the limit alone the value is.
     * @return in the quantity's unit, below 0 outside; empty where nothing was measured
     */
    public OptionalDouble margin() {
        return value.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(settled(limit.margin(value.get().value())));
    }

    /**
     * How far inside the limit with its allowance the value is.
     * @return in the quantity's unit, below 0 outside; empty where nothing was measured
     */
    public OptionalDouble marginWithAllowance() {
        return value.isEmpty() ? OptionalDouble.empty()
            : OptionalDouble.of(settled(limit.margin(value.get().value()) + limit.allowance()));
    }

    /**
     * How the club stands to the limit with its allowance: what counts.
     * @return the verdict
     */
    public Verdict verdict() {
        return verdict(marginWithAllowance());
    }

    /**
     * How the club stands to the limit alone.
     * @return the same as the verdict where there is no allowance
     */
    public Verdict verdictOfLimitAlone() {
        return verdict(margin());
    }

    private Verdict verdict(OptionalDouble margin) {
        if (margin.isEmpty()) {
            return Verdict.NOT_MEASURED;
        }
        double expanded = COVERAGE_FACTOR * value.orElseThrow().standardUncertainty();
        double less = value.get().mayReadLess();
        double least = settled(margin.getAsDouble() - expanded - (limit.side() == Limit.Side.MOST ? 0 : less));
        double most = settled(margin.getAsDouble() + expanded + (limit.side() == Limit.Side.MOST ? less : 0));
        boolean mayTouch = limit.side() != Limit.Side.ABOVE || expanded > 0;
        if (mayTouch ? least >= 0 : least > 0) {
            return Verdict.CLEARLY_WITHIN;
        }
        return most <= 0 ? Verdict.CLEARLY_BEYOND : Verdict.TOO_CLOSE;
    }

    /**
     * The chance that the true value is within the limit and its allowance, from the standard uncertainty alone: Φ(margin/u).
     * @return 0 to 1; empty where nothing was measured
     */
    public OptionalDouble chanceWithin() {
        if (value.isEmpty()) {
            return OptionalDouble.empty();
        }
        double u = value.get().standardUncertainty();
        if (u == 0) {
            return OptionalDouble.of(verdict(marginWithAllowance()) == Verdict.CLEARLY_BEYOND ? 0 : 1);
        }
        return OptionalDouble.of(Erf.erfc(-(limit.margin(value.get().value()) + limit.allowance()) / u / Math.sqrt(2)) / 2);
    }

    /**
     * Whether the published procedure reading less decides between two verdicts.
     * @return true near a limit on a length that was not read by the procedure itself
     */
    public boolean restsOnProcedure() {
        return value.filter(v -> v.mayReadLess() > 0).isPresent()
            && Math.abs(margin().orElseThrow()) < value.get().mayReadLess() + COVERAGE_FACTOR * value.get().standardUncertainty();
    }

    private static double settled(double value) {
        return Math.rint(value * SETTLED) / SETTLED;
    }
}
