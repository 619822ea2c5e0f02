package benchtwin.match;

import benchtwin.club.Quantity;
import benchtwin.club.Target;
import benchtwin.club.Wanted;
import java.util.List;

/**
 * The miss as a sum of squares: each targeted quantity's weighted squared deviation over the sum of weights, so that the
 * terms add up to miss². Targets are held less what is carried over, so that they compare with what the model says.
 */
final class CostTerms {

    /** What a wanted quantity that was never read counts as, in tolerances off: neither right nor far out. Ours. */
    private static final double MISSING_IS_OFF = 1;

    private final double[] want = new double[Quantity.values().length];
    private final double[] scale = new double[Quantity.values().length];
    private final double[] share = new double[Quantity.values().length];

    private final double[] carried = new double[Quantity.values().length];

    CostTerms(Target target, double[] carried) {
        System.arraycopy(carried, 0, this.carried, 0, carried.length);
        double total = target.totalWeight();
        target.wanted().forEach((quantity, wanted) -> {
            int q = quantity.ordinal();
            want[q] = wanted.value() - carried[q];
            share[q] = wanted.weight() / total;
            scale[q] = wanted.weight() / (total * wanted.tolerance() * wanted.tolerance());
        });
    }

    private CostTerms(CostTerms other) {
        System.arraycopy(other.want, 0, want, 0, want.length);
        System.arraycopy(other.scale, 0, scale, 0, scale.length);
        System.arraycopy(other.share, 0, share, 0, share.length);
        System.arraycopy(other.carried, 0, carried, 0, carried.length);
    }

    /**
     * The same drawn toward other values: a(x − b)² + c(x − d)² is (a + c)(x − e)² and a constant, e the weighted mean of b
     * and d.
     * @param pulls what is drawn where, and how hard
     * @return terms that count the pulls, but for the constant
     */
    CostTerms pulled(List<SlotPlans.Pull> pulls) {
        CostTerms drawn = new CostTerms(this);
        for (SlotPlans.Pull pull : pulls) {
            int q = pull.quantity().ordinal();
            double hold = pull.weight() / (pull.tolerance() * pull.tolerance());
            double toward = pull.toward() - carried[q];
            double sum = drawn.scale[q] + hold;
            if (hold > 0) {
                drawn.want[q] = (drawn.scale[q] * drawn.want[q] + hold * toward) / sum;
                drawn.scale[q] = sum;
            }
        }
        return drawn;
    }

    boolean differsFrom(CostTerms other, Quantity quantity) {
        return scale[quantity.ordinal()] != other.scale[quantity.ordinal()];
    }

    /**
     * One term of miss².
     * @param quantity which
     * @param modelled what the model says, nothing carried over
     * @return 0 or more; 0 for a quantity that is not targeted
     */
    double of(Quantity quantity, double modelled) {
        int q = quantity.ordinal();
        if (scale[q] == 0) {
            return 0;
        }
        double off = modelled - want[q];
        return scale[q] * off * off;
    }

    /**
     * How far a quantity may be from what is wanted before its term alone is worth so much.
     * @param quantity one that counts
     * @param cost     0 or more
     * @return in the quantity's unit
     */
    double reach(Quantity quantity, double cost) {
        return Math.sqrt(cost / scale[quantity.ordinal()]);
    }

    /** The same for a quantity that may never have been read, NaN, and then counts as one tolerance off. */
    double ofReadOrNot(Quantity quantity, double modelled) {
        return Double.isNaN(modelled) ? share[quantity.ordinal()] * MISSING_IS_OFF * MISSING_IS_OFF : of(quantity, modelled);
    }

    boolean counts(Quantity quantity) {
        return scale[quantity.ordinal()] > 0;
    }

    double want(Quantity quantity) {
        return want[quantity.ordinal()];
    }

    /** miss² of predicted values with the carried part already in them. */
    static double missSquared(Target target, double[] predicted) {
        double sum = 0;
        for (var entry : target.wanted().entrySet()) {
            Wanted wanted = entry.getValue();
            if (wanted.weight() > 0) {
                double value = predicted[entry.getKey().ordinal()];
                double d = Double.isNaN(value) ? MISSING_IS_OFF : wanted.deviation(value);
                sum += wanted.weight() * d * d;
            }
        }
        return sum / target.totalWeight();
    }
}
