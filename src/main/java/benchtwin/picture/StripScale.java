package benchtwin.picture;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import benchtwin.club.Wanted;
import benchtwin.measure.Units;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.jfree.chart.ui.RectangleEdge;

/**
 * The upright scale of one strip: in tolerances about the target where there is one, the same for every strip; else fitted
 * to the readings that still stand.
 */
final class StripScale {

    /** From the target to the end of the strip, in tolerances. */
    static final double HALF_TOLERANCES = 2.5;
    static final double TOLERANCE_PX = 21;

    private static final double FITTED_TOLERANCES = 4;
    private static final double ROUNDING = 1e-9;
    private static final double TO_WORDS_PX = 10;

    private final Quantity quantity;
    private final Rectangle2D plot;
    private final Optional<Wanted> target;
    private final Optional<Scale> fitted;

    StripScale(Quantity quantity, HistoryStrip strip, Rectangle2D plot) {
        this.quantity = quantity;
        this.plot = plot;
        target = strip.target();
        double[] values = strip.readings().stream().filter(reading -> !reading.superseded()).flatMapToDouble(reading ->
            DoubleStream.of(reading.value() - reading.whisker(), reading.value() + reading.whisker())).map(this::shown).toArray();
        double least = quantity.defaultTolerance() > 0 ? FITTED_TOLERANCES * quantity.defaultTolerance() : FITTED_TOLERANCES;
        fitted = target.isPresent() || values.length == 0 ? Optional.empty()
            : Optional.of(new SetWords(quantity).dressed(
                Scale.showing(values, shown(least), plot, RectangleEdge.LEFT)));
    }

    /** In the unit its ticks are in. */
    private double shown(double value) {
        return isLength() ? Units.inches(value) : value;
    }

    private boolean isLength() {
        return quantity == Quantity.LENGTH || quantity == Quantity.RULES_LENGTH || quantity == Quantity.SHAFT_BALANCE;
    }

    /** The unit of bare ticks; empty where the ticks say it themselves. */
    String unit() {
        if (fitted.isEmpty() || quantity == Quantity.SWING_WEIGHT) {
            return "";
        }
        return isLength() ? "in" : quantity.unit().equals("°") ? "degrees" : quantity.unit();
    }

    /** Where a value stands, px from the top of the sheet; it may be off the strip, on either side. */
    double px(double value) {
        if (target.isPresent()) {
            return plot.getCenterY() - target.get().deviation(value) * TOLERANCE_PX;
        }
        return fitted.map(scale -> scale.px(shown(value))).orElse(plot.getCenterY());
    }

    /** 1 when a value lies above the strip, −1 below it, 0 on it; without a target the strip holds all that stand. */
    int off(double value) {
        return target.map(wanted -> off(wanted, value)).orElse(0);
    }

    /** The same of a strip about a target. */
    static int off(Wanted wanted, double value) {
        double deviation = wanted.deviation(value);
        return Math.abs(deviation) <= HALF_TOLERANCES + ROUNDING ? 0 : (int) Math.signum(deviation);
    }

    /** The same as far as the strip goes. */
    double clamped(double value) {
        return Math.max(plot.getMinY(), Math.min(plot.getMaxY(), px(value)));
    }

    /** Band and target, or nothing. */
    void drawGround(Sheet sheet) {
        target.ifPresent(wanted -> {
            double high = px(wanted.value() + wanted.tolerance());
            double low = px(wanted.value() - wanted.tolerance());
            sheet.part("band", g -> Marks.bandAcross(g, plot.getMinX(), plot.getMaxX(), high, low));
            sheet.part("target", g -> Marks.line(g, Look.INK, Look.DASHED, plot.getMinX(), plot.getCenterY(), plot.getMaxX(),
                plot.getCenterY()));
        });
    }

    /** The axis at its left: the target and how far its tolerance reaches, or ticks. */
    void drawAxis(Sheet sheet) {
        target.ifPresent(wanted -> sheet.part("value-axis", g -> {
            tick(g, "+" + QuantityText.size(quantity, wanted.tolerance()), px(wanted.value() + wanted.tolerance()));
            tick(g, QuantityText.value(quantity, wanted.value()), plot.getCenterY());
            tick(g, "−" + QuantityText.size(quantity, wanted.tolerance()), px(wanted.value() - wanted.tolerance()));
        }));
        fitted.ifPresent(scale -> sheet.part("value-axis", scale::draw));
    }

    private void tick(Graphics2D g, String words, double y) {
        TextBlock text = TextBlock.line(words, Look.TEXT);
        Marks.line(g, Look.INK, Look.RULE, plot.getMinX() - 6, y, plot.getMinX(), y);
        text.draw(g, Look.INK, plot.getMinX() - TO_WORDS_PX - text.widthPx(), y - text.heightPx() / 2);
    }
}
