package benchtwin.picture;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** An iron's sole from the toe, larger than the rest: the bounce. */
final class SoleView implements SketchView {

    private static final double TIMES = 3;
    private static final double FACE_SHOWN_MM = 14;
    private static final double ARC_PART = 0.8;

    private final AngleChange bounce;
    private final AngleChange loft;
    private final HeadOutline.Profile before;
    private final HeadOutline.Profile after;

    SoleView(AngleChange bounce, AngleChange loft, HeadOutline outline) {
        this.bounce = bounce;
        this.loft = loft;
        before = outline.profile(loft.drawnBeforeDeg(), bounce.drawnBeforeDeg());
        after = outline.profile(loft.drawnDeg(), bounce.drawnDeg());
    }

    @Override
    public String title() {
        return "The sole, 3 times as large";
    }

    @Override
    public Rectangle2D roomMm() {
        double left = Math.min(before.rearX(), after.rearX()) - 6;
        return new Rectangle2D.Double(left, 0, after.edgeX() + 8 - left, after.edgeY() + FACE_SHOWN_MM + 2);
    }

    @Override
    public double zoom() {
        return TIMES;
    }

    @Override
    public double directionDeg(double angleDeg) {
        return 180 + angleDeg;
    }

    @Override
    public void draw(Sheet sheet, SketchScale at) {
        SketchPen.ground(sheet, at, roomMm());
        if (bounce.isChanged()) {
            sheet.part("before-sole", g -> SketchPen.before(g, at.shape(sole(before, loft.drawnBeforeDeg()))));
        }
        sheet.part("after-sole", g -> SketchPen.after(g, at.shape(sole(after, loft.drawnDeg()))));
        if (!bounce.isMeasured()) {
            return;
        }
        // the sole's lower end lies on the ground: there the angle opens, toward the other end
        boolean rearDown = after.rearY() <= after.edgeY();
        double lowX = rearDown ? after.rearX() : after.edgeX();
        double opening = rearDown ? 0 : 180;
        double radiusPx = ARC_PART * Math.abs(after.edgeX() - after.rearX()) * at.pxPerMm();
        sheet.part("bounce-arc", g -> {
            SketchPen.arc(g, Look.INK, Look.MARK, at.x(lowX), at.y(0), radiusPx, at.directionDeg(opening),
                at.directionDeg(opening + bounce.drawnDeg()));
            double[] label = SketchPen.along(at.directionDeg(opening), radiusPx * 0.85);
            SketchPen.words(g, AngleChange.degrees(bounce.drawnDeg()), at.x(lowX) + label[0], at.y(0) + 18);
        });
    }

    /** The lower end of the face, the sole and the beginning of the back. */
    private static Path2D sole(HeadOutline.Profile profile, double loftDeg) {
        double loft = Math.toRadians(loftDeg);
        Path2D line = new Path2D.Double();
        line.moveTo(profile.edgeX() - FACE_SHOWN_MM * Math.sin(loft), profile.edgeY() + FACE_SHOWN_MM * Math.cos(loft));
        line.lineTo(profile.edgeX(), profile.edgeY());
        line.lineTo(profile.rearX(), profile.rearY());
        line.lineTo(profile.rearX() - 1.5 * Math.sin(loft), profile.rearY() + 4.5);
        return line;
    }
}
