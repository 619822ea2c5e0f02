package benchtwin.picture;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * One club of a set and one quantity of it, in the unit of the picture it is in.
 * @param club                its name within the set, such as {@code 7-iron}; other clubs may have the same
 * @param value               what it is predicted to measure; empty when that is not known or the club is not built
 * @param standardUncertainty one standard deviation of that prediction, 0 or more; with 0 no whisker is drawn
 * @param target              what it should measure, if anything is wanted of it
 * @param built               false when the plan has no parts for it
 */
public record SetPoint(String club, OptionalDouble value, double standardUncertainty, Optional<SetTarget> target,
                       boolean built) {

    /** What adding and subtracting leaves, as a part of the larger number. */
    private static final double ROUNDING = 1e-9;

    /**
     * Checks the numbers and makes the name printable.
     * @throws IllegalArgumentException naming the club and what cannot be
     */
    public SetPoint {
        club = Words.required("club", club);
        if (value.isPresent() && !Double.isFinite(value.getAsDouble())) {
            throw new IllegalArgumentException("club %s: a value of %s is no number".formatted(club, value.getAsDouble()));
        }
        Words.notNegative("club " + club + ": an uncertainty", standardUncertainty);
        if (!built && value.isPresent()) {
            throw new IllegalArgumentException(
                "club %s: it is not built, so it cannot measure %s".formatted(club, value.getAsDouble()));
        }
    }

    /** Half the whisker. */
    double whisker() {
        return 2 * standardUncertainty;
    }

    /** Whether value and target are both there, so that it can be in tolerance or out of it. */
    boolean isJudged() {
        return value.isPresent() && target.isPresent();
    }

    /** Value less target, of a club that {@link #isJudged}. */
    double off() {
        return value.orElseThrow() - target.orElseThrow().value();
    }

    /** 1 when it is above its tolerance, −1 below, 0 within, or when there is nothing to compare. */
    int side() {
        if (!isJudged()) {
            return 0;
        }
        double slack = ROUNDING * Math.max(1, Math.abs(target.orElseThrow().value()));
        return Math.abs(off()) <= target.orElseThrow().tolerance() + slack ? 0 : (int) Math.signum(off());
    }

    /** All that its marks reach from and to. */
    DoubleStream reach() {
        return DoubleStream.concat(
            value.stream().flatMap(v -> DoubleStream.of(v - whisker(), v + whisker())),
            target.stream().flatMapToDouble(t -> DoubleStream.of(t.low(), t.high())));
    }
}
