package benchtwin.picture;

import benchtwin.club.Quantity;
import benchtwin.club.QuantityText;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One quantity of a history laid out: its name at the left, its strip on the axis of time, its last reading at the right. */
final class HistoryRow {

    static final double PLOT_X = 256;
    static final double PLOT_END_X = 944;

    private static final double NAME_PX = 112;
    private static final double STRIP_PX = 2 * StripScale.HALF_TOLERANCES * StripScale.TOLERANCE_PX;
    private static final double NOT_READ_PX = 60;
    private static final double OFF_WORDS_PX = 26;
    private static final double BETWEEN_PX = 20;
    /** What an arrow hides of a whisker that starts off the strip. */
    private static final double UNDER_ARROW_PX = 24;
    /** More readings than these on one strip are drawn small. */
    private static final int MANY = 60;
    private static final double SMALL = 0.6;
    /** From one reading of one time to the next, and how far they spread at most. */
    private static final double APART_PX = 14;
    private static final double SPREAD_PX = 42;

    private final Quantity quantity;
    private final HistoryStrip strip;
    private final List<String> otherGauges;
    private final Optional<TimeScale> time;
    private final TextBlock name;
    private final TextBlock unit;
    private final LastReading last;
    private final Rectangle2D plot;
    private final StripScale scale;
    private final List<Placed> placed = new ArrayList<>();
    private final List<RowOfWords<Placed>> above;
    private final List<RowOfWords<Placed>> below;
    private final double bottomPx;

    /** A reading and where it stands across. */
    private record Placed(HistoryReading reading, double x) {
    }

    /**
     * Lays it out.
     * @param quantity    what
     * @param strip       its readings
     * @param otherGauges the gauges of the picture other than the reference, as its legend names them
     * @param time        the axis they share; empty when nothing has a time
     * @param dates       how dates are written
     * @param topPx       where it starts
     */
    HistoryRow(Quantity quantity, HistoryStrip strip, List<String> otherGauges, Optional<TimeScale> time, HistoryDates dates,
               double topPx) {
        this.quantity = quantity;
        this.strip = strip;
        this.otherGauges = otherGauges;
        this.time = time;
        name = TextBlock.of(QuantityText.name(quantity), Look.STRONG, NAME_PX);
        last = new LastReading(quantity, strip, dates);
        double leastPx = strip.readings().isEmpty() ? NOT_READ_PX : STRIP_PX;
        time.ifPresent(this::place);
        // a first scale tells what lies off the strip, whose numbers then move the strip down
        StripScale trial = new StripScale(quantity, strip, new Rectangle2D.Double(PLOT_X, 0, PLOT_END_X - PLOT_X, leastPx));
        above = off(trial, 1);
        below = off(trial, -1);
        plot = new Rectangle2D.Double(PLOT_X, topPx + (above.isEmpty() ? 0 : OFF_WORDS_PX), PLOT_END_X - PLOT_X, leastPx);
        scale = new StripScale(quantity, strip, plot);
        unit = TextBlock.of(scale.unit(), Look.TEXT, NAME_PX);
        double wordsPx = Math.max(last.heightPx(), name.heightPx() + unit.heightPx());
        bottomPx = Math.max(plot.getMaxY() + (below.isEmpty() ? 0 : OFF_WORDS_PX), plot.getCenterY() + wordsPx / 2) + BETWEEN_PX;
    }

    private void place(TimeScale axis) {
        List<HistoryReading> all = strip.readings();
        for (int from = 0; from < all.size(); ) {
            int to = from;
            while (to < all.size() && all.get(to).when().start().equals(all.get(from).when().start())) {
                to++;
            }
            int count = to - from;
            double apart = count == 1 ? 0 : Math.min(APART_PX, SPREAD_PX / (count - 1));
            for (int i = 0; i < count; i++) {
                HistoryReading reading = all.get(from + i);
                placed.add(new Placed(reading, axis.px(reading.when()) + (i - (count - 1) / 2.0) * apart));
            }
            from = to;
        }
    }

    private List<RowOfWords<Placed>> off(StripScale trial, int side) {
        return RowOfWords.of(placed.stream().filter(one -> !one.reading().superseded() && trial.off(one.reading().value()) == side).toList(),
            Placed::x, this::offWords, PLOT_X, PLOT_END_X);
    }

