package benchtwin.picture;

import java.awt.Font;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.jfree.chart.ui.RectangleEdge;

/** The field of a frequency picture at one height: its scales, lines and marks, and the names as far as there is room. */
final class FrequencyPlot {

    private static final double LEAST_SPAN_IN = 2;
    private static final double NAME_PX = 300;
    private static final double INSET_PX = 4;
    /** Marks nearer than this cover each other. */
    private static final double CROWDED_PX = 2 * Look.DOT_RADIUS_PX;
    /** Room for names past the longest and the shortest club, as a part of the range. */
    private static final double SIDE_ROOM = 0.08;

    private final Rectangle2D plot;
    private final List<FrequencyPoint> points;
    private final Scale length;
    private final Scale cpm;
    private final List<TargetLine> lines;
    private final List<PlacedLabel> clubLabels = new ArrayList<>();
    private final List<PlacedLabel> lineLabels = new ArrayList<>();
    private final List<String> unplaced = new ArrayList<>();

    /** Of clubs that each have a place for their value or their target. */
    FrequencyPlot(List<FrequencyPoint> points, Rectangle2D plot) {
        this.points = points;
        this.plot = plot;
        DoubleSummaryStatistics inches = points.stream().flatMapToDouble(FrequencyPlot::everyLength).summaryStatistics();
        double sideIn = SIDE_ROOM * (inches.getMax() - inches.getMin());
        length = Scale.showing(new double[] {inches.getMin() - sideIn, inches.getMax() + sideIn}, LEAST_SPAN_IN, plot,
            RectangleEdge.BOTTOM).largestFirst();
        cpm = Scale.showing(points.stream().flatMapToDouble(FrequencyPlot::everyCpm).toArray(),
            FrequencyLinePicture.CPM.leastSpan(), plot, RectangleEdge.LEFT);
        lines = TargetLine.among(points).entrySet().stream()
            .map(line -> new TargetLine(line.getKey(), line.getValue(), length, cpm)).toList();
        placeNames();
    }

    /** Words that found no room. */
    List<String> unplaced() {
        return unplaced;
    }

    void draw(Sheet sheet) {
        lines.forEach(line -> sheet.part("line-band", line::drawBand));
        lines.forEach(line -> sheet.part("target-line", line::drawLine));
        List<FrequencyPoint> own = points.stream().filter(this::hasOwnTarget).toList();
        own.stream().filter(FrequencyPoint::isPlaced).forEach(point -> sheet.part("joiner", g -> Marks.line(g, Look.INK, Look.RULE,
            valueAt(point).getX(), valueAt(point).getY(), targetAt(point).getX(), targetAt(point).getY())));
        own.forEach(point -> sheet.part("club-target", g -> {
            SetTarget target = point.club().target().orElseThrow();
            Marks.targetUp(g, targetAt(point).getX(), targetAt(point).getY(), cpm.px(target.high()), cpm.px(target.low()));
        }));
        points.forEach(point -> drawValue(sheet, point));
        clubLabels.forEach(label -> sheet.part("club-label", g -> label.draw(g, Look.INK)));
        lineLabels.forEach(label -> sheet.part("line-label", g -> label.draw(g, Look.QUIET)));
        sheet.part("axis", length::draw);
        sheet.part("cpm-axis", cpm::draw);
    }

    private void drawValue(Sheet sheet, FrequencyPoint point) {
        if (!point.isPlaced()) {
            sheet.part("not-built", g -> Marks.openDiamond(g, targetAt(point).getX(), targetAt(point).getY()));
            return;
        }
        SetPoint club = point.club();
        Point2D at = valueAt(point);
        if (club.standardUncertainty() > 0) {
            double value = club.value().orElseThrow();
            sheet.part("whisker",
                g -> Marks.whiskerUp(g, at.getX(), cpm.px(value - club.whisker()), cpm.px(value + club.whisker())));
        }
        if (club.side() == 0) {
            sheet.part("dot", g -> Marks.dot(g, at.getX(), at.getY()));
        } else {
            sheet.part("arrow", g -> Marks.arrow(g, at.getX(), at.getY(), 0, -club.side()));
        }
    }

