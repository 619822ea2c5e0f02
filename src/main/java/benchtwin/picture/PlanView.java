package benchtwin.picture;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;

/** A wood from above, the player below: the face angle. */
final class PlanView implements SketchView {

    private static final double SHAFT_END_MM = 40;
    /** How far the face's line runs past the body, and room for its number. */
    private static final double PAST_MM = 6;
    private static final double NUMBER_MM = 9;

    private final AngleChange face;
    private final HeadOutline outline;

    PlanView(AngleChange face, HeadOutline outline) {
        this.face = face;
        this.outline = outline;
    }

    @Override
    public String title() {
        return "From above, the player below";
    }

    @Override
    public Rectangle2D roomMm() {
        Rectangle2D body = turned(outline.plan(), face.drawnDeg()).getBounds2D()
            .createUnion(turned(outline.plan(), face.drawnBeforeDeg()).getBounds2D());
        double left = Math.min(body.getMinX() - 8, -50);
        return new Rectangle2D.Double(left, -SHAFT_END_MM - 4, body.getMaxX() + 3 - left,
            body.getMaxY() + PAST_MM + NUMBER_MM + SHAFT_END_MM + 4);
    }

    /** The face's line from heel to toe. An open one leans away from the target at the toe. */
    @Override
    public double directionDeg(double angleDeg) {
        return 90 - angleDeg;
    }

    @Override
    public void draw(Sheet sheet, SketchScale at) {
        if (face.isChanged()) {
            sheet.part("before-head", g -> SketchPen.before(g, at.shape(turned(outline.plan(), face.drawnBeforeDeg()))));
        }
        sheet.part("after-head", g -> SketchPen.after(g, at.shape(turned(outline.plan(), face.drawnDeg()))));
        sheet.part("after-shaft", g -> {
            Shape shaft = new Rectangle2D.Double(-HeadOutline.SHAFT_RADIUS_MM, -SHAFT_END_MM, 2 * HeadOutline.SHAFT_RADIUS_MM,
                SHAFT_END_MM - 4);
            g.setPaint(Look.PAPER);
            g.fill(at.shape(shaft));
            SketchPen.after(g, at.shape(shaft));
        });
        double[] mid = outline.planFace();
        double turn = Math.toRadians(-face.drawnDeg());
        double x = at.x(mid[0] * Math.cos(turn) - mid[1] * Math.sin(turn));
        double y = at.y(mid[0] * Math.sin(turn) + mid[1] * Math.cos(turn));
        double radiusPx = (outline.plan().getBounds2D().getMaxY() - mid[1]) * at.pxPerMm();
        sheet.part("face-line", g -> {
            double facing = at.directionDeg(directionDeg(face.drawnDeg()));
            SketchPen.ray(g, Look.INK, Look.MARK, x, y, facing, radiusPx + PAST_MM * at.pxPerMm());
            SketchPen.ray(g, Look.INK, Look.MARK, x, y, facing + 180, radiusPx - 8);
            if (!face.isMeasured()) {
                return;
            }
            double square = at.directionDeg(directionDeg(0));
            SketchPen.ray(g, Look.INK, Look.DASHED, x, y, square, radiusPx + PAST_MM * at.pxPerMm());
            SketchPen.arc(g, Look.INK, Look.MARK, x, y, radiusPx, square, facing);
            String text = AngleChange.degrees(face.drawnDeg());
            double side = at.mirrored() ? 1 : -1;
            SketchPen.words(g, text, x + side * (TextBlock.widthPx(text, Look.STRONG) / 2 + 14), y - radiusPx - 6);
        });
        sheet.part("target", g -> {
            double side = at.mirrored() ? 1 : -1;
            Marks.line(g, Look.QUIET, Look.MARK, x + side * 12, y, x + side * 42, y);
            SketchPen.arrowHead(g, Look.QUIET, x + side * 42, y, at.directionDeg(180));
            SketchPen.note(g, "target", x + side * 40, y + 18);
        });
    }

    /** The head turned about the ground point; open is away from the player. */
    private static Shape turned(Shape head, double faceDeg) {
        return AffineTransform.getRotateInstance(Math.toRadians(-faceDeg)).createTransformedShape(head);
    }
}
