package benchtwin.match;

/**
 * A straight line y = ȳ + slope · (x − x̄) by ordinary least squares.
 *
 * <p>slope = Σ(x − x̄)(y − ȳ) / Σ(x − x̄)², with deviations from the means so that large offsets cost no digits. Source:
 * textbook (simple linear regression); see {@code FittedLinePublishedTest}.
 * @param slope change of y for 1 of x
 * @param meanX x̄
 * @param meanY ȳ
 */
record FittedLine(double slope, double meanX, double meanY) {

    /**
     * Fits a line.
     * @param x where; at least two different values
     * @param y what was read there, as many
     * @throws IllegalArgumentException when the two differ in number, or x has fewer than two different values
     */
    static FittedLine through(double[] x, double[] y) {
        if (x.length != y.length || x.length == 0) {
            throw new IllegalArgumentException("%d places and %d values make no line".formatted(x.length, y.length));
        }
        double meanX = mean(x);
        double meanY = mean(y);
        double xx = 0;
        double xy = 0;
        for (int i = 0; i < x.length; i++) {
            xx += (x[i] - meanX) * (x[i] - meanX);
            xy += (x[i] - meanX) * (y[i] - meanY);
        }
        if (!(xx > 0)) {
            throw new IllegalArgumentException("a line needs two different places");
        }
        return new FittedLine(xy / xx, meanX, meanY);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** y on the line. */
    double at(double x) {
        return meanY + slope * (x - meanX);
    }
}
