package benchtwin.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The marks of the bench sheet. Coordinates are px, x to the right and y down. */
final class Marks {

    /** From the middle to the end of the target's tick. */
    static final double TARGET_TICK_PX = 14;
    /** From the middle to the far side of a dot, an arrow or a diamond, and a little more. */
    static final double REACH_PX = 11;

    private static final double CAP_PX = 6;
    private static final double TARGET_BOX_PX = 9;
    private static final double DIAMOND_PX = 8;
    private static final double POINT_PX = 10;
    private static final double BACK_PX = 5;
    private static final double WING_PX = 8;

    private Marks() {
    }

    static void paper(Graphics2D g, int heightPx) {
        g.setPaint(Look.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, Look.WIDTH_PX, heightPx));
    }

    static void line(Graphics2D g, Color colour, Stroke stroke, double x1, double y1, double x2, double y2) {
        g.setPaint(colour);
        g.setStroke(stroke);
        g.draw(new Line2D.Double(x1, y1, x2, y2));
    }

    /** The value that counts. */
    static void dot(Graphics2D g, double x, double y) {
        g.setPaint(Look.ACCENT);
        g.fill(circle(x, y, Look.DOT_RADIUS_PX));
    }

    /** What it was before: wider than the dot, so that both show where they coincide. */
    static void ring(Graphics2D g, double x, double y) {
        g.setPaint(Look.PAPER);
        g.fill(circle(x, y, Look.RING_RADIUS_PX));
        g.setPaint(Look.INK);
        g.setStroke(Look.MARK);
        g.draw(circle(x, y, Look.RING_RADIUS_PX));
    }

    /** How sure, along x. */
    static void whiskerAcross(Graphics2D g, double fromX, double toX, double y) {
        line(g, Look.INK, Look.MARK, fromX, y, toX, y);
        line(g, Look.INK, Look.MARK, fromX, y - CAP_PX, fromX, y + CAP_PX);
        line(g, Look.INK, Look.MARK, toX, y - CAP_PX, toX, y + CAP_PX);
    }

    /** How sure, along y. */
    static void whiskerUp(Graphics2D g, double x, double fromY, double toY) {
        line(g, Look.INK, Look.MARK, x, fromY, x, toY);
        line(g, Look.INK, Look.MARK, x - CAP_PX, fromY, x + CAP_PX, fromY);
        line(g, Look.INK, Look.MARK, x - CAP_PX, toY, x + CAP_PX, toY);
    }

    /** A tolerance: the fill alone is too faint to see, so its edges are in ink. */
    static void band(Graphics2D g, double fromX, double toX, double topY, double bottomY) {
        g.setPaint(Look.BAND);
        g.fill(new Rectangle2D.Double(fromX, topY, toX - fromX, bottomY - topY));
        line(g, Look.INK, Look.RULE, fromX, topY, fromX, bottomY);
        line(g, Look.INK, Look.RULE, toX, topY, toX, bottomY);
    }

    /** The same lying down. */
    static void bandAcross(Graphics2D g, double fromX, double toX, double topY, double bottomY) {
        g.setPaint(Look.BAND);
        g.fill(new Rectangle2D.Double(fromX, topY, toX - fromX, bottomY - topY));
        line(g, Look.INK, Look.RULE, fromX, topY, toX, topY);
        line(g, Look.INK, Look.RULE, fromX, bottomY, toX, bottomY);
    }

    /** A bare place for words to stand on. */
    static void clear(Graphics2D g, Color ground, double x, double y, double widthPx, double heightPx) {
        g.setPaint(ground);
        g.fill(new Rectangle2D.Double(x, y, widthPx, heightPx));
    }

    /** A value past its tolerance, about its place: a triangle that points the way it is off; one step is 1 or −1. */
    static void arrow(Graphics2D g, double x, double y, int stepX, int stepY) {
        arrow(g, x, y, stepX, stepY, 1);
    }

    /** The same in another size, where there are many: 1 is the usual one. */
    static void arrow(Graphics2D g, double x, double y, int stepX, int stepY, double size) {
        double point = POINT_PX * size;
        double back = BACK_PX * size;
        double wing = WING_PX * size;
        g.setPaint(Look.STOP);
        g.fill(shape(x + point * stepX, y + point * stepY,
            x - back * stepX - wing * stepY, y - back * stepY - wing * stepX,
            x - back * stepX + wing * stepY, y - back * stepY + wing * stepX));
    }

    /** A target that nothing was built for. */
    static void openDiamond(Graphics2D g, double x, double y) {
        Path2D diamond = shape(x - DIAMOND_PX, y, x, y - DIAMOND_PX, x + DIAMOND_PX, y, x, y + DIAMOND_PX);
        g.setPaint(Look.PAPER);
        g.fill(diamond);
        g.setPaint(Look.INK);
        g.setStroke(Look.MARK);
        g.draw(diamond);
    }

    /** A target with its tolerance, upright. */
    static void targetUp(Graphics2D g, double x, double targetY, double topY, double bottomY) {
        bandAcross(g, x - TARGET_BOX_PX, x + TARGET_BOX_PX, topY, bottomY);
        line(g, Look.INK, Look.MARK, x - TARGET_TICK_PX, targetY, x + TARGET_TICK_PX, targetY);
    }

    /** The same lying down. */
    static void targetAcross(Graphics2D g, double targetX, double leftX, double rightX, double y) {
        band(g, leftX, rightX, y - TARGET_BOX_PX, y + TARGET_BOX_PX);
        line(g, Look.INK, Look.MARK, targetX, y - TARGET_TICK_PX, targetX, y + TARGET_TICK_PX);
    }

    /** A closed shape through places given as x, y, x, y and so on. */
    static Path2D shape(double... places) {
        Path2D path = new Path2D.Double();
        path.moveTo(places[0], places[1]);
        for (int i = 2; i < places.length; i += 2) {
            path.lineTo(places[i], places[i + 1]);
        }
        path.closePath();
        return path;
    }

    private static Ellipse2D circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }
}