    private void placeNames() {
        List<Rectangle2D> marks = new ArrayList<>();
        for (FrequencyPoint point : points) {
            marks.add(about(markAt(point), Marks.REACH_PX, Marks.REACH_PX));
            if (point.isPlaced()) {
                double whiskerPx = cpm.px(0) - cpm.px(point.club().whisker());
                marks.add(about(valueAt(point), 7, whiskerPx + 1));
            }
            if (hasOwnTarget(point)) {
                SetTarget target = point.club().target().orElseThrow();
                marks.add(about(targetAt(point), Marks.TARGET_TICK_PX, 1 + cpm.px(0) - cpm.px(target.tolerance())));
                Rectangle2D joiner = about(targetAt(point), 1, 1);
                joiner.add(markAt(point));
                marks.add(joiner);
            }
        }
        Rectangle2D room = new Rectangle2D.Double(plot.getX() + INSET_PX, plot.getY() + INSET_PX, plot.getWidth() - 2 * INSET_PX,
            plot.getHeight() - 2 * INSET_PX);
        LabelPlacer placer = new LabelPlacer(room, marks, lines.stream().map(TargetLine::area).toList());
        crowds().forEach(crowd -> place(placer, crowd.stream().map(point -> FrequencyLinePicture.label(point.club())).toList(),
            isOff(crowd.get(0)) ? Look.STRONG : Look.TEXT, crowd.stream().map(this::markAt).toList(), clubLabels));
        lines.forEach(line -> place(placer, List.of("line: " + line.name()), Look.TEXT, line.anchors(), lineLabels));
    }

    /** Clubs whose marks lie on one another share one place for their names, the highest first. */
    private List<List<FrequencyPoint>> crowds() {
        List<List<FrequencyPoint>> crowds = new ArrayList<>();
        for (FrequencyPoint point : points) {
            List<FrequencyPoint> joined = new ArrayList<>(List.of(point));
            List<List<FrequencyPoint>> near = crowds.stream().filter(crowd -> isOff(crowd.get(0)) == isOff(point)
                && crowd.stream().anyMatch(other -> markAt(other).distance(markAt(point)) < CROWDED_PX)).toList();
            near.forEach(joined::addAll);
            crowds.removeAll(near);
            joined.sort(Comparator.comparingDouble(other -> markAt(other).getY()));
            crowds.add(joined);
        }
        return crowds;
    }

    private static boolean isOff(FrequencyPoint point) {
        return point.club().side() != 0;
    }

    private void place(LabelPlacer placer, List<String> texts, Font font, List<Point2D> anchors, List<PlacedLabel> to) {
        placer.place(TextBlock.stacked(texts, font, NAME_PX), anchors).ifPresentOrElse(to::add, () -> unplaced.addAll(texts));
    }

    private boolean hasOwnTarget(FrequencyPoint point) {
        Optional<String> line = point.club().target().flatMap(SetTarget::line);
        return point.hasTargetPlace() && lines.stream().noneMatch(drawn -> line.isPresent() && line.get().equals(drawn.name()));
    }

    private Point2D markAt(FrequencyPoint point) {
        return point.isPlaced() ? valueAt(point) : targetAt(point);
    }

    private Point2D valueAt(FrequencyPoint point) {
        return new Point2D.Double(length.px(point.lengthIn().orElseThrow()), cpm.px(point.club().value().orElseThrow()));
    }

    private Point2D targetAt(FrequencyPoint point) {
        return new Point2D.Double(length.px(point.targetLengthIn().orElseThrow()),
            cpm.px(point.club().target().orElseThrow().value()));
    }

    private static Rectangle2D about(Point2D middle, double halfWidthPx, double halfHeightPx) {
        return new Rectangle2D.Double(middle.getX() - halfWidthPx, middle.getY() - halfHeightPx, 2 * halfWidthPx, 2 * halfHeightPx);
    }

    private static DoubleStream everyLength(FrequencyPoint point) {
        return DoubleStream.concat(point.isPlaced() ? point.lengthIn().stream() : DoubleStream.empty(),
            point.hasTargetPlace() ? point.targetLengthIn().stream() : DoubleStream.empty());
    }

    private static DoubleStream everyCpm(FrequencyPoint point) {
        return point.club().reach();
    }
}
