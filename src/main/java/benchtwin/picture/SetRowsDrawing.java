package benchtwin.picture;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.jfree.chart.ui.RectangleEdge;

/** Lays a set out club by club, a row each, one axis below; between the rows, where they are given, the gaps in loft. */
final class SetRowsDrawing implements Drawing {

    private static final double ROW_PX = 36;
    private static final double ROW_WITH_GAP_PX = 42;
    private static final double AXIS_PX = 40;
    private static final double ABOVE_PX = 12;
    private static final double TO_WORDS_PX = 10;
    private static final double SHORTER_PX = 10;
    private static final double LEAST_SCALE_PX = 200;

    private final List<SetPoint> clubs;
    private final List<Optional<LoftGap>> gaps;
    private final Heading heading;
    private final TextBlock axisLabel;
    private final List<SetRow> rows = new ArrayList<>();
    private final Rectangle2D plot;
    private final Optional<Scale> scale;

    static SetRowsDrawing of(SwingPicture picture, String title, Font font) {
        return new SetRowsDrawing(picture.clubs(), picture.words(), List.of(), picture.axisLabel(), title, font);
    }

    static SetRowsDrawing of(LoftGapPicture picture, String title, Font font) {
        return new SetRowsDrawing(picture.clubs(), picture.words(), picture.gaps(),
            "loft, degrees; between two clubs the gap from one to the next", title, font);
    }

    private SetRowsDrawing(List<SetPoint> clubs, SetWords words, List<Optional<LoftGap>> gaps, String axis, String title,
                           Font font) {
        this.clubs = clubs;
        this.gaps = gaps;
        heading = new Heading(title, font, legend());
        axisLabel = TextBlock.of(axis, Look.TEXT, Look.WIDTH_PX - Look.MARGIN_PX - SetRow.PLOT_X);
        double top = heading.heightPx() + ABOVE_PX;
        double y = top;
        for (SetPoint club : clubs) {
            SetRow row = new SetRow(club, words, y, gaps.isEmpty() ? ROW_PX : ROW_WITH_GAP_PX);
            rows.add(row);
            y = row.bottomPx();
        }
        plot = new Rectangle2D.Double(SetRow.PLOT_X, top, SetRow.PLOT_PX, y - top);
        double[] every = clubs.stream().flatMapToDouble(SetPoint::reach).toArray();
        scale = every.length == 0 ? Optional.empty() : Optional.of(words.dressed(fitted(every, words.leastSpan())));
    }

    /** As long as leaves room for the words of every gap to the right of its marks. */
    private Scale fitted(double[] every, double leastSpan) {
        Scale across = Scale.showing(every, leastSpan, plot, RectangleEdge.BOTTOM);
        double lengthPx = plot.getWidth();
        while (endOfGapWords(across) > plot.getMaxX() && lengthPx > LEAST_SCALE_PX) {
            lengthPx -= SHORTER_PX;
            across = Scale.showing(every, leastSpan, new Rectangle2D.Double(plot.getX(), plot.getY(), lengthPx, plot.getHeight()),
                RectangleEdge.BOTTOM);
        }
        return across;
    }

    private double endOfGapWords(Scale across) {
        double end = 0;
        for (int i = 0; i < gaps.size(); i++) {
            if (gaps.get(i).isPresent()) {
                LoftGap gap = gaps.get(i).get();
                end = Math.max(end, gapWordsX(across, rows.get(i), rows.get(i + 1)) + TextBlock.widthPx(gap.label(), fontOf(gap)));
            }
        }
        return end;
    }

    private static double gapWordsX(Scale across, SetRow from, SetRow to) {
        return TO_WORDS_PX + DoubleStream.concat(from.reachPx(across), to.reachPx(across)).max().orElseThrow();
    }

    /** A set to draw is not empty. */
    static List<SetPoint> someClubs(List<SetPoint> clubs) {
        if (clubs.isEmpty()) {
            throw new IllegalArgumentException("a picture of a set needs at least one club");
        }
        return List.copyOf(clubs);
    }

    @Override
    public int heightPx() {
        return (int) Math.ceil(plot.getMaxY() + (scale.isPresent() ? AXIS_PX + axisLabel.heightPx() : 0) + Look.MARGIN_PX / 2.0);
    }

    @Override
    public void draw(Sheet sheet) {
        heading.draw(sheet);
        rows.forEach(row -> row.drawWords(sheet));
        scale.ifPresent(across -> {
            rows.forEach(row -> row.drawStrip(sheet));
            for (int i = 0; i < gaps.size(); i++) {
                SetRow from = rows.get(i);
                SetRow to = rows.get(i + 1);
                gaps.get(i).ifPresent(gap -> drawGap(sheet, across, gap, from, to));
            }
            rows.forEach(row -> row.drawMarks(sheet, across));
            sheet.part("axis", across::draw);
            sheet.part("axis-label", g -> axisLabel.draw(g, Look.INK, SetRow.PLOT_X, plot.getMaxY() + AXIS_PX));
        });
    }

    /** A step from mark to mark; its words stand on the line between the two rows, to the right of all of their marks. */
    private void drawGap(Sheet sheet, Scale across, LoftGap gap, SetRow from, SetRow to) {
        double fromX = across.px(gap.fromDeg());
        double toX = across.px(gap.toDeg());
        double y = from.bottomPx();
        sheet.part(gap.side() == 0 ? "gap" : "uneven-gap", g -> {
            Marks.line(g, Look.QUIET, Look.RULE, fromX, from.middleY(), fromX, y);
            Marks.line(g, Look.QUIET, Look.RULE, toX, y, toX, to.middleY());
            Marks.line(g, gap.side() == 0 ? Look.QUIET : Look.STOP, gap.side() == 0 ? Look.RULE : Look.MOVE, fromX, y, toX, y);
        });
        double wordsX = gapWordsX(across, from, to);
        sheet.part("gap-words", g -> drawGapWords(g, gap, wordsX, y));
    }

    private static void drawGapWords(Graphics2D g, LoftGap gap, double x, double middleY) {
        TextBlock text = TextBlock.line(gap.label(), fontOf(gap));
        text.draw(g, Look.INK, x, middleY - text.heightPx() / 2);
    }

    private static Font fontOf(LoftGap gap) {
        return gap.side() == 0 ? Look.TEXT : Look.STRONG;
    }

    private Legend legend() {
        Legend legend = SetLegend.of(clubs, false);
        if (clubs.stream().anyMatch(club -> club.built() && club.target().isPresent())) {
            legend.add(30, (g, x, width, y) -> Marks.targetAcross(g, x + width / 2, x, x + width, y), "target and its tolerance");
        }
        SetLegend.addNotBuilt(legend, clubs);
        if (gaps.stream().flatMap(Optional::stream).anyMatch(gap -> gap.side() != 0)) {
            legend.add(30, (g, x, width, y) -> Marks.line(g, Look.STOP, Look.MOVE, x, y, x + width, y), "uneven gap");
        }
        return legend;
    }
}
