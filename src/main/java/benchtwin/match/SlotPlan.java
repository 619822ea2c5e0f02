package benchtwin.match;

import benchtwin.club.Head;
import benchtwin.club.Quantity;
import benchtwin.club.Shaft;
import benchtwin.club.Sleeve;
import benchtwin.club.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

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

    /**
     * A sleeve it takes from the drawer.
     * @return empty for a bored head, and where the sleeve on the shaft stays
     */
    public Optional<Sleeve> freshSleeve() {
        Optional<Sleeve> sleeve = plan.candidate().sleeve();
        return sleeve.filter(s -> !plan.candidate().shaft().sleeveOn().equals(Optional.of(s.name())));
    }

    /**
     * Weights it takes from the drawer.
     * @return each as often as it is used
     */
    public List<Weight> weights() {
        List<Weight> weights = new ArrayList<>();
        plan.mass().ports().stream().map(HeadMass.PortChoice::weight).filter(Objects::nonNull).forEach(weights::add);
        if (plan.cut().tipWeight() != null) {
            weights.add(plan.cut().tipWeight());
        }
        return List.copyOf(weights);
    }
}
