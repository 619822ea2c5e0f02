package benchtwin.match;

import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;

/**
 * One way to build a wanted club from two parts, worked out: the plan and what the club will measure.
 */
public final class SlotPlan {

    private final FoundPlan plan;
    private final double[] predicted;

    SlotPlan(FoundPlan plan, double[] predicted) {
        this.plan = plan;
        this.predicted = predicted;
    }

    FoundPlan plan() {
        return plan;
    }

    /**
     * Its head.
     * @return the head
     */
    public Head head() {
        return plan.candidate().head();
    }

    /**
     * Its shaft, as it lies in the drawer.
     * @return the shaft
     */
    public Shaft shaft() {
        return plan.candidate().shaft();
    }

    /**
     * Distance from the target and work.
     * @return miss² + effort, squared tolerances
     */
    public double cost() {
        return plan.cost();
    }

    /**
     * What the club will measure.
     * @param quantity which
     * @return in its unit; NaN when it cannot be computed
     */
    public double value(Quantity quantity) {
        return predicted[quantity.ordinal()];
    }
}
