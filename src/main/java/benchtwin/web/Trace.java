package benchtwin.web;

import benchtwin.sets.PlanProgress;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * How a plan of sets got better, as a page draws it: its cost over time, and below it the cost that no plan is proven to undercut.
 * The room between the two lines is the gap.
 * @param steps   better plans and better proofs, oldest first, those alone that build as much as the last
 * @param seconds what the axis of time ends at
 */
public record Trace(List<PlanProgress> steps, double seconds) {

    /** The drawing's inner edges. */
    static final double LEFT = 64;
    static final double RIGHT = 700;
    static final double TOP = 16;
    static final double BOTTOM = 190;
    private static final double LEAST_SECONDS = 1;

    /** Of a run: plans with fewer clubs cost less, and would only confuse the picture. */
    static Trace of(List<PlanProgress> all, double seconds) {
        int built = all.isEmpty() ? 0 : all.get(all.size() - 1).unbuilt();
        return new Trace(all.stream().filter(step -> step.unbuilt() == built).toList(), Math.max(LEAST_SECONDS, seconds));
    }

    /**
     * Whether there is anything to draw.
     * @return false until there is a first plan
     */
    public boolean isEmpty() {
        return steps.isEmpty();
    }

    /**
     * The cost over time.
     * @return points of a line
     */
    public String cost() {
        return line(steps.stream().map(step -> OptionalDouble.of(step.cost())).toList());
    }

    /**
     * The proven bound over time.
     * @return points of a line; empty while nothing is proven
     */
    public String bound() {
        return line(steps.stream().map(step -> step.gapPercent().isEmpty() ? step.gapPercent()
            : OptionalDouble.of(step.cost() * (1 - step.gapPercent().getAsDouble() / 100))).toList());
    }

    private String line(List<OptionalDouble> values) {
        List<String> points = new ArrayList<>();
        double last = Double.NaN;
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i).isPresent()) {
                double x = x(steps.get(i).seconds());
                if (!Double.isNaN(last)) {
                    points.add(point(x, last));
                }
                last = y(values.get(i).getAsDouble());
                points.add(point(x, last));
            }
        }
        if (!Double.isNaN(last)) {
            points.add(point(x(seconds), last));
        }
        return String.join(" ", points);
    }

    private double x(double at) {
        return LEFT + Math.min(1, at / seconds) * (RIGHT - LEFT);
    }

    private double y(double cost) {
        return highest() == 0 ? BOTTOM : BOTTOM - Math.min(1, Math.max(0, cost / highest())) * (BOTTOM - TOP);
    }

    /**
     * What the axis of cost ends at.
     * @return squared tolerances
     */
    public double highest() {
        return steps.stream().mapToDouble(PlanProgress::cost).max().orElse(0);
    }

    private static String point(double x, double y) {
        return String.format(Locale.ROOT, "%.1f,%.1f", x, y);
    }
}
