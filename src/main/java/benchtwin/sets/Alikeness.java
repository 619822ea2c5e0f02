package benchtwin.sets;

/**
 * What it costs that clubs of a group are not alike: each is the price, in squared tolerances, of a club one tolerance away
 * from its group's mean. Ours, changeable.
 * @param frequency about the set's line
 * @param swing     swing weight, or butt inertia, about its line
 * @param shaftMass of raw shafts
 * @param model     price of each head model and each shaft model beyond the first in a group that only prefers to share
 */
public record Alikeness(double frequency, double swing, double shaftMass, double model) {

    /** As much as a club's own frequency counts in its miss, half of it for swing weight, a little for mass. */
    public static final Alikeness DEFAULT = new Alikeness(0.15, 0.08, 0.02, 0.1);

    /** Residuals are held in thousandths. */
    private static final double THOUSANDTHS = 1000;

    public Alikeness {
        for (double price : new double[] {frequency, swing, shaftMass, model}) {
            if (!(price >= 0) || Double.isInfinite(price)) {
                throw new IllegalArgumentException("alikeness is priced at 0 or more, not " + price);
            }
        }
    }

    double of(Residual residual) {
        return switch (residual) {
            case FREQUENCY -> frequency;
            case SWING -> swing;
            case SHAFT_MASS -> shaftMass;
        };
    }

    /**
     * A deviation as residuals hold it: so scaled that its square, in millionths, is its price.
     * @param residual   of what
     * @param tolerances in tolerances
     * @return thousandths
     */
    int scaled(Residual residual, double tolerances) {
        return (int) Math.round(Math.sqrt(of(residual)) * THOUSANDTHS * tolerances);
    }

    /**
     * Back again.
     * @param residual of what
     * @param scaled   as residuals hold it
     * @return tolerances; 0 where this kind of alikeness costs nothing
     */
    double tolerances(Residual residual, double scaled) {
        return of(residual) == 0 ? 0 : scaled / (Math.sqrt(of(residual)) * THOUSANDTHS);
    }
}
