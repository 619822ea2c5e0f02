package benchtwin.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** The marks of the bench sheet. Coordinates are px, x to the right and y down. */
final class Marks {

    private static final double CAP_PX = 6;

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

    private static Ellipse2D circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }
}
