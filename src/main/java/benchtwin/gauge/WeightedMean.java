package benchtwin.gauge;

/**
 * The mean of values weighted by 1/u².
 *
 * <p>Internal uncertainty (Σ 1/u²)^−½. Source: textbook (weighted least squares of one unknown); see docs/accuracy.md.
 * @param value     the mean
 * @param internal  its standard uncertainty, if the values' are right
 * @param agreement how well the values agree
 */
record WeightedMean(double value, double internal, Agreement agreement) {

    /** The mean of one value or more, each with an uncertainty above 0. */
    static WeightedMean of(double[] values, double[] uncertainties) {
        double weights = 0;
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            double weight = 1 / (uncertainties[i] * uncertainties[i]);
            weights += weight;
            sum += weight * (values[i] - values[0]);
        }
        double fromFirst = sum / weights;
        double chiSquared = 0;
        for (int i = 0; i < values.length; i++) {
            double off = (values[i] - values[0] - fromFirst) / uncertainties[i];
            chiSquared += off * off;
        }
        return new WeightedMean(values[0] + fromFirst, 1 / Math.sqrt(weights), new Agreement(chiSquared, values.length - 1));
    }
}
