package benchtwin.picture;

import benchtwin.club.Category;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * Simple shapes of our own that stand for a head, in mm about the ground point G, y up. They are no head's true shape: only
 * angles, the hosel, and where G and the centre of gravity lie are measured things. Sizes: this program's choice.
 */
final class HeadOutline {

    static final double SHAFT_RADIUS_MM = 4.5;
    static final double HOSEL_RADIUS_MM = 6.5;
    /** How far the shaft is shown above the hosel, mm. */
    static final double SHAFT_SHOWN_MM = 42;

    /** A driver of this volume is drawn in the size below, cm³. */
    private static final double DRIVER_CM3 = 460;
    private static final double LEAST_SIZE = 0.7;
    private static final double MOST_SIZE = 1.15;
    private static final double HOSEL_MM = 68;
    private static final double WOOD_HOSEL_MM = 62;
    private static final double PUTTER_HOSEL_MM = 75;
    /** How far a wood's leading edge lies before the shaft's axis, mm. */
    private static final double WOOD_EDGE_MM = 15;
    private static final double OFFSET_MM = 3;

    private final Category category;
    private final SketchSizes sizes;
    private final boolean wood;

    HeadOutline(HeadSketchPicture picture) {
        category = picture.category();
        sizes = picture.sizes();
        wood = switch (category) {
            case DRIVER, FAIRWAY -> true;
            case HYBRID -> picture.reading().isWood();
            default -> false;
        };
    }

    /** From G along the axis to the hosel's top, mm. */
    double hoselMm() {
        return sizes.hoselMm().orElse(wood ? WOOD_HOSEL_MM : category == Category.PUTTER ? PUTTER_HOSEL_MM : HOSEL_MM);
    }

    /** The body without its hosel, face on; x is toward the heel. */
    Path2D faceOn() {
        if (wood) {
            Path2D body = path(22, 30,
                20, 12, -5, 0, -40, 0,
                -78, 0, -112, 8, -110, 32,
                -108, 54, -75, 62, -45, 62,
                -15, 62, 5, 50, 22, 30);
            return scaled(body, wide(), high());
        }
        return switch (category) {
            case PUTTER -> path(18, 3, 18, 2, 16, 1, 14, 1, -30, 1, -60, 1, -80, 1, -84, 1, -85, 3, -85, 5,
                -85, 12, -85, 18, -84, 22, -84, 25, -82, 26, -80, 26, -50, 26, 0, 26, 14, 26, 18, 26, 18, 24, 18, 3);
            case WEDGE -> path(6, 3, 0, 0, -10, 0, -20, 0, -45, 0, -60, 1, -68, 6,
                -80, 14, -85, 30, -82, 44, -79, 58, -70, 62, -60, 57, -40, 47, -8, 36, 8, 32, 24, 34, 16, 12, 6, 3);
            default -> path(6, 3, 0, 0, -10, 0, -20, 0, -45, 0, -58, 0, -66, 3,
                -78, 9, -83, 24, -82, 38, -81, 52, -74, 56, -66, 53, -44, 46, -8, 35, 8, 31, 24, 34, 16, 12, 6, 3);
        };
    }

    /** A straight piece of hosel or shaft from one place on an axis to another, face on. */
    static Path2D tube(double startX, double startY, double lieDeg, double fromMm, double toMm, double radiusMm) {
        Path2D piece = Marks.shape(fromMm, -radiusMm, toMm, -radiusMm, toMm, radiusMm, fromMm, radiusMm);
        AffineTransform turn = AffineTransform.getTranslateInstance(startX, startY);
        turn.rotate(Math.toRadians(lieDeg));
        piece.transform(turn);
        return piece;
    }

    /** One shape of two that overlap. */
    static Shape joined(Shape one, Shape other) {
        Area area = new Area(one);
        area.add(new Area(other));
        return area;
    }

    /** The head from its toe, soled, the shaft upright; x is toward the target. */
    Profile profile(double loftDeg, double bounceDeg) {
        return wood ? wood(loftDeg) : blade(loftDeg, bounceDeg);
    }

    /**
     * A head from its toe.
     * @param body  its outline
     * @param edgeX the leading edge, mm
     * @param edgeY the leading edge, mm
     * @param rearX the sole's trailing edge, mm
     * @param rearY the sole's trailing edge, mm
     * @param faceMm the face from its leading edge up, mm
     */
    record Profile(Path2D body, double edgeX, double edgeY, double rearX, double rearY, double faceMm) {

        /** The hosel behind it, running out into the heel. */
        Path2D hosel(double topMm) {
            double r = HOSEL_RADIUS_MM;
            return Marks.shape(edgeX, edgeY, r, 26, r, topMm, -r, topMm, -r, 14, Math.min(-r, edgeX - 6), edgeY);
        }
    }

