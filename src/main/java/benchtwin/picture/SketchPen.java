package benchtwin.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;

/** The marks of a head's sketch. Coordinates are px; angles are degrees from the right, up positive. */
final class SketchPen {

    static final BasicStroke BEFORE =
        new BasicStroke(1.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {6, 4}, 0);
    static final BasicStroke AFTER = new BasicStroke(2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    /** Halves and quarters of the mark for the centre of gravity. */
    private static final double CENTRE_PX = 7;
    private static final double HEAD_PX = 9;

    private SketchPen() {
    }

    /** The ground under a view. */
    static void ground(Sheet sheet, SketchScale at, Rectangle2D roomMm) {
        sheet.part("ground", g -> Marks.line(g, Look.INK, Look.RULE, at.x(roomMm.getMinX()), at.y(0), at.x(roomMm.getMaxX()),
            at.y(0)));
    }

    static void before(Graphics2D g, Shape px) {
        draw(g, Look.QUIET, BEFORE, px);
    }

    static void after(Graphics2D g, Shape px) {
        draw(g, Look.INK, AFTER, px);
    }

    static void draw(Graphics2D g, Color colour, Stroke stroke, Shape px) {
        g.setPaint(colour);
        g.setStroke(stroke);
        g.draw(px);
    }

    /** A line from a place in a direction. */
    static void ray(Graphics2D g, Color colour, Stroke stroke, double x, double y, double deg, double lengthPx) {
        Marks.line(g, colour, stroke, x, y, x + along(deg, lengthPx)[0], y + along(deg, lengthPx)[1]);
    }

    /** An arc about a place, from one direction to another. */
    static void arc(Graphics2D g, Color colour, Stroke stroke, double x, double y, double radiusPx, double fromDeg,
                    double toDeg) {
        draw(g, colour, stroke, new Arc2D.Double(x - radiusPx, y - radiusPx, 2 * radiusPx, 2 * radiusPx, fromDeg,
            toDeg - fromDeg, Arc2D.OPEN));
    }

    /** The same with a point at its end that says which way. */
    static void arrowArc(Graphics2D g, double x, double y, double radiusPx, double fromDeg, double toDeg) {
        arc(g, Look.ACCENT, Look.MOVE, x, y, radiusPx, fromDeg, toDeg);
        double turn = Math.signum(toDeg - fromDeg);
        double[] tip = along(toDeg, radiusPx);
        arrowHead(g, Look.ACCENT, x + tip[0], y + tip[1], toDeg + 90 * turn - Math.toDegrees(HEAD_PX / radiusPx) * turn / 2);
    }

    /** A filled point whose tip is at a place. */
    static void arrowHead(Graphics2D g, Color colour, double x, double y, double deg) {
        double[] left = along(deg + 155, HEAD_PX + 2);
        double[] right = along(deg - 155, HEAD_PX + 2);
        g.setPaint(colour);
        g.fill(Marks.shape(x, y, x + left[0], y + left[1], x + right[0], y + right[1]));
    }

    /** The engineer's mark for a centre of gravity: a disc in quarters. */
    static void centreOfGravity(Graphics2D g, double x, double y) {
        Ellipse2D disc = new Ellipse2D.Double(x - CENTRE_PX, y - CENTRE_PX, 2 * CENTRE_PX, 2 * CENTRE_PX);
        g.setPaint(Look.PAPER);
        g.fill(disc);
        g.setPaint(Look.INK);
        for (int quarter : new int[] {0, 180}) {
            g.fill(new Arc2D.Double(x - CENTRE_PX, y - CENTRE_PX, 2 * CENTRE_PX, 2 * CENTRE_PX, quarter, 90, Arc2D.PIE));
        }
        draw(g, Look.INK, Look.RULE, disc);
    }

    /** Where the shaft's axis meets the ground: a triangle under it. */
    static void groundPoint(Graphics2D g, double x, double y) {
        arrowHead(g, Look.INK, x, y + 2, 90);
    }

    /** A number or a name with its middle at a place, on bare paper. */
    static void words(Graphics2D g, String text, double middleX, double middleY) {
        words(g, TextBlock.line(text, Look.STRONG), Look.INK, middleX, middleY);
    }

    /** The same for what only helps to find one's way. */
    static void note(Graphics2D g, String text, double middleX, double middleY) {
        words(g, TextBlock.line(text, Look.TEXT), Look.QUIET, middleX, middleY);
    }

    private static void words(Graphics2D g, TextBlock block, Color colour, double middleX, double middleY) {
        double x = middleX - block.widthPx() / 2;
        double y = middleY - block.heightPx() / 2;
        Marks.clear(g, Look.PAPER, x - 2, y, block.widthPx() + 4, block.heightPx());
        block.draw(g, colour, x, y);
    }

    /** How far it is in x and y, y down, along a direction. */
    static double[] along(double deg, double px) {
        double rad = Math.toRadians(deg);
        return new double[] {px * Math.cos(rad), -px * Math.sin(rad)};
    }
}
