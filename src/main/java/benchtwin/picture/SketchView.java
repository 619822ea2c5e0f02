package benchtwin.picture;

import java.awt.geom.Rectangle2D;

/** One side of a head, with the angle that is seen from there. */
interface SketchView {

    /** From where one looks. */
    String title();

    /** What has to be seen, mm about the ground point, x right for a right-handed head and y up. */
    Rectangle2D roomMm();

    /** How many times as large as the other views. */
    default double zoom() {
        return 1;
    }

    /** The direction of the line that turns when the angle changes, degrees from the right, for a right-handed head. */
    double directionDeg(double angleDeg);

    /** Draws everything on it. */
    void draw(Sheet sheet, SketchScale at);
}
