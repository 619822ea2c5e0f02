package benchtwin.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.ui.RectangleEdge;

/** Lays a stiffness profile out: the profile above, the residuals beneath, one scale of millimetres for both. */
final class ProfileDrawing implements Drawing {

    private static final double PLOT_X = 104;
    private static final double PROFILE_PX = 380;
    private static final double RESIDUALS_PX = 200;
    private static final double AXIS_PX = 40;
    private static final double LABEL_PX = 32;
    private static final double LEAST_SPAN_CPM = 2;

    private final ProfilePicture picture;
    private final Heading heading;
    private final Rectangle2D profile;
    private final Rectangle2D residuals;
    private final Scale alongProfile;
    private final Scale alongResiduals;
    private final Scale stiffness;
    private final Scale cpm;

    ProfileDrawing(ProfilePicture picture) {
        this.picture = picture;
        heading = new Heading(picture.title(), legend());
        double plotPx = Look.WIDTH_PX - Look.MARGIN_PX - 16 - PLOT_X;
        profile = new Rectangle2D.Double(PLOT_X, heading.heightPx() + LABEL_PX + 14, plotPx, PROFILE_PX);
        residuals = new Rectangle2D.Double(PLOT_X, profile.getMaxY() + AXIS_PX + 2 * LABEL_PX + 18, plotPx, RESIDUALS_PX);
        double endMm = Stream.concat(
            Stream.concat(picture.fitted().stream(), picture.defaultShape().stream()).map(StiffnessPoint::fromTipMm),
            picture.residuals().stream().map(ReadingResidual::freeLengthMm)).mapToDouble(mm -> mm).max().orElseThrow();
        alongProfile = new Scale(0, endMm * 1.02, profile, RectangleEdge.BOTTOM);
        alongResiduals = new Scale(0, endMm * 1.02, residuals, RectangleEdge.BOTTOM);
        stiffness = new Scale(0, mostStiffness() * 1.06, profile, RectangleEdge.LEFT);
        cpm = Scale.showing(everyCpm(), LEAST_SPAN_CPM, residuals, RectangleEdge.LEFT);
    }

    @Override
    public int heightPx() {
        return (int) Math.ceil(residuals.getMaxY() + AXIS_PX + LABEL_PX + Look.MARGIN_PX / 2.0);
    }

    @Override
    public void draw(Sheet sheet) {
        heading.draw(sheet);
        if (picture.hasUncertainty()) {
            sheet.part("band", this::drawBand);
        }
        if (!picture.defaultShape().isEmpty()) {
            sheet.part("default-shape", g -> drawLine(g, picture.defaultShape(), Look.QUIET, Look.DASHED));
        }
        sheet.part("fitted", g -> drawLine(g, picture.fitted(), Look.INK, Look.MARK));
        for (StiffnessPoint knot : picture.knots()) {
            sheet.part("knot", g ->
                Marks.dot(g, alongProfile.px(knot.fromTipMm()), stiffness.px(knot.stiffnessNm2())));
        }
        sheet.part("axis", alongProfile::draw);
        sheet.part("stiffness-axis", stiffness::draw);
        sheet.part("axis-label", g -> {
            label(g, "bending stiffness EI, N·m²", Look.MARGIN_PX, profile.getMinY() - LABEL_PX - 6);
            label(g, "distance from the tip of the shaft as it lies, mm", PLOT_X, profile.getMaxY() + AXIS_PX);
        });
        drawResiduals(sheet);
    }

    private void drawResiduals(Sheet sheet) {
        double zeroY = cpm.px(0);
        sheet.part("zero", g ->
            Marks.line(g, Look.INK, Look.RULE, residuals.getMinX(), zeroY, residuals.getMaxX(), zeroY));
        for (ReadingResidual reading : picture.residuals()) {
            double x = alongResiduals.px(reading.freeLengthMm());
            double value = reading.residualCpm();
            sheet.part("whisker", g ->
                Marks.whiskerUp(g, x, cpm.px(value - reading.whiskerCpm()), cpm.px(value + reading.whiskerCpm())));
            sheet.part("residual", g -> Marks.dot(g, x, cpm.px(value)));
        }
        sheet.part("residuals-axis", alongResiduals::draw);
        sheet.part("cpm-axis", cpm::draw);
        sheet.part("axis-label", g -> {
            label(g, "reading less fit, cpm; whiskers ± 2 standard uncertainties", Look.MARGIN_PX,
                residuals.getMinY() - LABEL_PX - 6);
            label(g, "free length of the reading, tip to clamp face, mm", PLOT_X, residuals.getMaxY() + AXIS_PX);
        });
    }

    private void drawBand(Graphics2D g) {
        Path2D lower = path(picture.fitted(), -1);
        Path2D upper = path(picture.fitted(), 1);
        Path2D area = new Path2D.Double(upper);
        List<StiffnessPoint> back = new ArrayList<>(picture.fitted());
        Collections.reverse(back);
        area.append(path(back, -1), true);
        area.closePath();
        g.setPaint(Look.BAND);
        g.fill(area);
        g.setPaint(Look.INK);
        g.setStroke(Look.RULE);
        g.draw(lower);
        g.draw(upper);
    }

    private void drawLine(Graphics2D g, List<StiffnessPoint> points, Color colour, BasicStroke stroke) {
        g.setPaint(colour);
        g.setStroke(stroke);
        g.draw(path(points, 0));
    }

    /** Through the points, moved by so many standard uncertainties. */
    private Path2D path(List<StiffnessPoint> points, int uncertainties) {
        Path2D path = new Path2D.Double();
        for (StiffnessPoint point : points) {
            double value = point.stiffnessNm2() + uncertainties * point.standardUncertaintyNm2().orElse(0);
            double x = alongProfile.px(point.fromTipMm());
            double y = stiffness.px(Math.max(0, value));
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        return path;
    }

    private Legend legend() {
        Legend legend = new Legend();
        legend.add(40, (g, x, width, y) -> {
            Marks.line(g, Look.INK, Look.MARK, x, y, x + width, y);
            Marks.dot(g, x + width / 2, y);
        }, "fitted, with its knots");
        if (picture.hasUncertainty()) {
            legend.add(40, (g, x, width, y) -> Marks.bandAcross(g, x, x + width, y - 9, y + 9),
                "± 1 standard uncertainty");
        }
        if (!picture.defaultShape().isEmpty()) {
            legend.add(40, (g, x, width, y) -> Marks.line(g, Look.QUIET, Look.DASHED, x, y, x + width, y), "default shape");
        }
        return legend;
    }

    private static void label(Graphics2D g, String text, double x, double topY) {
        TextBlock.line(text, Look.TEXT).draw(g, Look.INK, x, topY);
    }

    private double mostStiffness() {
        return Stream.concat(picture.fitted().stream(), picture.defaultShape().stream())
            .mapToDouble(point -> point.stiffnessNm2() + point.standardUncertaintyNm2().orElse(0)).max().orElseThrow();
    }

    private double[] everyCpm() {
        return DoubleStream.concat(DoubleStream.of(0), picture.residuals().stream().flatMapToDouble(reading ->
            DoubleStream.of(reading.residualCpm() - reading.whiskerCpm(), reading.residualCpm() + reading.whiskerCpm())))
            .toArray();
    }
}