    private String offWords(List<Placed> together) {
        double low = together.stream().mapToDouble(one -> one.reading().value()).min().orElseThrow();
        double high = together.stream().mapToDouble(one -> one.reading().value()).max().orElseThrow();
        String from = QuantityText.value(quantity, low);
        String to = QuantityText.value(quantity, high);
        if (together.size() == 1) {
            return from;
        }
        return together.size() + (from.equals(to) ? " at " + from : ", " + from + " to " + to);
    }

    double bottomPx() {
        return bottomPx;
    }

    void drawGround(Sheet sheet) {
        sheet.part("strip", g -> {
            time.ifPresent(axis -> axis.drawGrid(g, plot.getMinY(), plot.getMaxY()));
            Marks.line(g, Look.QUIET, Look.RULE, plot.getMinX(), plot.getMinY(), plot.getMaxX(), plot.getMinY());
            Marks.line(g, Look.QUIET, Look.RULE, plot.getMinX(), plot.getMaxY(), plot.getMaxX(), plot.getMaxY());
        });
        scale.drawGround(sheet);
    }

    void draw(Sheet sheet) {
        double middleY = plot.getCenterY();
        sheet.part("quantity", g -> {
            double y = middleY - (name.heightPx() + unit.heightPx()) / 2;
            name.draw(g, Look.INK, Look.MARGIN_PX, y);
            unit.draw(g, Look.QUIET, Look.MARGIN_PX, y + name.heightPx());
        });
        scale.drawAxis(sheet);
        double radius = Look.DOT_RADIUS_PX * (many() ? SMALL : 1);
        placed.stream().filter(one -> one.reading().superseded()).forEach(one -> sheet.part("superseded", g ->
            HistoryMark.crossedOut(g, one.x(), scale.clamped(one.reading().value()), radius)));
        List<Placed> standing = placed.stream().filter(one -> !one.reading().superseded()).toList();
        standing.stream().filter(one -> one.reading().standardUncertainty() > 0)
            .forEach(one -> sheet.part("whisker", g -> drawWhisker(g, one)));
        standing.forEach(one -> drawValue(sheet, one, radius));
        above.forEach(words -> words.draw(sheet, "off-words", plot.getMinY() - OFF_WORDS_PX + 1));
        below.forEach(words -> words.draw(sheet, "off-words", plot.getMaxY() + 2));
        last.draw(sheet, middleY);
    }

    private boolean many() {
        return placed.size() > MANY;
    }

    private void drawValue(Sheet sheet, Placed one, double radius) {
        int off = scale.off(one.reading().value());
        if (off != 0) {
            sheet.part("arrow", g -> Marks.arrow(g, one.x(), off > 0 ? plot.getMinY() + 12 : plot.getMaxY() - 12, 0, -off, many() ? SMALL : 1));
            return;
        }
        Optional<String> gauge = one.reading().otherGauge();
        HistoryMark mark = gauge.map(other -> HistoryMark.ofOther(otherGauges.indexOf(other))).orElse(HistoryMark.DOT);
        sheet.part(gauge.isEmpty() ? "dot" : "other-gauge", g -> mark.draw(g, one.x(), scale.px(one.reading().value()), radius));
    }

    /** As far as the strip goes, with a cap where it ends on it; of many readings a thin line. */
    private void drawWhisker(Graphics2D g, Placed one) {
        HistoryReading reading = one.reading();
        double high = reading.value() + reading.whisker();
        double low = reading.value() - reading.whisker();
        boolean many = many();
        double top = scale.clamped(high);
        double bottom = scale.clamped(low);
        double hiddenPx = scale.off(reading.value()) == 0 ? 0 : UNDER_ARROW_PX;
        if (bottom - top <= hiddenPx) {
            return;
        }
        Marks.line(g, many ? Look.QUIET : Look.INK, many ? Look.RULE : Look.MARK, one.x(), top, one.x(), bottom);
        if (!many && scale.off(high) == 0) {
            Marks.line(g, Look.INK, Look.MARK, one.x() - 6, top, one.x() + 6, top);
        }
        if (!many && scale.off(low) == 0) {
            Marks.line(g, Look.INK, Look.MARK, one.x() - 6, bottom, one.x() + 6, bottom);
        }
    }
}
