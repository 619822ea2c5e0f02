package benchtwin.picture;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jfree.chart.ui.RectangleEdge;

/** Lays a ladder out: heading and legend, one row a rung, the axis below and, when the ladder is high, above as well. */
final class LadderDrawing implements Drawing {

    private static final double LEAST_SPAN_CPM = 8;
    private static final int RUNGS_WITH_ONE_AXIS = 8;
    private static final double AXIS_PX = 40;
    private static final double GAP_PX = 16;

    private final LadderPicture picture;
    private final Heading heading;
    private final TextBlock axisLabel;
    private final List<LadderRow> rows = new ArrayList<>();
    private final Rectangle2D plot;
    private final Scale scale;

    LadderDrawing(LadderPicture picture) {
        this.picture = picture;
        heading = new Heading(picture.title(), legend());
        axisLabel = TextBlock.of(picture.axisLabel(), Look.TEXT, Look.WIDTH_PX - Look.MARGIN_PX - LadderRow.PLOT_X);
        double top = heading.heightPx() + GAP_PX + (hasUpperAxis() ? AXIS_PX : 0);
        double y = top;
        for (Rung rung : picture.rungs()) {
            LadderRow row = new LadderRow(rung, picture.wantedCpm(rung), y);
            rows.add(row);
            y += row.heightPx();
        }
        plot = new Rectangle2D.Double(LadderRow.PLOT_X, top, LadderRow.PLOT_PX, y - top);
        scale = Scale.showing(everyCpm(), LEAST_SPAN_CPM, plot, RectangleEdge.BOTTOM);
    }

    @Override
    public int heightPx() {
        return (int) Math.ceil(plot.getMaxY() + AXIS_PX + axisLabel.heightPx() + Look.MARGIN_PX);
    }

    @Override
    public void draw(Sheet sheet) {
        heading.draw(sheet);
        BandEdges band = new BandEdges(scale.px(lowCpm()), scale.px(highCpm()));
        double targetX = scale.px(picture.targetCpm());
        sheet.part("band", g -> Marks.band(g, band.leftX(), band.rightX(), plot.getMinY(), plot.getMaxY()));
        sheet.part("target", g ->
            Marks.line(g, Look.INK, Look.DASHED, targetX, plot.getMinY(), targetX, plot.getMaxY()));
        rows.forEach(row -> row.draw(sheet, scale, band));
        sheet.part("axis", scale::draw);
        if (hasUpperAxis()) {
            sheet.part("upper-axis", g -> scale.draw(g, RectangleEdge.TOP));
        }
        sheet.part("axis-label", g -> axisLabel.draw(g, Look.INK, LadderRow.PLOT_X, plot.getMaxY() + AXIS_PX));
    }

    private Legend legend() {
        Legend legend = new Legend();
        if (picture.rungs().stream().anyMatch(rung -> rung.untrimmedCpm().isPresent())) {
            legend.add(20, (g, x, width, y) -> Marks.ring(g, x + width / 2, y), "butt cut to length, tip left");
        }
        legend.add(40, (g, x, width, y) -> {
            Marks.whiskerAcross(g, x, x + width, y);
            Marks.dot(g, x + width / 2, y);
        }, "as trimmed, ± 2 standard uncertainties");
        legend.add(30, (g, x, width, y) -> {
            Marks.band(g, x, x + width, y - 10, y + 10);
            Marks.line(g, Look.INK, Look.DASHED, x + width / 2, y - 10, x + width / 2, y + 10);
        }, "target %s cpm".formatted(Words.fixed(picture.targetCpm(), 1)
            + (picture.toleranceCpm() > 0 ? " ± " + Words.fixed(picture.toleranceCpm(), 1) : "")));
        if (picture.rungs().stream().anyMatch(rung -> rung.targetCpm().isPresent())) {
            legend.add(12, (g, x, width, y) ->
                Marks.line(g, Look.INK, Look.MARK, x + width / 2, y - 13, x + width / 2, y + 13), "target of the rung");
        }
        return legend;
    }

    private boolean hasUpperAxis() {
        return picture.rungs().size() > RUNGS_WITH_ONE_AXIS;
    }

    private double lowCpm() {
        return picture.targetCpm() - picture.toleranceCpm();
    }

    private double highCpm() {
        return picture.targetCpm() + picture.toleranceCpm();
    }

    private double[] everyCpm() {
        DoubleStream ofRungs = picture.rungs().stream().flatMapToDouble(rung -> DoubleStream.concat(
            DoubleStream.of(rung.trimmedCpm() - rung.whiskerCpm(), rung.trimmedCpm() + rung.whiskerCpm()),
            DoubleStream.concat(rung.untrimmedCpm().stream(), rung.targetCpm().stream())));
        return DoubleStream.concat(DoubleStream.of(lowCpm(), highCpm()), ofRungs).toArray();
    }
}