    private Profile wood(double loftDeg) {
        double faceMm = 50 * high();
        double edgeX = WOOD_EDGE_MM;
        double edgeY = 4 * high();
        double topX = edgeX - faceMm * Math.sin(Math.toRadians(loftDeg));
        double topY = edgeY + faceMm * Math.cos(Math.toRadians(loftDeg));
        double deep = deep();
        Path2D body = new Path2D.Double();
        body.moveTo(edgeX, edgeY);
        body.lineTo(topX, topY);
        body.curveTo(topX - 22 * deep, topY + 9 * high(), -70 * deep, 48 * high(), -92 * deep, 22 * high());
        body.curveTo(-96 * deep, 8 * high(), -75 * deep, 0, -45 * deep, 0);
        body.lineTo(-5, 0);
        body.curveTo(5, 0, edgeX - 3, 0, edgeX, edgeY);
        body.closePath();
        return new Profile(body, edgeX, edgeY, -45 * deep, 0, faceMm);
    }

    private Profile blade(double loftDeg, double bounceDeg) {
        double faceMm = switch (category) {
            case PUTTER -> 25;
            case WEDGE -> 62;
            default -> 54;
        };
        double soleMm = category == Category.IRON ? 19 : 22;
        double topMm = category == Category.PUTTER ? 9 : 4.5;
        double loft = Math.toRadians(loftDeg);
        double bounce = Math.toRadians(bounceDeg);
        double edgeX = HOSEL_RADIUS_MM - sizes.offsetMm().orElse(OFFSET_MM);
        double edgeY = Math.max(0, soleMm * Math.sin(bounce));
        double upX = -Math.sin(loft);
        double upY = Math.cos(loft);
        double backX = -Math.cos(loft);
        double backY = -Math.sin(loft);
        double rearX = edgeX - soleMm * Math.cos(bounce);
        double rearY = edgeY - soleMm * Math.sin(bounce);
        Path2D body = new Path2D.Double();
        body.moveTo(edgeX, edgeY);
        body.lineTo(edgeX + faceMm * upX, edgeY + faceMm * upY);
        body.lineTo(edgeX + faceMm * upX + topMm * backX, edgeY + faceMm * upY + topMm * backY);
        double midX = edgeX + 0.45 * faceMm * upX + topMm * 1.2 * backX;
        double midY = edgeY + 0.45 * faceMm * upY + topMm * 1.2 * backY;
        body.lineTo(midX, midY);
        double behindX = rearX - 1.5 * Math.sin(loft);
        body.quadTo(midX + 0.3 * (behindX - midX), rearY + 0.5 * (midY - rearY) - 3, behindX, rearY + 4.5);
        body.lineTo(rearX, rearY);
        body.closePath();
        return new Profile(body, edgeX, edgeY, rearX, rearY, faceMm);
    }

    /** A wood from above, square; the target is at the left and the toe up. */
    Path2D plan() {
        Path2D body = path(-14, -22,
            -19, 10, -19, 60, -12, 100,
            0, 118, 40, 112, 68, 88,
            96, 62, 98, 20, 66, -5,
            45, -22, 10, -30, -14, -22);
        return scaled(body, deep(), wide());
    }

    /** Where the face's middle is in {@link #plan}, mm to the right of G and mm up. */
    double[] planFace() {
        return new double[] {-17.5 * deep(), 37 * wide()};
    }

    private double size() {
        double cube = Math.cbrt(sizes.volumeCm3().orElse(DRIVER_CM3) / DRIVER_CM3);
        return category == Category.DRIVER ? Math.max(LEAST_SIZE, Math.min(MOST_SIZE, cube)) : 1;
    }

    private double wide() {
        return size() * (category == Category.DRIVER ? 1 : category == Category.FAIRWAY ? 0.9 : 0.82);
    }

    private double high() {
        return size() * (category == Category.DRIVER ? 1 : category == Category.FAIRWAY ? 0.64 : 0.62);
    }

    private double deep() {
        return size() * (category == Category.DRIVER ? 1 : category == Category.FAIRWAY ? 0.8 : 0.55);
    }

    private static Path2D scaled(Path2D path, double x, double y) {
        path.transform(AffineTransform.getScaleInstance(x, y));
        return path;
    }

    /** A closed curve: where it starts, then two handles and an end for each bow. */
    private static Path2D path(double startX, double startY, double... bows) {
        Path2D path = new Path2D.Double();
        path.moveTo(startX, startY);
        for (int i = 0; i + 5 < bows.length; i += 6) {
            path.curveTo(bows[i], bows[i + 1], bows[i + 2], bows[i + 3], bows[i + 4], bows[i + 5]);
        }
        path.closePath();
        return path;
    }

    /** The hosel and shaft from the toe. */
    static Rectangle2D upright(double fromMm, double toMm, double radiusMm) {
        return new Rectangle2D.Double(-radiusMm, fromMm, 2 * radiusMm, toMm - fromMm);
    }
}
