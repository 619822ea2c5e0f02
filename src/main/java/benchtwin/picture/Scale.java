package benchtwin.picture;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.Range;

/** An axis along one edge of a plot: where a value stands, with ticks at round numbers. JFreeChart does the counting. */
final class Scale {

    /** Room left at each end, as a part of the range. */
    private static final double ROOM = 0.04;

    private final NumberAxis axis = new NumberAxis();
    private final Rectangle2D plot;
    private final RectangleEdge edge;

    /**
     * A scale that shows everything.
     * @param values    what has to be on it, finite, at least one
     * @param leastSpan the least distance from end to end, in the values' unit, above 0: equal values need room too
     * @param plot      the plot it belongs to, px
     * @param edge      at which of its edges it stands
     */
    static Scale showing(double[] values, double leastSpan, Rectangle2D plot, RectangleEdge edge) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        double missing = Math.max(0, leastSpan - (high - low)) / 2;
        double room = (high - low + 2 * missing) * ROOM;
        return new Scale(low - missing - room, high + missing + room, plot, edge);
    }

    Scale(double from, double to, Rectangle2D plot, RectangleEdge edge) {
        this.plot = plot;
        this.edge = edge;
        axis.setRange(new Range(from, to));
        axis.setStandardTickUnits(NumberAxis.createStandardTickUnits(Locale.ROOT));
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        symbols.setMinusSign('−');
        axis.setNumberFormatOverride(new DecimalFormat("0.###", symbols));
        axis.setTickLabelFont(Look.TEXT);
        axis.setTickLabelPaint(Look.INK);
        axis.setTickMarkPaint(Look.INK);
        axis.setTickMarkStroke(Look.RULE);
        axis.setTickMarkOutsideLength(6);
        axis.setAxisLinePaint(Look.INK);
        axis.setAxisLineStroke(Look.RULE);
    }

    /** The same scale with its largest value first: at the left, or at the bottom. */
    Scale largestFirst() {
        axis.setInverted(true);
        return this;
    }

    /** The same scale with its ticks written otherwise than as plain numbers. */
    Scale ticksAs(NumberFormat format) {
        axis.setNumberFormatOverride(format);
        return this;
    }

    /** Where a value stands, px from the left or from the top of the sheet. */
    double px(double value) {
        return axis.valueToJava2D(value, plot, edge);
    }

    void draw(Graphics2D g) {
        draw(g, edge);
    }

    /** Draws the same scale at another edge, for instance on top of a high plot too. */
    void draw(Graphics2D g, RectangleEdge at) {
        double cursor;
        if (at == RectangleEdge.BOTTOM) {
            cursor = plot.getMaxY();
        } else if (at == RectangleEdge.TOP) {
            cursor = plot.getMinY();
        } else {
            cursor = plot.getMinX();
        }
        axis.draw(g, cursor, plot, plot, at, null);
    }
}
