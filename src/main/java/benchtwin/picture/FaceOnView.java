package benchtwin.picture;

import benchtwin.mechanics.MechanicsDefaults;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.OptionalDouble;

/** The face as one looks at it: lie, ground point, centre of gravity, playing length. The sole stays, the hosel is bent. */
final class FaceOnView implements SketchView {

    private static final double ARC_MM = 40;
    private static final double LABEL_PX = 8;
    private static final double LABEL_PART = 0.4;
    private static final double HOSEL_FROM_MM = 24;

    private final AngleChange lie;
    private final HeadOutline outline;
    private final SketchSizes sizes;
    private final Axis before;
    private final Axis after;

    /** The hosel's axis: its angle, where it meets the ground, and how far up it the hosel ends. */
    private record Axis(double lieDeg, double groundX, double hoselMm) {

        double x(double alongMm) {
            return groundX + alongMm * Math.cos(Math.toRadians(lieDeg));
        }

        double y(double alongMm) {
            return alongMm * Math.sin(Math.toRadians(lieDeg));
        }

        /** The same axis bent to another lie about a place on it. */
        Axis bent(double toDeg, double bendPointMm) {
            double up = y(bendPointMm);
            double toBendMm = up / Math.sin(Math.toRadians(toDeg));
            return new Axis(toDeg, x(bendPointMm) - toBendMm * Math.cos(Math.toRadians(toDeg)),
                toBendMm + hoselMm - bendPointMm);
        }
    }

    FaceOnView(HeadSketchPicture picture, AngleChange lie, HeadOutline outline) {
        this.lie = lie;
        this.outline = outline;
        sizes = picture.sizes();
        before = new Axis(lie.drawnBeforeDeg(), 0, outline.hoselMm());
        after = lie.isChanged() ? before.bent(lie.drawnDeg(), picture.reading().isWood()
            ? MechanicsDefaults.WOOD_BEND_POINT_MM : MechanicsDefaults.IRON_BEND_POINT_MM) : before;
    }

    @Override
    public String title() {
        return "Face on";
    }

    @Override
    public Rectangle2D roomMm() {
        double topMm = after.hoselMm() + HeadOutline.SHAFT_SHOWN_MM;
        double left = outline.faceOn().getBounds2D().getMinX() - 3;
        double right = Math.max(Math.max(before.x(topMm), after.x(topMm)) + 6, ARC_MM + 12);
        return new Rectangle2D.Double(left, 0, right - left, Math.max(before.y(topMm), after.y(topMm)) + 3);
    }

    @Override
    public double directionDeg(double angleDeg) {
        return angleDeg;
    }

    @Override
    public void draw(Sheet sheet, SketchScale at) {
        SketchPen.ground(sheet, at, roomMm());
        if (lie.isChanged()) {
            sheet.part("before-head", g -> SketchPen.before(g, at.shape(head(before))));
            sheet.part("before-shaft", g -> SketchPen.before(g, at.shape(shaft(before))));
        }
        sheet.part("after-head", g -> SketchPen.after(g, at.shape(head(after))));
        sheet.part("after-shaft", g -> SketchPen.after(g, at.shape(shaft(after))));
        double topMm = after.hoselMm() + HeadOutline.SHAFT_SHOWN_MM;
        sheet.part("shaft-axis", g -> Marks.line(g, Look.INK, Look.DASHED, at.x(after.groundX()), at.y(0), at.x(after.x(topMm)),
            at.y(after.y(topMm))));
        sheet.part("ground-point", g -> {
            SketchPen.groundPoint(g, at.x(after.groundX()), at.y(0));
            SketchPen.words(g, "G", at.x(after.groundX()) + 20, at.y(0) + 15);
        });
        if (lie.isMeasured()) {
            sheet.part("lie-arc", g -> {
                double radiusPx = ARC_MM * at.pxPerMm();
                SketchPen.arc(g, Look.INK, Look.MARK, at.x(after.groundX()), at.y(0), radiusPx, at.directionDeg(0),
                    at.directionDeg(after.lieDeg()));
                String text = AngleChange.degrees(after.lieDeg());
                double[] label = SketchPen.along(at.directionDeg(after.lieDeg() * LABEL_PART), radiusPx);
                double beside = Math.copySign(TextBlock.widthPx(text, Look.STRONG) / 2 + LABEL_PX, label[0]);
                SketchPen.words(g, text, at.x(after.groundX()) + label[0] + beside, at.y(0) + label[1]);
            });
        }
        centre(sheet, at);
        length(sheet, at, topMm);
    }

    private void centre(Sheet sheet, SketchScale at) {
        if (sizes.hasCentre()) {
            double x = at.x(-sizes.cgToeMm().getAsDouble());
            double y = at.y(sizes.cgUpMm().getAsDouble());
            sheet.part("centre-of-gravity", g -> {
                SketchPen.centreOfGravity(g, x, y);
                SketchPen.words(g, "CG", x + 26, y);
            });
        }
    }

    /** A dimension beside the shaft, its far end open: the butt is not on the sheet. */
    private void length(Sheet sheet, SketchScale at, double topMm) {
        OptionalDouble mm = sizes.lengthAfterMm().isPresent() ? sizes.lengthAfterMm() : sizes.lengthBeforeMm();
        if (mm.isEmpty()) {
            return;
        }
        String text = HeadSketchWords.inches(mm.getAsDouble()) + " to G";
        double fromX = at.x(after.x(after.hoselMm() + 6));
        double fromY = at.y(after.y(after.hoselMm() + 6));
        double side = at.mirrored() ? 1 : -1;
        double[] off = SketchPen.along(at.directionDeg(after.lieDeg() + 90), 20);
        double toX = at.x(after.x(topMm)) + off[0];
        double toY = at.y(after.y(topMm)) + off[1];
        sheet.part("length", g -> {
            Marks.line(g, Look.INK, Look.RULE, fromX + off[0], fromY + off[1], toX, toY);
            SketchPen.arrowHead(g, Look.INK, fromX + off[0], fromY + off[1], at.directionDeg(after.lieDeg() + 180));
            double half = TextBlock.widthPx(text, Look.STRONG) / 2;
            SketchPen.words(g, text, (fromX + toX + off[0]) / 2 + side * (half + 12), (fromY + toY + off[1]) / 2 - 8);
        });
    }

    private Shape head(Axis axis) {
        double fromMm = Math.min(HOSEL_FROM_MM, outline.faceOn().getBounds2D().getMaxY() * 0.6);
        return HeadOutline.joined(outline.faceOn(), HeadOutline.tube(axis.groundX(), 0, axis.lieDeg(), fromMm, axis.hoselMm(),
            HeadOutline.HOSEL_RADIUS_MM));
    }

    private static Shape shaft(Axis axis) {
        return HeadOutline.tube(axis.groundX(), 0, axis.lieDeg(), axis.hoselMm(), axis.hoselMm() + HeadOutline.SHAFT_SHOWN_MM,
            HeadOutline.SHAFT_RADIUS_MM);
    }
}
