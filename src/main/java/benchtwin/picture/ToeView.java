package benchtwin.picture;

import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** A head from its toe, along the leading edge: the loft. */
final class ToeView implements SketchView {

    private static final double ARC_PART = 1.1;
    private static final double TARGET_PX = 42;

    private final AngleChange loft;
    private final HeadOutline.Profile before;
    private final HeadOutline.Profile after;
    private final double hoselMm;
    private final double topMm;

    /**
     * The view.
     * @param loft    the loft
     * @param lie     how the hosel leans away from who looks
     * @param bounce  the sole's angle; empty for a head without one
     * @param outline the shapes
     */
    ToeView(AngleChange loft, AngleChange lie, Optional<AngleChange> bounce, HeadOutline outline) {
        this.loft = loft;
        before = outline.profile(loft.drawnBeforeDeg(), bounce.map(AngleChange::drawnBeforeDeg).orElse(0.0));
        after = outline.profile(loft.drawnDeg(), bounce.map(AngleChange::drawnDeg).orElse(0.0));
        double up = Math.sin(Math.toRadians(lie.drawnDeg()));
        hoselMm = outline.hoselMm() * up;
        topMm = (outline.hoselMm() + HeadOutline.SHAFT_SHOWN_MM) * up;
    }

    @Override
    public String title() {
        return "From the toe";
    }

    @Override
    public Rectangle2D roomMm() {
        Rectangle2D body = after.body().getBounds2D().createUnion(before.body().getBounds2D());
        double right = Math.max(body.getMaxX() + 6, 34);
        return new Rectangle2D.Double(body.getMinX() - 3, 0, right - body.getMinX() + 3, topMm + 3);
    }

    @Override
    public double directionDeg(double angleDeg) {
        return 90 + angleDeg;
    }

    @Override
    public void draw(Sheet sheet, SketchScale at) {
        Rectangle2D room = roomMm();
        SketchPen.ground(sheet, at, room);
        sheet.part("hosel", g -> {
            SketchPen.after(g, at.shape(HeadOutline.upright(hoselMm, topMm, HeadOutline.SHAFT_RADIUS_MM)));
            SketchPen.after(g, at.shape(after.hosel(hoselMm)));
            g.setPaint(Look.PAPER);
            g.fill(at.shape(after.body()));
        });
        if (loft.isChanged()) {
            sheet.part("before-head", g -> SketchPen.before(g, at.shape(before.body())));
        }
        sheet.part("after-head", g -> SketchPen.after(g, at.shape(after.body())));
        if (loft.isMeasured()) {
            angle(sheet, at);
        }
        sheet.part("target", g -> {
            double side = at.mirrored() ? -1 : 1;
            double endX = at.x(room.getMaxX());
            double y = at.y(0) + 16;
            Marks.line(g, Look.QUIET, Look.MARK, endX - side * TARGET_PX, y, endX, y);
            SketchPen.arrowHead(g, Look.QUIET, endX, y, at.directionDeg(0));
            SketchPen.note(g, "target", endX - side * (TARGET_PX + 36), y - 1);
        });
    }

    private void angle(Sheet sheet, SketchScale at) {
        double edgeX = at.x(after.edgeX());
        double edgeY = at.y(after.edgeY());
        double radiusPx = after.faceMm() * ARC_PART * at.pxPerMm();
        sheet.part("upright", g -> Marks.line(g, Look.INK, Look.DASHED, edgeX, edgeY, edgeX, edgeY - radiusPx - 8));
        sheet.part("loft-arc", g -> {
            double facing = at.directionDeg(directionDeg(loft.drawnDeg()));
            SketchPen.ray(g, Look.INK, Look.DASHED, edgeX, edgeY, facing, radiusPx + 8);
            SketchPen.arc(g, Look.INK, Look.MARK, edgeX, edgeY, radiusPx, 90, facing);
            String text = AngleChange.degrees(loft.drawnDeg());
            double side = at.mirrored() ? -1 : 1;
            SketchPen.words(g, text, edgeX + side * (TextBlock.widthPx(text, Look.STRONG) / 2 + 12), edgeY - radiusPx + 2);
        });
    }
}
