package benchtwin.picture;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;

/**
 * Where a millimetre of a head stands on the sheet, one scale for both directions; a left-handed head is mirrored.
 * @param originX  the ground point, px from the left
 * @param originY  the ground point, px from the top
 * @param pxPerMm  px a mm
 * @param mirrored whether x is counted to the left
 */
record SketchScale(double originX, double originY, double pxPerMm, boolean mirrored) {

    /** The scale that puts a room's middle at the middle of a column, and its floor at a height. */
    static SketchScale centred(Rectangle2D roomMm, double middleX, double floorY, double pxPerMm, boolean mirrored) {
        double side = mirrored ? -1 : 1;
        return new SketchScale(middleX - side * pxPerMm * roomMm.getCenterX(), floorY + pxPerMm * roomMm.getMinY(), pxPerMm,
            mirrored);
    }

    double x(double mm) {
        return originX + (mirrored ? -mm : mm) * pxPerMm;
    }

    double y(double mm) {
        return originY - mm * pxPerMm;
    }

    Shape shape(Shape mm) {
        double x = mirrored ? -pxPerMm : pxPerMm;
        return new AffineTransform(x, 0, 0, -pxPerMm, originX, originY).createTransformedShape(mm);
    }

    /** A direction as it is seen, degrees from the right, up positive. */
    double directionDeg(double deg) {
        return mirrored ? 180 - deg : deg;
    }
}
