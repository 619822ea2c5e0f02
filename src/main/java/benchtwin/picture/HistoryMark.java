package benchtwin.picture;

import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** How readings are marked, by the gauge they were read on. All are of one size, and of one colour. */
enum HistoryMark {
    /** On the reference gauge. */
    DOT,
    /** On the first other gauge. */
    DIAMOND,
    /** On the second. */
    SQUARE,
    /** On any further one. */
    HOURGLASS;

    /** Of other gauges in the order they are named; what is past the last mark shares it. */
    static HistoryMark ofOther(int index) {
        return values()[Math.min(index + 1, values().length - 1)];
    }

    /** Filled, about a point. */
    void draw(Graphics2D g, double x, double y, double radiusPx) {
        g.setPaint(Look.ACCENT);
        double r = radiusPx;
        switch (this) {
            case DOT -> g.fill(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
            case DIAMOND -> g.fill(path(x - 1.4 * r, y, x, y - 1.4 * r, x + 1.4 * r, y, x, y + 1.4 * r));
            case SQUARE -> g.fill(new Rectangle2D.Double(x - 0.95 * r, y - 0.95 * r, 1.9 * r, 1.9 * r));
            default -> g.fill(path(x - 1.1 * r, y - 1.2 * r, x + 1.1 * r, y - 1.2 * r, x - 1.1 * r, y + 1.2 * r, x + 1.1 * r,
                y + 1.2 * r));
        }
    }

    /** A reading that no longer stands: small, open and crossed out. */
    static void crossedOut(Graphics2D g, double x, double y, double radiusPx) {
        double r = 0.8 * radiusPx;
        g.setPaint(Look.PAPER);
        g.fill(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
        g.setPaint(Look.QUIET);
        g.setStroke(Look.RULE);
        g.draw(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
        double reach = 1.3 * r;
        Marks.line(g, Look.QUIET, Look.RULE, x - reach, y - reach, x + reach, y + reach);
        Marks.line(g, Look.QUIET, Look.RULE, x - reach, y + reach, x + reach, y - reach);
    }

    private static Path2D path(double... places) {
        Path2D path = new Path2D.Double();
        path.moveTo(places[0], places[1]);
        for (int i = 2; i < places.length; i += 2) {
            path.lineTo(places[i], places[i + 1]);
        }
        path.closePath();
        return path;
    }
}
