package benchtwin.picture;

import java.awt.Graphics2D;

/** The change of one angle by itself, as many times wider as it takes to see it, and says so. */
final class AngleInset {

    static final double WIDTH_PX = 168;
    static final double HEIGHT_PX = 122;

    private static final int[] TIMES = {50, 20, 10, 5, 2, 1};
    private static final double WIDEST_DEG = 25;
    private static final double LINE_PX = 124;
    private static final double ARC_PX = 104;

    private final AngleChange change;
    private final SketchView view;
    private final boolean mirrored;
    private final int times;

    AngleInset(AngleChange change, SketchView view, boolean mirrored) {
        this.change = change;
        this.view = view;
        this.mirrored = mirrored;
        times = times(Math.abs(change.differenceDeg()));
    }

    /** The most that leaves the two lines no wider apart than can be taken in. */
    static int times(double differenceDeg) {
        for (int times : TIMES) {
            if (times * differenceDeg <= WIDEST_DEG) {
                return times;
            }
        }
        return 1;
    }

    String words() {
        return times == 1 ? "change as wide as it is" : "change drawn " + times + " × as wide";
    }

    void draw(Graphics2D g, double x, double y) {
        SketchScale turn = new SketchScale(0, 0, 1, mirrored);
        double from = turn.directionDeg(view.directionDeg(change.drawnBeforeDeg()));
        double to = turn.directionDeg(view.directionDeg(change.drawnBeforeDeg() + times * change.differenceDeg()));
        double[] middle = SketchPen.along((from + to) / 2, LINE_PX / 2);
        double cornerX = x + WIDTH_PX / 2 - middle[0];
        double cornerY = y + HEIGHT_PX / 2 - middle[1];
        SketchPen.ray(g, Look.QUIET, SketchPen.BEFORE, cornerX, cornerY, from, LINE_PX);
        SketchPen.ray(g, Look.INK, Look.MOVE, cornerX, cornerY, to, LINE_PX);
        SketchPen.arrowArc(g, cornerX, cornerY, ARC_PX, from, to);
    }
}
